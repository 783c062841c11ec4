// Floor 7. Spanish: all messages.
import type { Catalogue } from "../en/all.ts";

/**
 * Terms, one for one: flag bandera; hoist vaina; field campo; charge figura; edge límite; clarity nitidez; contrast contraste; grade grado
 * (débil, suave, nítido, fuerte); near the line en el umbral; verdict veredicto; price precio; redesign rediseño; what has to be seen lo que
 * debe verse; reflectance reflectancia; fimbriation fileteado; rule of tincture regla de los esmaltes; division partida, cortada,
 * tronchada, tajada; survey censo; series serie; ballot papeleta. Common practice of Spanish heraldry and vexillology, no source.
 */
export const spanish: Catalogue = {
  // answer: the letter or the form by which a reader answers.
  "answer.byMail": "por correo a {address}, con la dirección de esta página y sus cifras en la carta.",
  "answer.at": "en {host}.",
  "answer.atWithAddress": "en {host}, con la dirección de esta página.",
  "answer.atWithNumbers": "en {host}, con las cifras de esta página.",
  "answer.atWithBoth": "en {host}, con la dirección de esta página y sus cifras.",
  "answer.flagFor": "Una bandera para {gallery}",
  "answer.flag": "La bandera:",
  "answer.why": "Por qué:",
  "answer.reader": "Una lectora o un lector",
  "answer.question": "¿Por qué?",

  // colour: names of colours, and a flag told by them.
  "colour.black": "negro",
  "colour.white": "blanco",
  "colour.grey": "gris",
  "colour.red": "rojo",
  "colour.orange": "naranja",
  "colour.yellow": "amarillo",
  "colour.green": "verde",
  "colour.blue": "azul",
  "colour.purple": "morado",
  "colour.pink": "rosa",
  "colour.brown": "marrón",
  "colour.dark":
    "{word, select, other {{degree, select, very {{colour} muy oscuro} less {{colour} menos oscuro} slightlyLess {{colour} algo menos oscuro} muchLess {{colour} mucho menos oscuro} other {{colour} oscuro}}}}",
  "colour.light":
    "{word, select, other {{degree, select, very {{colour} muy claro} less {{colour} menos claro} slightlyLess {{colour} algo menos claro} muchLess {{colour} mucho menos claro} other {{colour} claro}}}}",
  "colour.darkest": "{colour} más oscuro de todos",
  "colour.lightest": "{colour} más claro de todos",
  "colour.darker":
    "{degree, select, slightly {{colour} algo más oscuro} much {{colour} mucho más oscuro} other {{colour} más oscuro}}",
  "colour.lighter":
    "{degree, select, slightly {{colour} algo más claro} much {{colour} mucho más claro} other {{colour} más claro}}",
  "colour.deeper":
    "{degree, select, slightly {{colour} algo más intenso} much {{colour} mucho más intenso} other {{colour} más intenso}}",
  "colour.greyer":
    "{degree, select, slightly {{colour} algo más gris} much {{colour} mucho más gris} other {{colour} más gris}}",
  "colour.warmer":
    "{degree, select, slightly {{colour} algo más cálido} much {{colour} mucho más cálido} other {{colour} más cálido}}",
  "colour.bluer":
    "{degree, select, slightly {{colour} algo más azul} much {{colour} mucho más azul} other {{colour} más azul}}",
  "colour.yellower":
    "{degree, select, slightly {{colour} algo más amarillo} much {{colour} mucho más amarillo} other {{colour} más amarillo}}",
  "colour.redder":
    "{degree, select, slightly {{colour} algo más rojo} much {{colour} mucho más rojo} other {{colour} más rojo}}",
  "colour.greener":
    "{degree, select, slightly {{colour} algo más verde} much {{colour} mucho más verde} other {{colour} más verde}}",
  "colour.purpler":
    "{degree, select, slightly {{colour} algo más morado} much {{colour} mucho más morado} other {{colour} más morado}}",
  "colour.reddish":
    "{degree, select, slightly {{colour} algo rojizo} much {{colour} bastante rojizo} very {{colour} muy rojizo} other {{colour} rojizo}}",
  "colour.brownish":
    "{degree, select, slightly {{colour} algo pardusco} much {{colour} bastante pardusco} very {{colour} muy pardusco} other {{colour} pardusco}}",
  "colour.yellowish":
    "{degree, select, slightly {{colour} algo amarillento} much {{colour} bastante amarillento} very {{colour} muy amarillento} other {{colour} amarillento}}",
  "colour.greenish":
    "{degree, select, slightly {{colour} algo verdoso} much {{colour} bastante verdoso} very {{colour} muy verdoso} other {{colour} verdoso}}",
  "colour.bluish":
    "{degree, select, slightly {{colour} algo azulado} much {{colour} bastante azulado} very {{colour} muy azulado} other {{colour} azulado}}",
  "colour.purplish":
    "{degree, select, slightly {{colour} algo violáceo} much {{colour} bastante violáceo} very {{colour} muy violáceo} other {{colour} violáceo}}",
  "colour.greyish":
    "{degree, select, slightly {{colour} algo grisáceo} much {{colour} bastante grisáceo} very {{colour} muy grisáceo} other {{colour} grisáceo}}",
  "colour.warm":
    "{degree, select, slightly {{colour} algo cálido} much {{colour} bastante cálido} very {{colour} muy cálido} other {{colour} cálido}}",
  "colour.neutral":
    "{degree, select, slightly {{colour} casi neutro} much {{colour} del todo neutro} very {{colour} del todo neutro} other {{colour} neutro}}",
  "colour.deep": "{word, select, other {{colour} intenso}}",
  "colour.mid": "{colour} medio",
  "colour.off": "{word, select, white {blanco roto} other {casi {colour}}}",
  "colour.charcoal": "{colour} carbón",
  "colour.dull": "{colour} apagado",
  "colour.jet": "{colour} azabache",
  "colour.bright": "{colour} vivo",
  "colour.pure": "{colour} puro",
  "colour.nth":
    "{place, select, second {segundo {colour}} third {tercer {colour}} fourth {cuarto {colour}} fifth {quinto {colour}} sixth {sexto {colour}} seventh {séptimo {colour}} eighth {octavo {colour}} ninth {noveno {colour}} other {décimo {colour}}}",
  "colour.numbered": "{colour} {number}",
  "colour.others": "otros colores",
  "colour.selectedPart": "{colour}, parte elegida",
  "colour.selected": "el {colour} elegido",
  "colour.empty": "un dibujo vacío",
  "colour.allOver": "{colour} por entero",
  "colour.mostly": "sobre todo {colour}, con {others}",

  // colours: the colours of a study.
  "colours.caption":
    "Colores del original, los más extensos primero. Parte del dibujo entero; reflectancia de la tela.",
  "colours.colour": "Color",
  "colours.share": "Parte",
  "colours.reflectance": "Reflectancia",
  "colours.tincture": "Esmalte",
  "colours.becomes": "pasa a",
  "colours.vanishes":
    "no se distingue a {distance, plural, one {# altura de bandera} other {# alturas de bandera}}",
  "colours.uneven": "desigual, de <first></first> a <last></last>",
  "colours.metal": "metal",
  "colours.ofTincture": "color",

  // doubt: what makes the figures of a drawing less certain.
  "doubt.joined":
    "El dibujo tiene más colores de los que se miden por separado: {count, plural, one {el que menos se ve se mide con uno parecido que se ve más, o en conjunto, como «{name}».} other {los # que menos se ven se miden con uno parecido que se ve más, o en conjunto, como «{name}».}}",
  "doubt.faint":
    "{count, plural, one {Una forma se ve a menos de la mitad y queda fuera de la medición.} other {# formas se ven a menos de la mitad y quedan fuera de la medición.}}",
  "doubt.inexact": "Solo se pudo distinguir con exactitud {share} del dibujo; sus cifras son menos seguras.",
  "doubt.nearLimit": "Cerca del límite de la vista: partes en {names}.",
  "doubt.effect": "El dibujo del autor tiene lo que aquí no se muestra ni se mide: {looks}.",
  "doubt.look":
    "{kind, select, shadow {una sombra} blur {un desenfoque} colours {un cambio de los colores} blend {colores mezclados con lo que hay debajo ({mode})} other {un efecto}}",

  // edge: what an edge is called.
  "edge.names": "{one} / {other}",
  "edge.on": "{part} sobre {field}",

  // edgefigure: one edge, before and after, as a figure.
  "edgefigure.edge": "Límite",
  "edgefigure.becomes": ", que pasa a {is}",
  "edgefigure.outcome": ": {outcome}, en {extent}.",
  "edgefigure.sideBySide": "Lado a lado; contraste {contrast}.",
  "edgefigure.says": "{edge}: contraste {before} antes, {after} después; {outcome}.",
  "edgefigure.saysAfter": "{edge}: contraste {after} después; {outcome}.",

  // edgepage: the page of one edge.
  "edgepage.place": "En la bandera; el recuadro se muestra ampliado",
  "edgepage.numbers": "El límite en cifras",
  "edgepage.elsewhere": "Los mismos dos colores en otros estudios",
  "edgepage.study": "Estudio",
  "edgepage.elsewhereNote":
    "Dos colores de igual nombre no tienen por qué ser el mismo: compare la tela, no la palabra.",
  "edgepage.siblings": "Límites de este estudio",
  "edgepage.nearLine": "{near}: sobre otra tela sería otro. <why>Por qué</why>",
  "edgepage.how": "Cómo se obtiene el <contrast>contraste</contrast> y <beside>qué lo acompaña</beside>.",
  "edgepage.locator": "Dónde está el límite",
  "edgepage.locatorSays":
    "La bandera original en pálido, con las líneas trazadas donde se tocan {one} y {other}.",
  "edgepage.contrast": "contraste",
  "edgepage.difference": "diferencia de color",
  "edgepage.sides": "Primero el original, luego el rediseño.",
  "edgepage.seenNote":
    "El gris conserva el contraste. La diferencia de color es ΔE00: cuanto mayor, más fácil de distinguir. Son aproximaciones de la forma más fuerte de cada deficiencia, y no una prueba de la vista de nadie. <how>Cómo se hacen</how>",
  "edgepage.noEdge": "sin límite",
  "edgepage.all": "Todos en una sola regla",
  "edgepage.of": "Un límite, donde se tocan dos colores, de <study>{title}</study>",
  "edgepage.becomes": "{was} pasa a {is}",
  "edgepage.description": "Un límite de un estudio no oficial de rediseño, {outcome}.",
  "edgepage.placeAlt": "{label}, el lugar donde se tocan {one} y {other}",
  "edgepage.unofficial": "Rediseño, estudio no oficial",
  "edgepage.bothNear": "Ambos grados están en el umbral",
  "edgepage.originalNear": "El grado del original está en el umbral",
  "edgepage.redesignNear": "El grado del rediseño está en el umbral",

  // edges: what became of each edge of a study.
  "edges.none": "Un solo color: no hay límites que medir.",
  "edges.where": "Dónde están los límites",
  "edges.map": "El mapa de límites",
  "edges.ruler": "La regla de contraste",
  "edges.moreOnDistance": "Más sobre la <distance>distancia</distance>",
  "edges.moreOnDistanceAndCloth": "Más sobre la <distance>distancia</distance> y la <cloth>tela</cloth>",
  "edges.fimbriations": "Líneas que separan dos colores",
  "edges.fimbriationMoves":
    "Del contraste de la propia pareja al del más débil de los dos límites que están en su lugar. <more>Más sobre el fileteado</more>",
  "edges.every": "Cada límite, antes y después",
  "edges.betterAndWorse": "Qué mejora y qué empeora",
  "edges.paged": "Los {paged} más largos de estos {all} límites tienen página propia.",

  // edgesaid: what became of one edge.
  "edgeSaid.unchanged": "Sin cambio",
  "edgeSaid.leftAlone": "El cambio deja este límite como está: contraste {contrast}, {grade}.",
  "edgeSaid.hardlyChange": "{pair} apenas cambian en {where}: {move}.",
  "edgeSaid.stayClear": "{pair} siguen bien separados en {where}: {move}.",
  "edgeSaid.stayHard": "{pair} siguen siendo difíciles de distinguir en {where}: {move}.",
  "edgeSaid.gained":
    "{who, select, one {{is} destaca ahora de {neighbour} en {where}: contraste {contrast}, {grade}; con {was} era {wasContrast}, {wasGrade}.} same {{is} destacan ahora entre sí en {where}: contraste {contrast}, {grade}, frente a {wasContrast}, {wasGrade}.} other {{is} destacan ahora entre sí en {where}: contraste {contrast}, {grade}; con {was} era {wasContrast}, {wasGrade}.}}",
  "edgeSaid.better":
    "{who, select, one {{is} destaca de {neighbour} más que {was}, en {where}: {move}.} same {{is} destacan entre sí más que antes, en {where}: {move}.} other {{is} destacan entre sí más que {was}, en {where}: {move}.}}",
  "edgeSaid.betterUnclear":
    "{who, select, one {{is} se distingue de {neighbour} mejor que {was}, en {where}, pero sin nitidez: {move}.} same {{is} se distinguen mejor que antes, en {where}, pero sin nitidez: {move}.} other {{is} se distinguen mejor que {was}, en {where}, pero sin nitidez: {move}.}}",
  "edgeSaid.lost":
    "{who, select, one {{is} ya no destaca de {neighbour} en {where}: contraste {contrast}, {grade}; con {was} era {wasContrast}, {wasGrade}.} same {{is} ya no destacan entre sí en {where}: contraste {contrast}, {grade}, frente a {wasContrast}, {wasGrade}.} other {{is} ya no destacan entre sí en {where}: contraste {contrast}, {grade}; con {was} era {wasContrast}, {wasGrade}.}}",
  "edgeSaid.worse":
    "{who, select, one {{is} destaca de {neighbour} menos que {was}, en {where}: {move}.} same {{is} destacan entre sí menos que antes, en {where}: {move}.} other {{is} destacan entre sí menos que {was}, en {where}: {move}.}}",
  "edgeSaid.worseUnclear":
    "{who, select, one {{is} se distingue de {neighbour} aún peor que {was}, en {where}: {move}.} same {{is} se distinguen aún peor que antes, en {where}: {move}.} other {{is} se distinguen aún peor que {was}, en {where}: {move}.}}",
  "edgeSaid.merged":
    "{pair} se vuelven un solo color a la vista en {where}: la línea entre ambos, con un contraste de {wasContrast}, {wasGrade}, desaparece.",
  "edgeSaid.parted":
    "{pair} eran un solo color y ahora se tocan en un límite {gradeId, select, weak {débil} soft {suave} clear {nítido} other {fuerte}}, en {where}: contraste {contrast}.",
  "edgeSaid.pair": "{one} y {other}",
  "edgeSaid.moveNone": "contraste {contrast}, {grade}",
  "edgeSaid.moveStill": "contraste del {wasContrast} al {contrast}, aún {grade}",
  "edgeSaid.moveGrade": "contraste del {wasContrast} al {contrast}, de {wasGrade} a {grade}",
  "edgeSaid.whereAll": "todas las líneas de la bandera",
  "edgeSaid.wherePart": "{part} de la longitud de todos los límites",
  "edgeSaid.whereOutline": "todo el contorno de lo que debe verse",
  "edgeSaid.whereOutlinePart": "{part} del contorno de lo que debe verse",
  "edgeSaid.whereAllAndOutline": "todas las líneas de la bandera, incluido {outline}",
  "edgeSaid.whereOutlineAndMore": "{outline} y más allá, {part} de la longitud de todos los límites",

  // entry: the entry of a study in a list.
  "entry.makers": "Hoja para fabricantes",
  "entry.putForward": "Propuesto por {authors}",

  // facts: facts beside the numbers of a study.
  "facts.heading": "Datos junto a las cifras, ninguno de ellos una nota",
  "facts.caption": "Datos junto a las cifras",
  "facts.fact": "Dato",
  "facts.clearShareNote":
    "La parte de límites nítidos salta donde cambia un grado; por eso es un dato y no decide nada. <near>En el umbral</near>",
  "facts.hueNote":
    "Solo el tono: un contraste inferior al 30 % con un ΔE00 de 20 o más, y de menos de 10 en gris. Un límite así desaparece al anochecer, en la impresión en gris y para muchos lectores daltónicos. Los umbrales son juicio nuestro.",
  "facts.tinctureNote":
    "Regla de los esmaltes: ni metal sobre metal, ni color sobre color; A. C. Fox-Davies, <book>A Complete Guide to Heraldry</book>, 1909, capítulo VII. Los campos partidos, los fileteados y los forros quedan exentos; los forros no se reconocen aquí.",
  "facts.countNote":
    "Colores de más de medio por ciento de la superficie. El folleto <book>Good Flag, Bad Flag</book>, 2006, aconseja dos o tres; los <book>Guiding Principles of Flag Design</book>, 2014, prefieren pocos.",
  "facts.more": "Más sobre estos datos",
  "facts.clearShare": "Parte de límites nítidos: nítidos o fuertes, de la longitud de todos los límites",
  "facts.near": "Grado en el umbral, otro sobre otra tela",
  "facts.hue": "Se distinguen solo por el tono",
  "facts.tincture": "Contra la regla de los esmaltes",
  "facts.count": "Número de colores; las guías aconsejan dos o tres",
  "facts.none": "ninguno",
  "facts.metalOnMetal": "{names}, ambos metales",
  "facts.colourOnColour": "{names}, ambos colores",
  "facts.ruleKept": "Nada va en su contra, ni antes ni después.",
  "facts.ruleBroken": "En su contra antes y después: {names}.",
  "facts.ruleMoved": "En su contra en el original: {was}. En el rediseño: {is}.",
  "facts.exemptFimbriation": "Exento, como fileteado: {names}.",
  "facts.exemptField": "Exento, como partes del campo: {names}.",
  "facts.uneven":
    "Un color desigual: {name} va de {lightest} a {darkest}; un límite suyo solo es nítido si lo son ambos extremos.",

  // feed: what readers of feeds see, and the caption of a flag on somebody else’s page.
  "feed.decisions": "{title}: decisiones",
  "feed.decision": "{status}: {title}",
  "feed.status": "{status}, {meaning}.",
  "feed.statusDecided": "{status}, {meaning}. {decision}",
  "feed.redesigns": "Los rediseños son estudios no oficiales.",
  "feed.proposed": "{change} {verdict}: nitidez {before} → {after}.",
  "feed.flagToday": "{flag} hoy",
  "feed.flagRedesign": "{flag}, rediseño",
  "feed.clearer": "<a>{name}</a>: más nítido. Estudio no oficial.",
  "feed.atAPrice": "<a>{name}</a>: más nítido, a un precio. Estudio no oficial.",
  "feed.mixed": "<a>{name}</a>: desigual. Estudio no oficial.",
  "feed.lessClear": "<a>{name}</a>: menos nítido. Estudio no oficial.",
  "feed.noGain": "<a>{name}</a>: sin ganancia. Estudio no oficial.",

  // fimbriation: what a line of a third colour does for the two colours that it keeps apart.
  "fimbriation.parts": "La línea en {line} separa {one} de {other}",
  "fimbriation.doesNotPart": "La línea en {line} entre {one} y {other} no los separa",
  "fimbriation.line": "{lead}: <move></move>.",
  "fimbriation.didAlready": "En el original {line} ya lo hacía: {across} en lugar de {direct}.",
  "fimbriation.didNotEither": "En el original {line} tampoco lo hacía: {across} en lugar de {direct}.",
  "fimbriation.did": "En el original {line} lo hacía: {across} en lugar de {direct}.",
  "fimbriation.didNot": "En el original {line} no lo hacía: {across} en lugar de {direct}.",
  "fimbriation.it": "ella",
  "fimbriation.theLine": "la línea en {colour}",
  "fimbriation.partLine": "línea de {part}",

  // finder: the form that finds studies.
  "finder.words": "Palabras",
  "finder.order": "Orden",
  "finder.more": "Más filtros",
  "finder.any": "Cualquiera",
  "finder.find": "Buscar",
  "finder.all": "Mostrar todo",
  "finder.none": "Ningún estudio cumple todo esto. Quite una palabra o una opción, o muestre todo.",
  "finder.pages": "Páginas con estas palabras: <list></list>",
  "finder.status": "Estado",
  "finder.verdict": "Veredicto",
  "finder.tag": "Etiqueta",
  "finder.author": "Autor",
  "finder.mostGained": "Mayor ganancia",
  "finder.newest": "Más recientes",
  "finder.mostLost": "Mayor pérdida",
  "finder.leastClear": "Rediseño menos nítido",
  "finder.title": "Título",
  "finder.found": "{found} de {count, plural, one {# estudio} other {# estudios}}",
  "finder.foundListed": "{found} de los {listed} que figuran aquí",

  // flagpage: the page of a flag with several redesigns, or that readers named.
  "flagPage.two": "{flag}: {one} o {other}",
  "flagPage.pair": "{one} y {other}",
  "flagPage.namedShort": "Señalada por lectores.",
  "flagPage.named": "Señalada por lectores",
  "flagPage.proposal": "Propuesta {number}",
  "flagPage.weakest": "Límite más débil {contrast}",
  "flagPage.clearest":
    "{count, plural, one {La propuesta {numbers} es la más nítida} other {Las propuestas {numbers} son las más nítidas}}{priced, select, yes {, a un precio} other {}}: la nitidez sube del {before} al {after}.",
  "flagPage.clearerOfTwo":
    "Ambas son más nítidas, a un precio; la más nítida es la propuesta {numbers}: del {before} al {after}, frente al {next}.",
  "flagPage.clearestOfPriced":
    "Todas las que se muestran son más nítidas, a un precio; la más nítida es la propuesta {numbers}: del {before} al {after}, la siguiente el {next}.",
  "flagPage.noneClearer": "Ninguna propuesta es más nítida que el original: su nitidez es del {before}.",
  "flagPage.all": "Todas las propuestas",
  "flagPage.pairs": "Dos lado a lado: <list></list>",
  "flagPage.edges": "Qué mejora y qué empeora cada una",
  "flagPage.survey": "Sus cifras en el censo",
  "flagPage.showAll": "Mostrar todas",
  "flagPage.allShown": "Se muestran todas las banderas",
  "flagPage.head": "Propuesta",
  "flagPage.verdict": "Veredicto",
  "flagPage.share": "Parte que cambia",

  // focus: what has to be seen, the emblem or charge of a flag, from where the flag is seen, and how far that lasts.
  "focus.none":
    "No se halló emblema: nada debe verse antes que lo demás, y ningún límite cuenta doble. Es un hecho, no un defecto.",
  "focus.notGuessed":
    "Una figura se confunde con una zona de su mismo color. No se ha adivinado, así que nada cuenta doble. Para nombrarla, escriba en el estudio:",
  "focus.fullDrawing": "Medido en el dibujo entero, no a distancia.",
  "focus.fromAway":
    "Medido como se ve a {away, plural, one {# altura de bandera} other {# alturas de bandera}}: una bandera de un metro de alto, a {away, plural, one {# metro} other {# metros}}. Las partes más finas que {finest} de su altura se asignan a lo que tienen al lado. Es un modelo de la agudeza visual.",
  "focus.afar": "Qué queda de lejos",
  "focus.afarDescription": "{lasting} Nitidez de lo que debe verse: {steps}.",
  "focus.step": "a {distance}, {is}",
  "focus.stepMove": "a {distance}, de {was} a {is}",
  "focus.afarCaption":
    "Aguanta hasta {lasts}, solo por su tamaño: debe quedar {left} de ello, y su trozo mayor debe abarcar {arcminutes, plural, one {# minuto de arco} other {# minutos de arco}}, el tamaño de una letra que lee una agudeza de 20/20.",
  "focus.noEmblem": "no se halló emblema",
  "focus.lastsUnder":
    "{distance, plural, one {menos de # altura de bandera} other {menos de # alturas de bandera}}",
  "focus.lastsOrMore":
    "{distance, plural, one {# altura de bandera o más} other {# alturas de bandera o más}}",
  "focus.nothingLeft": "no queda nada",
  "focus.tooSmall":
    "{distance, plural, one {Lo que debe verse es demasiado pequeño para reconocerse a # altura de bandera, la menor distancia probada, sean cuales sean sus colores.} other {Lo que debe verse es demasiado pequeño para reconocerse a # alturas de bandera, la menor distancia probada, sean cuales sean sus colores.}}",
  "focus.largeEnough":
    "{distance, plural, one {Lo que debe verse es bastante grande para reconocerse hasta # altura de bandera, sean cuales sean sus colores.} other {Lo que debe verse es bastante grande para reconocerse hasta # alturas de bandera, sean cuales sean sus colores.}}",
  "focus.largeEnoughAlways":
    "{distance, plural, one {Lo que debe verse es bastante grande para reconocerse a # altura de bandera, la mayor distancia probada.} other {Lo que debe verse es bastante grande para reconocerse a # alturas de bandera, la mayor distancia probada.}}",

  // frame: what stands around the content of every page, and the page of a missing address.
  "frame.skip": "Ir al contenido",
  "frame.gallery": "Galería",
  "frame.studies": "Estudios",
  "frame.survey": "Censo",
  "frame.method": "Método",
  "frame.allStudies": "Todos los estudios",
  "frame.cautions":
    "Cada rediseño que se muestra aquí es un estudio no oficial, presentado para su discusión. Las leyes sobre el uso de las banderas difieren: siga las de su lugar y respete la licencia de cada dibujo. Véanse las <cautions>advertencias</cautions> y, para autores, las <rules>reglas de estudios y dibujos</rules>.",
  "frame.publishedBy": "Publicado por {society}.",
  "frame.textsUnder": "Textos bajo <licence>{name}</licence>.",
  "frame.madeWith":
    "Hecho con Counterchange. Compuesto en Source Serif 4 y Source Sans 3, bajo la <licence>SIL Open Font License</licence>.",
  "frame.missing": "Aquí no hay página",
  "frame.missingText":
    "No hay página en esta dirección. Puede que un estudio se haya retirado de la galería, o que la dirección esté mal escrita.",
  "frame.missingDescription": "No hay página en esta dirección.",
  "frame.moved": "Esta página se ha trasladado: {title}.",

  // front: the front page.
  "front.nominate": "¿Una bandera que merece un estudio? <name>Señálela y diga por qué</name>",
  "front.empty":
    "Aún no hay nada publicado. El primer estudio figurará en esta página; hasta entonces, <method>el método</method> cuenta cómo se medirá.",
  "front.earlier": "Estudios anteriores",
  "front.edgeless": "Sin límite que medir: <list></list>.",
  "front.more": "{count, plural, one {# más} other {# más}}",

  // gain: the chart of what each change does to clarity.
  "gain.title": "Qué hace cada cambio con la nitidez",
  "gain.order": "Las mayores ganancias primero.",
  "gain.key": "Un anillo para el original, un punto para el rediseño; línea hueca donde la nitidez baja.",
  "gain.othersListed":
    "{count, plural, one {El otro estudio está en la lista de todos} other {Los otros # estudios están en la lista de todos}}",
  "gain.othersOnFront":
    "{count, plural, one {El otro estudio está en la portada} other {Los otros # estudios están en la portada}}",
  "gain.told": "{count, plural, one {# estudio} other {# estudios}}: la nitidez {ways}.",
  "gain.rises": "sube en {count}",
  "gain.falls": "baja en {count}",
  "gain.stays": "se mantiene en {count}",
  "gain.most": "Donde más sube es en «{title}», del {before} al {after}.",
  "gain.here": "En este estudio va del {before} al {after}.",

  // grade: the grades of a contrast, within a sentence and in tables.
  "grade.weak": "débil",
  "grade.soft": "suave",
  "grade.clear": "nítido",
  "grade.strong": "fuerte",
  "grade.now": "ahora {is}",
  "grade.from": "de {was}",
  "grade.move": "de {was} a {is}",

  // history: what came before a study and after it.
  "history.follows": "Sustituye a",
  "history.followed": "Seguido de",
  "history.revised": "<date></date>: {what}",

  // ladder: the ladder of reflectance.
  "ladder.rung": "{name} {reflectance}",
  "ladder.title": "La claridad de cada color",
  "ladder.says": "Del más claro al más oscuro: {colours}. {change}",

  // lasting: how far what has to be seen lasts, as a figure.
  "lasting.caption":
    "Nitidez de lo que debe verse a tantas alturas de bandera: un anillo para el original, un punto para el rediseño.",
  "lasting.model": "Un modelo de la vista",

  // length: how long an edge is.
  "length.heights":
    "{length, plural, one {{length, number, ::.00} altura de bandera} other {{length, number, ::.00} alturas de bandera}}",
  "length.offFocus": "nada en el contorno de lo que debe verse",
  "length.onFocus": "todo en el contorno de lo que debe verse",
  "length.partOnFocus": "{part, number, ::.00} en el contorno de lo que debe verse",
  "length.distance": "{distance, plural, one {# altura de bandera} other {# alturas de bandera}}",
  "length.wholeOutline": "todo el contorno",
  "length.ofOutline": "{share} del contorno",
  "length.partly": "{length}, de ellas {own, number, ::.00} en {part}",
  "length.wholly": "{length}, {part}",

  // likeness: which flags a redesign could be taken for.
  "likeness.figure": "diferencia media de color ΔE00 {difference}",
  "likeness.figureMirrored": "diferencia media de color ΔE00 {difference}, vista por el reverso",
  "likeness.figureTurned": "diferencia media de color ΔE00 {difference}, cabeza abajo",
  "likeness.flags": "{count, plural, one {# otra bandera o rediseño} other {otras # banderas y rediseños}}",
  "likeness.hardly":
    "Difícilmente. De {flags}, lo más cercano: {nearest}, con {figure}; por debajo de {limit}, una bandera se toma fácilmente por otra.",
  "likeness.could":
    "Podría. De {flags}, {count, plural, one {una está cerca} other {varias están cerca}}: {names}; por debajo de {limit}, una bandera se toma fácilmente por otra, y la más cercana tiene {figure}.",
  "likeness.rivals": "Las otras propuestas para esta bandera no cuentan.",
  "likeness.own": "Este rediseño",

  // list: what stands between the items of a list that has no “and”.
  "list.comma": ", ",
  "list.semicolon": "; ",
  "list.colon": "{name}: {said}",

  // maker: the sheet from which an adopted redesign is made as a flag.
  "maker.title": "{title}, hoja para fabricantes",
  "maker.description": "Proporciones, construcción y colores del rediseño adoptado, para imprimir.",
  "maker.kind": "Hoja para fabricantes",
  "maker.for": "Para fabricantes",
  "maker.print": "Para imprimir: la orden de impresión de su navegador, A4 o Carta, en vertical. Una página.",
  "maker.toStudy": "El estudio",
  "maker.outline": "El rediseño de {name}, en contornos",
  "maker.proportions": "Alto por ancho <number>{proportions}</number>. La vaina, a la izquierda.",
  "maker.unofficial":
    "Esta galería lo registra como adoptado; el rediseño sigue siendo un estudio no oficial.",
  "maker.unofficialBy":
    "{society} lo registra como adoptado; el rediseño sigue siendo un estudio no oficial.",
  "maker.built": "Construcción",
  "maker.shape": "Forma",
  "maker.fromHoist": "Desde la vaina",
  "maker.fromTop": "Desde arriba",
  "maker.width": "Ancho",
  "maker.height": "Alto",
  "maker.rectangle": "Rectángulo",
  "maker.line": "Línea",
  "maker.circle": "Círculo, por su centro",
  "maker.ring": "Anillo, por su centro",
  "maker.across": "{width} de diámetro",
  "maker.hole": "hueco {height}",
  "maker.laid": "En el orden en que se colocan: lo posterior cubre lo anterior.",
  "maker.none": "No se pudo leer ninguna forma sencilla del dibujo. Decide el archivo del dibujo.",
  "maker.parts": "Los números enteros son partes, de las que la altura tiene {parts}.",
  "maker.percent": "Las posiciones y los tamaños en % son de la altura, redondeados.",
  "maker.untold":
    "{count, plural, one {Se omite # forma más, que no es sencilla o no cabe: decide el archivo del dibujo.} other {Se omiten # formas más, que no son sencillas o no caben: decide el archivo del dibujo.}}",
  "maker.colours": "Colores",
  "maker.colour": "Color",
  "maker.hex": "Hex",
  "maker.reflectance": "Reflectancia",
  "maker.others":
    "{count, plural, one {Hay # color más en la página del estudio.} other {Hay # colores más en la página del estudio.}}",
  "maker.coloursHow":
    "sRGB en bytes; CIELAB bajo D65; reflectancia de una tela cuyo tinte responde a la pantalla, entre la tela negra y la blanca de la galería.",
  "maker.source": "Fuentes: IEC 61966-2-1 (sRGB), CIE 15:2004 (CIELAB).",
  "maker.cautions": "Antes de fabricarla",
  "maker.law":
    "La ley local va primero: sobre el aspecto de una bandera, quién puede fabricarla y quién puede izarla.",
  "maker.cloth":
    "Deciden las cartas de telas y tintes. Un color de pantalla no es un tinte: elija en una carta, a la luz del día, y mantenga entre los colores la distancia de claridad que tienen aquí.",
  "maker.file": "Donde esta hoja y el archivo del dibujo difieren, decide el archivo.",

  // map: the edge map.
  "map.caption":
    "Donde se tocan dos colores, trazado a la distancia de observación. Las líneas continuas son nítidas o fuertes; las discontinuas, no.",
  "map.bandNote": "La banda rodea lo que debe verse.",
  "map.title": "Mapa de límites",
  "map.focusFound": "lo que debe verse, hallado: {share} de la bandera",
  "map.focusNamed": "lo que debe verse, nombrado por el autor: {share} de la bandera",
  "map.none": "No hay límites.",
  "map.firstGrade": "{grade}, {share} de la longitud de todos los límites: {names}.",
  "map.grade": "{grade}, {share}: {names}.",

  // mark: the marks of a flag.
  "mark.clarity": "Nitidez",
  "mark.contrast": "Contraste",
  "mark.length": "Longitud",
  "mark.near": "en el umbral",
  "mark.nearNow": "ahora en el umbral",
  "mark.nearBefore": "antes en el umbral",
  "mark.hue": "solo por el tono",
  "mark.hueNow": "ahora solo por el tono",
  "mark.hueBefore": "antes solo por el tono",
  "mark.clarityMeans": "100 % si todo límite es nítido",
  "mark.focusClarity": "Nitidez de lo que debe verse",
  "mark.focusMeans": "solo los límites del emblema",
  "mark.weakest": "Límite más débil",
  "mark.weakestMeans": "contraste de los dos colores",
  "mark.price": "El precio",
  "mark.sameEdge": "el mismo límite",

  // matrix: the matrix of all single changes.
  "matrix.notTried": "sin probar",
  "matrix.own": "este estudio",
  "matrix.note": "nota {number}",
  "matrix.merges": "se funde",
  "matrix.notRanked": "sin puesto",
  "matrix.clearest": "el más nítido de la fila",
  "matrix.title": "Cada cambio de un color",
  "matrix.ownHue": "su propio tono",
  "matrix.studys": "{name} del estudio",
  "matrix.unranked": "sin puesto: se funde {share} del contorno de una figura",
  "matrix.moreColours":
    "{count, plural, one {# color más de la bandera} other {# colores más de la bandera}}",
  "matrix.moreReplacements": "{count, plural, one {# sustituto más} other {# sustitutos más}}",
  "matrix.reading": "Una fila cambia un color de la bandera; una columna dice por cuál.",
  "matrix.readingBlocks": "Cada bloque cambia un color de la bandera; sobre cada cifra se dice por cuál.",
  "matrix.clarity": "Bajo cada bandera, su nitidez.",
  "matrix.clarityToday": "Bajo cada bandera, su nitidez; el original tiene {today}.",
  "matrix.bold": "En negrita, el más nítido de su fila; más de uno si son igual de nítidos.",
  "matrix.mergesNote": "«Se funde»: dos colores se vuelven uno.",
  "matrix.greyNote": "«Sin puesto»: se fundiría un tercio o más del contorno de una figura.",
  "matrix.dash": "Una raya: sin probar, o sin cambio visible.",
  "matrix.partAlone": "El cambio de este estudio es de una sola parte y no está entre ellos.",
  "matrix.left": "No se muestra: {what}.",

  // method: the method page's opening, headings and figures.
  "method.title": "Método",
  "method.description":
    "Cómo se obtiene cada cifra de estas páginas: fórmulas, fuentes, grados, resultados, advertencias.",
  "method.lede": "Cómo se obtiene aquí cada cifra.",
  "method.ledeShown": "Cómo se obtiene aquí cada cifra, mostrado en una bandera: <a>{name}</a>.",
  "method.count": "La letra pequeña junto a cada paso dice de dónde vienen sus cifras.",
  "method.contents": "En esta página",
  "method.edges": "Límites",
  "method.distance": "Distancia",
  "method.lasting": "De lejos",
  "method.reflectance": "Reflectancia",
  "method.contrast": "Contraste y grado",
  "method.numbers": "Nitidez",
  "method.outcomes": "Resultado y veredicto",
  "method.words": "Las palabras",
  "method.options": "Otros cambios de un color",
  "method.survey": "El censo",
  "method.likeness": "¿Podría confundirse?",
  "method.beside": "Otras medidas",
  "method.facts": "Datos",
  "method.vision": "Para lectores daltónicos, y en gris",
  "method.cautions": "Advertencias",
  "method.inCloth": "tela",
  "method.inHigh": "alto",
  "method.inLow": "bajo",
  "method.ofContrast": "contraste",
  "method.ofCount": "cuenta",
  "method.ofClarity": "nitidez",
  "method.ofWeight": "peso",
  "method.figure": "{name}: <number>{value}</number>",
  "method.figureOfChange": "<change></change>: <number>{value}</number>",
  "method.labels": "Números",
  "method.labelsShown": "{name}, cada color en un gris propio.",
  "method.traced":
    "Cada color por su número, mostrado en gris; y las líneas donde se tocan dos, discontinuas donde el límite no es nítido.",
  "method.marked": "La banda sigue {focus}.",
  "method.afarFigure":
    "A {distance, plural, one {# altura de bandera} other {# alturas de bandera}}: <number>{clarity}</number>",
  "method.afarShown": "{name} a {distance, plural, one {# altura de bandera} other {# alturas de bandera}}.",
  "method.afarNote": "Ampliado, con la nitidez de lo que debe verse.",
  "method.cloth": "{name}: luminancia, y reflectancia en tanto por ciento",
  "method.sumTitle": "Nitidez de {name} como suma: {clarity}",
  "method.sumBar": "{names}: {share} del peso total, cuenta {counts}",
  "method.sumAll": "{bars}.",
  "method.sumNote":
    "Un área por límite, tan ancha como su peso y llena en la medida en que cuenta: {clarity} en total.",
  "method.changeTo": "<a>El cambio en {name}</a>: anillo antes, punto después",
  "method.visionNote": "La nitidez de la bandera entera.",
  "method.visionShown": "{heading}: {looks}.",
  "method.saidNote": "Lo que dice la página de <a>{name}</a>.",
  "method.optionNote": "El mejor cambio de cada color, con la nitidez que aporta.",
  "method.placedNote": "{name} en el censo, con sus vecinas y la nitidez de estas.",

  // methodbeyond: the steps of the method beyond one comparison. `em` is an emphasised term, `i` the title of a paper.
  "method.optionsText":
    "Cada color de más del 0,4 % de la bandera se sustituye, de uno en uno: por cada color de la paleta de la galería, por cada uno de los demás colores de la bandera, y por su <em>tono conservado</em>, el mismo tono tan aclarado u oscurecido que aporta {keptHue} de contraste con los vecinos de los que no se separa con nitidez. Ningún grado puede bajar por ello, y el color conserva su familia: el rosa no es rojo. Por debajo de ΔE*ab {departure} nada es un cambio, pues las banderas oficiales de una misma nación difieren otro tanto.",
  "method.optionsOrder":
    "El más nítido va primero; luego el más fuerte, la misma familia, la menor diferencia. Lo que funde un tercio del contorno de una figura no tiene puesto. Los <em>colores que cambiar primero</em> son como mucho los {mostFirst} cuyo mejor sustituto queda a menos de {firstWithin} puntos del mejor de todos, si este gana {leastGain}; sin tal ganancia, una bandera de {wholeClear} es nítida como está. Cuál se ve mejor lo dice el autor.",
  "method.optionsSource":
    "ΔE*ab {departure}: Melgosa y Gómez-Robledo, <i>Óptica Pura y Aplicada</i> 55(2), 2022, que lo proponen; leído el resumen. Claridad del tono conservado: <ottosson>Ottosson, 2020</ottosson>. Juicio nuestro: todas las demás cifras, y el orden.",
  "method.surveyText":
    "El <a>censo</a> mide cada bandera como es hoy, una vez cada una, por muchos estudios que tenga. La menos nítida va primero; la de un solo color, al final. Un mal puesto no dice que una bandera deba cambiar, ni uno bueno que sea buena.",
  "method.surveySource": "Juicio nuestro: el orden.",
  "method.likenessText":
    "Una bandera más nítida puede ser la de un vecino. Por eso cada rediseño se superpone a todas las demás banderas y rediseños que aquí se conocen, salvo su propio original y las demás propuestas para él. Ambos se dividen en {columns} por {rows} celdas de color medio, como tela, y la cifra es el ΔE00 medio de las celdas: 0 es la misma imagen, y una celda que falta a uno cuenta 100. La otra se prueba también en espejo y cabeza abajo. Por debajo de {threshold}, el estudio lo dice.",
  "method.likenessCare":
    "Los campos grandes cuentan mucho y las figuras pequeñas poco: una cifra pequeña es una razón para mirar, y no prueba cómo se llegó a ella. Los dibujos que solo se guardan para esto se nombran y no se muestran: su licencia no es nuestra.",
  "method.likenessSource":
    "Juicio nuestro: la cuadrícula, la media y {threshold}. De los 36 585 pares de una colección abierta, 144 están más cerca, 50 de ellos una misma bandera con dos nombres; la mitad pasa de 36.",
  "method.visionText":
    "Muchas personas tienen ojos sin una de las tres clases de conos. Recoloreamos ambos dibujos como los ven esos ojos, y en gris, y los medimos otra vez. El gris conserva cada contraste; ahí decimos, pues, cuánto distan los dos grises más cercanos.",
  "method.visionSource":
    "Protán, deután: Machado, Oliveira, Fernandes, <machado>2009</machado>, severidad 1, en luz lineal, lo que el artículo no dice claramente. Tritán, que ese modelo no alcanza: Brettel, Viénot, Mollon, 1997. Matrices leídas en implementaciones publicadas.",
  "method.cautionProposal":
    "Cada rediseño es una propuesta y no una bandera en uso, salvo que su decisión lo diga.",
  "method.cautionLaw":
    "Las leyes sobre banderas difieren. Siga las de su lugar antes de fabricar, modificar o izar nada de lo que se muestra aquí, y respete la licencia de cada dibujo.",
  "method.cautionEyes":
    "Las imágenes para otros ojos son aproximaciones, y no una prueba de la vista de nadie.",
  "method.cautionWorth": "El contraste no dice si una bandera es buena, qué significa ni de quién es.",
  "method.cautionDistance":
    "La distancia es un modelo: la bruma, el deslumbramiento y el viento acortan toda distancia.",
  "method.cautionCloth":
    "Las cifras son del dibujo a la luz del día. Los tintes difieren, y la tela se destiñe, se moja y se pliega.",

  // methodgrade: the steps of the method that decide a grade. `em` is an emphasised term, `i` the title of a paper.
  "method.reflectanceText":
    "Un número de pantalla dice cuánta luz da un color. Tomamos su luminancia, de 0 a 1, en luz lineal:",
  "method.reflectanceCloth":
    "La tela nunca es del todo negra ni del todo blanca, y según los números de pantalla dos colores oscuros parecen más fáciles de distinguir de lo que son. Por eso la luminancia se sitúa entre la tela más negra y la más blanca, en tanto por ciento:",
  "method.reflectanceRanges":
    "Los materiales de construcción van de {black} a {white}, más o menos; las pinturas de un fabricante, de {paintBlack} a {paintWhite}. Un grado que el intervalo más amplio cambiaría se marca <em>en el umbral</em>. Donde una ley fija la tela, una galería pone 0 y 100, y entonces {laws}.",
  "method.law": "{first} sobre {second} tiene un contraste del {contrast}, {grade}",
  "method.lawColour": "{colour} {reflectance}",
  "method.near": "En el umbral: tela de {black} a {white} (anillo) y de {paintBlack} a {paintWhite} (punto)",
  "method.reflectanceSource":
    "Luminancia: <wcag>WCAG 2.2</wcag>. sRGB: IEC 61966-2-1. Intervalos: páginas sobre materiales de construcción, la carta de un fabricante de pinturas; leyes: según las cuentan otros; todo de segunda mano. La recta de negro a blanco: sin fuente. Juicio nuestro: en el umbral.",
  "method.contrastText":
    "El contraste compara la luz que devuelven dos colores. Es del 0 % cuando ambos devuelven la misma, y mayor cuanto más se alejan:",
  "method.contrastTable": "Lo mínimo que necesitan las personas con baja visión",
  "method.contrastWeak": "menos del 30 %",
  "method.contrastSoft": "del 30 a menos del 45 %",
  "method.contrastClear": "del 45 a menos del 60 %",
  "method.contrastStrong": "60 % y más",
  "method.needsWeak": "por debajo de todo paso",
  "method.needsSoft": "grandes elementos de construcción",
  "method.needsClear": "objetos pequeños y sueltos: las figuras",
  "method.needsStrong": "objetos pequeños en dos colores",
  "method.contrastClose":
    "Una figura es un objeto pequeño y suelto; por eso un límite es nítido desde el 45 %. El ejemplo publicado con la fórmula, {reflectances}, tiene {published}; aquí {computed}.",
  "method.pairs": "Cómo resultan las parejas habituales; marcas en 30, 45 y 60 %",
  "method.pair": "Pareja",
  "method.pairContrast": "Contraste",
  "method.pairScale": "En una escala de 0 a 100 por ciento",
  "method.pairRatio": "Razón",
  "method.contrastSource":
    "Bowman y Sapolinski: AS 1428.1:2009, apéndice B; AS/NZS 1428.4.1, apéndice E; de segunda mano. El porcentaje no se compara con ninguna otra escala: Boon y otros, <i>Work</i> 70(4), <boon>2021</boon>. Juicio nuestro: que una figura es un objeto pequeño y suelto; los matices de las parejas. Qué parejas se leen con nitidez: práctica común, sin fuente.",
  "method.besideText":
    "Otras tres medidas acompañan al contraste, y ninguna decide. La <em>razón de contraste</em> de la web está hecha para pantallas: {first} sobre {second} supera su 3 a 1, y aun así nadie que mire banderas lo llama fácil de ver. <em>ΔE00</em> dice cuán distintos se ven dos colores, tono incluido. La tercera es la <a>regla de los esmaltes</a>.",
  "method.besidePair":
    "{first} / {second}: razón de contraste <number>{ratio}</number>, ΔE00 <number>{deltaE00}</number>, contraste <number>{contrast}</number>, {grade}",
  "method.besideSource":
    "WCAG 2.2, <ratio>razón</ratio> y <objects>1.4.11</objects>. Sharma, Wu, Dalal, <sharma>CIEDE2000</sharma>, 2005; sus 34 pares de prueba prueban este programa. Que el rojo sobre negro cuesta de ver: práctica común, sin fuente.",

  // methodsight: the steps of the method from a drawing to its lines. `em` is an emphasised term, `i` the title of a paper.
  "method.edgesText":
    "Dibujamos la bandera con {pixels} píxeles de alto, menos si es muy ancha, y numeramos sus colores. Trazamos la línea donde se tocan dos de ellos. Todas las líneas entre los mismos dos colores son un <em>límite</em>; su longitud se da en alturas de la bandera: a lo ancho de una de 2:3 es de 1,5.",
  "method.edgesLimits":
    "El borde de la bandera no es un límite. Una forma que se ve a menos de la mitad de su fuerza (opacidad 0,4) queda fuera; cualquier otra cuenta como opaca. Un límite de menos de {edge} de la longitud de todos se cita, pero nunca es el más débil ni mueve ningún veredicto.",
  "method.edgesSource":
    "Comprobado con banderas cuya geometría fija una ley: las partes coinciden en 0,2 puntos, las longitudes en 1 %, con puntas finas en 3 %. Juicio nuestro: el tamaño de la imagen, la mitad de la fuerza, {edge} de toda la longitud.",
  "method.distanceText":
    "Una bandera se hace para verse de lejos. Esta galería mide a {distance, plural, one {# altura de bandera} other {# alturas de bandera}}; desde ahí, la parte más fina que distingue un ojo, un minuto de arco, es {finest} de una altura de bandera. Las partes más finas se asignan a sus vecinas antes de trazar los límites: un contorno delgado desaparece y uno ancho queda. Una parte a menos del 10 % de ese límite da un aviso.",
  "method.distanceNone":
    "Esta galería mide el dibujo entero. A una distancia, que puede elegir, las partes demasiado finas para distinguirse pasan a sus vecinas.",
  "method.distanceFocus":
    "<em>Lo que debe verse</em> son las figuras: partes que no tocan ningún borde, con todo lo que encierran, y que llenan el 0,2 % de la bandera o más. Por encima del 35 % son un campo enmarcado, y miramos dentro; el hueco de un anillo no lo es. Un trozo con la décima parte de esa superficie es una <em>figura</em> propia. Los autores pueden nombrarla, y deben hacerlo donde una figura se confunde con un campo de su mismo color, pues no adivinamos. Una bandera sin figura no es peor por ello.",
  "method.distanceSame":
    "Un color a menos de {same} de otro más extenso (<a>ΔE00</a>) cuenta con él. Las partes de los colores son del dibujo entero.",
  "method.distanceSource":
    "Un minuto de arco: agudeza de 20/20, ISO 8596, de segunda mano. Es un modelo: una sola línea fuerte aún puede notarse. Juicio nuestro: la distancia y todos los porcentajes, ΔE00 {same}, la décima parte.",
  "method.lastingText":
    "A cada distancia preguntamos dos cosas. ¿Es nítido lo que debe verse? Sus propios límites tienen allí una <a>nitidez</a>. ¿Es bastante grande? Debe quedar al menos {left} de su superficie, y su trozo mayor debe abarcar {span} minutos de arco, como una letra que lee una agudeza de 20/20.",
  "method.lastingLast":
    "<em>Aguanta hasta</em> la última distancia a la que es bastante grande. Es cuestión de tamaño, que ningún cambio de color mueve. Las imágenes están borrosas como las ve el ojo; de ellas no se saca ninguna cifra.",
  "method.lastingTable": "Qué hace una distancia con una bandera, en tanto por ciento de su altura",
  "method.lastingFrom": "Alturas de bandera",
  "method.lastingFinest": "Parte más fina",
  "method.lastingBlur": "Borrosidad",
  "method.lastingSource":
    "{span} minutos de arco: ISO 8596, de segunda mano. Juicio nuestro: {left}, y pedirlo al trozo mayor. Borrosidad, 0,5 minutos de arco de desviación típica: Levi y otros, <i>Vision Research</i> 30, 1990, <levi>resumen</levi>; una gaussiana no es una lente: Strasburger y otros, <strasburger>2018</strasburger>.",

  // methodterm: the definitions of the method. `em` is an emphasised term, `i` the title of a book; `move` stands for an
  "method.numbersText":
    "Un límite cuenta en la medida en que su contraste se acerca a {clear}, y por entero desde ahí: 30 / 45 = 67 %. La nitidez es la media de todos los límites, cada uno ponderado por su longitud y, otra vez, por la parte que bordea lo que debe verse:",
  "method.numbersClose":
    "Así, una bandera con todos los límites nítidos tiene el 100 %, y un límite débil largo cuesta más que uno corto. Una bandera de un solo color no tiene límite ni nitidez.",
  "method.numbersSource": "Juicio nuestro: la suma, y que cuente doble lo que debe verse.",
  "method.strength": "Fuerza",
  "method.strengthMeans": "la misma suma hasta {strong}; ordena lo que la nitidez deja a la par",
  "method.weakest": "Límite más débil",
  "method.weakestMeans": "el límite de menor contraste, sin los más cortos",
  "method.clearShare": "Parte de límites nítidos",
  "method.clearShareMeans": "la parte de longitud nítida o fuerte; salta en un paso, así que no decide nada",
  "method.outcomesText": "A un límite, un cambio le hace esto:",
  "method.gained": "Ganado, perdido",
  "method.gainedMeans":
    "se vuelve nítido, o deja de serlo, y se mueve {contrastStep} puntos o más: <move></move>",
  "method.better": "Mejor, peor",
  "method.betterMeans":
    "se mueve otro tanto sin volverse nítido ni dejar de serlo: <move></move>; nada cuenta por encima de {strong}",
  "method.same": "Igual",
  "method.sameMeans": "se mueve menos: <move></move>",
  "method.merged": "Fundido",
  "method.mergedMeans": "sus dos colores se acercan tanto que cuentan como uno",
  "method.parted": "Separado",
  "method.partedMeans": "es nuevo, porque solo se cambió una parte de un color",
  "method.outcomesPrice":
    "El <em>precio</em> de un cambio son los límites perdidos, peores, fundidos, o separados y no nítidos. El veredicto va según la nitidez en tantos por ciento enteros y, a la par, según la fuerza:",
  "method.clearer": "Más nítido",
  "method.clearerMeans":
    "sube {leastMove, plural, one {# punto} other {# puntos}} o más, sin precio: <move></move>",
  "method.atAPrice": "Más nítido, a un precio",
  "method.atAPriceMeans": "sube {largeMove} puntos o más, y se nombra el precio: <move></move>",
  "method.lessClear": "Menos nítido",
  "method.lessClearMeans":
    "baja {largeMove} puntos o más: <move></move>; o {leastMove} sin nada ganado, mejor, ni separado y nítido",
  "method.mixed": "Desigual",
  "method.mixedMeans": "ganancias y un precio, la nitidez entre medias: <move></move>",
  "method.noGain": "Sin ganancia",
  "method.noGainMeans": "todo límite queda igual, o no se cumple nada de lo anterior",
  "method.outcomesSource":
    "Juicio nuestro: los pasos de {contrastStep}, {leastMove} y {largeMove} puntos. Un límite fundido conserva su longitud, pues las formas quedan, y cuenta con contraste 0 %. Las cifras que se muestran están redondeadas; las que deciden, no.",
  "method.wordsText":
    "Las frases se componen por reglas, solo con las cifras y los nombres de la página. Hablan primero de lo que debe verse, y de los límites débiles antes que de los fuertes. Un <em>fileteado</em> es una línea estrecha de un tercer color que separa otros dos; mientras se ve, cuentan sus propios límites, y las palabras dicen qué hace por la pareja.",
  "method.wordsSource":
    "Qué es un fileteado: práctica común, sin fuente. Juicio nuestro, en qué lo reconocemos: una anchura media de menos del 8 % de la altura de la bandera, dos lados iguales en longitud salvo un tercio, entre colores que se tocan como mucho en una quinta parte.",
  "method.hue": "Solo el tono",
  "method.hueMeans":
    "débil con un ΔE00 de 20 o más, en gris menos de 10: desaparece al anochecer, en la impresión en gris y para muchos ojos daltónicos",
  "method.tincture": "Esmalte",
  "method.tinctureMeans":
    "ni metal (blanco, amarillo) sobre metal, ni color (rojo, azul, verde, negro, morado) sobre color. Exentos: las partes del campo que llegan ambas al borde, los fileteados; también los forros, que aquí no se reconocen",
  "method.colours": "Colores",
  "method.coloursMeans":
    "los de más del 0,5 % de la superficie, los matices parecidos como uno; las guías aconsejan dos o tres",
  "method.factsSource":
    "A. C. Fox-Davies, <i>A Complete Guide to Heraldry</i>, 1909, capítulo VII; exenciones: práctica común, sin fuente. <good>Good Flag, Bad Flag</good>, North American Vexillological Association, 2006, tercer principio; <i>Guiding Principles of Flag Design</i>, Joint Commission on Vexillographic Principles, 2014, 3.1. Juicio nuestro: solo el tono, el 0,5 %.",

  // metric: the measures of an edge.
  "metric.contrastRatio": "Razón de contraste",
  "metric.deltaE00": "Diferencia de color, ΔE00",
  "metric.hueOnly": "Solo difiere el tono",
  "metric.tincture": "Regla de los esmaltes",
  "metric.tinctureMeans": "ni metal sobre metal, ni color sobre color",
  "metric.yes": "sí",
  "metric.no": "no",
  "metric.bothMetals": "metal sobre metal",
  "metric.bothColours": "color sobre color",
  "metric.noObjection": "no va en contra",

  // move: from one value to another.
  "move.to": "a",
  "move.row": "{name}: {before} → {after}",

  // moved: pages at addresses whose own page has gone; a heading, and what stands below it.
  "moved.moved": "Esta página se ha trasladado",
  "moved.movedTo": "Está ahora en otra dirección.",
  "moved.near": "Esta página ya no está aquí",
  "moved.nearTo": "Lo más cercano:",
  "moved.edge": "Este límite ya no está en el estudio",
  "moved.edgeTo": "Los colores del dibujo han cambiado desde entonces. El límite de colores más cercanos:",
  "moved.withdrawn": "Retirado",
  "moved.withdrawnHow": "Lo que había en esta dirección ya no se publica.",
  "moved.absent": "Este estudio no se muestra por ahora",
  "moved.absentHow": "Está en la carpeta de la galería y volverá a esta dirección.",
  "moved.claimed": "Este estudio tiene otra dirección",
  "moved.claimedBy": "Más de un estudio dice haber estado aquí:",
  "moved.claimedByHidden":
    "Más de un estudio dice haber estado aquí, y al menos uno de ellos no se muestra por ahora. Los que se muestran:",
  "moved.lastGood":
    "Este estudio no pudo construirse con lo que hay ahora en su carpeta. Esta es su última página buena.",

  // near: whether a redesign could be mistaken for another flag.
  "near.beside": "Junto a las banderas que le son más cercanas",
  "near.hidden": "{name}, no se muestra aquí",
  "near.scale":
    "ΔE00 medio en toda la bandera, como tela: 0 es la misma imagen. <how>Cómo se mide el parecido</how>",
  "near.redesign": "el rediseño «{study}»",

  // number: what stands where there is no number.
  "number.noEdges": "sin límites",
  "number.move": "de {was} a {is}",
  "number.noEmblem": "no se halló emblema",

  // options: other single changes of a flag.
  "options.caption": "El mejor sustituto de cada color",
  "options.byColour": "Lo mejor para cada color",
  "options.all": "Todos a la vez",
  "options.how":
    "Cada color de la bandera se prueba con la paleta, con los demás colores de la bandera y con el matiz nítido más cercano de su propio tono. Van por sus cifras; cuál queda mejor lo dice el autor. <how>Cómo se clasifican los cambios</how>",
  "options.tried": "También probados por el autor",
  "options.changed": "Color cambiado",
  "options.best": "Mejor sustituto",
  "options.ofFocus": "De lo que debe verse",
  "options.worse": "Qué empeora",
  "options.share": "{share} de la bandera",
  "options.none": "Ninguno que deje a cada figura su contorno.",
  "options.bestLabel": "El mejor:",
  "options.worseLabel": "Empeora:",
  "options.nothing": "Nada.",
  "options.beside": "junto a <study>{title}</study>",
  "options.title": "Otros cambios de un color",
  "options.titleOf": "Otros cambios de un color, {study}",
  "options.description": "Todo otro cambio de un color junto a {title}, medido.",
  "options.standing": "Este estudio: {standing}",
  "options.whole": "El original tiene una nitidez del {clarity}: ningún cambio puede aumentarla.",
  "options.clearest": "El más nítido, {was} a {is}, llega al {clarity}.",
  "options.clearestTried": "El más nítido, {was} a {is}, probado por el autor, llega al {clarity}.",
  "options.clearestTriedInPart":
    "El más nítido, {was} a {is} en {part}, probado por el autor, llega al {clarity}.",
  "options.clearerTried": "Probado por el autor, {is} en lugar de {was} llega al {clarity}.",
  "options.clearerTriedInPart": "Probado por el autor, {is} en lugar de {was} en {part} llega al {clarity}.",
  "options.onePart": "una parte",
  "options.noneLevel": "Ningún cambio ayuda; tan nítidos como hoy:",
  "options.noneNearest": "Ningún cambio ayuda; lo más cercano:",
  "options.triedHas": "{name}, probado por el autor, tiene {clarity}",
  "options.option": "Variante",
  "options.triedAlt": "La bandera con {is} en lugar de {was}",
  "options.triedAltInPart": "La bandera con {is} en lugar de {was} en {part}",
  "options.changeInPart": "{before} pasa a {after} en {part}.",
  "options.figure": "Nitidez {clarity}",
  "options.figureAndFocus": "Nitidez {clarity}, de lo que debe verse {focus}",
  "options.strengthRises":
    "la nitidez se mantiene, y la fuerza, lo que los límites pasan de nítidos, sube de {was} a {is}",
  "options.strengthFalls":
    "la nitidez se mantiene, y la fuerza, lo que los límites pasan de nítidos, baja de {was} a {is}",
  "options.verdict": "{verdict}.",
  "options.verdictWhy": "{verdict}: {why}.",

  // otherchange: other single changes of a flag, which colour to change first, and what was not tried.
  "otherChange.another": "otro {name}",
  "otherChange.equal": "{count, plural, one {{names} da lo mismo} other {{names} dan lo mismo}}",
  "otherChange.equalShort": "también {names}",
  "otherChange.others": "{count, plural, one {# más} other {# más}}",
  "otherChange.lost": "Más difícil de ver junto a {names}.",
  "otherChange.worse": "Menos nítido junto a {names}.",
  "otherChange.merged": "Un solo color con {names}.",
  "otherChange.outlineMerges": "Se funde {share} del contorno.",
  "otherChange.confusable": "Puede tomarse por un color de la bandera: {names}.",
  "otherChange.confused": "Los ojos {sights} lo toman por {name}.",
  "otherChange.protan": "protanes",
  "otherChange.deutan": "deutanes",
  "otherChange.tritan": "tritanes",
  "otherChange.fromTo": "{before} a {after}",
  "otherChange.unranked":
    "{count, plural, one {Sin puesto: {changes}; fundiría un tercio o más del contorno de una figura.} other {Sin puesto: {changes}; cada uno fundiría un tercio o más del contorno de una figura.}}",
  "otherChange.place":
    "{clearer, plural, =0 {Ninguno de {total} cambios de un color es más nítido.} one {# de {total} cambios de un color es más nítido.} other {# de {total} cambios de un color son más nítidos.}}",
  "otherChange.noneTried": "No se pudo probar ninguno de los colores.",
  "otherChange.allMerge": "Todo cambio probado funde un tercio o más del contorno de una figura.",
  "otherChange.clear": "La bandera es nítida como está, con una nitidez del {clarity}.",
  "otherChange.clearAndNone":
    "La bandera es nítida como está, con una nitidez del {clarity}: ningún cambio de un color aporta cinco puntos más.",
  "otherChange.none":
    "La bandera tiene una nitidez del {clarity}, y ningún cambio de un color aporta cinco puntos más.",
  "otherChange.detail": "La bandera en conjunto es nítida, con {clarity}; solo gana un detalle.",
  "otherChange.first":
    "Que cambiar primero: {colour} ({share} de la bandera). Con {best} en su lugar, la nitidez sube de {from} a {to}.",
  "otherChange.firstAlike": "{best} en lugar de {colours}, o de {last}, sube la nitidez de {from} a {to}.",
  "otherChange.firstOfSeveral": "Que cambiar primero: {colours} o {last}; {moves}.",
  "otherChange.shareFirst": "{colour} ({share} de la bandera)",
  "otherChange.share": "{colour} ({share})",
  "otherChange.moveFirst": "con {best} por {colour} la nitidez sube de {from} a {to}",
  "otherChange.move": "con {best} por {colour}, a {to}",
  "otherChange.mostGained":
    "Donde más se gana es donde se tocan {colour} y {other} (contraste {contrast} hoy).",
  "otherChange.uneven": "Color desigual, por eso sin probar: {names}.",
  "otherChange.unseen":
    "{distance, plural, one {No se ve a # altura de bandera, por eso sin probar: {names}.} other {No se ve a # alturas de bandera, por eso sin probar: {names}.}}",
  "otherChange.shared":
    "Se ve también translúcido, en un degradado o en un motivo, que las cifras dejan como están: {names}.",
  "otherChange.largest":
    "{all, plural, one {# color} other {# colores}}: solo {tried, plural, one {se probó el más extenso} other {se probaron los # más extensos}}, con los colores de los demás.",
  "otherChange.palette":
    "{all, plural, one {La paleta tiene # color} other {La paleta tiene # colores}}: {tried, plural, one {se probó el primero.} other {se probaron los # primeros.}}",

  // outcome: what becomes of an edge, as a word in tables.
  "outcome.gained": "ganado",
  "outcome.lost": "perdido",
  "outcome.better": "mejor",
  "outcome.worse": "peor",
  "outcome.same": "igual",
  "outcome.merged": "fundido",
  "outcome.parted": "separado",

  // ownpage: what stands around the pages that a gallery writes itself.
  "ownPage.pages": "Páginas",
  "ownPage.pagesOf": "Páginas de {gallery}.",
  "ownPage.beside": "Páginas vecinas",
  "ownPage.next": "Sigue: <a>{title}</a>",

  // paging: the ways between the pages of a long list.
  "paging.ways": "Páginas de esta lista",
  "paging.place": "Página {number} de {count}",
  "paging.title": "{title}, página {number} de {count}",
  "paging.onward": "{place}. <next>siguiente</next>, <last>última</last>",
  "paging.both":
    "{place}. <first>Primera</first>, <previous>anterior</previous>, <next>siguiente</next>, <last>última</last>",
  "paging.back": "{place}. <first>Primera</first>, <previous>anterior</previous>",

  // pair: both flags of a study, and what swaps them.
  "pair.swap": "Alternar en el sitio",
  "pair.both": "Mostrar las dos",
  "pair.pressFlag": "Pulse una bandera",
  "pair.orKey": "o una tecla de flecha, o",
  "pair.pressKey": "Pulse una tecla de flecha, o",
  "pair.bothShown": "Se muestran las dos banderas",
  "pair.shownAlone": "{name}, a solas",
  "pair.split": "Mitad original, mitad rediseño",

  // part: the page by which readers propose a study, with the words of its script and of the letter.
  "part.link": "Proponer un estudio propio",
  "part.title": "Proponer un estudio",
  "part.description":
    "Cómo proponer a esta galería un estudio de rediseño: dos archivos, y una carta con la que enviarlos.",
  "part.lede":
    "Un estudio es una carpeta con dos archivos: el dibujo de una bandera y un texto que nombra un cambio de color y lo defiende. No hace falta cuenta ni programa para escribirlo.",
  "part.files": "Los dos archivos",
  "part.drawing":
    "La bandera como es, dibujada en SVG, 512 KB como mucho. Las imágenes de píxeles y las fotografías no se pueden recolorear.",
  "part.textFile": "Texto simple: qué cambia y por qué.",
  "part.study":
    "Entre las dos líneas de guiones van el título, el color que se sustituye y el que ocupa su lugar; debajo, sus razones.",
  "part.credit":
    "Si el dibujo no es suyo, diga de quién es y con qué licencia, en una línea como esta, encima de la segunda línea de guiones:",
  "part.template": "El texto",
  "part.sampleTitle": "Una rueda más clara",
  "part.sampleFlag": "La bandera del transbordador",
  "part.sampleWhy": "Por qué este cambio, qué no se veía antes, y qué cuesta.",
  "part.send": "Enviarlo",
  "part.sendByMail": "Adjunte el dibujo a la carta: ninguna página puede hacerlo por usted.",
  "part.sendAtForm": "Adjunte allí el dibujo si se aceptan archivos, o diga dónde se encuentra.",
  "part.letter": "Escribir la carta",
  "part.byMail": "por correo a {address}, con el texto ya puesto.",
  "part.atForm": "en {host}, con el texto ya puesto.",
  "part.atFormEmpty": "en {host}; copie antes el texto.",
  "part.subject": "Un estudio para {gallery}",
  "part.try": "Probar un cambio",
  "part.private": "El dibujo se queda en su ordenador: esta página no sube nada ni recuerda nada.",
  "part.choose": "Elegir un dibujo (SVG)",
  "part.tooBig": "Este archivo pasa de 512 KB, lo más que puede tener un dibujo.",
  "part.broken":
    "Este archivo no se puede leer como dibujo SVG. Guárdelo de nuevo como SVG simple y elija ese archivo.",
  "part.endless": "Este dibujo es demasiado grande para mostrarse aquí, o se refiere a sí mismo sin fin.",
  "part.colourless": "No se halló en este dibujo ningún color que sustituir.",
  "part.chosen": "El dibujo se muestra abajo, con sus colores.",
  "part.replace": "Sustituir",
  "part.palette": "por un color de la galería",
  "part.typed": "o por uno que usted escriba",
  "part.unknown": "Este no es un color que tape lo que hay detrás. Escriba, por ejemplo, #f4c430.",
  "part.same": "Este es el color que ya está.",
  "part.before": "Antes",
  "part.after": "Después",
  "part.beforeShown": "El dibujo como es",
  "part.afterShown": "El dibujo con el cambio",
  "part.pairs": "Contraste de sus colores",
  "part.pair": "Pareja",
  "part.rough":
    "Son valores aproximados de cada pareja de colores, se toquen o no. La galería mide los propios límites, con sus longitudes, y mira a distancia; valen sus cifras.",
  "part.more": "Aquí solo se comparan los doce primeros colores.",
  "part.text": "Su texto",
  "part.textTitle": "Título del estudio",
  "part.textFlag": "Cómo se llama la bandera",
  "part.textAuthor": "Su nombre, como deba publicarse",
  "part.textWhy": "Por qué este cambio",
  "part.untitled": "Dé al estudio un título y diga por qué: entonces podrá enviarse el texto de abajo.",
  "part.ready": "Guarde esto como study.md junto al dibujo, o envíelo tal cual.",
  "part.copy": "Copiar el texto",
  "part.copied": "Copiado.",
  "part.refused": "El navegador no lo permitió; seleccione el texto y cópielo.",
  "part.unscripted":
    "Con scripts, esta página muestra un dibujo de su ordenador con el cambio y escribe el texto por usted. Sin ellos, copie el texto de arriba y complételo.",

  // picture: link pictures, which sites and chats show when someone posts a link; and records for search.
  "picture.redesign": "Rediseño · estudio no oficial",
  "picture.above": "Arriba: {half}",
  "picture.below": "Abajo: {half}",
  "picture.clarity": "{verdict}: nitidez",
  "picture.oneColour": "Un solo color",
  "picture.contrast": "{outcome}: contraste de este límite",
  "picture.alt":
    "Una bandera {split}, mitad original y mitad rediseño. {title}. {measure} {move}. Estudio no oficial.",
  "picture.altOf":
    "Una bandera {split}, mitad original y mitad rediseño. {title} ({of}). {measure} {move}. Estudio no oficial.",
  "picture.perPale": "partida",
  "picture.perBend": "tronchada",
  "picture.perBendSinister": "tajada",
  "picture.perFess": "cortada",
  "picture.genre": "Estudio no oficial de rediseño de bandera",
  "picture.within": "{title}, en {study}",

  // plate: what a flag that is shown is called.
  "plate.original": "Original",
  "plate.redesign": "Rediseño",
  "plate.clarity": "nitidez <number>{clarity}</number>",
  "plate.contrast": "contraste <number>{contrast}</number>",
  "plate.asItIs": "La bandera como es",
  "plate.alt": "{label}: {paints}",

  // price: the edges that a change makes worse, as clauses in a list.
  "price.falls":
    "{one} sobre {other} tiene ahora un contraste del {contrast} ({grade}), cuando tenía un {wasContrast} ({wasGrade})",
  "price.fallsRenamed":
    "{newOne} sobre {newOther} tiene un contraste del {contrast} ({grade}), donde {one} sobre {other} tenía un {wasContrast} ({wasGrade})",
  "price.graded": "un {contrast} ({grade})",
  "price.more": "{count, plural, one {# más} other {# más}}",

  // proposal: studies among others, and what others said of them.
  "proposal.none": "aún sin estudio",
  "proposal.only": "una propuesta para esta bandera",
  "proposal.count":
    "{count, plural, =2 {dos propuestas para una bandera} =3 {tres propuestas para una bandera} =4 {cuatro propuestas para una bandera} =5 {cinco propuestas para una bandera} =6 {seis propuestas para una bandera} =7 {siete propuestas para una bandera} =8 {ocho propuestas para una bandera} =9 {nueve propuestas para una bandera} =10 {diez propuestas para una bandera} one {# propuesta para una bandera} other {# propuestas para una bandera}}",
  "proposal.countShown": "{count}, se muestran las {shown} primeras",
  "proposal.oneOf":
    "{count, plural, =2 {una de dos propuestas} =3 {una de tres propuestas} =4 {una de cuatro propuestas} =5 {una de cinco propuestas} =6 {una de seis propuestas} =7 {una de siete propuestas} =8 {una de ocho propuestas} =9 {una de nueve propuestas} =10 {una de diez propuestas} one {una de # propuestas} other {una de # propuestas}}",
  "proposal.studies": "{count, plural, one {# estudio} other {# estudios}}",
  "proposal.flags": "{count, plural, one {# bandera sin estudio} other {# banderas sin estudio}}",
  "proposal.answer":
    "{says, select, agree {{by} está de acuerdo} disagree {{by} no está de acuerdo} doubt {{by} duda} other {{by} pregunta}}",
  "proposal.authorReplies": "Responde el autor",
  "proposal.replies": "Responde {by}",
  "proposal.authorRepliesOn": "Responde el autor, {date}",
  "proposal.repliesOn": "Responde {by}, {date}",
  "proposal.decided":
    "{status, select, adopted {Adoptado el {date}.} declined {Rechazado el {date}.} other {Retirado el {date}.}}",
  "proposal.decidedBy":
    "{status, select, adopted {Adoptado el {date}: {by}.} declined {Rechazado el {date}: {by}.} other {Retirado el {date}: {by}.}}",
  "proposal.decidedVotes":
    "{status, select, adopted {Adoptado el {date}, {votes}.} declined {Rechazado el {date}, {votes}.} other {Retirado el {date}, {votes}.}}",
  "proposal.decidedByVotes":
    "{status, select, adopted {Adoptado el {date}: {by}, {votes}.} declined {Rechazado el {date}: {by}, {votes}.} other {Retirado el {date}: {by}, {votes}.}}",
  "proposal.for": "{count, plural, one {# a favor} other {# a favor}}",
  "proposal.against": "{count, plural, one {# en contra} other {# en contra}}",
  "proposal.abstained": "{count, plural, one {# abstención} other {# abstenciones}}",

  // question: questions to a class of what a change does, with answers for the teacher.
  "question.hardest":
    "Mire el original desde el otro extremo de la sala. ¿Qué dos colores que se tocan son los más difíciles de distinguir?",
  "question.hardestAnswer": "{names}: contraste {contrast}, {grade}.",
  "question.hardestIsClear": "{names}: contraste {contrast}, {grade}. Incluso ese es nítido.",
  "question.lines": "¿Cuántas líneas entre dos colores tiene el rediseño?",
  "question.linesAnswer": "Ninguna que cuente: los colores que se tocaban se han vuelto uno.",
  "question.grade":
    "En el rediseño, {one} junto a {other} tiene un contraste del {contrast}. ¿Qué grado es: débil, suave, nítido o fuerte?",
  "question.weak": "Débil: menos de {soft}.",
  "question.soft": "Suave: de {soft} a menos de {clear}.",
  "question.clear": "Nítido: de {clear} a menos de {strong}.",
  "question.strong": "Fuerte: {strong} y más.",
  "question.price":
    "El cambio tiene un precio, dicho arriba. ¿Lo pagaría usted? ¿O qué color del original cambiaría, y por cuál, para que fuera aún más nítido?",
  "question.priceAnswer": "Si el precio es demasiado alto no lo dice ninguna cifra: pida razones.",
  "question.noGain": "{verdict} ¿Puede haber una razón para hacer el cambio de todos modos?",
  "question.noGainAnswer":
    "No en estas cifras. La razón ha de venir de otra parte: qué significan los colores, quién más los lleva, o el gusto.",
  "question.gain":
    "La nitidez era del {before} y es del {after} tras el cambio. ¿Dónde crece más el contraste?",
  "question.gainOfOne":
    "La nitidez era del {before} y es del {after} tras el cambio. ¿Qué dos colores marcaron la diferencia, y en cuánto?",
  "question.gainAnswer": "{was}, de un contraste del {before} ({wasGrade}) a uno del {after} ({grade}).",
  "question.gainAnswerRenamed":
    "{was}, de un contraste del {before} ({wasGrade}) a uno del {after} ({grade}) como {is}.",
  "question.area": "Adivine: ¿qué color cubre más del original, y cuánto?",
  "question.areaAnswer": "{name}: {share} de la bandera.",
  "question.more": "¿Qué añadiría para que esta bandera se distinga de otras al otro lado de la sala?",
  "question.moreAnswer":
    "Hay muchas respuestas. Lo que se añada ha de ser mucho más claro o mucho más oscuro que {name}.",
  "question.field": "el campo",

  // record: the record at the end of a study.
  "record.onlyIn": "solo en {part} (<selector></selector>)",
  "record.source": "Fuente",
  "record.sourceIs": "Fuente: {source}",
  "record.licence": "Licencia: {licence}.",
  "record.uncertain": "Donde las cifras son menos seguras",
  "record.colours": "Colores",
  "record.drawings": "Dibujos y datos",
  "record.tags": "Etiquetas",
  "record.history": "Historial",
  "record.heading": "Para consulta",
  "record.tincture": "Según la regla de los esmaltes",
  "record.facts": "Datos",
  "record.reflectanceAndTincture": "Reflectancia y esmalte de cada uno",
  "record.reflectance": "Reflectancia de cada uno",
  "record.noSource": "El estudio no nombra fuente del dibujo original.",
  "record.maker":
    "Adoptado: una <sheet>hoja para fabricantes</sheet>, con proporciones, construcción y colores.",
  "record.lesson": "Imágenes de cada paso, para diapositivas y grabaciones",
  "record.originalSvg": "Original, SVG",
  "record.redesignSvg": "Rediseño, SVG",
  "record.originalPng": "Original, PNG",
  "record.redesignPng": "Rediseño, PNG",
  "record.edgesCsv": "Todos los límites, CSV",
  "record.json": "Todo lo medido, JSON",
  "record.selectedPart": "la parte elegida",
  "record.drawing": "El dibujo",
  "record.by": "{title}, de {author}",
  "record.rights": "{credit}, {licence}",
  "record.unofficial":
    "El rediseño es un estudio no oficial: una propuesta para discutir, no una bandera en uso.",
  "record.unofficialBy":
    "El rediseño es un estudio no oficial publicado por {society}: una propuesta para discutir, no una bandera en uso.",

  // refer: how to cite a study, and the stamp of its state.
  "refer.heading": "Citar este estudio",
  "refer.copyText": "Copiar el texto",
  "refer.copyBibtex": "Copiar el BibTeX",
  "refer.copied": "Copiado.",
  "refer.notCopied": "El navegador no lo permitió.",
  "refer.bibtexAndStamp": "BibTeX, y para qué sirve el sello",
  "refer.stamp":
    "Sello <stamp></stamp>: una marca breve del dibujo, del cambio y de la medida. Por <link>una dirección que lo lleva</link>, un lector posterior sabe si ha cambiado desde entonces lo que se mide. Las palabras de un estudio pueden cambiar sin él.",
  "refer.changed":
    "<strong>Este estudio ha cambiado desde entonces.</strong> El enlace por el que vino era de un estado anterior, con el sello <came></came>. Lo que se muestra ahora lleva el sello <now></now>.",
  "refer.study": "estudio no oficial de rediseño de bandera",
  "refer.edge": "un límite de un estudio no oficial de rediseño de bandera",
  "refer.series": "serie de estudios no oficiales de rediseño de banderas",
  "refer.cited": "«{title}», {kind}. {gallery}. {address}",
  "refer.citedOn": "«{title}», {kind}. {gallery}, {date}. {address}",
  "refer.note": "{kind}, {gallery}",
  "refer.noteStamped": "{kind}, {gallery}, sello {stamp}",

  // ruler: the contrast ruler.
  "ruler.caption":
    "El contraste de dos colores que se tocan: un anillo para el original, un punto para el rediseño; trazo grueso para un límite largo.",
  "ruler.fallsNote": "Trazo hueco donde el contraste baja.",
  "ruler.crossesNote": "Ganado: ahora nítido y antes no; perdido: al revés.",
  "ruler.mergedNote": "Una cruz donde dos colores se vuelven uno.",
  "ruler.outlineNote": "El contorno es el de lo que debe verse, que cuenta doble.",
  "ruler.nearNote": "En el umbral: sobre otra tela el grado sería otro.",
  "ruler.hueNote":
    "Solo por el tono: los dos difieren en el tono y apenas en la claridad, así que se borran al anochecer y en gris.",
  "ruler.ladderNote":
    "Al lado, cuánta luz devuelve la tela de cada color: dos a la misma altura son difíciles de distinguir.",
  "ruler.edge": "Límite",
  "ruler.contrast": "Contraste, del original al rediseño",
  "ruler.outcome": "Resultado",
  "ruler.guess": "Su estimación",
  "ruler.title": "Regla de contraste",
  "ruler.same":
    "{count, plural, one {# límite que queda como estaba} other {# límites que quedan como estaban}}",
  "ruler.moreMoved": "{count, plural, one {# límite más que cambia} other {# límites más que cambian}}",
  "ruler.moreMovedAndSame": "{moved}, y {same}",
  "ruler.row": "{edge}, {extent}: contraste {contrast}, {grades}",

  // rules: what stands around the rules for studies and drawings, which are English in every language.
  "rules.title": "Reglas de estudios y dibujos",
  "rules.description":
    "Qué significa cada mensaje sobre un estudio o un dibujo, con un ejemplo erróneo y uno correcto.",
  "rules.lede":
    "Al comprobar un estudio, cada fallo se señala con el nombre de una regla. Aquí {count, plural, one {está la # regla} other {están las # reglas}}: qué significa cada una, por qué existe, y un ejemplo erróneo junto a uno correcto. Están en inglés, como los mensajes.",
  "rules.note":
    "Cada una es un error, que deja el estudio fuera de la galería hasta que se corrija, salvo que se marque como aviso, con el que se queda. Los ejemplos en recuadro son lo que se escribe, y están probados: el erróneo incumple su regla y ninguna otra; el correcto, ninguna.",
  "rules.find": "Buscar reglas con estas palabras",
  "rules.count": "{count, plural, one {# regla} other {# reglas}}",
  "rules.found": "{found} de {count, plural, one {# regla} other {# reglas}}",
  "rules.warning": "Aviso",
  "rules.link": "Enlace a esta regla",
  "rules.wrong": "Erróneo",
  "rules.wrongIn": "Erróneo, en {file}",
  "rules.wrongInFolder": "Erróneo, en la carpeta de contenido",
  "rules.right": "Correcto",
  "rules.rightIn": "Correcto, en {file}",
  "rules.rightInFolder": "Correcto, en la carpeta de contenido",
  "rules.leaveOut": "Omitirlo.",

  // said: what others said of a study.
  "said.heading": "Qué dicen otros",
  "said.about": "sobre <about>{name}</about>",
  "said.more": "Más en {host}",

  // seen: both flags as four kinds of sight have them.
  "seen.title": "Visto de otro modo",
  "seen.caption":
    "Primero el original, luego el rediseño: aproximaciones de lo que los lectores daltónicos, y la impresión en gris, hacen de ambas banderas. No son una prueba de la vista de nadie. Entre los grises se indica la diferencia de color, ΔE00: cuanto mayor, más fáciles de distinguir.",
  "seen.greys": "diferencia de los dos grises más cercanos",
  "seen.clarity": "nitidez de la bandera entera",
  "seen.figure": "{heading}: {measure} {before} → {after}.",
  "seen.looks": "{name} parece {seen}",
  "seen.kept": "{names} {count, plural, one {conserva su nombre} other {conservan sus nombres}}",
  "seen.inGrey": "{name} en gris",
  "seen.byProtan": "{name} visto por ojos protanes",
  "seen.byDeutan": "{name} visto por ojos deutanes",
  "seen.byTritan": "{name} visto por ojos tritanes",

  // seriespage: the page of a series, and where a study stands in one.
  "seriesPage.count": "Una serie: {entries}",
  "seriesPage.description": "Una serie: {entries}.",
  "seriesPage.show": "Mostrar paso a paso",
  "seriesPage.sheet": "Imprimir para una clase",
  "seriesPage.vote": "Votar",
  "seriesPage.step": "Número {number}: {title}",
  "seriesPage.today": "Como son hoy",
  "seriesPage.gain": "La nitidez, estudio a estudio",
  "seriesPage.cite": "Citar esta serie",
  "seriesPage.unofficial": "Los rediseños son estudios no oficiales.",
  "seriesPage.bare": "Sin estudio",
  "seriesPage.ask": "¿Qué cambiaría usted aquí?",
  "seriesPage.series": "Series",
  "seriesPage.firstShown": "{entries}, se muestran los {number} primeros",
  "seriesPage.places": "En series",
  "seriesPage.place": "{number} de {count} en <a>{title}</a>",
  "seriesPage.before": "Antes: <a>{title}</a>",
  "seriesPage.next": "Después: <a>{title}</a>",

  // sheet: sheets for a class, printed on paper: a handout, a worksheet and the answers for the teacher.
  "sheet.title": "{title}, hojas para la clase",
  "sheet.description":
    "Hoja de apoyo, hoja de trabajo y respuestas, para imprimir. Estudio no oficial de rediseño.",
  "sheet.kind": "Hojas para la clase",
  "sheet.print":
    "Para imprimir: la orden de impresión de su navegador, A4 o Carta, en vertical. Cada parte ocupa su propia página.",
  "sheet.toStudy": "El estudio",
  "sheet.toSeries": "La serie",
  "sheet.contents": "Contenido",
  "sheet.handout": "Hoja de apoyo",
  "sheet.worksheet": "Hoja de trabajo",
  "sheet.answers": "Respuestas",
  "sheet.redesign": "Rediseño, estudio no oficial",
  "sheet.questions": "Tres preguntas",
  "sheet.scale":
    "El contraste es cuánto distan en claridad dos colores que se tocan: débil por debajo de {soft}, suave desde {soft}, nítido desde {clear}, fuerte desde {strong}.",
  "sheet.left":
    "{count, plural, one {Hay # límite más en la página del estudio.} other {Hay # límites más en la página del estudio.}}",
  "sheet.noRuler": "Un solo color: no hay límites que medir.",
  "sheet.hatched": "En líneas, para impresión en gris",
  "sheet.hatchedHow":
    "Cada color tiene sus líneas, según Silvester Petra Sancta, Roma 1638. Los matices de un color las comparten.",
  "sheet.originalInLines": "Original en líneas",
  "sheet.redesignInLines": "Rediseño en líneas",
  "sheet.inOutlines": "{flag}, en contornos",
  "sheet.name": "Nombre",
  "sheet.change": "Cambia un color. Colorea la bandera con el nuevo en su lugar.",
  "sheet.own": "Los colores de la bandera",
  "sheet.palette": "Colores para elegir",
  "sheet.guess":
    "Estima el contraste donde se tocan dos colores: un anillo para el original, un punto para tu bandera.",
  "sheet.reason": "Cambio <line></line> por <line></line>, porque",
  "sheet.price": "Qué empeora, y por qué lo acepto:",
  "sheet.yours": "Aquí no hay estudio de esta bandera: es tuya.",
  "sheet.teacher": "Para el docente",
  "sheet.others": "Otros cambios",
  "sheet.onWorksheet": "La hoja de trabajo",
  "sheet.opinion":
    "En la hoja de trabajo ninguna elección es buena o mala. Lo que cuenta es una razón que nombre un límite.",
  "sheet.signs": "Colores en líneas",
  "sheet.signsSource":
    "Líneas que representan colores. Fuente: Silvester Petra Sancta, «Tesserae gentilitiae», Roma 1638; recogido en A. C. Fox-Davies, «A Complete Guide to Heraldry», 1909, capítulo VII. Naranja y marrón: convención posterior, en la que los libros difieren; sin fuente. El gris y el rosa no tienen líneas y quedan grises: elección nuestra.",
  "sheet.red": "rojo (gules)",
  "sheet.blue": "azul (azur)",
  "sheet.green": "verde (sinople)",
  "sheet.black": "negro (sable)",
  "sheet.purple": "morado (púrpura)",
  "sheet.yellow": "amarillo (oro)",
  "sheet.white": "blanco (plata)",
  "sheet.orange": "naranja (tenné), posterior",
  "sheet.brown": "marrón, posterior",

  // shelf: lists of the studies of one author, with one tag, that are decided, or of all of them.
  "shelf.studies": "{count, plural, one {# estudio} other {# estudios}}",
  "shelf.authorCount": "{count, plural, one {# autor} other {# autores}}",
  "shelf.tagCount": "{count, plural, one {# etiqueta} other {# etiquetas}}",
  "shelf.decisionCount": "{count, plural, one {# decisión} other {# decisiones}}",
  "shelf.authors": "Autores",
  "shelf.authorsLede": "Cuantos han presentado aquí un estudio, con lo que proponen.",
  "shelf.noAuthors": "Ningún estudio nombra aún a un autor. Aquí figurará el primer nombre.",
  "shelf.tags": "Etiquetas",
  "shelf.tagsLede": "De qué tratan los estudios, en palabras de sus autores, primero las más usadas.",
  "shelf.noTags": "Ningún estudio tiene aún etiqueta. Las ponen los autores en sus estudios.",
  "shelf.author": "Autor",
  "shelf.tag": "Etiqueta",
  "shelf.list": "Lista",
  "shelf.record": "Registro",
  "shelf.decisions": "Decisiones",
  "shelf.ways": "{studies}. <index>{name}</index>, <all>todos los estudios</all>",
  "shelf.waysOrdered":
    "{studies}, de lo más reciente a lo más antiguo. <index>{name}</index>, <all>todos los estudios</all>",
  "shelf.allAuthors": "Todos los autores",
  "shelf.allTags": "Todas las etiquetas",
  "shelf.byAuthor": "Por autor",
  "shelf.aboutAuthor":
    "{count, plural, one {# estudio} other {# estudios}} de {name}: un color cambiado, cada límite medido.",
  "shelf.aboutTag":
    "{count, plural, one {# estudio} other {# estudios}} con la etiqueta {name}: un color cambiado, cada límite medido.",
  "shelf.aboutDecisions":
    "{count, plural, one {# estudio decidido} other {# estudios decididos}}: un color cambiado, cada límite medido.",
  "shelf.aboutAll":
    "{count, plural, one {# estudio} other {# estudios}} en total: un color cambiado, cada límite medido.",
  "shelf.with": "Con {authors}",

  // show: the steps of a study or a series for a projector, and what a speaker may say to each.
  "show.title": "{title}, paso a paso",
  "show.description": "Estudio no oficial de rediseño.",
  "show.seriesDescription": "Estudios no oficiales de rediseño, paso a paso.",
  "show.toStudy": "El estudio",
  "show.toSeries": "La serie",
  "show.steps": "Pasos",
  "show.notes": "Notas",
  "show.back": "Atrás",
  "show.next": "Siguiente",
  "show.noNote": "Sin nota para este paso.",
  "show.original": "El original",
  "show.redesign": "El rediseño, un estudio no oficial",
  "show.both": "El original, y el rediseño, un estudio no oficial",
  "show.ofOriginal": "Original",
  "show.ofRedesign": "Rediseño, estudio no oficial",
  "show.redesigns": "Los rediseños son estudios no oficiales",
  "show.from":
    "A {from, plural, one {<number>#</number> altura de bandera} other {<number>#</number> alturas de bandera}}, ampliada",
  "show.fromStill": "A {from, plural, one {# altura de bandera} other {# alturas de bandera}}, ampliada",
  "show.thisIs": "La bandera como es: {name}.",
  "show.keep": "Téngala presente como es.",
  "show.focus": "Lo que debe verse",
  "show.focusKey":
    "Las líneas continuas son nítidas; las de puntos, difíciles de ver. La banda marca lo que debe verse antes que lo demás.",
  "show.focusSaid": "Lo que debe verse primero es {share} de la bandera.",
  "show.weakest": "Su límite más débil",
  "show.weakestKey": "{names}: contraste {contrast}",
  "show.weakestSaid":
    "El límite más débil está donde se tocan {first} y {second}. Es {grade} ({contrast}); desde {clear}, un límite es nítido.",
  "show.weakestShown": "El lugar donde se tocan {names}",
  "show.afar": "De lejos",
  "show.afarSaid": "Así se ve la bandera de lejos.",
  "show.colours": "¿Qué color podría cambiar?",
  "show.coloursKey":
    "Cada fila cambia un color. Bajo cada bandera está su nitidez, hoy {clarity}; el mejor de una fila va subrayado.",
  "show.coloursKeyOwn":
    "Cada fila cambia un color. Bajo cada bandera está su nitidez, hoy {clarity}; el mejor de una fila va subrayado; lo que propone este estudio, enmarcado.",
  "show.tried": "Probado, un estudio no oficial. {figures}. {note}",
  "show.triedSaid": "También probé esto: {change} {verdict} {figures}.",
  "show.before": "Antes",
  "show.beforeSaid": "Aquí está otra vez la bandera como es.",
  "show.afterSaid": "Y ahora: {change} Este es un estudio no oficial.",
  "show.outcomes": "Qué mejora y qué empeora",
  "show.outcomesKey": "Anillo: el original. Punto: el rediseño.",
  "show.priceSaid":
    "{verdict}. La nitidez del original es de {before} puntos de 100, y la del rediseño de {after}. {price}",
  "show.vision": "Para lectores daltónicos, y en gris",
  "show.visionSaid": "Esto es más o menos lo que ven los lectores daltónicos. {visions}",
  "show.visionOf": "{heading}, {explanation}: {measure} de {before} a {after}.",
  "show.choose": "¿Original o rediseño?",
  "show.chooseSaid": "¿El original o el rediseño? ¿Y qué diría usted a quien eligiera el otro?",
  "show.closing": "¿Qué cambiaría usted?",
  "show.another": "{name}: otra propuesta",
  "show.opening": "{authors}: {opening}",
  "show.colourChanged": "Color cambiado",
  "show.notTried": "sin probar",
  "show.thisStudy": "Este estudio:",
  "show.merges": "se funde",

  // sight: kinds of sight.
  "sight.protan": "Protán",
  "sight.deutan": "Deután",
  "sight.tritan": "Tritán",
  "sight.grey": "Gris",
  "sight.protanMeans": "sin los conos de ondas largas",
  "sight.deutanMeans": "sin los conos de ondas medias",
  "sight.tritanMeans": "sin los conos de ondas cortas",
  "sight.greyMeans": "como lo imprime una copiadora en blanco y negro",

  // sizes: both flags at sizes that stand for distances.
  "sizes.title": "A un brazo de distancia",
  "sizes.caption":
    "Vista a 60 cm, cada una es tan grande como la bandera a la distancia que lleva debajo, en una pantalla o papel de 96 píxeles por pulgada.",
  "sizes.says": "Ambas banderas tan pequeñas como se ven a distancia, a un brazo: {distances}.",
  "sizes.alt":
    "{label}, tan grande como a {distance, plural, one {# altura de bandera} other {# alturas de bandera}}",

  // spoken: what a speaker says of a change, with numbers in words. All counts are counts of edges.
  "spoken.percent": "{near} ({percent})",
  "spoken.about": "cerca de {part}",
  "spoken.none": "nada",
  "spoken.almostNone": "casi nada",
  "spoken.twentieth": "una vigésima parte",
  "spoken.fifteenth": "una decimoquinta parte",
  "spoken.tenth": "una décima parte",
  "spoken.eighth": "una octava parte",
  "spoken.sixth": "una sexta parte",
  "spoken.fifth": "una quinta parte",
  "spoken.quarter": "una cuarta parte",
  "spoken.third": "un tercio",
  "spoken.twoFifths": "dos quintos",
  "spoken.half": "la mitad",
  "spoken.threeFifths": "tres quintos",
  "spoken.twoThirds": "dos tercios",
  "spoken.threeQuarters": "tres cuartos",
  "spoken.fourFifths": "cuatro quintos",
  "spoken.nineTenths": "nueve décimos",
  "spoken.almostAll": "casi todo",
  "spoken.all": "todo",
  "spoken.count":
    "{count, plural, =0 {ninguno} =1 {uno} =2 {dos} =3 {tres} =4 {cuatro} =5 {cinco} =6 {seis} =7 {siete} =8 {ocho} =9 {nueve} =10 {diez} one {#} other {#}}",
  "spoken.edges": "{count, plural, one {De {all} límite, {moves}.} other {De {all} límites, {moves}.}}",
  "spoken.better":
    "{count, plural, one {{edges} se vuelve más fácil de ver} other {{edges} se vuelven más fáciles de ver}}",
  "spoken.worse":
    "{count, plural, one {{edges} se vuelve más difícil de ver} other {{edges} se vuelven más difíciles de ver}}",
  "spoken.betterAndWorse": "{better} y {worse}",
  "spoken.noneMoves": "ninguno se vuelve más fácil o más difícil de ver",
  "spoken.price": "El precio: {losses}.",
  "spoken.moreLosses":
    "{count, plural, one {y {edges} más se vuelve más difícil de ver} other {y {edges} más se vuelven más difíciles de ver}}",
  "spoken.merged": "{one} y {other} se funden en un solo color",
  "spoken.parted": "{newOne} y {newOther} se separan, y el límite entre ambos es {grade} ({contrast})",
  "spoken.lost":
    "{how, select, still {donde se tocan {one} y {other}, el límite era {wasGrade} ({wasContrast}); ahora sigue siendo {grade} ({contrast})} only {donde se tocan {one} y {other}, el límite era {wasGrade} ({wasContrast}); ahora es solo {grade} ({contrast})} other {donde se tocan {one} y {other}, el límite era {wasGrade} ({wasContrast}); ahora es {grade} ({contrast})}}",
  "spoken.lostRenamed":
    "{how, select, still {donde se tocan {one} y {other}, el límite era {wasGrade} ({wasContrast}); ahora, entre {newOne} y {newOther}, sigue siendo {grade} ({contrast})} only {donde se tocan {one} y {other}, el límite era {wasGrade} ({wasContrast}); ahora, entre {newOne} y {newOther}, es solo {grade} ({contrast})} other {donde se tocan {one} y {other}, el límite era {wasGrade} ({wasContrast}); ahora, entre {newOne} y {newOther}, es {grade} ({contrast})}}",

  // status: what became of a study, in a word and what that word means.
  "status.draft": "Borrador",
  "status.draftMeans": "sin terminar",
  "status.open": "Abierto",
  "status.openMeans": "propuesto, aún sin decidir",
  "status.adopted": "Adoptado",
  "status.adoptedMeans": "aceptado por quienes deciden aquí",
  "status.declined": "Rechazado",
  "status.declinedMeans": "no aceptado por quienes deciden aquí",
  "status.withdrawn": "Retirado",
  "status.withdrawnMeans": "retirado por sus autores",

  // still: words in pictures that are taken away, what is offered of them, and the speaker’s script.
  "still.mark": "Estudio no oficial, para discutir",
  "still.unofficial": "Estudio no oficial: una propuesta para discutir, no una bandera en uso.",
  "still.split": "El original, y su rediseño como estudio no oficial",
  "still.original": "Original",
  "still.redesign": "Rediseño",
  "still.figure": "{what}: {title}",
  "still.move": "de {before} a {after}",
  "still.seen": "{heading}: {measure} de {before} a {after}",
  "still.merges": "se funde",
  "still.swap": "La alternancia, WebP",
  "still.thumbnail": "Miniatura",
  "still.map": "Mapa de límites, SVG",
  "still.ruler": "Regla, SVG",
  "still.matrix": "Tabla, SVG",
  "still.script": "Qué decir, Markdown",
  "still.scriptStep": "{number}. {heading}",
  "still.scriptPicture": "Imagen: {file}",
  "still.scriptOn": "En ella: {text}",
  "still.scriptSay": "Decir: {text}",
  "still.scriptNote": "Nota: {text}",

  // strip: the distance strip.
  "strip.from":
    "A {distance, plural, one {<number>#</number> altura de bandera} other {<number>#</number> alturas de bandera}}",
  "strip.focus": "lo que debe verse:",
  "strip.clarity": "nitidez",
  "strip.caption":
    "Primero el original, luego el rediseño, como los ve desde allí un ojo agudo, llevados a un mismo tamaño: sin viento, sin bruma, sin deslumbramiento.",
  "strip.title": "Tira de distancias",
  "strip.label": "{label} a {distance, plural, one {# altura de bandera} other {# alturas de bandera}}",
  "strip.blur": "Borrosa en un {blur} por ciento de su altura.",
  "strip.blurAndFocus": "Borrosa en un {blur} por ciento de su altura; {focus}.",
  "strip.focusClarity": "lo que debe verse tiene una nitidez del {clarity}",
  "strip.focusLost": "lo que debe verse es demasiado pequeño para reconocerse",
  "strip.lost": "ampliado: a su tamaño real, demasiado pequeño para reconocerse",
  "strip.describe": "Ambas banderas como se ven de lejos, cada vez más borrosas: {distances}.",
  "strip.onlyThere": "La nitidez solo se da donde aún se reconoce lo que debe verse.",
  "strip.level":
    "Hasta donde se reconoce, lo que debe verse tiene una nitidez del {before} en el original y del {after} en el rediseño.",
  "strip.rises":
    "Sube desde más lejos, donde las partes finas con límites débiles ya no se ven y no cuentan más.",

  // study: the page of a study.
  "study.afar": "De lejos",
  "study.theStrip": "La tira de distancias",
  "study.theSizes": "La fila de tamaños",
  "study.contents": "En esta página",
  "study.seen": "Para lectores daltónicos, y en gris",
  "study.likeness": "¿Podría confundirse?",
  "study.argue": "Discutir esto",
  "study.shown": "{name} está en <argument>el argumento</argument>.",
  "study.numbers": "La comparación en cifras",
  "study.theSeen": "Lo que ellos ven",
  "study.unofficial": "estudio no oficial",
  "study.allChanges": "Todos los cambios de un color",
  "study.verdictHow": "Cómo se llega al veredicto",
  "study.show": "Paso a paso, para proyectar",
  "study.sheets": "Hojas para la clase",
  "study.argueByMail": "Discutir esto por correo",
  "study.argument": "El argumento",
  "study.decision": "Decisión",
  "study.meaning": "Significado",
  "study.unofficialLead": "Estudio no oficial de rediseño.",

  // summary: the table of a few numbers.
  "summary.measure": "Medida",
  "summary.both": "Antes y después",

  // survey: the survey of all flags as they are.
  "survey.title": "Censo",
  "survey.lede":
    "Cada bandera de la galería como es hoy: cuán nítidos son sus límites, cuál es el más débil y qué color cambiar primero. Las cifras no dicen nada de la belleza ni del sentido.",
  "survey.flags": "{count, plural, one {# bandera} other {# banderas}}",
  "survey.only": "{count, plural, one {# bandera} other {# banderas}}.",
  "survey.ordered": "{count, plural, one {# bandera} other {# banderas}}, las menos nítidas primero.",
  "survey.description":
    "{count, plural, one {# bandera} other {# banderas}}, las menos nítidas primero: el límite más débil de cada una, el color que cambiar primero, el mejor cambio de un color.",
  "survey.told":
    "{weak, plural, =0 {En ninguna} one {En #} other {En #}} el límite más débil tiene un contraste inferior al {limit}; {helped, plural, =0 {en ninguna} one {en #} other {en #}} un cambio de color aporta {points, plural, one {# punto} other {# puntos}} de nitidez o más.",
  "survey.how": "Cómo se hace el censo",
  "survey.empty": "Aún no hay nada que censar.",
  "survey.more": "{count, plural, one {# bandera más} other {# banderas más}}",
  "survey.rest": "Figuran las {listed} menos nítidas; las otras {rest} están en los archivos.",
  "survey.failed": "Sin medir",
  "survey.files": "Archivos",
  "survey.failedRest": "Y {count} más, todas en el archivo JSON.",
  "survey.csv": "El censo, CSV",
  "survey.json": "El censo, JSON",
  "survey.pictured": "{count, plural, one {# bandera} other {# banderas}}, las menos nítidas primero",
  "survey.range": "de {least} a {most}",
  "survey.caution": "Las cifras no dicen nada de la belleza ni del sentido.",
  "survey.alt": "Una lámina de banderas. Censo: {flags}. Nitidez: {number}. {caution}",
  "survey.study": "Estudio",
  "survey.withStudy": "Con estudio",
  "survey.withoutStudy": "Sin estudio",
  "survey.none": "Ninguna bandera cumple todo esto. Quite una palabra o una opción, o muestre todo.",
  "survey.found": "{found} de {count, plural, one {# bandera} other {# banderas}}",

  // surveytable: the table of the survey, what can be done with flags chosen in it, and its picture of the whole field.
  "surveyTable.every": "Cada bandera como es",
  "surveyTable.everyOrdered": "Cada bandera como es, las menos nítidas primero",
  "surveyTable.captionHeads":
    "Bastante grande: a esa distancia queda la mitad de lo que debe verse, y su trozo mayor abarca 5 minutos de arco. No se halló emblema: la bandera es solo campos.",
  "surveyTable.choose":
    "Elija banderas para verlas solas, o para llevarse una lista con que empezar estudios o una serie.",
  "surveyTable.flag": "Bandera",
  "surveyTable.focus": "Nitidez de lo que debe verse",
  "surveyTable.lasts": "Bastante grande hasta, en alturas de bandera",
  "surveyTable.lastsUnder": "menos de {distance, number}",
  "surveyTable.lastsOrMore": "{distance, number} o más",
  "surveyTable.weakest": "Límite más débil",
  "surveyTable.first": "Color que cambiar primero",
  "surveyTable.best": "Mejor cambio de un color",
  "surveyTable.chooseOne": "Elegir {name}",
  "surveyTable.study": "Estudio: <a>{title}</a>",
  "surveyTable.named": "Señalada por lectores.",
  "surveyTable.noEmblem": "no se halló emblema",
  "surveyTable.noLasts": "–",
  "surveyTable.ofContrast": "contraste",
  "surveyTable.ofClarity": "nitidez",
  "surveyTable.or": "o",
  "surveyTable.noFirst": "ninguno",
  "surveyTable.noBest": "ninguno",
  "surveyTable.chosen": "{count, plural, one {{number} bandera elegida} other {{number} banderas elegidas}}",
  "surveyTable.onlyChosen": "Mostrar solo estas",
  "surveyTable.list": "Lista para empezar estudios",
  "surveyTable.series": "Archivo para empezar una serie",
  "surveyTable.chooseNone": "No elegir ninguna",
  "surveyTable.showAll": "Mostrar todas las banderas",
  "surveyTable.sortBy": "Ordenar por",
  "surveyTable.listHead":
    "Banderas elegidas del censo de {gallery}. Escriba las líneas que empiezan por counterchange en la carpeta que contiene flags/.",
  "surveyTable.seriesTitle": "Banderas elegidas del censo",
  "surveyTable.seriesNote":
    "Para una serie que ya existe: copie las líneas del primer al último - debajo de su «studies:».",
  "surveyTable.seriesClosing": "¿Cuál de sus colores cambiaría usted, y por cuál?",
  "field.title": "Todo el campo",
  "field.about": "Cada bandera en su nitidez de hoy; subrayada donde hay un estudio sobre ella.",
  "field.past": "Pasar la imagen",
  "field.without":
    "{count, plural, one {# de un solo color no tiene límite ni lugar aquí.} other {# de un solo color no tienen límite ni lugar aquí.}}",
  "field.flag": "{name}, nitidez {clarity}",
  "field.least": "La menos nítida: {name}, nitidez {clarity}",
  "field.weakest": "Lo más débil: {one} / {other}, contraste {contrast}",

  // verdict: what a change does, and the verdict with its price.
  "verdict.change": "{before} pasa a {after}.",
  "verdict.changeInPart": "{before} pasa a {after}, solo en {part}.",
  "verdict.selectedPart": "la parte elegida ({selector})",
  "verdict.clearer": "Más nítido",
  "verdict.clearerAtPrice": "Más nítido, a un precio",
  "verdict.mixed": "Desigual",
  "verdict.lessClear": "Menos nítido",
  "verdict.noGain": "Sin ganancia",
  "verdict.semicolon": "{clause}; {more}",
  "verdict.colon": "{clause}: {more}",
  "verdict.and": "{clause}, y {more}",
  "verdict.but": "{clause}, pero {more}",
  "verdict.stays": "la nitidez se mantiene en el {now}",
  "verdict.rises": "la nitidez sube del {before} al {now}",
  "verdict.falls": "la nitidez baja del {before} al {now}",
  "verdict.stronger": "hay límites que ganan fuerza más allá de lo nítido",
  "verdict.weaker": "hay límites que pierden fuerza más allá de lo nítido",
  "verdict.thePrice": "{clause}. El precio: {more}",
  "verdict.gains": "{count, plural, one {gana un límite} other {ganan # límites}}",
  "verdict.onlyShort": "solo límites de menos de {part} de la longitud total se vuelven más difíciles de ver",
  "verdict.noneHarder": "ningún límite se vuelve más difícil de ver",
  "verdict.tooLittle": "{moved}, demasiado poco para moverla",
  "verdict.noStep": "ningún límite gana o pierde nitidez en {points, plural, one {# punto} other {# puntos}}",
  "verdict.noneMoves": "ningún límite se vuelve más fácil o más difícil de ver",
  "verdict.noneToTheEye": "nada cambia a la vista salvo límites de menos de {part} de la longitud total",

  // vote: the vote on a series, flag by flag.
  "vote.title": "Votación: {series}",
  "vote.description":
    "¿Original o rediseño? Una votación sobre {series}, bandera a bandera, antes de ver ninguna cifra.",
  "vote.on": "Una votación sobre <a>{series}</a>",
  "vote.heading": "¿Cuál izaría usted?",
  "vote.how":
    "La bandera como es, y lo que se propone en su lugar. Cuál es cuál no se dice, ni se muestra cifra alguna, hasta que usted haya elegido.",
  "vote.unscripted":
    "Para votar en esta página hace falta un script, que este navegador no ejecuta. En una sala se hace sin él: imprima la página, alce las banderas una a una y marque una casilla por cada mano. Cada pregunta dice al final cuál es cuál.",
  "vote.questions": "Preguntas",
  "vote.back": "Atrás",
  "vote.next": "Siguiente",
  "vote.place": "{number} de {count}",
  "vote.flag": "Bandera {number}",
  "vote.alt": "Una bandera: {paints}",
  "vote.neither": "Ninguna",
  "vote.original": "El original",
  "vote.redesign": "El rediseño",
  "vote.redesignOf": "El rediseño «{title}»",
  "vote.unofficial": "{name}, un estudio no oficial",
  "vote.cautionOne": "Una de ellas es la bandera como es; lo propuesto es un estudio no oficial.",
  "vote.cautionMany": "Una de ellas es la bandera como es; lo propuesto son estudios no oficiales.",
  "vote.why": "¿Por qué? (opcional)",
  "vote.choose": "Esta es mi elección",
  "vote.missing": "Elija antes una bandera, o ninguna.",
  "vote.told": "Cuál es cuál, y las cifras",
  "vote.which": "{flag}: cuál es cuál",
  "vote.headFlag": "Bandera",
  "vote.headChosen": "Elegida, de {count, plural, one {# votante} other {# votantes}}",
  "vote.own": "su elección",
  "vote.range": "de {low} a {high}",
  "vote.study": "El estudio",
  "vote.verdictOf": "{name}. {sentence}",
  "vote.said": "<quiet>{side}:</quiet> <said></said>",
  "vote.ballot": "Su papeleta",
  "vote.answer": "{flag}: {choice}",
  "vote.answerWhy": "{flag}: {choice}, «{why}»",
  "vote.unanswered": "{flag}: sin respuesta",
  "vote.kept":
    "Se guarda solo en este navegador, con un número sacado a suerte, y nadie sabe de ella hasta que usted la entregue.",
  "vote.copy": "Copiar esta línea",
  "vote.copied": "Copiado.",
  "vote.refused": "El navegador no lo permitió; seleccione la línea y cópiela.",
  "vote.save": "Guardar como tabla (CSV)",
  "vote.mail": "Enviar por correo",
  "vote.form": "Enviar con un formulario",
  "vote.anew": "Empezar otra papeleta",
  "vote.letter": "Una papeleta sobre {series}",
  "vote.room": "Para una clase o una reunión",
  "vote.same":
    "<same>El mismo orden para todos</same> · <own>Un orden propio</own>. Con el primero, quien lo abra ve A y B como usted las ve ahora; con el segundo, cada cual las ve en un orden sacado a suerte.",
  "vote.paper":
    "Impresa, esta página es una hoja de recuento: las banderas, casillas para las manos y, en la última página, cuál es cuál.",
  "vote.ballots":
    "{count, plural, one {Volvió # papeleta.} other {Volvieron # papeletas.}} Junto a cada parte está el intervalo en que, con un 95 % de confianza, estaría la de todos si los votantes se hubieran sacado a suerte (intervalo de Wilson); los que vinieron por sí mismos no lo fueron.",
  "vote.noBallots": "Aún no ha vuelto ninguna papeleta.",
  "vote.key": "Para quien cuenta: cuál es cuál",
  "vote.sides": "{flag}: <sides></sides>",
};
