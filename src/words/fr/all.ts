// Floor 7. French: all messages.
import type { Catalogue } from "../en/all.ts";

/**
 * Terms, one for one: flag drapeau; hoist guindant; field champ; charge meuble; edge limite; clarity netteté; lightness clarté; contrast
 * contraste; grade degré, in words always of a limite: faible, douce, nette, forte; near the line au seuil; outcome résultat; verdict
 * verdict; price prix; redesign nouveau dessin; study étude; what has to be seen ce qui doit se voir; reflectance réflectance; tincture
 * émail, métal or couleur; fimbriation liseré; rule of tincture règle de contrariété des couleurs; division parti, coupé, tranché, taillé;
 * survey recensement; series série; ballot bulletin; show pas à pas; sheet fiche; maker fabricant. Common practice of French heraldry and
 * vexillology, no source.
 *
 * A value never follows “de” or “que”, which a vowel would shorten: a colour stands out “sur” another, “contre” it, or “remplace” it. A
 * length is so many times the height of the flag (“fois la hauteur”), because 1,37 is singular in French and comes as text.
 */
export const french: Catalogue = {
  // answer: the letter or the form by which a reader answers.
  "answer.byMail": "par courriel à {address}, avec l’adresse de cette page et ses chiffres dans la lettre.",
  "answer.at": "sur {host}.",
  "answer.atWithAddress": "sur {host}, avec l’adresse de cette page.",
  "answer.atWithNumbers": "sur {host}, avec les chiffres de cette page.",
  "answer.atWithBoth": "sur {host}, avec l’adresse de cette page et ses chiffres.",
  "answer.flagFor": "Un drapeau pour {gallery}",
  "answer.flag": "Le drapeau :",
  "answer.why": "Pourquoi :",
  "answer.reader": "Une lectrice ou un lecteur",
  "answer.question": "Pourquoi ?",

  // colour: names of colours, and a flag told by them.
  "colour.black": "noir",
  "colour.white": "blanc",
  "colour.grey": "gris",
  "colour.red": "rouge",
  "colour.orange": "orange",
  "colour.yellow": "jaune",
  "colour.green": "vert",
  "colour.blue": "bleu",
  "colour.purple": "violet",
  "colour.pink": "rose",
  "colour.brown": "brun",
  "colour.dark":
    "{word, select, other {{degree, select, very {{colour} très foncé} less {{colour} moins foncé} slightlyLess {{colour} un peu moins foncé} muchLess {{colour} bien moins foncé} other {{colour} foncé}}}}",
  "colour.light":
    "{word, select, other {{degree, select, very {{colour} très clair} less {{colour} moins clair} slightlyLess {{colour} un peu moins clair} muchLess {{colour} bien moins clair} other {{colour} clair}}}}",
  "colour.darkest": "{colour} le plus foncé",
  "colour.lightest": "{colour} le plus clair",
  "colour.darker":
    "{degree, select, slightly {{colour} un peu plus foncé} much {{colour} bien plus foncé} other {{colour} plus foncé}}",
  "colour.lighter":
    "{degree, select, slightly {{colour} un peu plus clair} much {{colour} bien plus clair} other {{colour} plus clair}}",
  "colour.deeper":
    "{degree, select, slightly {{colour} un peu plus profond} much {{colour} bien plus profond} other {{colour} plus profond}}",
  "colour.greyer":
    "{degree, select, slightly {{colour} un peu plus gris} much {{colour} bien plus gris} other {{colour} plus gris}}",
  "colour.warmer":
    "{degree, select, slightly {{colour} un peu plus chaud} much {{colour} bien plus chaud} other {{colour} plus chaud}}",
  "colour.bluer":
    "{degree, select, slightly {{colour} un peu plus bleu} much {{colour} bien plus bleu} other {{colour} plus bleu}}",
  "colour.yellower":
    "{degree, select, slightly {{colour} un peu plus jaune} much {{colour} bien plus jaune} other {{colour} plus jaune}}",
  "colour.redder":
    "{degree, select, slightly {{colour} un peu plus rouge} much {{colour} bien plus rouge} other {{colour} plus rouge}}",
  "colour.greener":
    "{degree, select, slightly {{colour} un peu plus vert} much {{colour} bien plus vert} other {{colour} plus vert}}",
  "colour.purpler":
    "{degree, select, slightly {{colour} un peu plus violet} much {{colour} bien plus violet} other {{colour} plus violet}}",
  "colour.reddish":
    "{degree, select, slightly {{colour} un peu rougeâtre} much {{colour} bien rougeâtre} very {{colour} très rougeâtre} other {{colour} rougeâtre}}",
  "colour.brownish":
    "{degree, select, slightly {{colour} un peu brunâtre} much {{colour} bien brunâtre} very {{colour} très brunâtre} other {{colour} brunâtre}}",
  "colour.yellowish":
    "{degree, select, slightly {{colour} un peu jaunâtre} much {{colour} bien jaunâtre} very {{colour} très jaunâtre} other {{colour} jaunâtre}}",
  "colour.greenish":
    "{degree, select, slightly {{colour} un peu verdâtre} much {{colour} bien verdâtre} very {{colour} très verdâtre} other {{colour} verdâtre}}",
  "colour.bluish":
    "{degree, select, slightly {{colour} un peu bleuâtre} much {{colour} bien bleuâtre} very {{colour} très bleuâtre} other {{colour} bleuâtre}}",
  "colour.purplish":
    "{degree, select, slightly {{colour} un peu violacé} much {{colour} bien violacé} very {{colour} très violacé} other {{colour} violacé}}",
  "colour.greyish":
    "{degree, select, slightly {{colour} un peu grisâtre} much {{colour} bien grisâtre} very {{colour} très grisâtre} other {{colour} grisâtre}}",
  "colour.warm":
    "{degree, select, slightly {{colour} un peu chaud} much {{colour} bien chaud} very {{colour} très chaud} other {{colour} chaud}}",
  "colour.neutral":
    "{degree, select, slightly {{colour} un peu neutre} much {{colour} bien neutre} very {{colour} très neutre} other {{colour} neutre}}",
  "colour.deep": "{word, select, other {{colour} profond}}",
  "colour.mid": "{colour} moyen",
  "colour.off": "{word, select, white {blanc cassé} other {presque {colour}}}",
  "colour.charcoal": "{colour} charbon",
  "colour.dull": "{colour} terne",
  "colour.jet": "{colour} de jais",
  "colour.bright": "{colour} éclatant",
  "colour.pure": "{colour} pur",
  "colour.nth":
    "{place, select, second {deuxième {colour}} third {troisième {colour}} fourth {quatrième {colour}} fifth {cinquième {colour}} sixth {sixième {colour}} seventh {septième {colour}} eighth {huitième {colour}} ninth {neuvième {colour}} other {dixième {colour}}}",
  "colour.numbered": "{colour} {number}",
  "colour.others": "autres couleurs",
  "colour.selectedPart": "{colour}, partie choisie",
  "colour.selected": "le {colour} choisi",
  "colour.empty": "un dessin vide",
  "colour.allOver": "{colour} uni",
  "colour.mostly": "surtout {colour}, avec {others}",

  // colours: the colours of a study.
  "colours.caption":
    "Couleurs de l’original, les plus étendues d’abord. Part du dessin entier ; réflectance de l’étoffe.",
  "colours.colour": "Couleur",
  "colours.share": "Part",
  "colours.reflectance": "Réflectance",
  "colours.tincture": "Émail",
  "colours.becomes": "devient",
  "colours.vanishes":
    "ne se distingue plus à {distance, plural, one {# hauteur de drapeau} other {# hauteurs de drapeau}}",
  "colours.uneven": "inégale, de <first></first> à <last></last>",
  "colours.metal": "métal",
  "colours.ofTincture": "couleur",

  // doubt: what makes the figures of a drawing less certain.
  "doubt.joined":
    "Le dessin a plus de couleurs qu’il n’en est mesuré séparément : {count, plural, one {celle qui se voit le moins est mesurée avec une voisine plus visible, ou dans le groupe « {name} ».} other {les # qui se voient le moins sont mesurées avec une voisine plus visible, ou ensemble, sous le nom « {name} ».}}",
  "doubt.faint":
    "{count, plural, one {Une forme se voit à moins de la moitié de sa force et n’est pas mesurée.} other {# formes se voient à moins de la moitié de leur force et ne sont pas mesurées.}}",
  "doubt.inexact":
    "Seuls {share} du dessin ont pu être distingués exactement ; ses chiffres sont moins sûrs.",
  "doubt.nearLimit": "À peine visibles à cette distance : des parties en {names}.",
  "doubt.effect": "Le dessin de l’auteur contient ce qui n’est ni montré ici ni mesuré : {looks}.",
  "doubt.look":
    "{kind, select, shadow {une ombre} blur {un flou} colours {un changement des couleurs} blend {des couleurs mêlées à ce qui est dessous ({mode})} other {un effet}}",

  // edge: what an edge is called.
  "edge.names": "{one} / {other}",
  "edge.on": "{part} sur {field}",

  // edgefigure: one edge, before and after, as a figure.
  "edgefigure.edge": "Limite",
  "edgefigure.becomes": ", qui devient {is}",
  "edgefigure.outcome": " : {outcome}, sur {extent}.",
  "edgefigure.sideBySide": "Côte à côte ; contraste {contrast}.",
  "edgefigure.says": "{edge} : contraste {before} avant, {after} après ; {outcome}.",
  "edgefigure.saysAfter": "{edge} : contraste {after} après ; {outcome}.",

  // edgepage: the page of one edge.
  "edgepage.place": "Sur le drapeau ; le cadre est montré en grand",
  "edgepage.numbers": "La limite en chiffres",
  "edgepage.elsewhere": "Les deux mêmes couleurs dans d’autres études",
  "edgepage.study": "Étude",
  "edgepage.elsewhereNote":
    "Deux couleurs de même nom ne sont pas forcément la même : comparez l’étoffe, non le mot.",
  "edgepage.siblings": "Limites de cette étude",
  "edgepage.nearLine": "{near} : une autre étoffe donnerait un autre degré. <why>Pourquoi</why>",
  "edgepage.how":
    "Comment se calcule le <contrast>contraste</contrast>, et <beside>ce qui l’accompagne</beside>.",
  "edgepage.locator": "Où se trouve la limite",
  "edgepage.locatorSays":
    "Le drapeau d’origine en teintes pâles, avec les lignes relevées là où se touchent {one} et {other}.",
  "edgepage.contrast": "contraste",
  "edgepage.difference": "écart de couleur",
  "edgepage.sides": "L’original d’abord, puis le nouveau dessin.",
  "edgepage.seenNote":
    "Le gris garde le contraste. L’écart de couleur est ΔE00 : plus il est grand, mieux on distingue. Ce sont des approximations de la forme la plus forte de chaque déficience, et non un test de la vue de quiconque. <how>Comment elles sont faites</how>",
  "edgepage.noEdge": "pas de limite",
  "edgepage.all": "Toutes sur une seule règle",
  "edgepage.of": "Une limite, où deux couleurs se touchent, de l’étude <study>{title}</study>",
  "edgepage.becomes": "{was} devient {is}",
  "edgepage.description": "Une limite d’une étude non officielle de drapeau redessiné, {outcome}.",
  "edgepage.placeAlt": "{label}, l’endroit où se touchent {one} et {other}",
  "edgepage.unofficial": "Nouveau dessin, étude non officielle",
  "edgepage.bothNear": "Les deux degrés sont au seuil",
  "edgepage.originalNear": "Le degré de l’original est au seuil",
  "edgepage.redesignNear": "Le degré du nouveau dessin est au seuil",

  // edges: what became of each edge of a study.
  "edges.none": "Une seule couleur : aucune limite à mesurer.",
  "edges.where": "Où sont les limites",
  "edges.map": "La carte des limites",
  "edges.ruler": "La règle des contrastes",
  "edges.moreOnDistance": "En savoir plus sur la <distance>distance</distance>",
  "edges.moreOnDistanceAndCloth":
    "En savoir plus sur la <distance>distance</distance> et l’<cloth>étoffe</cloth>",
  "edges.fimbriations": "Lignes qui séparent deux couleurs",
  "edges.fimbriationMoves":
    "Du contraste des deux couleurs elles-mêmes à celui de la plus faible des deux limites qui les remplacent. <more>En savoir plus sur le liseré</more>",
  "edges.every": "Chaque limite, avant et après",
  "edges.betterAndWorse": "Ce qui gagne et ce qui perd",
  "edges.paged": "Les {paged} plus longues de ces {all} limites ont leur propre page.",

  // edgesaid: what became of one edge.
  "edgeSaid.unchanged": "Inchangée",
  "edgeSaid.leftAlone":
    "Le changement laisse cette limite telle quelle : contraste de {contrast}, limite {grade}.",
  "edgeSaid.hardlyChange": "{pair} ne changent guère, le long de {where} : {move}.",
  "edgeSaid.stayClear": "{pair} restent bien séparés, le long de {where} : {move}.",
  "edgeSaid.stayHard": "{pair} restent difficiles à distinguer, le long de {where} : {move}.",
  "edgeSaid.gained":
    "{who, select, one {{is} se détache désormais sur {neighbour}, le long de {where} : contraste de {contrast}, limite {grade} ; avec {was}, {wasContrast}, limite {wasGrade}.} same {{is} se détachent désormais l’un sur l’autre, le long de {where} : contraste de {contrast}, limite {grade}, contre {wasContrast}, limite {wasGrade}.} other {{is} se détachent désormais l’un sur l’autre, le long de {where} : contraste de {contrast}, limite {grade} ; avec {was}, {wasContrast}, limite {wasGrade}.}}",
  "edgeSaid.better":
    "{who, select, one {{is} se détache mieux sur {neighbour} qu’auparavant {was}, le long de {where} : {move}.} same {{is} se détachent mieux l’un sur l’autre qu’auparavant, le long de {where} : {move}.} other {{is} se détachent mieux l’un sur l’autre qu’auparavant {was}, le long de {where} : {move}.}}",
  "edgeSaid.betterUnclear":
    "{who, select, one {{is} se distingue mieux sur {neighbour} qu’auparavant {was}, le long de {where}, sans que la limite soit nette : {move}.} same {{is} se distinguent mieux qu’auparavant, le long de {where}, sans que la limite soit nette : {move}.} other {{is} se distinguent mieux qu’auparavant {was}, le long de {where}, sans que la limite soit nette : {move}.}}",
  "edgeSaid.lost":
    "{who, select, one {{is} ne se détache plus sur {neighbour}, le long de {where} : contraste de {contrast}, limite {grade} ; avec {was}, {wasContrast}, limite {wasGrade}.} same {{is} ne se détachent plus l’un sur l’autre, le long de {where} : contraste de {contrast}, limite {grade}, contre {wasContrast}, limite {wasGrade}.} other {{is} ne se détachent plus l’un sur l’autre, le long de {where} : contraste de {contrast}, limite {grade} ; avec {was}, {wasContrast}, limite {wasGrade}.}}",
  "edgeSaid.worse":
    "{who, select, one {{is} se détache moins sur {neighbour} qu’auparavant {was}, le long de {where} : {move}.} same {{is} se détachent moins l’un sur l’autre qu’auparavant, le long de {where} : {move}.} other {{is} se détachent moins l’un sur l’autre qu’auparavant {was}, le long de {where} : {move}.}}",
  "edgeSaid.worseUnclear":
    "{who, select, one {{is} se distingue encore moins sur {neighbour} qu’auparavant {was}, le long de {where} : {move}.} same {{is} se distinguent encore moins qu’auparavant, le long de {where} : {move}.} other {{is} se distinguent encore moins qu’auparavant {was}, le long de {where} : {move}.}}",
  "edgeSaid.merged":
    "{pair} ne font plus qu’une couleur à l’œil, le long de {where} : la ligne qui les séparait, d’un contraste de {wasContrast}, limite {wasGrade}, a disparu.",
  "edgeSaid.parted":
    "{pair} ne faisaient qu’une couleur et se touchent désormais en une limite {gradeId, select, weak {faible} soft {douce} clear {nette} other {forte}}, le long de {where} : contraste de {contrast}.",
  "edgeSaid.pair": "{one} et {other}",
  "edgeSaid.moveNone": "contraste de {contrast}, limite {grade}",
  "edgeSaid.moveStill": "contraste de {wasContrast} à {contrast}, limite toujours {grade}",
  "edgeSaid.moveGrade": "contraste de {wasContrast} à {contrast}, limite de {wasGrade} à {grade}",
  "edgeSaid.whereAll": "toutes les lignes du drapeau",
  "edgeSaid.wherePart": "{part} de la longueur totale des limites",
  "edgeSaid.whereOutline": "tout le contour de ce qui doit se voir",
  "edgeSaid.whereOutlinePart": "{part} du contour de ce qui doit se voir",
  "edgeSaid.whereAllAndOutline": "toutes les lignes du drapeau, {outline} compris",
  "edgeSaid.whereOutlineAndMore": "{outline} et au-delà, soit {part} de la longueur totale des limites",

  // entry: the entry of a study in a list.
  "entry.makers": "Fiche pour fabricants",
  "entry.putForward": "Proposée par {authors}",

  // facts: facts beside the numbers of a study.
  "facts.heading": "Des faits à côté des chiffres, dont aucun n’est une note",
  "facts.caption": "Des faits à côté des chiffres",
  "facts.fact": "Fait",
  "facts.clearShareNote":
    "La part des limites nettes saute là où un degré change : elle est une donnée et ne décide de rien. <near>Au seuil</near>",
  "facts.hueNote":
    "La teinte seule : un contraste inférieur à 30 % avec un ΔE00 de 20 ou plus, et de moins de 10 en gris. Une telle limite disparaît au crépuscule, à l’impression en gris et pour bien des lecteurs daltoniens. Ces paliers sont notre propre jugement.",
  "facts.tinctureNote":
    "Règle de contrariété des couleurs : ni métal sur métal, ni couleur sur couleur ; A. C. Fox-Davies, <book>A Complete Guide to Heraldry</book>, 1909, chapitre VII. Les champs partis, les liserés et les fourrures en sont exempts ; les fourrures ne sont pas reconnues ici.",
  "facts.countNote":
    "Couleurs de plus d’un demi pour cent de la surface. Le livret <book>Good Flag, Bad Flag</book>, 2006, en conseille deux ou trois ; les <book>Guiding Principles of Flag Design</book>, 2014, en préfèrent peu.",
  "facts.more": "En savoir plus sur ces faits",
  "facts.clearShare": "Part des limites nettes : nettes ou fortes, sur la longueur de toutes les limites",
  "facts.near": "Limite au seuil, d’un autre degré sur une autre étoffe",
  "facts.hue": "Distinguées par la teinte seule",
  "facts.tincture": "Contre la règle de contrariété des couleurs",
  "facts.count": "Nombre de couleurs ; les guides en conseillent deux ou trois",
  "facts.none": "aucune",
  "facts.metalOnMetal": "{names}, deux métaux",
  "facts.colourOnColour": "{names}, deux couleurs",
  "facts.ruleKept": "Rien n’y contrevient, ni avant ni après.",
  "facts.ruleBroken": "Y contrevient avant et après : {names}.",
  "facts.ruleMoved": "Y contrevient dans l’original : {was}. Dans le nouveau dessin : {is}.",
  "facts.exemptFimbriation": "Exempt, comme liseré : {names}.",
  "facts.exemptField": "Exempt, comme parties du champ : {names}.",
  "facts.uneven":
    "Une couleur inégale : {name} va de {lightest} à {darkest} ; une limite de cette couleur n’est nette que si ses deux extrêmes le sont.",

  // feed: what readers of feeds see, and the caption of a flag on somebody else’s page.
  "feed.decisions": "{title} : décisions",
  "feed.decision": "{status} : {title}",
  "feed.status": "{status}, {meaning}.",
  "feed.statusDecided": "{status}, {meaning}. {decision}",
  "feed.redesigns": "Les nouveaux dessins sont des études non officielles.",
  "feed.proposed": "{change} {verdict} : netteté {before} → {after}.",
  "feed.flagToday": "{flag} aujourd’hui",
  "feed.flagRedesign": "{flag}, nouveau dessin",
  "feed.clearer": "<a>{name}</a> : plus net. Étude non officielle.",
  "feed.atAPrice": "<a>{name}</a> : plus net, mais à un prix. Étude non officielle.",
  "feed.mixed": "<a>{name}</a> : partagé. Étude non officielle.",
  "feed.lessClear": "<a>{name}</a> : moins net. Étude non officielle.",
  "feed.noGain": "<a>{name}</a> : sans gain. Étude non officielle.",

  // fimbriation: what a line of a third colour does for the two colours that it keeps apart.
  "fimbriation.parts": "La ligne ({line}) sépare {one} et {other}",
  "fimbriation.doesNotPart": "La ligne ({line}) entre {one} et {other} ne les sépare pas",
  "fimbriation.line": "{lead} : <move></move>.",
  "fimbriation.didAlready": "Dans l’original, {line} le faisait déjà : {across} au lieu de {direct}.",
  "fimbriation.didNotEither":
    "Dans l’original, {line} ne le faisait pas non plus : {across} au lieu de {direct}.",
  "fimbriation.did": "Dans l’original, {line} le faisait : {across} au lieu de {direct}.",
  "fimbriation.didNot": "Dans l’original, {line} ne le faisait pas : {across} au lieu de {direct}.",
  "fimbriation.it": "elle",
  "fimbriation.theLine": "la ligne ({colour})",
  "fimbriation.partLine": "la ligne ({part})",

  // finder: the form that finds studies.
  "finder.words": "Mots",
  "finder.order": "Ordre",
  "finder.more": "Plus de filtres",
  "finder.any": "Indifférent",
  "finder.find": "Chercher",
  "finder.all": "Tout montrer",
  "finder.none": "Aucune étude ne répond à tout cela. Retirez un mot ou un choix, ou montrez tout.",
  "finder.pages": "Pages où figurent ces mots : <list></list>",
  "finder.status": "État",
  "finder.verdict": "Verdict",
  "finder.tag": "Mot-clé",
  "finder.author": "Auteur",
  "finder.mostGained": "Plus grand gain",
  "finder.newest": "Plus récentes",
  "finder.mostLost": "Plus grande perte",
  "finder.leastClear": "Nouveau dessin le moins net",
  "finder.title": "Titre",
  "finder.found": "{found} sur {count, plural, one {# étude} other {# études}}",
  "finder.foundListed": "{found} sur les {listed} de cette liste",

  // flagpage: the page of a flag with several redesigns, or that readers named.
  "flagPage.two": "{flag} : {one} ou {other}",
  "flagPage.pair": "{one} et {other}",
  "flagPage.namedShort": "Désigné par les lecteurs.",
  "flagPage.named": "Désigné par les lecteurs",
  "flagPage.proposal": "Proposition {number}",
  "flagPage.weakest": "Limite la plus faible {contrast}",
  "flagPage.clearest":
    "{count, plural, one {La proposition {numbers} est la plus nette} other {Les propositions {numbers} sont les plus nettes}}{priced, select, yes {, mais à un prix} other {}} : la netteté monte de {before} à {after}.",
  "flagPage.clearerOfTwo":
    "Les deux sont plus nettes, mais à un prix ; la plus nette est la proposition {numbers} : de {before} à {after}, contre {next}.",
  "flagPage.clearestOfPriced":
    "Toutes celles présentées ici sont plus nettes, mais à un prix ; la plus nette est la proposition {numbers} : de {before} à {after}, la suivante {next}.",
  "flagPage.noneClearer": "Aucune proposition n’est plus nette que l’original : sa netteté est de {before}.",
  "flagPage.all": "Toutes les propositions",
  "flagPage.pairs": "Deux côte à côte : <list></list>",
  "flagPage.edges": "Ce que chacune gagne et perd",
  "flagPage.survey": "Ses chiffres dans le recensement",
  "flagPage.showAll": "Tout montrer",
  "flagPage.allShown": "Tous les drapeaux montrés",
  "flagPage.head": "Proposition",
  "flagPage.verdict": "Verdict",
  "flagPage.share": "Part qui change",

  // focus: what has to be seen, the emblem or charge of a flag, from where the flag is seen, and how far that lasts.
  "focus.none":
    "Aucun emblème trouvé : rien ne doit se voir avant le reste, et aucune limite ne compte double. C’est un fait, non un défaut.",
  "focus.notGuessed":
    "Un meuble se fond dans une zone de sa propre couleur. Il n’a pas été deviné, et rien ne compte double. Pour le désigner, écrivez dans l’étude :",
  "focus.fullDrawing": "Mesuré sur le dessin entier, et non à distance.",
  "focus.fromAway":
    "Mesuré tel qu’on le voit à {away, plural, one {# hauteur de drapeau} other {# hauteurs de drapeau}} : un drapeau haut d’un mètre, à {away, plural, one {# mètre} other {# mètres}}. Les parties plus fines que {finest} de sa hauteur sont attribuées à ce qui les borde. C’est un modèle de l’acuité.",
  "focus.afar": "Ce qui reste de loin",
  "focus.afarDescription": "{lasting} Netteté de ce qui doit se voir : {steps}.",
  "focus.step": "à {distance}, {is}",
  "focus.stepMove": "à {distance}, de {was} à {is}",
  "focus.afarCaption":
    "Il tient jusqu’à {lasts}, par sa seule taille : il doit en rester {left}, et son plus grand morceau doit couvrir {arcminutes, plural, one {# minute d’arc} other {# minutes d’arc}}, la taille d’une lettre que lit une acuité de 10/10.",
  "focus.noEmblem": "aucun emblème trouvé",
  "focus.lastsUnder":
    "{distance, plural, one {moins de # hauteur de drapeau} other {moins de # hauteurs de drapeau}}",
  "focus.lastsOrMore":
    "{distance, plural, one {# hauteur de drapeau ou plus} other {# hauteurs de drapeau ou plus}}",
  "focus.nothingLeft": "rien ne reste",
  "focus.tooSmall":
    "{distance, plural, one {Ce qui doit se voir est trop petit pour être reconnu à # hauteur de drapeau, la plus courte distance essayée, quelles que soient ses couleurs.} other {Ce qui doit se voir est trop petit pour être reconnu à # hauteurs de drapeau, la plus courte distance essayée, quelles que soient ses couleurs.}}",
  "focus.largeEnough":
    "{distance, plural, one {Ce qui doit se voir est assez grand pour être reconnu jusqu’à # hauteur de drapeau, quelles que soient ses couleurs.} other {Ce qui doit se voir est assez grand pour être reconnu jusqu’à # hauteurs de drapeau, quelles que soient ses couleurs.}}",
  "focus.largeEnoughAlways":
    "{distance, plural, one {Ce qui doit se voir est assez grand pour être reconnu à # hauteur de drapeau, la plus grande distance essayée.} other {Ce qui doit se voir est assez grand pour être reconnu à # hauteurs de drapeau, la plus grande distance essayée.}}",

  // frame: what stands around the content of every page, and the page of a missing address.
  "frame.skip": "Aller au contenu",
  "frame.gallery": "Galerie",
  "frame.studies": "Études",
  "frame.survey": "Recensement",
  "frame.method": "Méthode",
  "frame.allStudies": "Toutes les études",
  "frame.cautions":
    "Chaque nouveau dessin montré ici est une étude non officielle, proposée à la discussion. Les lois sur l’usage des drapeaux diffèrent : suivez celles de votre pays, et respectez la licence de chaque dessin. Voir les <cautions>précautions</cautions> et, pour les auteurs, les <rules>règles des études et des dessins</rules>.",
  "frame.publishedBy": "Publié par {society}.",
  "frame.textsUnder": "Textes sous <licence>{name}</licence>.",
  "frame.madeWith":
    "Réalisé avec Counterchange. Composé en Source Serif 4 et Source Sans 3, sous la licence <licence>SIL Open Font License</licence>.",
  "frame.missing": "Aucune page ici",
  "frame.missingText":
    "Il n’y a pas de page à cette adresse. Une étude a pu être retirée de la galerie, ou l’adresse mal saisie.",
  "frame.missingDescription": "Il n’y a pas de page à cette adresse.",
  "frame.moved": "Cette page a changé d’adresse : {title}.",

  // front: the front page.
  "front.nominate": "Un drapeau mériterait une étude ? <name>Désignez-le, et dites pourquoi</name>",
  "front.empty":
    "Rien n’est encore publié ici. La première étude figurera sur cette page ; d’ici là, <method>la méthode</method> dit comment elle sera mesurée.",
  "front.earlier": "Études précédentes",
  "front.edgeless": "Sans limite à mesurer : <list></list>.",
  "front.more": "{count, plural, one {# de plus} other {# de plus}}",

  // gain: the chart of what each change does to clarity.
  "gain.title": "Ce que chaque changement fait à la netteté",
  "gain.order": "Les plus grands gains d’abord.",
  "gain.key":
    "Un anneau pour l’original, un point pour le nouveau dessin ; un trait évidé là où la netteté baisse.",
  "gain.othersListed":
    "{count, plural, one {L’autre étude est dans la liste complète} other {Les # autres études sont dans la liste complète}}",
  "gain.othersOnFront":
    "{count, plural, one {L’autre étude est sur la page d’accueil} other {Les # autres études sont sur la page d’accueil}}",
  "gain.told": "{count, plural, one {# étude} other {# études}} : la netteté {ways}.",
  "gain.rises": "monte dans {count}",
  "gain.falls": "baisse dans {count}",
  "gain.stays": "ne change pas dans {count}",
  "gain.most": "Elle monte le plus dans « {title} », de {before} à {after}.",
  "gain.here": "Dans cette étude, elle va de {before} à {after}.",

  // grade: the grades of a contrast, within a sentence and in tables.
  "grade.weak": "faible",
  "grade.soft": "douce",
  "grade.clear": "nette",
  "grade.strong": "forte",
  "grade.now": "désormais {is}",
  "grade.from": "de {was}",
  "grade.move": "de {was} à {is}",

  // history: what came before a study and after it.
  "history.follows": "Prend la place de",
  "history.followed": "Suivie de",
  "history.revised": "<date></date> : {what}",

  // ladder: the ladder of reflectance.
  "ladder.rung": "{name} {reflectance}",
  "ladder.title": "La clarté de chaque couleur",
  "ladder.says": "De la plus claire à la plus sombre : {colours}. {change}",

  // lasting: how far what has to be seen lasts, as a figure.
  "lasting.caption":
    "Netteté de ce qui doit se voir, à tant de hauteurs de drapeau : un anneau pour l’original, un point pour le nouveau dessin.",
  "lasting.model": "Un modèle de la vue",

  // length: how long an edge is.
  "length.heights": "{length, number, ::.00} fois la hauteur du drapeau",
  "length.offFocus": "rien sur le contour de ce qui doit se voir",
  "length.onFocus": "en entier sur le contour de ce qui doit se voir",
  "length.partOnFocus": "dont {part, number, ::.00} sur le contour de ce qui doit se voir",
  "length.distance": "{distance, plural, one {# hauteur de drapeau} other {# hauteurs de drapeau}}",
  "length.wholeOutline": "tout le contour",
  "length.ofOutline": "{share} du contour",
  "length.partly": "{length}, dont {own, number, ::.00} sur {part}",
  "length.wholly": "{length}, {part}",

  // likeness: which flags a redesign could be taken for.
  "likeness.figure": "écart de couleur moyen ΔE00 {difference}",
  "likeness.figureMirrored": "écart de couleur moyen ΔE00 {difference}, vu par le revers",
  "likeness.figureTurned": "écart de couleur moyen ΔE00 {difference}, tête en bas",
  "likeness.flags":
    "{count, plural, one {# autre drapeau ou nouveau dessin} other {# autres drapeaux et nouveaux dessins}}",
  "likeness.hardly":
    "Difficilement. Sur {flags}, le plus proche est {nearest} : {figure} ; au-dessous de {limit}, on prend facilement un drapeau pour un autre.",
  "likeness.could":
    "C’est possible. Sur {flags}, {count, plural, one {un est proche} other {plusieurs sont proches}} : {names} ; au-dessous de {limit}, on prend facilement un drapeau pour un autre, et le plus proche a {figure}.",
  "likeness.rivals": "Les autres propositions pour ce drapeau ne sont pas comptées.",
  "likeness.own": "Ce nouveau dessin",

  // list: what stands between the items of a list that has no “and”.
  "list.comma": ", ",
  "list.semicolon": " ; ",
  "list.colon": "{name} : {said}",

  // maker: the sheet from which an adopted redesign is made as a flag.
  "maker.title": "{title}, fiche pour fabricants",
  "maker.description": "Proportions, construction et couleurs du nouveau dessin adopté, à imprimer.",
  "maker.kind": "Fiche pour fabricants",
  "maker.for": "Pour les fabricants",
  "maker.print":
    "Pour imprimer : la commande d’impression de votre navigateur, A4 ou Letter, en hauteur. Une page.",
  "maker.toStudy": "L’étude",
  "maker.outline": "{name} : le nouveau dessin, au trait",
  "maker.proportions": "Hauteur sur largeur <number>{proportions}</number>. Guindant à gauche.",
  "maker.unofficial":
    "Cette galerie le note comme adopté ; le nouveau dessin reste une étude non officielle.",
  "maker.unofficialBy": "{society} le note comme adopté ; le nouveau dessin reste une étude non officielle.",
  "maker.built": "Construction",
  "maker.shape": "Forme",
  "maker.fromHoist": "Du guindant",
  "maker.fromTop": "Du haut",
  "maker.width": "Largeur",
  "maker.height": "Hauteur",
  "maker.rectangle": "Rectangle",
  "maker.line": "Ligne",
  "maker.circle": "Cercle, par son centre",
  "maker.ring": "Anneau, par son centre",
  "maker.across": "{width} de diamètre",
  "maker.hole": "trou de {height}",
  "maker.laid": "Dans l’ordre où elles se posent : ce qui vient après couvre ce qui précède.",
  "maker.none":
    "Aucune forme simple n’a pu être lue dans le dessin. C’est le fichier du dessin qui fait foi.",
  "maker.parts": "Les nombres entiers sont des parties, dont la hauteur compte {parts}.",
  "maker.percent": "Les positions et tailles en % se rapportent à la hauteur, arrondies.",
  "maker.untold":
    "{count, plural, one {# autre forme est omise, parce qu’elle n’est pas simple ou que la place manque : le fichier du dessin fait foi.} other {# autres formes sont omises, parce qu’elles ne sont pas simples ou que la place manque : le fichier du dessin fait foi.}}",
  "maker.colours": "Couleurs",
  "maker.colour": "Couleur",
  "maker.hex": "Hex",
  "maker.reflectance": "Réflectance",
  "maker.others":
    "{count, plural, one {# autre couleur est sur la page de l’étude.} other {# autres couleurs sont sur la page de l’étude.}}",
  "maker.coloursHow":
    "sRGB en octets ; CIELAB sous D65 ; réflectance d’une étoffe dont la teinture répond à l’écran, entre l’étoffe noire et l’étoffe blanche de la galerie.",
  "maker.source": "Sources : IEC 61966-2-1 (sRGB), CIE 15:2004 (CIELAB).",
  "maker.cautions": "Avant de le fabriquer",
  "maker.law":
    "Le droit local prime : sur l’aspect d’un drapeau, sur qui peut le fabriquer et sur qui peut l’arborer.",
  "maker.cloth":
    "Les nuanciers d’étoffes et de teintures font foi. Une couleur d’écran n’est pas une teinture : choisissez sur un nuancier, à la lumière du jour, et gardez entre les couleurs l’écart de clarté qu’elles ont ici.",
  "maker.file": "Là où cette fiche et le fichier du dessin diffèrent, le fichier fait foi.",

  // map: the edge map.
  "map.caption":
    "Les lignes où deux couleurs se touchent, relevées à la distance d’observation. Les traits pleins sont des limites nettes ou fortes, les traits discontinus ne le sont pas.",
  "map.bandNote": "La bande entoure ce qui doit se voir.",
  "map.title": "Carte des limites",
  "map.focusFound": "ce qui doit se voir, trouvé : {share} du drapeau",
  "map.focusNamed": "ce qui doit se voir, désigné par l’auteur : {share} du drapeau",
  "map.none": "Aucune limite.",
  "map.firstGrade": "{grade}, {share} de la longueur totale des limites : {names}.",
  "map.grade": "{grade}, {share} : {names}.",

  // mark: the marks of a flag.
  "mark.clarity": "Netteté",
  "mark.contrast": "Contraste",
  "mark.length": "Longueur",
  "mark.near": "au seuil",
  "mark.nearNow": "au seuil désormais",
  "mark.nearBefore": "au seuil auparavant",
  "mark.hue": "par la teinte seule",
  "mark.hueNow": "par la teinte seule désormais",
  "mark.hueBefore": "par la teinte seule auparavant",
  "mark.clarityMeans": "100 % quand chaque limite est nette",
  "mark.focusClarity": "Netteté de ce qui doit se voir",
  "mark.focusMeans": "les limites de l’emblème seules",
  "mark.weakest": "Limite la plus faible",
  "mark.weakestMeans": "contraste des deux couleurs",
  "mark.price": "Le prix",
  "mark.sameEdge": "la même limite",

  // matrix: the matrix of all single changes.
  "matrix.notTried": "non essayé",
  "matrix.own": "cette étude",
  "matrix.note": "note {number}",
  "matrix.merges": "se fond",
  "matrix.notRanked": "non classé",
  "matrix.clearest": "le plus net de la ligne",
  "matrix.title": "Chaque changement d’une couleur",
  "matrix.ownHue": "sa propre teinte",
  "matrix.studys": "{name} de l’étude",
  "matrix.unranked": "non classé : {share} du contour d’un meuble se fondent",
  "matrix.moreColours":
    "{count, plural, one {# autre couleur du drapeau} other {# autres couleurs du drapeau}}",
  "matrix.moreReplacements": "{count, plural, one {# autre remplacement} other {# autres remplacements}}",
  "matrix.reading": "Une ligne change une couleur du drapeau, une colonne dit en laquelle.",
  "matrix.readingBlocks":
    "Chaque bloc change une couleur du drapeau ; au-dessus de chaque chiffre, on lit en laquelle.",
  "matrix.clarity": "Sous chaque drapeau, sa netteté.",
  "matrix.clarityToday": "Sous chaque drapeau, sa netteté ; l’original a {today}.",
  "matrix.bold": "En gras : le plus net de la ligne, plusieurs s’ils sont aussi nets.",
  "matrix.mergesNote": "« Se fond » : deux couleurs n’en font plus qu’une.",
  "matrix.greyNote": "« Non classé » : un tiers ou plus du contour d’un meuble se fondrait.",
  "matrix.dash": "Un tiret : non essayé, ou sans changement visible.",
  "matrix.partAlone": "Le changement de cette étude ne porte que sur une partie et n’y figure pas.",
  "matrix.left": "Non montré : {what}.",

  // method: the method page's opening, headings and figures.
  "method.title": "Méthode",
  "method.description":
    "Comment est établi chaque chiffre de ces pages : formules, sources, degrés, résultats, précautions.",
  "method.lede": "Comment est établi chaque chiffre de la galerie.",
  "method.ledeShown":
    "Comment est établi chaque chiffre de la galerie, sur l’exemple d’un drapeau : <a>{name}</a>.",
  "method.count": "Les petits caractères à côté de chaque étape disent d’où viennent ses chiffres.",
  "method.contents": "Sur cette page",
  "method.edges": "Limites",
  "method.distance": "Distance",
  "method.lasting": "De loin",
  "method.reflectance": "Réflectance",
  "method.contrast": "Contraste et degré",
  "method.numbers": "Netteté",
  "method.outcomes": "Résultat et verdict",
  "method.words": "Les mots",
  "method.options": "Autres changements d’une couleur",
  "method.survey": "Le recensement",
  "method.likeness": "Pourrait-on le confondre ?",
  "method.beside": "Autres mesures",
  "method.facts": "Faits",
  "method.vision": "Pour les lecteurs daltoniens, et en gris",
  "method.cautions": "Précautions",
  "method.inCloth": "étoffe",
  "method.inHigh": "haut",
  "method.inLow": "bas",
  "method.ofContrast": "contraste",
  "method.ofCount": "compte",
  "method.ofClarity": "netteté",
  "method.ofWeight": "poids",
  "method.figure": "{name} : <number>{value}</number>",
  "method.figureOfChange": "<change></change> : <number>{value}</number>",
  "method.labels": "Numéros",
  "method.labelsShown": "{name}, chaque couleur en un gris qui lui est propre.",
  "method.traced":
    "Chaque couleur par son numéro, montrée en gris ; et les lignes où deux se touchent, discontinues là où la limite n’est pas nette.",
  "method.marked": "La bande suit {focus}.",
  "method.afarFigure":
    "À {distance, plural, one {# hauteur de drapeau} other {# hauteurs de drapeau}} : <number>{clarity}</number>",
  "method.afarShown":
    "{name} à {distance, plural, one {# hauteur de drapeau} other {# hauteurs de drapeau}}.",
  "method.afarNote": "Agrandi, avec la netteté de ce qui doit se voir.",
  "method.cloth": "{name} : luminance, et réflectance en pour cent",
  "method.sumTitle": "{name} : la netteté comme somme, {clarity}",
  "method.sumBar": "{names} : {share} du poids total, compte pour {counts}",
  "method.sumAll": "{bars}.",
  "method.sumNote":
    "Une surface par limite, aussi large que son poids et remplie pour autant qu’elle compte : {clarity} en tout.",
  "method.changeTo": "<a>Le changement apporté à {name}</a> : anneau avant, point après",
  "method.visionNote": "La netteté du drapeau entier.",
  "method.visionShown": "{heading} : {looks}.",
  "method.saidNote": "Ce que dit la page <a>{name}</a>.",
  "method.optionNote": "Le meilleur changement de chaque couleur, avec la netteté qu’il apporte.",
  "method.placedNote": "{name} dans le recensement, avec ses voisins et leur netteté.",

  // methodbeyond: the steps of the method beyond one comparison. `em` is an emphasised term, `i` the title of a paper.
  "method.optionsText":
    "Chaque couleur de plus de 0,4 % du drapeau est remplacée, une à la fois : par chaque couleur de la palette de la galerie, par chaque autre couleur du drapeau, et par sa <em>teinte gardée</em>, la même teinte assez éclaircie ou foncée pour apporter {keptHue} de contraste avec les voisines dont elle n’est pas nettement séparée. Aucun degré ne doit baisser pour cela, et la couleur garde sa famille : un rose n’est pas un rouge. En deçà de ΔE*ab {departure} rien n’est un changement, car les drapeaux officiels d’une même nation diffèrent d’autant.",
  "method.optionsOrder":
    "Le plus net vient d’abord, puis le plus fort, la même famille, le plus petit écart. Ce qui fond un tiers du contour d’un meuble n’a pas de rang. Les <em>couleurs à changer d’abord</em> sont au plus les {mostFirst} dont le meilleur remplacement vient à moins de {firstWithin} points du meilleur de tous, si celui-ci en gagne {leastGain} ; sans un tel gain, un drapeau de {wholeClear} est net tel qu’il est. Lequel est le plus beau, c’est à l’auteur de le dire.",
  "method.optionsSource":
    "ΔE*ab {departure} : Melgosa et Gómez-Robledo, <i>Óptica Pura y Aplicada</i> 55(2), 2022, qui le proposent ; résumé lu. Clarté de la teinte gardée : <ottosson>Ottosson, 2020</ottosson>. Notre propre jugement : tous les autres chiffres, et l’ordre.",
  "method.surveyText":
    "Le <a>recensement</a> mesure chaque drapeau tel qu’il est aujourd’hui, une fois chacun, quel que soit le nombre de ses études. Le moins net vient d’abord, un drapeau d’une seule couleur en dernier. Un mauvais rang ne dit pas qu’un drapeau devrait changer, ni un bon rang qu’il est bon.",
  "method.surveySource": "Notre propre jugement : l’ordre.",
  "method.likenessText":
    "Un drapeau plus net peut être celui d’un voisin. Chaque nouveau dessin est donc posé sur chaque autre drapeau et nouveau dessin connus ici, sauf son original et les autres propositions pour lui. Les deux sont divisés en {columns} sur {rows} cases de couleur moyenne, comme étoffe, et le chiffre est le ΔE00 moyen des cases : 0 est la même image, et une case qui manque à l’un compte 100. L’autre est essayé aussi en miroir et tête en bas. Au-dessous de {threshold}, l’étude le dit.",
  "method.likenessCare":
    "Les grands champs comptent beaucoup et les petits meubles peu : un petit chiffre est une raison de regarder, et ne prouve rien de son origine. Les dessins gardés pour cela seul sont nommés et non montrés : nous n’avons pas à présumer de leur licence.",
  "method.likenessSource":
    "Notre propre jugement : la grille, la moyenne et {threshold}. Sur les 36 585 paires d’une collection ouverte, 144 sont plus proches, dont 50 sont un même drapeau sous deux noms ; la moitié est à plus de 36.",
  "method.visionText":
    "Beaucoup de gens ont des yeux privés d’une des trois sortes de cônes. Nous recolorons les deux dessins tels que ces yeux les voient, et en gris, et les mesurons de nouveau. Le gris garde chaque contraste ; nous y disons donc de combien diffèrent les deux gris les plus proches.",
  "method.visionSource":
    "Protan, deutan : Machado, Oliveira, Fernandes, <machado>2009</machado>, sévérité 1, en lumière linéaire, ce que l’article ne dit pas clairement. Tritan, que ce modèle n’atteint pas : Brettel, Viénot, Mollon, 1997. Matrices lues dans des réalisations publiées.",
  "method.cautionProposal":
    "Chaque nouveau dessin est une proposition et non un drapeau en usage, à moins que sa décision ne le dise.",
  "method.cautionLaw":
    "Les lois sur les drapeaux diffèrent. Suivez celles de votre pays avant de fabriquer, modifier ou arborer quoi que ce soit de montré ici, et respectez la licence de chaque dessin.",
  "method.cautionEyes":
    "Les images pour d’autres yeux sont des approximations, et non un test de la vue de quiconque.",
  "method.cautionWorth":
    "Le contraste ne dit pas si un drapeau est bon, ce qu’il signifie, ni à qui il appartient.",
  "method.cautionDistance":
    "La distance est un modèle : la brume, l’éblouissement et le vent raccourcissent toute distance.",
  "method.cautionCloth":
    "Les chiffres valent pour le dessin à la lumière du jour. Les teintures diffèrent, et l’étoffe passe, se mouille et fait des plis.",

  // methodgrade: the steps of the method that decide a grade. `em` is an emphasised term, `i` the title of a paper.
  "method.reflectanceText":
    "Un nombre d’écran dit combien de lumière donne une couleur. Nous prenons sa luminance, de 0 à 1, en lumière linéaire :",
  "method.reflectanceCloth":
    "Une étoffe n’est jamais tout à fait noire ni tout à fait blanche, et d’après les nombres d’écran deux couleurs foncées semblent plus faciles à distinguer qu’elles ne le sont. La luminance est donc placée entre l’étoffe la plus noire et la plus blanche, en pour cent :",
  "method.reflectanceRanges":
    "Les matériaux de construction vont d’environ {black} à {white}, les peintures d’un fabricant de {paintBlack} à {paintWhite}. Un degré que l’intervalle plus large changerait est marqué <em>au seuil</em>. Là où une loi fixe l’étoffe, une galerie met 0 et 100, et alors {laws}.",
  "method.law": "{first} sur {second} a un contraste de {contrast}, limite {grade}",
  "method.lawColour": "{colour} {reflectance}",
  "method.near": "Au seuil : étoffe de {black} à {white} (anneau) et de {paintBlack} à {paintWhite} (point)",
  "method.reflectanceSource":
    "Luminance : <wcag>WCAG 2.2</wcag>. sRGB : IEC 61966-2-1. Intervalles : des pages sur les matériaux de construction, le nuancier d’un fabricant de peintures ; lois : telles que d’autres les rapportent ; le tout de seconde main. La droite du noir au blanc : sans source. Notre propre jugement : au seuil.",
  "method.contrastText":
    "Le contraste compare la lumière que rendent deux couleurs. Il est de 0 % quand toutes deux en rendent autant, et d’autant plus grand qu’elles s’écartent davantage :",
  "method.contrastTable": "Ce dont les personnes malvoyantes ont au moins besoin",
  "method.contrastWeak": "moins de 30 %",
  "method.contrastSoft": "de 30 à moins de 45 %",
  "method.contrastClear": "de 45 à moins de 60 %",
  "method.contrastStrong": "60 % et plus",
  "method.needsWeak": "au-dessous de tout palier",
  "method.needsSoft": "grands éléments de bâtiment",
  "method.needsClear": "petits objets isolés : les meubles",
  "method.needsStrong": "petits objets en deux couleurs",
  "method.contrastClose":
    "Un meuble est un petit objet isolé : une limite est donc nette à partir de 45 %. L’exemple publié avec la formule, {reflectances}, a {published} ; ici {computed}.",
  "method.pairs": "Ce que donnent les paires usuelles ; repères à 30, 45 et 60 %",
  "method.pair": "Paire",
  "method.pairContrast": "Contraste",
  "method.pairScale": "Sur une échelle de 0 à 100 pour cent",
  "method.pairRatio": "Rapport",
  "method.contrastSource":
    "Bowman et Sapolinski : AS 1428.1:2009, annexe B ; AS/NZS 1428.4.1, annexe E ; de seconde main. Le pourcentage ne se compare à aucune autre échelle : Boon et autres, <i>Work</i> 70(4), <boon>2021</boon>. Notre propre jugement : qu’un meuble est un petit objet isolé ; les nuances des paires. Quelles paires se lisent nettement : usage courant, sans source.",
  "method.besideText":
    "Trois autres mesures accompagnent le contraste, et aucune ne décide. Le <em>rapport de contraste</em> du web est fait pour les écrans : {first} sur {second} y atteint les 3 pour 1 demandés, et pourtant aucun observateur de drapeaux n’y voit une paire facile à lire. <em>ΔE00</em> dit combien deux couleurs paraissent différentes, teinte comprise. La troisième est la <a>règle de contrariété des couleurs</a>.",
  "method.besidePair":
    "{first} / {second} : rapport de contraste <number>{ratio}</number>, ΔE00 <number>{deltaE00}</number>, contraste <number>{contrast}</number>, limite {grade}",
  "method.besideSource":
    "WCAG 2.2, <ratio>rapport</ratio> et <objects>1.4.11</objects>. Sharma, Wu, Dalal, <sharma>CIEDE2000</sharma>, 2005 ; leurs 34 paires d’essai éprouvent ce programme. Que le rouge sur noir soit difficile à voir : usage courant, sans source.",

  // methodsight: the steps of the method from a drawing to its lines. `em` is an emphasised term, `i` the title of a paper.
  "method.edgesText":
    "Nous dessinons le drapeau haut de {pixels} pixels, moins s’il est très large, et numérotons ses couleurs. Nous relevons la ligne partout où deux d’entre elles se touchent. Toutes les lignes entre les deux mêmes couleurs font une <em>limite</em> ; sa longueur se dit en hauteurs du drapeau : au travers d’un drapeau 2:3, elle est de 1,5.",
  "method.edgesLimits":
    "Le bord du drapeau n’est pas une limite. Une forme qui se voit à moins de la moitié de sa force (opacité 0,4) est laissée de côté ; toute autre compte comme opaque. Une limite de moins de {edge} de la longueur totale est citée, mais n’est jamais la plus faible et ne change aucun verdict.",
  "method.edgesSource":
    "Vérifié sur des drapeaux dont une loi fixe la géométrie : les parts concordent à 0,2 point près, les longueurs à 1 %, avec des pointes fines à 3 %. Notre propre jugement : la taille de l’image, la moitié de la force, {edge} de toute la longueur.",
  "method.distanceText":
    "Un drapeau est fait pour être vu de loin. Cette galerie mesure à {distance, plural, one {# hauteur de drapeau} other {# hauteurs de drapeau}} ; de là, la partie la plus fine qu’un œil distingue, une minute d’arc, est de {finest} d’une hauteur de drapeau. Les parties plus fines sont attribuées à leurs voisines avant le relevé des limites : un contour mince disparaît, un large reste. Une partie à moins de 10 % de ce seuil donne un avertissement.",
  "method.distanceNone":
    "Cette galerie mesure le dessin entier. À une distance, qu’elle peut choisir, les parties trop fines pour être distinguées vont à leurs voisines.",
  "method.distanceFocus":
    "<em>Ce qui doit se voir</em>, ce sont les meubles : des parties qui ne touchent aucun bord, avec tout ce qu’elles enferment, et qui remplissent 0,2 % du drapeau ou plus. Au-delà de 35 %, elles font un champ encadré, et nous regardons à l’intérieur ; le trou d’un anneau n’en est pas un. Un morceau d’un dixième de cette surface est un <em>meuble</em> à part. Les auteurs peuvent le désigner eux-mêmes, et le doivent là où un meuble se fond dans un champ de sa propre couleur, car nous ne devinons pas. Un drapeau sans meuble n’en est pas moins bon.",
  "method.distanceSame":
    "Une couleur à moins de {same} d’une plus étendue (<a>ΔE00</a>) compte avec elle. Les parts des couleurs valent pour le dessin entier.",
  "method.distanceSource":
    "Une minute d’arc : acuité de 10/10, ISO 8596, de seconde main. C’est un modèle : une ligne forte et isolée peut encore se remarquer. Notre propre jugement : la distance et tous les pourcentages, ΔE00 {same}, le dixième.",
  "method.lastingText":
    "À chaque distance nous posons deux questions. Ce qui doit se voir est-il net ? Ses propres limites y ont une <a>netteté</a>. Est-il assez grand ? Il doit rester au moins {left} de sa surface, et son plus grand morceau doit couvrir {span} minutes d’arc, comme une lettre que lit une acuité de 10/10.",
  "method.lastingLast":
    "Il <em>tient jusqu’à</em> la dernière distance à laquelle il est assez grand. C’est affaire de taille : aucun changement de couleur n’y fait rien. Les images sont floues comme l’œil les voit ; aucun chiffre n’en est tiré.",
  "method.lastingTable": "Ce qu’une distance fait d’un drapeau, en pour cent de sa hauteur",
  "method.lastingFrom": "Hauteurs de drapeau",
  "method.lastingFinest": "Partie la plus fine",
  "method.lastingBlur": "Flou",
  "method.lastingSource":
    "{span} minutes d’arc : ISO 8596, de seconde main. Notre propre jugement : les {left}, et d’exiger {span} minutes d’arc du plus grand morceau. Flou, 0,5 minute d’arc d’écart type : Levi et autres, <i>Vision Research</i> 30, 1990, <levi>résumé</levi> ; une gaussienne n’est pas une lentille : Strasburger et autres, <strasburger>2018</strasburger>.",

  // methodterm: the definitions of the method. `em` is an emphasised term, `i` the title of a book; `move` stands for an
  "method.numbersText":
    "Une limite compte dans la mesure où son contraste approche de {clear}, et pleinement à partir de là : 30 / 45 = 67 %. La netteté est la moyenne de toutes les limites, chacune pesée par sa longueur et, une fois encore, par la partie qui borde ce qui doit se voir :",
  "method.numbersClose":
    "Un drapeau dont toutes les limites sont nettes a donc 100 %, et une longue limite faible coûte plus qu’une courte. Un drapeau d’une seule couleur n’a ni limite ni netteté.",
  "method.numbersSource": "Notre propre jugement : la somme, et que ce qui doit se voir compte double.",
  "method.strength": "Force",
  "method.strengthMeans": "la même somme jusqu’à {strong} ; elle ordonne ce que la netteté laisse à égalité",
  "method.weakest": "Limite la plus faible",
  "method.weakestMeans": "la limite de moindre contraste, les plus courtes laissées de côté",
  "method.clearShare": "Part des limites nettes",
  "method.clearShareMeans":
    "la part de longueur nette ou forte ; elle saute à un seul palier, elle ne décide donc de rien",
  "method.outcomesText": "Ce qu’un changement fait d’une limite :",
  "method.gained": "Gagnée, perdue",
  "method.gainedMeans":
    "elle devient nette, ou ne l’est plus, et bouge de {contrastStep} points ou plus : <move></move>",
  "method.better": "Meilleure, pire",
  "method.betterMeans":
    "elle bouge d’autant sans devenir nette ni cesser de l’être : <move></move> ; rien ne compte au-dessus de {strong}",
  "method.same": "Égale",
  "method.sameMeans": "elle bouge de moins : <move></move>",
  "method.merged": "Fondue",
  "method.mergedMeans": "ses deux couleurs viennent si près l’une de l’autre qu’elles comptent pour une",
  "method.parted": "Séparée",
  "method.partedMeans": "elle est nouvelle, parce qu’une partie seulement d’une couleur a changé",
  "method.outcomesPrice":
    "Le <em>prix</em> d’un changement, ce sont les limites perdues, pires, fondues, ou séparées sans être nettes. Le verdict suit la netteté en pour cent entiers et, à égalité, la force :",
  "method.clearer": "Plus net",
  "method.clearerMeans":
    "en hausse de {leastMove, plural, one {# point} other {# points}} ou plus, sans prix : <move></move>",
  "method.atAPrice": "Plus net, mais à un prix",
  "method.atAPriceMeans": "en hausse de {largeMove} points ou plus, le prix dit avec elle : <move></move>",
  "method.lessClear": "Moins net",
  "method.lessClearMeans":
    "en baisse de {largeMove} points ou plus : <move></move> ; ou de {leastMove} sans rien de gagné, de meilleur, ni de séparé et net",
  "method.mixed": "Partagé",
  "method.mixedMeans": "des gains et un prix, la netteté entre les deux : <move></move>",
  "method.noGain": "Sans gain",
  "method.noGainMeans": "chaque limite reste égale, ou rien de ce qui précède ne convient",
  "method.outcomesSource":
    "Notre propre jugement : les paliers de {contrastStep}, {leastMove} et {largeMove} points. Une limite fondue garde sa longueur, car les formes restent, et compte pour un contraste de 0 %. Les chiffres montrés sont arrondis, ceux qui décident ne le sont pas.",
  "method.wordsText":
    "Les phrases se composent selon des règles, à partir des seuls chiffres et noms de la page. Elles parlent d’abord de ce qui doit se voir, et des limites faibles avant les fortes. Un <em>liseré</em> est une ligne étroite d’une troisième couleur qui en sépare deux autres ; tant qu’on le voit, ses propres limites comptent, et les mots disent ce qu’il fait pour la paire.",
  "method.wordsSource":
    "Ce qu’est un liseré : usage courant, sans source. Notre propre jugement, à quoi nous le reconnaissons : une largeur moyenne de moins de 8 % de la hauteur du drapeau, deux côtés de longueurs égales à un tiers près, entre des couleurs qui se touchent sur un cinquième au plus.",
  "method.hue": "La teinte seule",
  "method.hueMeans":
    "faible avec un ΔE00 de 20 ou plus, et de moins de 10 en gris : disparaît au crépuscule, à l’impression en gris et pour bien des yeux daltoniens",
  "method.tincture": "Émail",
  "method.tinctureMeans":
    "ni métal (blanc, jaune) sur métal, ni couleur (rouge, bleu, vert, noir, violet) sur couleur. Exempts : les parties du champ qui touchent toutes deux le bord, les liserés ; les fourrures aussi, non reconnues ici",
  "method.colours": "Couleurs",
  "method.coloursMeans":
    "celles de plus de 0,5 % de la surface, les nuances voisines comptant pour une ; les guides en conseillent deux ou trois",
  "method.factsSource":
    "A. C. Fox-Davies, <i>A Complete Guide to Heraldry</i>, 1909, chapitre VII ; exemptions : usage courant, sans source. <good>Good Flag, Bad Flag</good>, North American Vexillological Association, 2006, troisième principe ; <i>Guiding Principles of Flag Design</i>, Joint Commission on Vexillographic Principles, 2014, 3.1. Notre propre jugement : la teinte seule, les 0,5 %.",

  // metric: the measures of an edge.
  "metric.contrastRatio": "Rapport de contraste",
  "metric.deltaE00": "Écart de couleur, ΔE00",
  "metric.hueOnly": "Seule la teinte diffère",
  "metric.tincture": "Règle de contrariété",
  "metric.tinctureMeans": "ni métal sur métal, ni couleur sur couleur",
  "metric.yes": "oui",
  "metric.no": "non",
  "metric.bothMetals": "métal sur métal",
  "metric.bothColours": "couleur sur couleur",
  "metric.noObjection": "pas contraire",

  // move: from one value to another.
  "move.to": "à",
  "move.row": "{name} : {before} → {after}",

  // moved: pages at addresses whose own page has gone; a heading, and what stands below it.
  "moved.moved": "Cette page a changé d’adresse",
  "moved.movedTo": "Elle est maintenant à une autre adresse.",
  "moved.near": "Cette page n’est plus ici",
  "moved.nearTo": "Ce qui en est le plus proche :",
  "moved.edge": "Cette limite n’est plus dans l’étude",
  "moved.edgeTo": "Des couleurs du dessin ont changé depuis. La limite aux couleurs les plus proches :",
  "moved.withdrawn": "Retirée",
  "moved.withdrawnHow": "Ce qui se trouvait à cette adresse n’est plus publié.",
  "moved.absent": "Cette étude n’est pas montrée pour le moment",
  "moved.absentHow": "Elle est dans le dossier de la galerie et reviendra à cette adresse.",
  "moved.claimed": "Cette étude a une autre adresse",
  "moved.claimedBy": "Plus d’une étude dit avoir été ici :",
  "moved.claimedByHidden":
    "Plus d’une étude dit avoir été ici, et l’une d’elles au moins n’est pas montrée pour le moment. Celles qui le sont :",
  "moved.lastGood":
    "Cette étude n’a pas pu être établie à partir de ce que contient son dossier. Voici la dernière page qu’elle a eue.",

  // near: whether a redesign could be mistaken for another flag.
  "near.beside": "À côté des drapeaux dont il est le plus proche",
  "near.hidden": "{name}, non montré ici",
  "near.scale":
    "ΔE00 moyen sur tout le drapeau, comme étoffe : 0 est la même image. <how>Comment se mesure la ressemblance</how>",
  "near.redesign": "le nouveau dessin « {study} »",

  // number: what stands where there is no number.
  "number.noEdges": "aucune limite",
  "number.move": "de {was} à {is}",
  "number.noEmblem": "aucun emblème trouvé",

  // options: other single changes of a flag.
  "options.caption": "Le meilleur remplacement de chaque couleur",
  "options.byColour": "Le meilleur pour chaque couleur",
  "options.all": "Tous à la fois",
  "options.how":
    "Chaque couleur du drapeau est essayée avec la palette, avec les autres couleurs du drapeau et avec la nuance nette la plus proche de sa propre teinte. Ils suivent leurs chiffres ; à l’auteur de dire lequel est le plus beau. <how>Comment se classent les changements</how>",
  "options.tried": "Aussi essayés par l’auteur",
  "options.changed": "Couleur changée",
  "options.best": "Meilleur remplacement",
  "options.ofFocus": "De ce qui doit se voir",
  "options.worse": "Ce qui y perd",
  "options.share": "{share} du drapeau",
  "options.none": "Aucun qui laisse à chaque meuble son contour.",
  "options.bestLabel": "Meilleur :",
  "options.worseLabel": "Y perd :",
  "options.nothing": "Rien.",
  "options.beside": "à côté de <study>{title}</study>",
  "options.title": "Autres changements d’une couleur",
  "options.titleOf": "Autres changements d’une couleur, {study}",
  "options.description": "Tout autre changement d’une couleur à côté de {title}, mesuré.",
  "options.standing": "Cette étude : {standing}",
  "options.whole": "L’original a une netteté de {clarity} : aucun changement ne peut l’accroître.",
  "options.clearest": "Le plus net, {was} en {is}, atteint {clarity}.",
  "options.clearestTried": "Le plus net, {was} en {is}, essayé par l’auteur, atteint {clarity}.",
  "options.clearestTriedInPart":
    "Le plus net, {was} en {is} dans {part}, essayé par l’auteur, atteint {clarity}.",
  "options.clearerTried": "Essayé par l’auteur, {is} à la place de {was} atteint {clarity}.",
  "options.clearerTriedInPart":
    "Essayé par l’auteur, {is} à la place de {was} dans {part} atteint {clarity}.",
  "options.onePart": "une partie",
  "options.noneLevel": "Aucun changement n’aide ; aussi nets qu’aujourd’hui :",
  "options.noneNearest": "Aucun changement n’aide ; le plus proche :",
  "options.triedHas": "{name}, essayé par l’auteur, a {clarity}",
  "options.option": "Variante",
  "options.triedAlt": "Le drapeau où {is} remplace {was}",
  "options.triedAltInPart": "Le drapeau où {is} remplace {was} dans {part}",
  "options.changeInPart": "{before} devient {after} dans {part}.",
  "options.figure": "Netteté {clarity}",
  "options.figureAndFocus": "Netteté {clarity}, de ce qui doit se voir {focus}",
  "options.strengthRises":
    "la netteté ne bouge pas, mais la force, ce dont les limites dépassent le net, monte de {was} à {is}",
  "options.strengthFalls":
    "la netteté ne bouge pas, mais la force, ce dont les limites dépassent le net, baisse de {was} à {is}",
  "options.verdict": "{verdict}.",
  "options.verdictWhy": "{verdict} : {why}.",

  // otherchange: other single changes of a flag, which colour to change first, and what was not tried.
  "otherChange.another": "un autre {name}",
  "otherChange.equal": "{count, plural, one {{names} fait aussi bien} other {{names} font aussi bien}}",
  "otherChange.equalShort": "{names} aussi",
  "otherChange.others": "{count, plural, one {# autre} other {# autres}}",
  "otherChange.lost": "Plus difficile à voir contre {names}.",
  "otherChange.worse": "Moins net contre {names}.",
  "otherChange.merged": "Une seule couleur avec {names}.",
  "otherChange.outlineMerges": "{share} du contour se fondent.",
  "otherChange.confusable": "Se prend pour une couleur du drapeau : {names}.",
  "otherChange.confused": "Les yeux {sights} y voient : {name}.",
  "otherChange.protan": "protans",
  "otherChange.deutan": "deutans",
  "otherChange.tritan": "tritans",
  "otherChange.fromTo": "{before} en {after}",
  "otherChange.unranked":
    "{count, plural, one {Non classé : {changes} ; un tiers ou plus du contour d’un meuble s’y fondrait.} other {Non classés : {changes} ; dans chacun, un tiers ou plus du contour d’un meuble se fondrait.}}",
  "otherChange.place":
    "{clearer, plural, =0 {Aucun des {total} changements d’une couleur n’est plus net.} one {Sur {total} changements d’une couleur, # est plus net.} other {Sur {total} changements d’une couleur, # sont plus nets.}}",
  "otherChange.noneTried": "Aucune des couleurs n’a pu être essayée.",
  "otherChange.allMerge": "Chaque changement essayé fond un tiers ou plus du contour d’un meuble.",
  "otherChange.clear": "Le drapeau est net tel qu’il est, avec une netteté de {clarity}.",
  "otherChange.clearAndNone":
    "Le drapeau est net tel qu’il est, avec une netteté de {clarity} : aucun changement d’une couleur n’apporte cinq points de plus.",
  "otherChange.none":
    "Le drapeau a une netteté de {clarity}, et aucun changement d’une couleur n’apporte cinq points de plus.",
  "otherChange.detail": "Le drapeau dans son ensemble est net, à {clarity} ; seul un détail y gagne.",
  "otherChange.first":
    "À changer d’abord : {colour} ({share} du drapeau). Avec {best} à sa place, la netteté monte de {from} à {to}.",
  "otherChange.firstAlike":
    "{best} à la place de {colours}, ou de {last}, fait monter la netteté de {from} à {to}.",
  "otherChange.firstOfSeveral": "À changer d’abord : {colours} ou {last} ; {moves}.",
  "otherChange.shareFirst": "{colour} ({share} du drapeau)",
  "otherChange.share": "{colour} ({share})",
  "otherChange.moveFirst": "si {best} remplace {colour}, la netteté monte de {from} à {to}",
  "otherChange.move": "si {best} remplace {colour}, à {to}",
  "otherChange.mostGained":
    "Le plus grand gain est là où se touchent {colour} et {other} (contraste {contrast} aujourd’hui).",
  "otherChange.uneven": "Couleur inégale, donc non essayée : {names}.",
  "otherChange.unseen":
    "{distance, plural, one {Invisible à # hauteur de drapeau, donc non essayé : {names}.} other {Invisible à # hauteurs de drapeau, donc non essayé : {names}.}}",
  "otherChange.shared":
    "Visible aussi en transparence, dans un dégradé ou un motif, que les chiffres laissent tels quels : {names}.",
  "otherChange.largest":
    "{all, plural, one {# couleur} other {# couleurs}} : seulement {tried, plural, one {la plus étendue a été essayée} other {les # plus étendues ont été essayées}}, avec les couleurs les unes des autres.",
  "otherChange.palette":
    "{all, plural, one {La palette a # couleur} other {La palette a # couleurs}} : {tried, plural, one {la première a été essayée.} other {les # premières ont été essayées.}}",

  // outcome: what becomes of an edge, as a word in tables.
  "outcome.gained": "gagnée",
  "outcome.lost": "perdue",
  "outcome.better": "meilleure",
  "outcome.worse": "pire",
  "outcome.same": "égale",
  "outcome.merged": "fondue",
  "outcome.parted": "séparée",

  // ownpage: what stands around the pages that a gallery writes itself.
  "ownPage.pages": "Pages",
  "ownPage.pagesOf": "Pages : {gallery}.",
  "ownPage.beside": "Pages voisines",
  "ownPage.next": "Suite : <a>{title}</a>",

  // paging: the ways between the pages of a long list.
  "paging.ways": "Pages de cette liste",
  "paging.place": "Page {number} sur {count}",
  "paging.title": "{title}, page {number} sur {count}",
  "paging.onward": "{place}. <next>suivante</next>, <last>dernière</last>",
  "paging.both":
    "{place}. <first>Première</first>, <previous>précédente</previous>, <next>suivante</next>, <last>dernière</last>",
  "paging.back": "{place}. <first>Première</first>, <previous>précédente</previous>",

  // pair: both flags of a study, and what swaps them.
  "pair.swap": "Alterner sur place",
  "pair.both": "Montrer les deux",
  "pair.pressFlag": "Appuyez sur un drapeau",
  "pair.orKey": "ou une flèche du clavier, ou",
  "pair.pressKey": "Appuyez sur une flèche du clavier, ou",
  "pair.bothShown": "Les deux drapeaux montrés",
  "pair.shownAlone": "{name}, seul",
  "pair.split": "Moitié original, moitié nouveau dessin",

  // part: the page by which readers propose a study, with the words of its script and of the letter.
  "part.link": "Proposer une étude",
  "part.title": "Proposer une étude",
  "part.description":
    "Comment proposer à cette galerie une étude de drapeau redessiné : deux fichiers, et une lettre pour les envoyer.",
  "part.lede":
    "Une étude est un dossier de deux fichiers : le dessin d’un drapeau, et un texte qui nomme un changement de couleur et le défend. Il n’y faut ni compte ni programme.",
  "part.files": "Les deux fichiers",
  "part.drawing":
    "Le drapeau tel qu’il est, dessiné en SVG, 512 Ko au plus. Les images en pixels et les photographies ne peuvent être recolorées.",
  "part.textFile": "Du texte simple : ce qui change, et pourquoi.",
  "part.study":
    "Entre les deux lignes de tirets viennent le titre, la couleur remplacée et celle qui prend sa place ; en dessous, vos raisons.",
  "part.credit":
    "Si le dessin n’est pas de vous, dites de qui il est et sous quelle licence, par une ligne comme celle-ci, au-dessus de la seconde ligne de tirets :",
  "part.template": "Le texte",
  "part.sampleTitle": "Une roue plus claire",
  "part.sampleFlag": "Le drapeau du bac",
  "part.sampleWhy": "Pourquoi ce changement, ce qu’on ne voyait pas auparavant, et ce qu’il coûte.",
  "part.send": "L’envoyer",
  "part.sendByMail": "Joignez le dessin à la lettre : aucune page ne peut le faire pour vous.",
  "part.sendAtForm": "Joignez-y le dessin si les fichiers sont acceptés, ou dites où le trouver.",
  "part.letter": "Écrire la lettre",
  "part.byMail": "par courriel à {address}, texte compris.",
  "part.atForm": "sur {host}, texte compris.",
  "part.atFormEmpty": "sur {host} ; copiez d’abord le texte.",
  "part.subject": "Une étude pour {gallery}",
  "part.try": "Essayer un changement",
  "part.private": "Le dessin reste sur votre ordinateur : cette page n’envoie rien et ne retient rien.",
  "part.choose": "Choisir un dessin (SVG)",
  "part.tooBig": "Ce fichier dépasse 512 Ko, la taille maximale d’un dessin.",
  "part.broken":
    "Ce fichier ne peut être lu comme dessin SVG. Enregistrez-le de nouveau en SVG simple, et choisissez ce fichier.",
  "part.endless": "Ce dessin est trop grand pour être montré ici, ou renvoie sans fin à lui-même.",
  "part.colourless": "Aucune couleur à remplacer n’a été trouvée dans ce dessin.",
  "part.chosen": "Le dessin est montré plus bas, avec ses couleurs.",
  "part.replace": "Remplacer",
  "part.palette": "par une couleur de la galerie",
  "part.typed": "ou par une autre, à saisir",
  "part.unknown": "Ce n’est pas une couleur qui cache ce qui est derrière. Saisissez par exemple #f4c430.",
  "part.same": "C’est la couleur qui y est déjà.",
  "part.before": "Avant",
  "part.after": "Après",
  "part.beforeShown": "Le dessin tel qu’il est",
  "part.afterShown": "Le dessin avec le changement",
  "part.pairs": "Contraste de ses couleurs",
  "part.pair": "Paire",
  "part.rough":
    "Ce sont des valeurs approchées pour chaque paire de couleurs, qu’elles se touchent ou non. La galerie mesure les limites mêmes, avec leurs longueurs, et regarde à distance ; ses chiffres font foi.",
  "part.more": "Seules les douze premières couleurs sont comparées ici.",
  "part.text": "Votre texte",
  "part.textTitle": "Titre de l’étude",
  "part.textFlag": "Comment s’appelle le drapeau",
  "part.textAuthor": "Votre nom, tel qu’il sera publié",
  "part.textWhy": "Pourquoi ce changement",
  "part.untitled":
    "Donnez à l’étude un titre et dites pourquoi : le texte ci-dessous pourra alors être envoyé.",
  "part.ready": "Enregistrez ceci sous le nom study.md à côté du dessin, ou envoyez-le tel quel.",
  "part.copy": "Copier le texte",
  "part.copied": "Copié.",
  "part.refused": "Le navigateur ne l’a pas permis ; sélectionnez le texte et copiez-le.",
  "part.unscripted":
    "Avec des scripts, cette page montre un dessin de votre ordinateur avec le changement et écrit le texte pour vous. Sans eux, copiez le texte ci-dessus et complétez-le.",

  // picture: link pictures, which sites and chats show when someone posts a link; and records for search.
  "picture.redesign": "Nouveau dessin · étude non officielle",
  "picture.above": "En haut : {half}",
  "picture.below": "En bas : {half}",
  "picture.clarity": "{verdict} : netteté",
  "picture.oneColour": "Une seule couleur",
  "picture.contrast": "{outcome} : contraste de cette limite",
  "picture.alt":
    "Un drapeau {split}, moitié original et moitié nouveau dessin. {title}. {measure} {move}. Étude non officielle.",
  "picture.altOf":
    "Un drapeau {split}, moitié original et moitié nouveau dessin. {title} ({of}). {measure} {move}. Étude non officielle.",
  "picture.perPale": "parti",
  "picture.perBend": "tranché",
  "picture.perBendSinister": "taillé",
  "picture.perFess": "coupé",
  "picture.genre": "Étude non officielle de drapeau redessiné",
  "picture.within": "{title}, dans {study}",

  // plate: what a flag that is shown is called.
  "plate.original": "Original",
  "plate.redesign": "Nouveau dessin",
  "plate.clarity": "netteté <number>{clarity}</number>",
  "plate.contrast": "contraste <number>{contrast}</number>",
  "plate.asItIs": "Le drapeau tel qu’il est",
  "plate.alt": "{label} : {paints}",

  // price: the edges that a change makes worse, as clauses in a list.
  "price.falls":
    "{one} sur {other} n’a plus que {contrast} de contraste (limite {grade}), contre {wasContrast} avant (limite {wasGrade})",
  "price.fallsRenamed":
    "{newOne} sur {newOther} a {contrast} de contraste (limite {grade}), là où {one} sur {other} en avait {wasContrast} (limite {wasGrade})",
  "price.graded": "{contrast} (limite {grade})",
  "price.more": "{count, plural, one {# autre} other {# autres}}",

  // proposal: studies among others, and what others said of them.
  "proposal.none": "pas encore d’étude à son sujet",
  "proposal.only": "une proposition pour ce drapeau",
  "proposal.count":
    "{count, plural, =2 {deux propositions pour un même drapeau} =3 {trois propositions pour un même drapeau} =4 {quatre propositions pour un même drapeau} =5 {cinq propositions pour un même drapeau} =6 {six propositions pour un même drapeau} =7 {sept propositions pour un même drapeau} =8 {huit propositions pour un même drapeau} =9 {neuf propositions pour un même drapeau} =10 {dix propositions pour un même drapeau} one {# proposition pour un même drapeau} other {# propositions pour un même drapeau}}",
  "proposal.countShown": "{count}, les {shown} premières montrées",
  "proposal.oneOf":
    "{count, plural, =2 {l’une des deux propositions} =3 {l’une des trois propositions} =4 {l’une des quatre propositions} =5 {l’une des cinq propositions} =6 {l’une des six propositions} =7 {l’une des sept propositions} =8 {l’une des huit propositions} =9 {l’une des neuf propositions} =10 {l’une des dix propositions} one {l’une des # propositions} other {l’une des # propositions}}",
  "proposal.studies": "{count, plural, one {# étude} other {# études}}",
  "proposal.flags": "{count, plural, one {# drapeau sans étude} other {# drapeaux sans étude}}",
  "proposal.answer":
    "{says, select, agree {{by} approuve} disagree {{by} désapprouve} doubt {{by} doute} other {{by} demande}}",
  "proposal.authorReplies": "L’auteur répond",
  "proposal.replies": "{by} répond",
  "proposal.authorRepliesOn": "L’auteur répond, {date}",
  "proposal.repliesOn": "{by} répond, {date}",
  "proposal.decided":
    "{status, select, adopted {Adoptée le {date}.} declined {Refusée le {date}.} other {Retirée le {date}.}}",
  "proposal.decidedBy":
    "{status, select, adopted {Adoptée le {date} par {by}.} declined {Refusée le {date} par {by}.} other {Retirée le {date} par {by}.}}",
  "proposal.decidedVotes":
    "{status, select, adopted {Adoptée le {date}, {votes}.} declined {Refusée le {date}, {votes}.} other {Retirée le {date}, {votes}.}}",
  "proposal.decidedByVotes":
    "{status, select, adopted {Adoptée le {date} par {by}, {votes}.} declined {Refusée le {date} par {by}, {votes}.} other {Retirée le {date} par {by}, {votes}.}}",
  "proposal.for": "{count, plural, one {# pour} other {# pour}}",
  "proposal.against": "{count, plural, one {# contre} other {# contre}}",
  "proposal.abstained": "{count, plural, one {# abstention} other {# abstentions}}",

  // question: questions to a class of what a change does, with answers for the teacher.
  "question.hardest":
    "Regardez l’original de l’autre bout de la salle. Parmi les couleurs qui se touchent, quelles sont les deux plus difficiles à distinguer ?",
  "question.hardestAnswer": "{names} : contraste de {contrast}, limite {grade}.",
  "question.hardestIsClear": "{names} : contraste de {contrast}, limite {grade}. Même celle-là est nette.",
  "question.lines": "Combien de lignes entre deux couleurs le nouveau dessin a-t-il ?",
  "question.linesAnswer": "Aucune qui compte : les couleurs qui se touchaient n’en font plus qu’une.",
  "question.grade":
    "Dans le nouveau dessin, le contraste entre {one} et {other} est de {contrast}. La limite est-elle faible, douce, nette ou forte ?",
  "question.weak": "Faible : moins de {soft}.",
  "question.soft": "Douce : de {soft} à moins de {clear}.",
  "question.clear": "Nette : de {clear} à moins de {strong}.",
  "question.strong": "Forte : {strong} et plus.",
  "question.price":
    "Le changement a un prix, dit plus haut. Le paieriez-vous ? Ou quelle couleur de l’original changeriez-vous, et en laquelle, pour plus de netteté encore ?",
  "question.priceAnswer": "Si le prix est trop élevé, aucun chiffre ne le dit : demandez des raisons.",
  "question.noGain": "{verdict} Peut-il y avoir une raison de faire pourtant ce changement ?",
  "question.noGainAnswer":
    "Pas dans ces chiffres. Une raison doit venir d’ailleurs : ce que signifient les couleurs, qui d’autre les porte, ou le goût.",
  "question.gain":
    "La netteté était de {before} ; après le changement, elle est de {after}. Où le contraste croît-il le plus ?",
  "question.gainOfOne":
    "La netteté était de {before} ; après le changement, elle est de {after}. Quelles sont les deux couleurs qui ont fait la différence, et de combien ?",
  "question.gainAnswer": "{was}, d’un contraste de {before} ({wasGrade}) à {after} ({grade}).",
  "question.gainAnswerRenamed":
    "{was}, désormais {is}, d’un contraste de {before} ({wasGrade}) à {after} ({grade}).",
  "question.area": "Devinez : quelle couleur couvre la plus grande part de l’original, et combien ?",
  "question.areaAnswer": "{name} : {share} du drapeau.",
  "question.more":
    "Qu’ajouteriez-vous pour qu’on distingue ce drapeau des autres d’un bout à l’autre de la salle ?",
  "question.moreAnswer":
    "Il y a bien des réponses. Entre {name} et ce qu’on ajoute, il faut un grand écart de clarté.",
  "question.field": "le champ",

  // record: the record at the end of a study.
  "record.onlyIn": "seulement dans {part} (<selector></selector>)",
  "record.source": "Source",
  "record.sourceIs": "Source : {source}",
  "record.licence": "Licence : {licence}.",
  "record.uncertain": "Là où les chiffres sont moins sûrs",
  "record.colours": "Couleurs",
  "record.drawings": "Dessins et données",
  "record.tags": "Mots-clés",
  "record.history": "Historique",
  "record.heading": "Pour mémoire",
  "record.tincture": "Selon la règle de contrariété des couleurs",
  "record.facts": "Faits",
  "record.reflectanceAndTincture": "Réflectance et émail de chacune",
  "record.reflectance": "Réflectance de chacune",
  "record.noSource": "L’étude ne nomme pas de source pour le dessin d’origine.",
  "record.maker":
    "Adoptée : une <sheet>fiche pour fabricants</sheet>, avec proportions, construction et couleurs.",
  "record.lesson": "Images de chaque étape, pour projections et enregistrements",
  "record.originalSvg": "Original, SVG",
  "record.redesignSvg": "Nouveau dessin, SVG",
  "record.originalPng": "Original, PNG",
  "record.redesignPng": "Nouveau dessin, PNG",
  "record.edgesCsv": "Toutes les limites, CSV",
  "record.json": "Tout ce qui est mesuré, JSON",
  "record.selectedPart": "la partie choisie",
  "record.drawing": "Le dessin",
  "record.by": "{title}, par {author}",
  "record.rights": "{credit}, {licence}",
  "record.unofficial":
    "Le nouveau dessin est une étude non officielle : une proposition à discuter, non un drapeau en usage.",
  "record.unofficialBy":
    "Le nouveau dessin est une étude non officielle publiée par {society} : une proposition à discuter, non un drapeau en usage.",

  // refer: how to cite a study, and the stamp of its state.
  "refer.heading": "Citer cette étude",
  "refer.copyText": "Copier le texte",
  "refer.copyBibtex": "Copier le BibTeX",
  "refer.copied": "Copié.",
  "refer.notCopied": "Le navigateur ne l’a pas permis.",
  "refer.bibtexAndStamp": "BibTeX, et à quoi sert le cachet",
  "refer.stamp":
    "Cachet <stamp></stamp> : une marque brève du dessin, du changement et de la mesure. Qui suivra plus tard <link>une adresse qui le contient</link> apprendra si ce qui est mesuré a changé depuis. Le texte d’une étude peut changer sans que le cachet change.",
  "refer.changed":
    "<strong>Cette étude a changé depuis.</strong> Le lien que vous avez suivi valait pour un état antérieur, au cachet <came></came>. Ce qui est montré ici porte maintenant le cachet <now></now>.",
  "refer.study": "étude non officielle de drapeau redessiné",
  "refer.edge": "une limite d’une étude non officielle de drapeau redessiné",
  "refer.series": "série d’études non officielles de drapeaux redessinés",
  "refer.cited": "« {title} », {kind}. {gallery}. {address}",
  "refer.citedOn": "« {title} », {kind}. {gallery}, {date}. {address}",
  "refer.note": "{kind}, {gallery}",
  "refer.noteStamped": "{kind}, {gallery}, cachet {stamp}",

  // ruler: the contrast ruler.
  "ruler.caption":
    "Le contraste de deux couleurs qui se touchent : un anneau pour l’original, un point pour le nouveau dessin ; trait épais pour une longue limite.",
  "ruler.fallsNote": "Trait évidé là où le contraste baisse.",
  "ruler.crossesNote": "Gagnée : nette à présent et non avant ; perdue : l’inverse.",
  "ruler.mergedNote": "Une croix là où deux couleurs n’en font plus qu’une.",
  "ruler.outlineNote": "Le contour est celui de ce qui doit se voir, qui compte double.",
  "ruler.nearNote": "Au seuil : sur une autre étoffe, le degré serait un autre.",
  "ruler.hueNote":
    "Par la teinte seule : les deux diffèrent par la teinte et à peine par la clarté, et s’effacent donc au crépuscule et en gris.",
  "ruler.ladderNote":
    "À côté, combien de lumière rend l’étoffe de chaque couleur : deux à la même hauteur sont difficiles à distinguer.",
  "ruler.edge": "Limite",
  "ruler.contrast": "Contraste, de l’original au nouveau dessin",
  "ruler.outcome": "Résultat",
  "ruler.guess": "Votre estimation",
  "ruler.title": "Règle des contrastes",
  "ruler.same":
    "{count, plural, one {# limite qui reste ce qu’elle était} other {# limites qui restent ce qu’elles étaient}}",
  "ruler.moreMoved": "{count, plural, one {# autre limite qui change} other {# autres limites qui changent}}",
  "ruler.moreMovedAndSame": "{moved}, et {same}",
  "ruler.row": "{edge}, {extent} : contraste {contrast}, {grades}",

  // rules: what stands around the rules for studies and drawings, which are English in every language.
  "rules.title": "Règles des études et des dessins",
  "rules.description":
    "Ce que signifie chaque message sur une étude ou un dessin, avec un exemple fautif et un exemple juste.",
  "rules.lede":
    "Quand on vérifie une étude, chaque défaut est signalé avec le nom d’une règle. Voici {count, plural, one {la # règle} other {les # règles}} : ce que chacune signifie, pourquoi elle existe, et un exemple fautif à côté d’un juste. Elles sont en anglais, comme les messages.",
  "rules.note":
    "Chacune est une erreur, qui tient l’étude hors de la galerie jusqu’à correction, sauf si elle est marquée comme avertissement, qui l’y laisse. Les exemples encadrés sont ce qu’on tape, et ont été essayés : le fautif enfreint sa règle et aucune autre, le juste aucune.",
  "rules.find": "Chercher des règles par ces mots",
  "rules.count": "{count, plural, one {# règle} other {# règles}}",
  "rules.found": "{found} sur {count, plural, one {# règle} other {# règles}}",
  "rules.warning": "Avertissement",
  "rules.link": "Lien vers cette règle",
  "rules.wrong": "Fautif",
  "rules.wrongIn": "Fautif, dans {file}",
  "rules.wrongInFolder": "Fautif, dans le dossier de contenu",
  "rules.right": "Juste",
  "rules.rightIn": "Juste, dans {file}",
  "rules.rightInFolder": "Juste, dans le dossier de contenu",
  "rules.leaveOut": "L’omettre.",

  // said: what others said of a study.
  "said.heading": "Ce qu’en disent d’autres",
  "said.about": "sur <about>{name}</about>",
  "said.more": "Suite sur {host}",

  // seen: both flags as four kinds of sight have them.
  "seen.title": "Vu autrement",
  "seen.caption":
    "L’original d’abord, puis le nouveau dessin : des approximations de ce que les lecteurs daltoniens, et l’impression en gris, font des deux drapeaux. Elles ne sont pas un test de la vue de quiconque. Les gris diffèrent d’un écart de couleur, ΔE00 : plus il est grand, mieux on distingue.",
  "seen.greys": "écart des deux gris les plus proches",
  "seen.clarity": "netteté du drapeau entier",
  "seen.figure": "{heading} : {measure} {before} → {after}.",
  "seen.looks": "{name} paraît {seen}",
  "seen.kept": "{names} {count, plural, one {garde son nom} other {gardent leur nom}}",
  "seen.inGrey": "{name} en gris",
  "seen.byProtan": "{name} vu par des yeux protans",
  "seen.byDeutan": "{name} vu par des yeux deutans",
  "seen.byTritan": "{name} vu par des yeux tritans",

  // seriespage: the page of a series, and where a study stands in one.
  "seriesPage.count": "Une série : {entries}",
  "seriesPage.description": "Une série : {entries}.",
  "seriesPage.show": "Montrer pas à pas",
  "seriesPage.sheet": "Imprimer pour une classe",
  "seriesPage.vote": "Voter",
  "seriesPage.step": "Numéro {number} : {title}",
  "seriesPage.today": "Tels qu’ils sont aujourd’hui",
  "seriesPage.gain": "La netteté, étude par étude",
  "seriesPage.cite": "Citer cette série",
  "seriesPage.unofficial": "Les nouveaux dessins sont des études non officielles.",
  "seriesPage.bare": "Sans étude",
  "seriesPage.ask": "Que changeriez-vous ici ?",
  "seriesPage.series": "Séries",
  "seriesPage.firstShown": "{entries}, les {number} premiers montrés",
  "seriesPage.places": "Dans des séries",
  "seriesPage.place": "{number} sur {count} dans <a>{title}</a>",
  "seriesPage.before": "Avant : <a>{title}</a>",
  "seriesPage.next": "Après : <a>{title}</a>",

  // sheet: sheets for a class, printed on paper: a handout, a worksheet and the answers for the teacher.
  "sheet.title": "{title}, fiches pour la classe",
  "sheet.description":
    "Polycopié, fiche de travail et réponses, à imprimer. Étude non officielle de drapeau redessiné.",
  "sheet.kind": "Fiches pour la classe",
  "sheet.print":
    "Pour imprimer : la commande d’impression de votre navigateur, A4 ou Letter, en hauteur. Chaque partie occupe sa propre page.",
  "sheet.toStudy": "L’étude",
  "sheet.toSeries": "La série",
  "sheet.contents": "Contenu",
  "sheet.handout": "Polycopié",
  "sheet.worksheet": "Fiche de travail",
  "sheet.answers": "Réponses",
  "sheet.redesign": "Nouveau dessin, étude non officielle",
  "sheet.questions": "Trois questions",
  "sheet.scale":
    "Le contraste est l’écart de clarté entre deux couleurs qui se touchent. Une limite est faible au-dessous de {soft}, douce à partir de {soft}, nette à partir de {clear}, forte à partir de {strong}.",
  "sheet.left":
    "{count, plural, one {# autre limite est sur la page de l’étude.} other {# autres limites sont sur la page de l’étude.}}",
  "sheet.noRuler": "Une seule couleur : aucune limite à mesurer.",
  "sheet.hatched": "En hachures, pour l’impression en gris",
  "sheet.hatchedHow":
    "Chaque couleur a ses hachures, d’après Silvester Petra Sancta, Rome 1638. Les nuances d’une couleur les partagent.",
  "sheet.originalInLines": "Original en hachures",
  "sheet.redesignInLines": "Nouveau dessin en hachures",
  "sheet.inOutlines": "{flag}, au trait",
  "sheet.name": "Nom",
  "sheet.change": "Changez une couleur. Coloriez le drapeau, la nouvelle couleur à sa place.",
  "sheet.own": "Les couleurs du drapeau",
  "sheet.palette": "Des couleurs au choix",
  "sheet.guess":
    "Estimez le contraste partout où deux couleurs se touchent : un anneau pour l’original, un point pour votre drapeau.",
  "sheet.reason": "Je change <line></line> en <line></line>, parce que",
  "sheet.price": "Ce qui y perd, et pourquoi je l’accepte :",
  "sheet.yours": "Aucune étude de ce drapeau ne figure ici : à vous de la faire.",
  "sheet.teacher": "Pour l’enseignant",
  "sheet.others": "Autres changements",
  "sheet.onWorksheet": "La fiche de travail",
  "sheet.opinion":
    "Sur la fiche de travail, aucun choix n’est juste ou faux. Ce qui compte est une raison qui nomme une limite.",
  "sheet.signs": "Couleurs en hachures",
  "sheet.signsSource":
    "Des lignes qui tiennent lieu de couleurs. Source : Silvester Petra Sancta, « Tesserae gentilitiae », Rome 1638 ; rapporté dans A. C. Fox-Davies, « A Complete Guide to Heraldry », 1909, chapitre VII. Orange et brun : convention ultérieure, sur laquelle les livres diffèrent ; sans source. Le gris et le rose n’ont pas de lignes et restent gris : notre propre choix.",
  "sheet.red": "rouge (gueules)",
  "sheet.blue": "bleu (azur)",
  "sheet.green": "vert (sinople)",
  "sheet.black": "noir (sable)",
  "sheet.purple": "violet (pourpre)",
  "sheet.yellow": "jaune (or)",
  "sheet.white": "blanc (argent)",
  "sheet.orange": "orange (tanné), usage tardif",
  "sheet.brown": "brun, usage tardif",

  // shelf: lists of the studies of one author, with one tag, that are decided, or of all of them.
  "shelf.studies": "{count, plural, one {# étude} other {# études}}",
  "shelf.authorCount": "{count, plural, one {# auteur} other {# auteurs}}",
  "shelf.tagCount": "{count, plural, one {# mot-clé} other {# mots-clés}}",
  "shelf.decisionCount": "{count, plural, one {# décision} other {# décisions}}",
  "shelf.authors": "Auteurs",
  "shelf.authorsLede": "Tous ceux qui ont présenté ici une étude, avec ce qu’ils proposent.",
  "shelf.noAuthors": "Aucune étude ne nomme encore d’auteur. Le premier nom figurera ici.",
  "shelf.tags": "Mots-clés",
  "shelf.tagsLede": "Ce dont traitent les études, dans les mots de leurs auteurs, les plus employés d’abord.",
  "shelf.noTags": "Aucune étude n’a encore de mot-clé. Les auteurs les mettent dans leurs études.",
  "shelf.author": "Auteur",
  "shelf.tag": "Mot-clé",
  "shelf.list": "Liste",
  "shelf.record": "Registre",
  "shelf.decisions": "Décisions",
  "shelf.ways": "{studies}. <index>{name}</index>, <all>toutes les études</all>",
  "shelf.waysOrdered":
    "{studies}, les plus récentes d’abord. <index>{name}</index>, <all>toutes les études</all>",
  "shelf.allAuthors": "Tous les auteurs",
  "shelf.allTags": "Tous les mots-clés",
  "shelf.byAuthor": "Par auteur",
  "shelf.aboutAuthor":
    "{count, plural, one {# étude} other {# études}} par {name} : une couleur changée, chaque limite mesurée.",
  "shelf.aboutTag":
    "{count, plural, one {# étude} other {# études}} sous le mot-clé {name} : une couleur changée, chaque limite mesurée.",
  "shelf.aboutDecisions":
    "{count, plural, one {# étude décidée} other {# études décidées}} : une couleur changée, chaque limite mesurée.",
  "shelf.aboutAll":
    "{count, plural, one {# étude} other {# études}} en tout : une couleur changée, chaque limite mesurée.",
  "shelf.with": "Avec {authors}",

  // show: the steps of a study or a series for a projector, and what a speaker may say to each.
  "show.title": "{title}, pas à pas",
  "show.description": "Étude non officielle de drapeau redessiné.",
  "show.seriesDescription": "Études non officielles de drapeaux redessinés, pas à pas.",
  "show.toStudy": "L’étude",
  "show.toSeries": "La série",
  "show.steps": "Étapes",
  "show.notes": "Notes",
  "show.back": "Retour",
  "show.next": "Suite",
  "show.noNote": "Pas de note pour cette étape.",
  "show.original": "L’original",
  "show.redesign": "Le nouveau dessin, une étude non officielle",
  "show.both": "L’original, et le nouveau dessin, une étude non officielle",
  "show.ofOriginal": "Original",
  "show.ofRedesign": "Nouveau dessin, étude non officielle",
  "show.redesigns": "Les nouveaux dessins sont des études non officielles",
  "show.from":
    "À {from, plural, one {<number>#</number> hauteur de drapeau} other {<number>#</number> hauteurs de drapeau}}, agrandi",
  "show.fromStill": "À {from, plural, one {# hauteur de drapeau} other {# hauteurs de drapeau}}, agrandi",
  "show.thisIs": "Le drapeau tel qu’il est : {name}.",
  "show.keep": "Gardez-le en tête tel qu’il est.",
  "show.focus": "Ce qui doit se voir",
  "show.focusKey":
    "Les traits pleins sont des limites nettes, les pointillés se voient mal. La bande marque ce qui doit se voir avant le reste.",
  "show.focusSaid": "Ce qui doit se voir d’abord, c’est {share} du drapeau.",
  "show.weakest": "Sa limite la plus faible",
  "show.weakestKey": "{names} : contraste {contrast}",
  "show.weakestSaid":
    "La limite la plus faible est là où se touchent {first} et {second}. Elle est {grade} ({contrast}) ; à partir de {clear}, une limite est nette.",
  "show.weakestShown": "L’endroit où se touchent {names}",
  "show.afar": "De loin",
  "show.afarSaid": "Voilà comment se présente le drapeau de loin.",
  "show.colours": "Quelle couleur pourrait changer ?",
  "show.coloursKey":
    "Chaque ligne change une couleur. Sous chaque drapeau figure sa netteté, aujourd’hui {clarity} ; le meilleur d’une ligne est souligné.",
  "show.coloursKeyOwn":
    "Chaque ligne change une couleur. Sous chaque drapeau figure sa netteté, aujourd’hui {clarity} ; le meilleur d’une ligne est souligné, ce que propose cette étude est encadré.",
  "show.tried": "Essayé, une étude non officielle. {figures}. {note}",
  "show.triedSaid": "J’ai aussi essayé ceci : {change} {verdict} {figures}.",
  "show.before": "Avant",
  "show.beforeSaid": "Voici encore une fois le drapeau tel qu’il est.",
  "show.afterSaid": "Et maintenant : {change} C’est une étude non officielle.",
  "show.outcomes": "Ce qui gagne et ce qui perd",
  "show.outcomesKey": "Anneau : l’original. Point : le nouveau dessin.",
  "show.priceSaid":
    "{verdict}. La netteté de l’original est de {before} points sur 100, celle du nouveau dessin de {after}. {price}",
  "show.vision": "Pour les lecteurs daltoniens, et en gris",
  "show.visionSaid": "Voici à peu près ce que voient les lecteurs daltoniens. {visions}",
  "show.visionOf": "{heading}, {explanation} : {measure} de {before} à {after}.",
  "show.choose": "Original ou nouveau dessin ?",
  "show.chooseSaid": "L’original, ou le nouveau dessin ? Et que diriez-vous à qui choisirait l’autre ?",
  "show.closing": "Que changeriez-vous ?",
  "show.another": "{name} : une autre proposition",
  "show.opening": "{authors} : {opening}",
  "show.colourChanged": "Couleur changée",
  "show.notTried": "non essayé",
  "show.thisStudy": "Cette étude :",
  "show.merges": "se fond",

  // sight: kinds of sight.
  "sight.protan": "Protan",
  "sight.deutan": "Deutan",
  "sight.tritan": "Tritan",
  "sight.grey": "Gris",
  "sight.protanMeans": "sans les cônes des ondes longues",
  "sight.deutanMeans": "sans les cônes des ondes moyennes",
  "sight.tritanMeans": "sans les cônes des ondes courtes",
  "sight.greyMeans": "tel que l’imprime un copieur en noir et blanc",

  // sizes: both flags at sizes that stand for distances.
  "sizes.title": "À bout de bras",
  "sizes.caption":
    "Vu à 60 cm, chacun est aussi grand que le drapeau à la distance inscrite dessous, sur un écran ou un papier de 96 pixels par pouce.",
  "sizes.says": "Les deux drapeaux aussi petits qu’ils paraissent de loin, à bout de bras : {distances}.",
  "sizes.alt":
    "{label}, aussi grand qu’à {distance, plural, one {# hauteur de drapeau} other {# hauteurs de drapeau}}",

  // spoken: what a speaker says of a change, with numbers in words. All counts are counts of edges.
  "spoken.percent": "{near} ({percent})",
  "spoken.about": "environ {part}",
  "spoken.none": "rien",
  "spoken.almostNone": "presque rien",
  "spoken.twentieth": "un vingtième",
  "spoken.fifteenth": "un quinzième",
  "spoken.tenth": "un dixième",
  "spoken.eighth": "un huitième",
  "spoken.sixth": "un sixième",
  "spoken.fifth": "un cinquième",
  "spoken.quarter": "un quart",
  "spoken.third": "un tiers",
  "spoken.twoFifths": "deux cinquièmes",
  "spoken.half": "la moitié",
  "spoken.threeFifths": "trois cinquièmes",
  "spoken.twoThirds": "deux tiers",
  "spoken.threeQuarters": "trois quarts",
  "spoken.fourFifths": "quatre cinquièmes",
  "spoken.nineTenths": "neuf dixièmes",
  "spoken.almostAll": "presque la totalité",
  "spoken.all": "la totalité",
  "spoken.count":
    "{count, plural, =0 {aucune} =1 {une} =2 {deux} =3 {trois} =4 {quatre} =5 {cinq} =6 {six} =7 {sept} =8 {huit} =9 {neuf} =10 {dix} one {#} other {#}}",
  "spoken.edges": "{count, plural, one {Sur {all} limite, {moves}.} other {Sur {all} limites, {moves}.}}",
  "spoken.better":
    "{count, plural, one {{edges} devient plus facile à voir} other {{edges} deviennent plus faciles à voir}}",
  "spoken.worse":
    "{count, plural, one {{edges} devient plus difficile à voir} other {{edges} deviennent plus difficiles à voir}}",
  "spoken.betterAndWorse": "{better} et {worse}",
  "spoken.noneMoves": "aucune ne devient plus facile ou plus difficile à voir",
  "spoken.price": "Le prix : {losses}.",
  "spoken.moreLosses":
    "{count, plural, one {et {edges} autre devient plus difficile à voir} other {et {edges} autres deviennent plus difficiles à voir}}",
  "spoken.merged": "{one} et {other} se fondent en une seule couleur",
  "spoken.parted": "{newOne} et {newOther} se séparent, et la limite entre les deux est {grade} ({contrast})",
  "spoken.lost":
    "{how, select, still {là où se touchent {one} et {other}, la limite était {wasGrade} ({wasContrast}) ; elle est toujours {grade} ({contrast})} only {là où se touchent {one} et {other}, la limite était {wasGrade} ({wasContrast}) ; elle n’est plus que {grade} ({contrast})} other {là où se touchent {one} et {other}, la limite était {wasGrade} ({wasContrast}) ; elle est maintenant {grade} ({contrast})}}",
  "spoken.lostRenamed":
    "{how, select, still {là où se touchent {one} et {other}, la limite était {wasGrade} ({wasContrast}) ; entre {newOne} et {newOther}, elle est toujours {grade} ({contrast})} only {là où se touchent {one} et {other}, la limite était {wasGrade} ({wasContrast}) ; entre {newOne} et {newOther}, elle n’est plus que {grade} ({contrast})} other {là où se touchent {one} et {other}, la limite était {wasGrade} ({wasContrast}) ; entre {newOne} et {newOther}, elle est maintenant {grade} ({contrast})}}",

  // status: what became of a study, in a word and what that word means.
  "status.draft": "Brouillon",
  "status.draftMeans": "pas encore achevée",
  "status.open": "Ouverte",
  "status.openMeans": "proposée, pas encore tranchée",
  "status.adopted": "Adoptée",
  "status.adoptedMeans": "acceptée par ceux qui décident ici",
  "status.declined": "Refusée",
  "status.declinedMeans": "non acceptée par ceux qui décident ici",
  "status.withdrawn": "Retirée",
  "status.withdrawnMeans": "retirée par ses auteurs",

  // still: words in pictures that are taken away, what is offered of them, and the speaker’s script.
  "still.mark": "Étude non officielle, à discuter",
  "still.unofficial": "Étude non officielle : une proposition à discuter, non un drapeau en usage.",
  "still.split": "L’original, et son nouveau dessin comme étude non officielle",
  "still.original": "Original",
  "still.redesign": "Nouveau dessin",
  "still.figure": "{what} : {title}",
  "still.move": "{before} → {after}",
  "still.seen": "{heading} : {measure} de {before} à {after}",
  "still.merges": "se fond",
  "still.swap": "L’alternance, WebP",
  "still.thumbnail": "Vignette",
  "still.map": "Carte des limites, SVG",
  "still.ruler": "Règle, SVG",
  "still.matrix": "Tableau, SVG",
  "still.script": "Ce qu’il faut dire, Markdown",
  "still.scriptStep": "{number}. {heading}",
  "still.scriptPicture": "Image : {file}",
  "still.scriptOn": "Dessus : {text}",
  "still.scriptSay": "À dire : {text}",
  "still.scriptNote": "Note : {text}",

  // strip: the distance strip.
  "strip.from":
    "À {distance, plural, one {<number>#</number> hauteur de drapeau} other {<number>#</number> hauteurs de drapeau}}",
  "strip.focus": "ce qui doit se voir :",
  "strip.clarity": "netteté",
  "strip.caption":
    "L’original d’abord, puis le nouveau dessin, tels qu’un œil perçant les voit de là, ramenés à la même taille : sans vent, sans brume, sans éblouissement.",
  "strip.title": "Bande des distances",
  "strip.label": "{label} à {distance, plural, one {# hauteur de drapeau} other {# hauteurs de drapeau}}",
  "strip.blur": "Flou de {blur} pour cent de sa hauteur.",
  "strip.blurAndFocus": "Flou de {blur} pour cent de sa hauteur ; {focus}.",
  "strip.focusClarity": "ce qui doit se voir a une netteté de {clarity}",
  "strip.focusLost": "ce qui doit se voir est trop petit pour être reconnu",
  "strip.lost": "agrandi : à sa vraie taille, trop petit pour être reconnu",
  "strip.describe": "Les deux drapeaux tels qu’on les voit de loin, de plus en plus flous : {distances}.",
  "strip.onlyThere": "La netteté n’est dite que là où ce qui doit se voir peut encore être reconnu.",
  "strip.level":
    "Aussi loin qu’on peut le reconnaître, ce qui doit se voir a une netteté de {before} dans l’original et de {after} dans le nouveau dessin.",
  "strip.rises":
    "Elle monte de plus loin, là où des parties fines aux limites faibles ne se voient plus et ne comptent plus.",

  // study: the page of a study.
  "study.afar": "De loin",
  "study.theStrip": "La bande des distances",
  "study.theSizes": "La rangée des tailles",
  "study.contents": "Sur cette page",
  "study.seen": "Pour les lecteurs daltoniens, et en gris",
  "study.likeness": "Pourrait-on le confondre ?",
  "study.argue": "En discuter",
  "study.shown": "{name} se trouve dans <argument>l’argument</argument>.",
  "study.numbers": "La comparaison en chiffres",
  "study.theSeen": "Ce qu’ils voient",
  "study.unofficial": "étude non officielle",
  "study.allChanges": "Tous les changements d’une couleur",
  "study.verdictHow": "Comment se rend le verdict",
  "study.show": "Pas à pas, pour un projecteur",
  "study.sheets": "Fiches pour la classe",
  "study.argueByMail": "En discuter par courriel",
  "study.argument": "L’argument",
  "study.decision": "Décision",
  "study.meaning": "Signification",
  "study.unofficialLead": "Étude non officielle de drapeau redessiné.",

  // summary: the table of a few numbers.
  "summary.measure": "Mesure",
  "summary.both": "Avant et après",

  // survey: the survey of all flags as they are.
  "survey.title": "Recensement",
  "survey.lede":
    "Chaque drapeau de la galerie tel qu’il est aujourd’hui : à quel point ses limites sont nettes, laquelle est la plus faible, et quelle couleur changer d’abord. Les chiffres ne disent rien de la beauté ni du sens.",
  "survey.flags": "{count, plural, one {# drapeau} other {# drapeaux}}",
  "survey.only": "{count, plural, one {# drapeau} other {# drapeaux}}.",
  "survey.ordered": "{count, plural, one {# drapeau} other {# drapeaux}}, les moins nets d’abord.",
  "survey.description":
    "{count, plural, one {# drapeau} other {# drapeaux}}, les moins nets d’abord : la limite la plus faible de chacun, la couleur à changer d’abord, le meilleur changement d’une couleur.",
  "survey.told":
    "{weak, plural, =0 {Aucun n’a sa limite la plus faible} one {# a sa limite la plus faible} other {# ont leur limite la plus faible}} au-dessous de {limit} de contraste ; {helped, plural, =0 {aucun ne gagnerait} one {# gagnerait} other {# gagneraient}}, par un seul changement de couleur, {points, plural, one {# point} other {# points}} de netteté ou plus.",
  "survey.how": "Comment se fait le recensement",
  "survey.empty": "Il n’y a encore rien à recenser.",
  "survey.more": "{count, plural, one {# drapeau de plus} other {# drapeaux de plus}}",
  "survey.rest": "Les {listed} moins nets sont cités ; les {rest} autres sont dans les fichiers.",
  "survey.failed": "Non mesurés",
  "survey.files": "Fichiers",
  "survey.failedRest": "Et {count} de plus, tous dans le fichier JSON.",
  "survey.csv": "Le recensement, CSV",
  "survey.json": "Le recensement, JSON",
  "survey.pictured": "{count, plural, one {# drapeau} other {# drapeaux}}, les moins nets d’abord",
  "survey.range": "de {least} à {most}",
  "survey.caution": "Les chiffres ne disent rien de la beauté ni du sens.",
  "survey.alt": "Une planche de drapeaux. Recensement : {flags}. Netteté : {number}. {caution}",
  "survey.study": "Étude",
  "survey.withStudy": "Avec une étude",
  "survey.withoutStudy": "Sans étude",
  "survey.none": "Aucun drapeau ne répond à tout cela. Retirez un mot ou un choix, ou montrez tout.",
  "survey.found": "{found} sur {count, plural, one {# drapeau} other {# drapeaux}}",

  // surveytable: the table of the survey, what can be done with flags chosen in it, and its picture of the whole field.
  "surveyTable.every": "Chaque drapeau tel qu’il est",
  "surveyTable.everyOrdered": "Chaque drapeau tel qu’il est, les moins nets d’abord",
  "surveyTable.captionHeads":
    "Assez grand : la moitié de ce qui doit se voir reste à cette distance, et son plus grand morceau couvre 5 minutes d’arc. Aucun emblème trouvé : le drapeau n’a que des champs.",
  "surveyTable.choose":
    "Choisir des drapeaux pour les voir seuls, ou pour en emporter une liste d’où commencer des études ou une série.",
  "surveyTable.flag": "Drapeau",
  "surveyTable.focus": "Netteté de ce qui doit se voir",
  "surveyTable.lasts": "Assez grand jusqu’à, en hauteurs de drapeau",
  "surveyTable.lastsUnder": "moins de {distance, number}",
  "surveyTable.lastsOrMore": "{distance, number} ou plus",
  "surveyTable.weakest": "Limite la plus faible",
  "surveyTable.first": "Couleur à changer d’abord",
  "surveyTable.best": "Meilleur changement d’une couleur",
  "surveyTable.chooseOne": "Choisir {name}",
  "surveyTable.study": "Étude : <a>{title}</a>",
  "surveyTable.named": "Désigné par les lecteurs.",
  "surveyTable.noEmblem": "aucun emblème trouvé",
  "surveyTable.noLasts": "–",
  "surveyTable.ofContrast": "de contraste",
  "surveyTable.ofClarity": "de netteté",
  "surveyTable.or": "ou",
  "surveyTable.noFirst": "aucune",
  "surveyTable.noBest": "aucun",
  "surveyTable.chosen": "{count, plural, one {{number} drapeau choisi} other {{number} drapeaux choisis}}",
  "surveyTable.onlyChosen": "Ne montrer que ceux-ci",
  "surveyTable.list": "Liste pour commencer des études",
  "surveyTable.series": "Fichier pour commencer une série",
  "surveyTable.chooseNone": "N’en choisir aucun",
  "surveyTable.showAll": "Montrer tous les drapeaux",
  "surveyTable.sortBy": "Trier par",
  "surveyTable.listHead":
    "Drapeaux choisis dans le recensement : {gallery}. Tapez les lignes qui commencent par counterchange dans le dossier qui contient flags/.",
  "surveyTable.seriesTitle": "Drapeaux choisis dans le recensement",
  "surveyTable.seriesNote":
    "Pour une série qui existe déjà : copiez les lignes du premier au dernier - sous son « studies: ».",
  "surveyTable.seriesClosing": "Laquelle de leurs couleurs changeriez-vous, et en quoi ?",
  "field.title": "Tout le champ",
  "field.about": "Chaque drapeau à sa netteté d’aujourd’hui ; souligné là où une étude en traite.",
  "field.past": "Passer l’image",
  "field.without":
    "{count, plural, one {# d’une seule couleur n’a ni limite ni place ici.} other {# d’une seule couleur n’ont ni limite ni place ici.}}",
  "field.flag": "{name}, netteté {clarity}",
  "field.least": "Le moins net : {name}, netteté {clarity}",
  "field.weakest": "La plus faible : {one} / {other}, contraste {contrast}",

  // verdict: what a change does, and the verdict with its price.
  "verdict.change": "{before} devient {after}.",
  "verdict.changeInPart": "{before} devient {after}, seulement dans {part}.",
  "verdict.selectedPart": "la partie choisie ({selector})",
  "verdict.clearer": "Plus net",
  "verdict.clearerAtPrice": "Plus net, mais à un prix",
  "verdict.mixed": "Partagé",
  "verdict.lessClear": "Moins net",
  "verdict.noGain": "Sans gain",
  "verdict.semicolon": "{clause} ; {more}",
  "verdict.colon": "{clause} : {more}",
  "verdict.and": "{clause}, et {more}",
  "verdict.but": "{clause}, mais {more}",
  "verdict.stays": "la netteté reste à {now}",
  "verdict.rises": "la netteté monte de {before} à {now}",
  "verdict.falls": "la netteté baisse de {before} à {now}",
  "verdict.stronger": "des limites gagnent en force au-delà du net",
  "verdict.weaker": "des limites perdent en force au-delà du net",
  "verdict.thePrice": "{clause}. Le prix : {more}",
  "verdict.gains": "{count, plural, one {une limite gagne} other {# limites gagnent}}",
  "verdict.onlyShort":
    "seules des limites de moins de {part} de la longueur totale deviennent plus difficiles à voir",
  "verdict.noneHarder": "aucune limite ne devient plus difficile à voir",
  "verdict.tooLittle": "{moved}, trop peu pour la changer",
  "verdict.noStep":
    "aucune limite ne devient plus ou moins nette de {points, plural, one {# point} other {# points}}",
  "verdict.noneMoves": "aucune limite ne devient plus facile ou plus difficile à voir",
  "verdict.noneToTheEye":
    "rien ne change à l’œil, sinon des limites de moins de {part} de la longueur totale",

  // vote: the vote on a series, flag by flag.
  "vote.title": "Vote : {series}",
  "vote.description":
    "Original ou nouveau dessin ? Un vote sur {series}, drapeau par drapeau, avant qu’aucun chiffre ne se voie.",
  "vote.on": "Un vote sur <a>{series}</a>",
  "vote.heading": "Lequel hisseriez-vous ?",
  "vote.how":
    "Le drapeau tel qu’il est, et ce qui est proposé à sa place. Avant votre choix, rien ne dit lequel est lequel, et aucun chiffre n’est montré.",
  "vote.unscripted":
    "Pour voter sur cette page, il faut un script, que ce navigateur n’exécute pas. Dans une salle, on s’en passe : imprimez la page, montrez les drapeaux un à un et cochez une case par main levée. Chaque question dit à la fin lequel est lequel.",
  "vote.questions": "Questions",
  "vote.back": "Retour",
  "vote.next": "Suite",
  "vote.place": "{number} sur {count}",
  "vote.flag": "Drapeau {number}",
  "vote.alt": "Un drapeau : {paints}",
  "vote.neither": "Aucun des deux",
  "vote.original": "L’original",
  "vote.redesign": "Le nouveau dessin",
  "vote.redesignOf": "Le nouveau dessin « {title} »",
  "vote.unofficial": "{name}, une étude non officielle",
  "vote.cautionOne":
    "L’un d’eux est le drapeau tel qu’il est ; ce qui est proposé est une étude non officielle.",
  "vote.cautionMany":
    "L’un d’eux est le drapeau tel qu’il est ; ce qui est proposé, ce sont des études non officielles.",
  "vote.why": "Pourquoi ? (facultatif)",
  "vote.choose": "C’est mon choix",
  "vote.missing": "Choisissez d’abord un drapeau, ou aucun des deux.",
  "vote.told": "Lequel est lequel, et les chiffres",
  "vote.which": "{flag} : lequel est lequel",
  "vote.headFlag": "Drapeau",
  "vote.headChosen": "Choisi, sur {count, plural, one {# votant} other {# votants}}",
  "vote.own": "votre choix",
  "vote.range": "de {low} à {high}",
  "vote.study": "L’étude",
  "vote.verdictOf": "{name}. {sentence}",
  "vote.said": "<quiet>{side} :</quiet> <said></said>",
  "vote.ballot": "Votre bulletin",
  "vote.answer": "{flag} : {choice}",
  "vote.answerWhy": "{flag} : {choice}, « {why} »",
  "vote.unanswered": "{flag} : sans réponse",
  "vote.kept":
    "Il reste dans ce seul navigateur, sous un numéro tiré au sort, et personne n’en sait rien tant que vous ne le remettez pas.",
  "vote.copy": "Copier cette ligne",
  "vote.copied": "Copié.",
  "vote.refused": "Le navigateur ne l’a pas permis ; sélectionnez la ligne et copiez-la.",
  "vote.save": "Enregistrer en tableau (CSV)",
  "vote.mail": "Envoyer par courriel",
  "vote.form": "Envoyer par un formulaire",
  "vote.anew": "Commencer un autre bulletin",
  "vote.letter": "Un bulletin sur {series}",
  "vote.room": "Pour une classe ou une réunion",
  "vote.same":
    "<same>Le même ordre pour tous</same> · <own>Un ordre à soi</own>. Avec le premier, tous ceux qui l’ouvrent voient A et B comme vous les voyez ; avec le second, chacun les voit dans un ordre tiré au sort.",
  "vote.paper":
    "Imprimée, cette page est une feuille de pointage : les drapeaux, des cases pour les mains levées et, en dernière page, lequel est lequel.",
  "vote.ballots":
    "{count, plural, one {# bulletin est revenu.} other {# bulletins sont revenus.}} À côté de chaque part figure l’intervalle où, avec 95 % de confiance, se trouverait celle de tous si les votants avaient été tirés au sort (intervalle de Wilson) ; ceux qui sont venus d’eux-mêmes ne l’ont pas été.",
  "vote.noBallots": "Aucun bulletin n’est encore revenu.",
  "vote.key": "Pour la personne qui compte : lequel est lequel",
  "vote.sides": "{flag} : <sides></sides>",
};
