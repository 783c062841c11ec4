// Floor 7. German: all messages.
import type { Catalogue } from "../en/all.ts";

/**
 * Terms, one for one: flag Flagge; hoist Liek (the part at the pole), fly fliegendes Ende; field Feld; charge Figur, emblem Emblem;
 * edge Kante; clarity Klarheit; contrast Kontrast; grade Stufe (schwach, weich, klar, stark); near the line an der Schwelle; verdict
 * Urteil; price Preis, at a price um einen Preis; what has to be seen was gesehen werden muss; reflectance Reflexionsgrad; tincture
 * Tinktur: Metall, Farbe, Pelzwerk; fimbriation Saum; rule of tincture Tinkturregel; divided per pale gespalten, per fess geteilt,
 * per bend schrägrechts geteilt, per bend sinister schräglinks geteilt; redesign Neuentwurf; study Studie; tried erprobt; ranked mit
 * Rang; likeness Ähnlichkeit; survey Übersicht; series Reihe; ballot Stimmzettel; show Schritt für Schritt; sheet for a class Blatt
 * für den Unterricht; maker Hersteller.
 *
 * Sources, read in excerpts: Liek: planet-wissen.de, “Umgang mit Flaggen” (Liekteil, Flugteil); Figur: flaggenkunde.de, “Glossar zu
 * Flaggen und Wappen”, 2005, under “Abzeichen”; gespalten, geteilt, schräglinks geteilt: adfontes.uzh.ch, “Schildteilungen”, rohner.org,
 * “Heraldik”; Metall, Farbe, Tinktur: uni-hamburg.de, “Farben, Metalle und Heroldsbilder”; Pelzwerk: ghgrb.ch, “Das Schildbild”.
 * All others: common practice, no source.
 *
 * Names of colours come in the nominative, many with an adjective („dunkleres Blau“). They are neuter, so a sentence may also take
 * them in the accusative (gegen, durch, für), and after „statt“ as a conjunction; never in the dative (von, mit, zu, neben).
 */
export const german: Catalogue = {
  // answer: the letter or the form by which a reader answers.
  "answer.byMail":
    "per E-Mail an {address}; die Adresse dieser Seite und ihre Zahlen stehen schon in der Nachricht.",
  "answer.at": "bei {host}.",
  "answer.atWithAddress": "bei {host}, mit der Adresse dieser Seite.",
  "answer.atWithNumbers": "bei {host}, mit den Zahlen dieser Seite.",
  "answer.atWithBoth": "bei {host}, mit der Adresse dieser Seite und ihren Zahlen.",
  "answer.flagFor": "Eine Flagge für {gallery}",
  "answer.flag": "Die Flagge:",
  "answer.why": "Warum:",
  "answer.reader": "Eine Leserin oder ein Leser",
  "answer.question": "Warum?",

  // colour: names of colours, and a flag told by them.
  "colour.black": "Schwarz",
  "colour.white": "Weiß",
  "colour.grey": "Grau",
  "colour.red": "Rot",
  "colour.orange": "Orange",
  "colour.yellow": "Gelb",
  "colour.green": "Grün",
  "colour.blue": "Blau",
  "colour.purple": "Violett",
  "colour.pink": "Rosa",
  "colour.brown": "Braun",
  "colour.dark":
    "{word, select, grey {{degree, select, very {sehr dunkles {colour}} less {weniger dunkles {colour}} slightlyLess {etwas weniger dunkles {colour}} muchLess {viel weniger dunkles {colour}} other {Dunkelgrau}}} red {{degree, select, very {sehr dunkles {colour}} less {weniger dunkles {colour}} slightlyLess {etwas weniger dunkles {colour}} muchLess {viel weniger dunkles {colour}} other {Dunkelrot}}} orange {{degree, select, very {sehr dunkles {colour}} less {weniger dunkles {colour}} slightlyLess {etwas weniger dunkles {colour}} muchLess {viel weniger dunkles {colour}} other {Dunkelorange}}} yellow {{degree, select, very {sehr dunkles {colour}} less {weniger dunkles {colour}} slightlyLess {etwas weniger dunkles {colour}} muchLess {viel weniger dunkles {colour}} other {Dunkelgelb}}} green {{degree, select, very {sehr dunkles {colour}} less {weniger dunkles {colour}} slightlyLess {etwas weniger dunkles {colour}} muchLess {viel weniger dunkles {colour}} other {Dunkelgrün}}} blue {{degree, select, very {sehr dunkles {colour}} less {weniger dunkles {colour}} slightlyLess {etwas weniger dunkles {colour}} muchLess {viel weniger dunkles {colour}} other {Dunkelblau}}} purple {{degree, select, very {sehr dunkles {colour}} less {weniger dunkles {colour}} slightlyLess {etwas weniger dunkles {colour}} muchLess {viel weniger dunkles {colour}} other {Dunkelviolett}}} pink {{degree, select, very {sehr dunkles {colour}} less {weniger dunkles {colour}} slightlyLess {etwas weniger dunkles {colour}} muchLess {viel weniger dunkles {colour}} other {Dunkelrosa}}} brown {{degree, select, very {sehr dunkles {colour}} less {weniger dunkles {colour}} slightlyLess {etwas weniger dunkles {colour}} muchLess {viel weniger dunkles {colour}} other {Dunkelbraun}}} other {{degree, select, very {sehr dunkles {colour}} less {weniger dunkles {colour}} slightlyLess {etwas weniger dunkles {colour}} muchLess {viel weniger dunkles {colour}} other {dunkles {colour}}}}}",
  "colour.light":
    "{word, select, grey {{degree, select, very {sehr helles {colour}} less {weniger helles {colour}} slightlyLess {etwas weniger helles {colour}} muchLess {viel weniger helles {colour}} other {Hellgrau}}} red {{degree, select, very {sehr helles {colour}} less {weniger helles {colour}} slightlyLess {etwas weniger helles {colour}} muchLess {viel weniger helles {colour}} other {Hellrot}}} orange {{degree, select, very {sehr helles {colour}} less {weniger helles {colour}} slightlyLess {etwas weniger helles {colour}} muchLess {viel weniger helles {colour}} other {Hellorange}}} yellow {{degree, select, very {sehr helles {colour}} less {weniger helles {colour}} slightlyLess {etwas weniger helles {colour}} muchLess {viel weniger helles {colour}} other {Hellgelb}}} green {{degree, select, very {sehr helles {colour}} less {weniger helles {colour}} slightlyLess {etwas weniger helles {colour}} muchLess {viel weniger helles {colour}} other {Hellgrün}}} blue {{degree, select, very {sehr helles {colour}} less {weniger helles {colour}} slightlyLess {etwas weniger helles {colour}} muchLess {viel weniger helles {colour}} other {Hellblau}}} purple {{degree, select, very {sehr helles {colour}} less {weniger helles {colour}} slightlyLess {etwas weniger helles {colour}} muchLess {viel weniger helles {colour}} other {Hellviolett}}} pink {{degree, select, very {sehr helles {colour}} less {weniger helles {colour}} slightlyLess {etwas weniger helles {colour}} muchLess {viel weniger helles {colour}} other {Hellrosa}}} brown {{degree, select, very {sehr helles {colour}} less {weniger helles {colour}} slightlyLess {etwas weniger helles {colour}} muchLess {viel weniger helles {colour}} other {Hellbraun}}} other {{degree, select, very {sehr helles {colour}} less {weniger helles {colour}} slightlyLess {etwas weniger helles {colour}} muchLess {viel weniger helles {colour}} other {helles {colour}}}}}",
  "colour.darkest": "dunkelstes {colour}",
  "colour.lightest": "hellstes {colour}",
  "colour.darker":
    "{degree, select, slightly {etwas dunkleres {colour}} much {viel dunkleres {colour}} other {dunkleres {colour}}}",
  "colour.lighter":
    "{degree, select, slightly {etwas helleres {colour}} much {viel helleres {colour}} other {helleres {colour}}}",
  "colour.deeper":
    "{degree, select, slightly {etwas satteres {colour}} much {viel satteres {colour}} other {satteres {colour}}}",
  "colour.greyer":
    "{degree, select, slightly {etwas graueres {colour}} much {viel graueres {colour}} other {graueres {colour}}}",
  "colour.warmer":
    "{degree, select, slightly {etwas wärmeres {colour}} much {viel wärmeres {colour}} other {wärmeres {colour}}}",
  "colour.bluer":
    "{degree, select, slightly {etwas blaueres {colour}} much {viel blaueres {colour}} other {blaueres {colour}}}",
  "colour.yellower":
    "{degree, select, slightly {etwas gelberes {colour}} much {viel gelberes {colour}} other {gelberes {colour}}}",
  "colour.redder":
    "{degree, select, slightly {etwas röteres {colour}} much {viel röteres {colour}} other {röteres {colour}}}",
  "colour.greener":
    "{degree, select, slightly {etwas grüneres {colour}} much {viel grüneres {colour}} other {grüneres {colour}}}",
  "colour.purpler":
    "{degree, select, slightly {etwas violetteres {colour}} much {viel violetteres {colour}} other {violetteres {colour}}}",
  "colour.reddish":
    "{degree, select, slightly {etwas rötliches {colour}} much {deutlich rötliches {colour}} very {sehr rötliches {colour}} other {rötliches {colour}}}",
  "colour.brownish":
    "{degree, select, slightly {etwas bräunliches {colour}} much {deutlich bräunliches {colour}} very {sehr bräunliches {colour}} other {bräunliches {colour}}}",
  "colour.yellowish":
    "{degree, select, slightly {etwas gelbliches {colour}} much {deutlich gelbliches {colour}} very {sehr gelbliches {colour}} other {gelbliches {colour}}}",
  "colour.greenish":
    "{degree, select, slightly {etwas grünliches {colour}} much {deutlich grünliches {colour}} very {sehr grünliches {colour}} other {grünliches {colour}}}",
  "colour.bluish":
    "{degree, select, slightly {etwas bläuliches {colour}} much {deutlich bläuliches {colour}} very {sehr bläuliches {colour}} other {bläuliches {colour}}}",
  "colour.purplish":
    "{degree, select, slightly {etwas violettstichiges {colour}} much {deutlich violettstichiges {colour}} very {sehr violettstichiges {colour}} other {violettstichiges {colour}}}",
  "colour.greyish":
    "{degree, select, slightly {etwas gräuliches {colour}} much {deutlich gräuliches {colour}} very {sehr gräuliches {colour}} other {gräuliches {colour}}}",
  "colour.warm":
    "{degree, select, slightly {etwas warmes {colour}} much {deutlich warmes {colour}} very {sehr warmes {colour}} other {warmes {colour}}}",
  "colour.neutral":
    "{degree, select, slightly {fast neutrales {colour}} much {ganz neutrales {colour}} very {ganz neutrales {colour}} other {neutrales {colour}}}",
  "colour.deep": "{word, select, black {Tiefschwarz} other {tiefes {colour}}}",
  "colour.mid": "mittleres {colour}",
  "colour.off":
    "{word, select, white {gebrochenes Weiß} black {gebrochenes Schwarz} other {gebrochenes {colour}}}",
  "colour.charcoal": "kohlefarbenes {colour}",
  "colour.dull": "stumpfes {colour}",
  "colour.jet": "pechfarbenes {colour}",
  "colour.bright": "strahlendes {colour}",
  "colour.pure": "reines {colour}",
  "colour.nth":
    "{place, select, second {zweites {colour}} third {drittes {colour}} fourth {viertes {colour}} fifth {fünftes {colour}} sixth {sechstes {colour}} seventh {siebtes {colour}} eighth {achtes {colour}} ninth {neuntes {colour}} other {zehntes {colour}}}",
  "colour.numbered": "{colour} {number}",
  "colour.others": "weitere Farben",
  "colour.selectedPart": "{colour}, ausgewählter Teil",
  "colour.selected": "das ausgewählte {colour}",
  "colour.empty": "eine leere Zeichnung",
  "colour.allOver": "nur {colour}",
  "colour.mostly": "vor allem {colour}, dazu {others}",

  // colours: the colours of a study.
  "colours.caption":
    "Farben des Originals, die größte zuerst. Anteil an der ganzen Zeichnung; Reflexionsgrad des Tuchs.",
  "colours.colour": "Farbe",
  "colours.share": "Anteil",
  "colours.reflectance": "Reflexionsgrad",
  "colours.tincture": "Tinktur",
  "colours.becomes": "jetzt",
  "colours.vanishes":
    "aus {distance, plural, one {# Flaggenhöhe} other {# Flaggenhöhen}} nicht mehr zu erkennen",
  "colours.uneven": "ungleichmäßig, von <first></first> bis <last></last>",
  "colours.metal": "Metall",
  "colours.ofTincture": "Farbe",

  // doubt: what makes the figures of a drawing less certain.
  "doubt.joined":
    "Die Zeichnung hat mehr Farben, als einzeln gemessen werden: {count, plural, one {Die am wenigsten sichtbare wird} other {Die # am wenigsten sichtbaren werden}} mit einer ähnlichen gemessen, die mehr zu sehen ist, oder gemeinsam als „{name}“.",
  "doubt.faint":
    "{count, plural, one {Eine Form deckt zu weniger als der Hälfte und wird nicht mitgemessen.} other {# Formen decken zu weniger als der Hälfte und werden nicht mitgemessen.}}",
  "doubt.inexact":
    "Nur {share} der Zeichnung ließen sich genau unterscheiden; ihre Zahlen sind weniger sicher.",
  "doubt.nearLimit": "Nahe der Sehgrenze: Teile in {names}.",
  "doubt.effect": "Die Zeichnung enthält, was hier weder gezeigt noch gemessen wird: {looks}.",
  "doubt.look":
    "{kind, select, shadow {ein Schatten} blur {eine Unschärfe} colours {eine Änderung der Farben} blend {Farben, gemischt mit dem, was darunter liegt ({mode})} other {ein Effekt}}",

  // edge: what an edge is called.
  "edge.names": "{one} / {other}",
  "edge.on": "{part} / {field}",

  // edgefigure: one edge, before and after, as a figure.
  "edgefigure.edge": "Kante",
  "edgefigure.becomes": ", jetzt {is}",
  "edgefigure.outcome": ": {outcome}, auf {extent}.",
  "edgefigure.sideBySide": "Nebeneinander; Kontrast {contrast}.",
  "edgefigure.says": "{edge}: Kontrast vorher {before}, nachher {after}; {outcome}.",
  "edgefigure.saysAfter": "{edge}: Kontrast nachher {after}; {outcome}.",

  // edgepage: the page of one edge.
  "edgepage.place": "Auf der Flagge; der Ausschnitt im Rahmen ist groß gezeigt",
  "edgepage.numbers": "Die Kante in Zahlen",
  "edgepage.elsewhere": "Dieselben zwei Farben in anderen Studien",
  "edgepage.study": "Studie",
  "edgepage.elsewhereNote":
    "Farben mit gleichem Namen müssen nicht dieselben sein: Man vergleiche das Tuch, nicht das Wort.",
  "edgepage.siblings": "Kanten dieser Studie",
  "edgepage.nearLine": "{near}: Auf anderem Tuch wäre sie eine andere. <why>Warum</why>",
  "edgepage.how": "Wie der <contrast>Kontrast</contrast> entsteht und <beside>was daneben steht</beside>.",
  "edgepage.locator": "Wo die Kante liegt",
  "edgepage.locatorSays":
    "Die ursprüngliche Flagge blass, mit den Linien, an denen {one} und {other} aneinanderstoßen.",
  "edgepage.contrast": "Kontrast",
  "edgepage.difference": "Farbabstand",
  "edgepage.sides": "Zuerst das Original, dann der Neuentwurf.",
  "edgepage.seenNote":
    "Grau behält den Kontrast. Der Farbabstand ist ΔE00: je größer, desto leichter zu unterscheiden. Es sind Näherungen für die stärkste Form jeder Sehschwäche und keine Prüfung des Sehens. <how>Wie sie entstehen</how>",
  "edgepage.noEdge": "keine Kante",
  "edgepage.all": "Alle auf einem Lineal",
  "edgepage.of": "Eine Kante, an der zwei Farben aneinanderstoßen, der Studie <study>{title}</study>",
  "edgepage.becomes": "{was}, jetzt {is}",
  "edgepage.description": "Eine Kante einer inoffiziellen Neuentwurfsstudie, {outcome}.",
  "edgepage.placeAlt": "{label}: die Stelle, an der {one} und {other} aneinanderstoßen",
  "edgepage.unofficial": "Neuentwurf, inoffizielle Studie",
  "edgepage.bothNear": "Beide Stufen liegen an der Schwelle",
  "edgepage.originalNear": "Die Stufe des Originals liegt an der Schwelle",
  "edgepage.redesignNear": "Die Stufe des Neuentwurfs liegt an der Schwelle",

  // edges: what became of each edge of a study.
  "edges.none": "Eine einzige Farbe: keine Kanten zu messen.",
  "edges.where": "Wo die Kanten liegen",
  "edges.map": "Die Kantenkarte",
  "edges.ruler": "Das Kontrastlineal",
  "edges.moreOnDistance": "Mehr zur <distance>Entfernung</distance>",
  "edges.moreOnDistanceAndCloth": "Mehr zur <distance>Entfernung</distance> und zum <cloth>Tuch</cloth>",
  "edges.fimbriations": "Linien, die zwei Farben trennen",
  "edges.fimbriationMoves":
    "Vom Kontrast der beiden Farben selbst zu dem der schwächeren der beiden Kanten, die an ihrer Stelle stehen. <more>Mehr zum Saum</more>",
  "edges.every": "Jede Kante, vorher und nachher",
  "edges.betterAndWorse": "Was besser und was schlechter wird",
  "edges.paged": "Die {paged} längsten dieser {all} Kanten haben eigene Seiten.",

  // edgesaid: what became of one edge.
  "edgeSaid.unchanged": "Unverändert",
  "edgeSaid.leftAlone": "Die Änderung lässt diese Kante, wie sie ist: Kontrast {contrast}, {grade}.",
  "edgeSaid.hardlyChange": "{pair} ändern sich kaum, auf {where}: {move}.",
  "edgeSaid.stayClear": "{pair} bleiben klar getrennt, auf {where}: {move}.",
  "edgeSaid.stayHard": "{pair} bleiben schwer zu unterscheiden, auf {where}: {move}.",
  "edgeSaid.gained":
    "{who, select, one {{is} hebt sich jetzt gegen {neighbour} ab, auf {where}: Kontrast {contrast}, {grade}; {was} hatte {wasContrast}, {wasGrade}.} same {{is} heben sich jetzt voneinander ab, auf {where}: Kontrast {contrast}, {grade}, statt {wasContrast}, {wasGrade}.} other {{is} heben sich jetzt voneinander ab, auf {where}: Kontrast {contrast}, {grade}; {was} hatten {wasContrast}, {wasGrade}.}}",
  "edgeSaid.better":
    "{who, select, one {{is} hebt sich stärker gegen {neighbour} ab als {was}, auf {where}: {move}.} same {{is} heben sich stärker voneinander ab als zuvor, auf {where}: {move}.} other {{is} heben sich stärker voneinander ab als {was}, auf {where}: {move}.}}",
  "edgeSaid.betterUnclear":
    "{who, select, one {{is} hebt sich stärker gegen {neighbour} ab als {was}, aber nicht klar, auf {where}: {move}.} same {{is} sind leichter zu unterscheiden als zuvor, aber nicht klar, auf {where}: {move}.} other {{is} sind leichter zu unterscheiden als {was}, aber nicht klar, auf {where}: {move}.}}",
  "edgeSaid.lost":
    "{who, select, one {{is} hebt sich nicht mehr gegen {neighbour} ab, auf {where}: Kontrast {contrast}, {grade}; {was} hatte {wasContrast}, {wasGrade}.} same {{is} heben sich nicht mehr voneinander ab, auf {where}: Kontrast {contrast}, {grade}, statt {wasContrast}, {wasGrade}.} other {{is} heben sich nicht mehr voneinander ab, auf {where}: Kontrast {contrast}, {grade}; {was} hatten {wasContrast}, {wasGrade}.}}",
  "edgeSaid.worse":
    "{who, select, one {{is} hebt sich weniger gegen {neighbour} ab als {was}, auf {where}: {move}.} same {{is} heben sich weniger voneinander ab als zuvor, auf {where}: {move}.} other {{is} heben sich weniger voneinander ab als {was}, auf {where}: {move}.}}",
  "edgeSaid.worseUnclear":
    "{who, select, one {{is} hebt sich noch weniger gegen {neighbour} ab als {was}, auf {where}: {move}.} same {{is} sind noch schwerer zu unterscheiden als zuvor, auf {where}: {move}.} other {{is} sind noch schwerer zu unterscheiden als {was}, auf {where}: {move}.}}",
  "edgeSaid.merged":
    "{pair} werden für das Auge eine Farbe, auf {where}: Die Linie zwischen ihnen, mit einem Kontrast von {wasContrast}, {wasGrade}, ist verschwunden.",
  "edgeSaid.parted":
    "{pair} waren eine Farbe und stoßen jetzt in {gradeId, select, weak {einer schwachen Kante} soft {einer weichen Kante} clear {einer klaren Kante} other {einer starken Kante}} aneinander, auf {where}: Kontrast {contrast}.",
  "edgeSaid.pair": "{one} und {other}",
  "edgeSaid.moveNone": "Kontrast {contrast}, {grade}",
  "edgeSaid.moveStill": "Kontrast von {wasContrast} auf {contrast}, weiterhin {grade}",
  "edgeSaid.moveGrade": "Kontrast von {wasContrast} auf {contrast}, von {wasGrade} zu {grade}",
  "edgeSaid.whereAll": "allen Linien der Flagge",
  "edgeSaid.wherePart": "{part} der Länge aller Kanten",
  "edgeSaid.whereOutline": "dem ganzen Umriss dessen, was gesehen werden muss",
  "edgeSaid.whereOutlinePart": "{part} des Umrisses dessen, was gesehen werden muss",
  "edgeSaid.whereAllAndOutline": "allen Linien der Flagge, darunter {outline}",
  "edgeSaid.whereOutlineAndMore": "{part} der Länge aller Kanten, darunter {outline}",

  // entry: the entry of a study in a list.
  "entry.makers": "Blatt für Hersteller",
  "entry.putForward": "Vorgeschlagen von {authors}",

  // facts: facts beside the numbers of a study.
  "facts.heading": "Tatsachen neben den Zahlen, keine davon eine Wertung",
  "facts.caption": "Tatsachen neben den Zahlen",
  "facts.fact": "Tatsache",
  "facts.clearShareNote":
    "Der Anteil klarer Kanten springt, wo eine Stufe wechselt; er ist eine Angabe und entscheidet nichts. <near>An der Schwelle</near>",
  "facts.hueNote":
    "Nur der Farbton: ein Kontrast unter 30 % bei einem ΔE00 von 20 oder mehr, und unter 10 in Grau. Eine solche Kante vergeht in der Dämmerung, im Graudruck und für viele Farbenfehlsichtige. Die Grenzwerte sind unser eigenes Urteil.",
  "facts.tinctureNote":
    "Tinkturregel: kein Metall auf Metall, keine Farbe auf Farbe; A. C. Fox-Davies, <book>A Complete Guide to Heraldry</book>, 1909, Kapitel VII. Gespaltene und geteilte Felder, Säume und Pelzwerk sind ausgenommen; Pelzwerk wird hier nicht erkannt.",
  "facts.countNote":
    "Farben über einem halben Prozent der Fläche. Das Heft <book>Good Flag, Bad Flag</book>, 2006, rät zu zwei oder drei; die <book>Guiding Principles of Flag Design</book>, 2014, ziehen weniger vor.",
  "facts.more": "Mehr zu diesen Tatsachen",
  "facts.clearShare": "Anteil klarer Kanten: klar oder stark, an der Länge aller Kanten",
  "facts.near": "Stufe an der Schwelle, auf anderem Tuch eine andere",
  "facts.hue": "Nur am Farbton zu unterscheiden",
  "facts.tincture": "Gegen die Tinkturregel",
  "facts.count": "Zahl der Farben; Leitfäden raten zu zwei oder drei",
  "facts.none": "keine",
  "facts.metalOnMetal": "{names}, beides Metall",
  "facts.colourOnColour": "{names}, beides Farbe",
  "facts.ruleKept": "Nichts verstößt dagegen, weder vorher noch nachher.",
  "facts.ruleBroken": "Dagegen verstößt vorher und nachher: {names}.",
  "facts.ruleMoved": "Dagegen verstößt im Original: {was}. Im Neuentwurf: {is}.",
  "facts.exemptFimbriation": "Ausgenommen als Saum: {names}.",
  "facts.exemptField": "Ausgenommen als Teile des Feldes: {names}.",
  "facts.uneven":
    "Eine ungleichmäßige Farbe: {name} reicht von {lightest} bis {darkest}; eine Kante davon ist nur klar, wenn beide Enden es sind.",

  // feed: what readers of feeds see, and the caption of a flag on somebody else’s page.
  "feed.decisions": "{title}: Entscheidungen",
  "feed.decision": "{status}: {title}",
  "feed.status": "{status}, {meaning}.",
  "feed.statusDecided": "{status}, {meaning}. {decision}",
  "feed.redesigns": "Die Neuentwürfe sind inoffizielle Studien.",
  "feed.proposed": "{change} {verdict}: Klarheit {before} → {after}.",
  "feed.flagToday": "{flag} heute",
  "feed.flagRedesign": "{flag}, Neuentwurf",
  "feed.clearer": "<a>{name}</a>: klarer. Inoffizielle Studie.",
  "feed.atAPrice": "<a>{name}</a>: klarer, um einen Preis. Inoffizielle Studie.",
  "feed.mixed": "<a>{name}</a>: gemischt. Inoffizielle Studie.",
  "feed.lessClear": "<a>{name}</a>: weniger klar. Inoffizielle Studie.",
  "feed.noGain": "<a>{name}</a>: kein Gewinn. Inoffizielle Studie.",

  // fimbriation: what a line of a third colour does for the two colours that it keeps apart.
  "fimbriation.parts": "Die Linie ({line}) trennt {one} und {other}",
  "fimbriation.doesNotPart": "Die Linie ({line}) trennt {one} und {other} nicht",
  "fimbriation.line": "{lead}: <move></move>.",
  "fimbriation.didAlready": "Im Original tat {line} das schon: {across} statt {direct}.",
  "fimbriation.didNotEither": "Im Original tat {line} das auch nicht: {across} statt {direct}.",
  "fimbriation.did": "Im Original tat {line} das: {across} statt {direct}.",
  "fimbriation.didNot": "Im Original tat {line} das nicht: {across} statt {direct}.",
  "fimbriation.it": "sie",
  "fimbriation.theLine": "die Linie ({colour})",
  "fimbriation.partLine": "die Linie ({part})",

  // finder: the form that finds studies.
  "finder.words": "Wörter",
  "finder.order": "Reihenfolge",
  "finder.more": "Weitere Filter",
  "finder.any": "Alle",
  "finder.find": "Suchen",
  "finder.all": "Alle zeigen",
  "finder.none": "Keine Studie passt zu alldem. Ein Wort oder eine Auswahl weglassen oder alle zeigen.",
  "finder.pages": "Seiten mit diesen Wörtern: <list></list>",
  "finder.status": "Stand",
  "finder.verdict": "Urteil",
  "finder.tag": "Stichwort",
  "finder.author": "Autor",
  "finder.mostGained": "Größter Gewinn",
  "finder.newest": "Neueste",
  "finder.mostLost": "Größter Verlust",
  "finder.leastClear": "Am wenigsten klarer Neuentwurf",
  "finder.title": "Titel",
  "finder.found": "{found} von {count, plural, one {# Studie} other {# Studien}}",
  "finder.foundListed": "{found} der {listed} hier aufgeführten",

  // flagpage: the page of a flag with several redesigns, or that readers named.
  "flagPage.two": "{flag}: {one} oder {other}",
  "flagPage.pair": "{one} und {other}",
  "flagPage.namedShort": "Von Lesern genannt.",
  "flagPage.named": "Von Lesern genannt",
  "flagPage.proposal": "Vorschlag {number}",
  "flagPage.weakest": "Schwächste Kante {contrast}",
  "flagPage.clearest":
    "{count, plural, one {Am klarsten ist Vorschlag {numbers}} other {Am klarsten sind die Vorschläge {numbers}}}{priced, select, yes {, um einen Preis} other {}}: Die Klarheit steigt von {before} auf {after}.",
  "flagPage.clearerOfTwo":
    "Beide sind um einen Preis klarer; der klarere ist Vorschlag {numbers}: {before} auf {after}, gegenüber {next}.",
  "flagPage.clearestOfPriced":
    "Alle hier gezeigten sind um einen Preis klarer; am klarsten ist Vorschlag {numbers}: {before} auf {after}, der nächste {next}.",
  "flagPage.noneClearer": "Kein Vorschlag ist klarer als das Original: Seine Klarheit ist {before}.",
  "flagPage.all": "Alle Vorschläge",
  "flagPage.pairs": "Zwei nebeneinander: <list></list>",
  "flagPage.edges": "Was jeder Vorschlag besser und schlechter macht",
  "flagPage.survey": "Ihre Zahlen in der Übersicht",
  "flagPage.showAll": "Alle zeigen",
  "flagPage.allShown": "Alle Flaggen sind zu sehen",
  "flagPage.head": "Vorschlag",
  "flagPage.verdict": "Urteil",
  "flagPage.share": "Geänderter Anteil",

  // focus: what has to be seen, the emblem or charge of a flag, from where the flag is seen, and how far that lasts.
  "focus.none":
    "Kein Emblem gefunden: Nichts muss vor dem Übrigen gesehen werden, und keine Kante zählt doppelt. Das ist eine Tatsache, kein Mangel.",
  "focus.notGuessed":
    "Eine Figur geht in eine Fläche ihrer eigenen Farbe über. Sie wurde nicht erraten, darum zählt nichts doppelt. Wer sie benennen will, schreibt in die Studie:",
  "focus.fullDrawing": "Gemessen an der ganzen Zeichnung, nicht aus der Entfernung.",
  "focus.fromAway":
    "Gemessen, wie man es aus {away, plural, one {# Flaggenhöhe} other {# Flaggenhöhen}} sieht: eine Flagge von einem Meter Höhe aus {away, plural, one {# Meter} other {# Metern}}. Teile, die dünner sind als {finest} der Flaggenhöhe, werden dem zugeschlagen, was neben ihnen liegt. Das ist ein Modell der Sehschärfe.",
  "focus.afar": "Was von Weitem bleibt",
  "focus.afarDescription": "{lasting} Klarheit dessen, was gesehen werden muss: {steps}.",
  "focus.step": "aus {distance}: {is}",
  "focus.stepMove": "aus {distance}: von {was} auf {is}",
  "focus.afarCaption":
    "Erkennbar bis {lasts}, allein nach der Größe: {left} davon müssen übrig sein, und das größte Stück muss {arcminutes, plural, one {# Bogenminute} other {# Bogenminuten}} messen, die Größe eines Buchstabens, den man mit voller Sehschärfe liest.",
  "focus.noEmblem": "kein Emblem gefunden",
  "focus.lastsUnder": "{distance, plural, one {unter # Flaggenhöhe} other {unter # Flaggenhöhen}}",
  "focus.lastsOrMore": "{distance, plural, one {# Flaggenhöhe oder mehr} other {# Flaggenhöhen oder mehr}}",
  "focus.nothingLeft": "nichts übrig",
  "focus.tooSmall":
    "{distance, plural, one {Was gesehen werden muss, ist aus # Flaggenhöhe, der kürzesten geprüften Entfernung, zu klein, um erkannt zu werden, gleich in welchen Farben.} other {Was gesehen werden muss, ist aus # Flaggenhöhen, der kürzesten geprüften Entfernung, zu klein, um erkannt zu werden, gleich in welchen Farben.}}",
  "focus.largeEnough":
    "{distance, plural, one {Was gesehen werden muss, ist groß genug, um aus bis zu # Flaggenhöhe erkannt zu werden, gleich in welchen Farben.} other {Was gesehen werden muss, ist groß genug, um aus bis zu # Flaggenhöhen erkannt zu werden, gleich in welchen Farben.}}",
  "focus.largeEnoughAlways":
    "{distance, plural, one {Was gesehen werden muss, ist groß genug, um aus # Flaggenhöhe, der weitesten geprüften Entfernung, erkannt zu werden.} other {Was gesehen werden muss, ist groß genug, um aus # Flaggenhöhen, der weitesten geprüften Entfernung, erkannt zu werden.}}",

  // frame: what stands around the content of every page, and the page of a missing address.
  "frame.skip": "Zum Inhalt",
  "frame.gallery": "Galerie",
  "frame.studies": "Studien",
  "frame.survey": "Übersicht",
  "frame.method": "Methode",
  "frame.allStudies": "Alle Studien",
  "frame.cautions":
    "Jeder hier gezeigte Neuentwurf ist eine inoffizielle Studie und zur Diskussion gestellt. Gesetze über den Gebrauch von Flaggen sind verschieden: Maßgeblich ist das örtliche Recht, und die Lizenz jeder Zeichnung ist zu achten. Siehe die <cautions>Hinweise</cautions> und für Autoren die <rules>Regeln für Studien und Zeichnungen</rules>.",
  "frame.publishedBy": "Herausgegeben von {society}.",
  "frame.textsUnder": "Texte unter <licence>{name}</licence>.",
  "frame.madeWith":
    "Gemacht mit Counterchange. Gesetzt in Source Serif 4 und Source Sans 3, unter der <licence>SIL Open Font License</licence>.",
  "frame.missing": "Hier ist keine Seite",
  "frame.missingText":
    "Unter dieser Adresse gibt es keine Seite. Vielleicht wurde eine Studie aus der Galerie genommen, oder die Adresse ist vertippt.",
  "frame.missingDescription": "Unter dieser Adresse gibt es keine Seite.",
  "frame.moved": "Diese Seite ist umgezogen: {title}.",

  // front: the front page.
  "front.nominate": "Eine Flagge, die eine Studie verdient? <name>Nennen und sagen, warum</name>",
  "front.empty":
    "Hier ist noch nichts veröffentlicht. Die erste Studie wird auf dieser Seite stehen; bis dahin sagt <method>die Methode</method>, wie sie gemessen wird.",
  "front.earlier": "Frühere Studien",
  "front.edgeless": "Ohne Kante, die zu messen wäre: <list></list>.",
  "front.more": "{count, plural, one {# weitere} other {# weitere}}",

  // gain: the chart of what each change does to clarity.
  "gain.title": "Was jede Änderung an der Klarheit bewirkt",
  "gain.order": "Der größte Gewinn zuerst.",
  "gain.key":
    "Ein Ring für das Original, ein Punkt für den Neuentwurf; eine hohle Linie, wo die Klarheit sinkt.",
  "gain.othersListed":
    "{count, plural, one {Die andere Studie steht in der Liste aller Studien} other {Die anderen # Studien stehen in der Liste aller Studien}}",
  "gain.othersOnFront":
    "{count, plural, one {Die andere Studie steht auf der Titelseite} other {Die anderen # Studien stehen auf der Titelseite}}",
  "gain.told": "{count, plural, one {# Studie} other {# Studien}}: Die Klarheit {ways}.",
  "gain.rises": "steigt bei {count}",
  "gain.falls": "sinkt bei {count}",
  "gain.stays": "bleibt bei {count} gleich",
  "gain.most": "Am stärksten steigt sie in „{title}“, von {before} auf {after}.",
  "gain.here": "In dieser Studie geht sie von {before} auf {after}.",

  // grade: the grades of a contrast, within a sentence and in tables.
  "grade.weak": "schwach",
  "grade.soft": "weich",
  "grade.clear": "klar",
  "grade.strong": "stark",
  "grade.now": "jetzt {is}",
  "grade.from": "zuvor {was}",
  "grade.move": "von {was} zu {is}",

  // history: what came before a study and after it.
  "history.follows": "Tritt an die Stelle von",
  "history.followed": "Abgelöst von",
  "history.revised": "<date></date>: {what}",

  // ladder: the ladder of reflectance.
  "ladder.rung": "{name} {reflectance}",
  "ladder.title": "Wie hell jede Farbe ist",
  "ladder.says": "Die hellste zuerst: {colours}. {change}",

  // lasting: how far what has to be seen lasts, as a figure.
  "lasting.caption":
    "Klarheit dessen, was gesehen werden muss, aus so vielen Flaggenhöhen: ein Ring für das Original, ein Punkt für den Neuentwurf.",
  "lasting.model": "Ein Modell des Sehens",

  // length: how long an edge is.
  "length.heights": "{length, number, ::.00} Flaggenhöhen",
  "length.offFocus": "keine davon am Umriss dessen, was gesehen werden muss",
  "length.onFocus": "alle am Umriss dessen, was gesehen werden muss",
  "length.partOnFocus": "davon {part, number, ::.00} am Umriss dessen, was gesehen werden muss",
  "length.distance": "{distance, plural, one {# Flaggen\u00adhöhe} other {# Flaggen\u00adhöhen}}",
  "length.wholeOutline": "ganzer Umriss",
  "length.ofOutline": "{share} des Umrisses",
  "length.partly": "{length}, davon {own, number, ::.00}: {part}",
  "length.wholly": "{length}, {part}",

  // likeness: which flags a redesign could be taken for.
  "likeness.figure": "mittlerer Farbabstand ΔE00 {difference}",
  "likeness.figureMirrored": "mittlerer Farbabstand ΔE00 {difference}, von hinten gesehen",
  "likeness.figureTurned": "mittlerer Farbabstand ΔE00 {difference}, auf dem Kopf",
  "likeness.flags":
    "{count, plural, one {einer anderen Flagge oder einem anderen Neuentwurf} other {# anderen Flaggen und Neuentwürfen}}",
  "likeness.hardly":
    "Kaum. Von {flags} kommt am nächsten: {nearest}; {figure}. Unter {limit} wird eine Flagge leicht für eine andere gehalten.",
  "likeness.could":
    "Möglich. Von {flags} {count, plural, one {kommt eine nahe} other {kommen mehrere nahe}}: {names}. Unter {limit} wird eine Flagge leicht für eine andere gehalten; die nächste hat: {figure}.",
  "likeness.rivals": "Andere Vorschläge für diese Flagge zählen nicht mit.",
  "likeness.own": "Dieser Neuentwurf",

  // list: what stands between the items of a list that has no “and”.
  "list.comma": ", ",
  "list.semicolon": "; ",
  "list.colon": "{name}: {said}",

  // maker: the sheet from which an adopted redesign is made as a flag.
  "maker.title": "{title}, Blatt für Hersteller",
  "maker.description": "Maßverhältnisse, Konstruktion und Farben des angenommenen Neuentwurfs, zum Drucken.",
  "maker.kind": "Blatt für Hersteller",
  "maker.for": "Für Hersteller",
  "maker.print": "Zum Drucken: der Druckbefehl des Browsers, A4 oder Letter, hochkant. Eine Seite.",
  "maker.toStudy": "Zur Studie",
  "maker.outline": "Der Neuentwurf in Umrissen: {name}",
  "maker.proportions": "Höhe zu Breite <number>{proportions}</number>. Liek links.",
  "maker.unofficial":
    "Diese Galerie führt den Neuentwurf als angenommen; er bleibt eine inoffizielle Studie.",
  "maker.unofficialBy": "{society} führt den Neuentwurf als angenommen; er bleibt eine inoffizielle Studie.",
  "maker.built": "Konstruktion",
  "maker.shape": "Form",
  "maker.fromHoist": "Vom Liek",
  "maker.fromTop": "Von oben",
  "maker.width": "Breite",
  "maker.height": "Höhe",
  "maker.rectangle": "Rechteck",
  "maker.line": "Linie",
  "maker.circle": "Kreis, nach seinem Mittelpunkt",
  "maker.ring": "Ring, nach seinem Mittelpunkt",
  "maker.across": "{width} Durchmesser",
  "maker.hole": "Loch {height}",
  "maker.laid": "In der Reihenfolge, in der sie liegen: Was später kommt, deckt das Frühere.",
  "maker.none":
    "Aus der Zeichnung ließen sich keine einfachen Formen lesen. Es gilt die Datei der Zeichnung.",
  "maker.parts": "Ganze Zahlen sind Teile, von denen die Höhe {parts} hat.",
  "maker.percent": "Lagen und Maße in % beziehen sich auf die Höhe, gerundet.",
  "maker.untold":
    "{count, plural, one {# weitere Form fehlt, weil sie nicht einfach ist oder hier kein Platz war: Es gilt die Datei der Zeichnung.} other {# weitere Formen fehlen, weil sie nicht einfach sind oder hier kein Platz war: Es gilt die Datei der Zeichnung.}}",
  "maker.colours": "Farben",
  "maker.colour": "Farbe",
  "maker.hex": "Hex",
  "maker.reflectance": "Reflexionsgrad",
  "maker.others":
    "{count, plural, one {# weitere Farbe steht auf der Seite der Studie.} other {# weitere Farben stehen auf der Seite der Studie.}}",
  "maker.coloursHow":
    "sRGB in Bytes; CIELAB unter D65; Reflexionsgrad von Tuch, dessen Färbung dem Bildschirm entspricht, zwischen dem schwarzen und dem weißen Tuch der Galerie.",
  "maker.source": "Quellen: IEC 61966-2-1 (sRGB), CIE 15:2004 (CIELAB).",
  "maker.cautions": "Vor der Herstellung",
  "maker.law":
    "Das örtliche Recht geht vor: darin, wie eine Flagge aussieht, wer sie herstellen und wer sie führen darf.",
  "maker.cloth":
    "Tuch- und Farbkarten entscheiden. Eine Bildschirmfarbe ist kein Farbstoff: bei Tageslicht nach einer Karte wählen und die Farben in der Helligkeit so weit auseinanderhalten, wie sie hier sind.",
  "maker.file": "Wo dieses Blatt und die Datei der Zeichnung voneinander abweichen, gilt die Datei.",

  // map: the edge map.
  "map.caption":
    "Wo zwei Farben aneinanderstoßen, nachgezeichnet aus der Betrachtungsentfernung. Durchgezogene Linien sind klar oder stark, gestrichelte nicht.",
  "map.bandNote": "Das Band umgibt, was gesehen werden muss.",
  "map.title": "Kantenkarte",
  "map.focusFound": "was gesehen werden muss (gefunden, {share} der Flagge)",
  "map.focusNamed": "was gesehen werden muss (von den Autoren benannt, {share} der Flagge)",
  "map.none": "Keine Kanten.",
  "map.firstGrade": "{grade}, {share} der Länge aller Kanten: {names}.",
  "map.grade": "{grade}, {share}: {names}.",

  // mark: the marks of a flag.
  "mark.clarity": "Klarheit",
  "mark.contrast": "Kontrast",
  "mark.length": "Länge",
  "mark.near": "an der Schwelle",
  "mark.nearNow": "jetzt an der Schwelle",
  "mark.nearBefore": "zuvor an der Schwelle",
  "mark.hue": "nur im Farbton",
  "mark.hueNow": "jetzt nur im Farbton",
  "mark.hueBefore": "zuvor nur im Farbton",
  "mark.clarityMeans": "100 %, wo jede Kante klar ist",
  "mark.focusClarity": "Klarheit dessen, was gesehen werden muss",
  "mark.focusMeans": "die Kanten des Emblems allein",
  "mark.weakest": "Schwächste Kante",
  "mark.weakestMeans": "Kontrast der beiden Farben",
  "mark.price": "Der Preis",
  "mark.sameEdge": "dieselbe Kante",

  // matrix: the matrix of all single changes.
  "matrix.notTried": "nicht erprobt",
  "matrix.own": "diese Studie",
  "matrix.note": "Anmerkung {number}",
  "matrix.merges": "verschmilzt",
  "matrix.notRanked": "ohne Rang",
  "matrix.clearest": "die klarste der Zeile",
  "matrix.title": "Jede Änderung einer Farbe",
  "matrix.ownHue": "im eigenen Farbton",
  "matrix.studys": "{name} der Studie",
  "matrix.unranked": "ohne Rang: {share} vom Umriss einer Figur verschmelzen",
  "matrix.moreColours":
    "{count, plural, one {# weitere Farbe der Flagge} other {# weitere Farben der Flagge}}",
  "matrix.moreReplacements": "{count, plural, one {# weiterer Ersatz} other {# weitere Ersatzfarben}}",
  "matrix.reading": "Eine Zeile ändert eine Farbe der Flagge, eine Spalte sagt, in welche.",
  "matrix.readingBlocks": "Jeder Block ändert eine Farbe der Flagge; über jeder Zahl steht, in welche.",
  "matrix.clarity": "Unter jeder Flagge steht ihre Klarheit.",
  "matrix.clarityToday": "Unter jeder Flagge steht ihre Klarheit; das Original hat {today}.",
  "matrix.bold": "Fett: die klarste der Zeile, mehrere, wo sie gleich klar sind.",
  "matrix.mergesNote": "„verschmilzt“: Zwei Farben werden eine.",
  "matrix.greyNote": "„ohne Rang“: Ein Drittel vom Umriss einer Figur oder mehr würde verschmelzen.",
  "matrix.dash": "Ein Strich: nicht erprobt, oder keine Änderung zu sehen.",
  "matrix.partAlone": "Die Änderung dieser Studie betrifft nur einen Teil und ist nicht darunter.",
  "matrix.left": "Nicht gezeigt: {what}.",

  // method: the method page's opening, headings and figures.
  "method.title": "Methode",
  "method.description":
    "Wie jede Zahl auf diesen Seiten entsteht: Formeln, Quellen, Stufen, Ergebnisse, Hinweise.",
  "method.lede": "Wie jede Zahl hier entsteht.",
  "method.ledeShown": "Wie jede Zahl hier entsteht, gezeigt an einer Flagge: <a>{name}</a>.",
  "method.count": "Das Kleingedruckte neben jedem Schritt sagt, woher seine Zahlen kommen.",
  "method.contents": "Auf dieser Seite",
  "method.edges": "Kanten",
  "method.distance": "Entfernung",
  "method.lasting": "Von Weitem",
  "method.reflectance": "Reflexionsgrad",
  "method.contrast": "Kontrast und Stufe",
  "method.numbers": "Klarheit",
  "method.outcomes": "Ergebnis und Urteil",
  "method.words": "Die Worte",
  "method.options": "Andere Änderungen einer Farbe",
  "method.survey": "Die Übersicht",
  "method.likeness": "Verwechslungsgefahr?",
  "method.beside": "Andere Maße",
  "method.facts": "Tatsachen",
  "method.vision": "Für Farbenfehlsichtige und in Grau",
  "method.cautions": "Hinweise",
  "method.inCloth": "Tuch",
  "method.inHigh": "hoch",
  "method.inLow": "tief",
  "method.ofContrast": "Kontrast",
  "method.ofCount": "Zählwert",
  "method.ofClarity": "Klarheit",
  "method.ofWeight": "Gewicht",
  "method.figure": "{name}: <number>{value}</number>",
  "method.figureOfChange": "<change></change>: <number>{value}</number>",
  "method.labels": "Nummern",
  "method.labelsShown": "{name}, jede Farbe als ein eigenes Grau.",
  "method.traced":
    "Jede Farbe nach ihrer Nummer, als Grau gezeigt; und die Linien, an denen zwei aneinanderstoßen, gestrichelt, wo die Kante nicht klar ist.",
  "method.marked": "Das Band bezeichnet, {focus}.",
  "method.afarFigure":
    "Aus {distance, plural, one {# Flaggenhöhe} other {# Flaggenhöhen}}: <number>{clarity}</number>",
  "method.afarShown": "{name} aus {distance, plural, one {# Flaggenhöhe} other {# Flaggenhöhen}}.",
  "method.afarNote": "Vergrößert, mit der Klarheit dessen, was gesehen werden muss.",
  "method.cloth": "{name}: Leuchtdichte; Reflexionsgrad in Prozent",
  "method.sumTitle": "Klarheit von {name} als Summe: {clarity}",
  "method.sumBar": "{names}: {share} des ganzen Gewichts, zählt {counts}",
  "method.sumAll": "{bars}.",
  "method.sumNote":
    "Eine Fläche für jede Kante, so breit wie ihr Gewicht und so weit gefüllt, wie sie zählt: zusammen {clarity}.",
  "method.changeTo": "<a>Die Änderung an {name}</a>: Ring vorher, Punkt nachher",
  "method.visionNote": "Die Klarheit der ganzen Flagge.",
  "method.visionShown": "{heading}: {looks}.",
  "method.saidNote": "Was die Seite von <a>{name}</a> sagt.",
  "method.optionNote": "Die beste Änderung jeder Farbe, mit der Klarheit, die sie bringt.",
  "method.placedNote": "{name} in der Übersicht, mit ihren Nachbarn dort und deren Klarheit.",

  // methodbeyond: the steps of the method beyond one comparison. `em` is an emphasised term, `i` the title of a paper.
  "method.optionsText":
    "Jede Farbe mit mehr als 0,4 % der Flagge wird einzeln ersetzt: durch jede Farbe der Palette der Galerie, durch jede andere Farbe der Flagge und durch ihren <em>bewahrten Farbton</em>, denselben Farbton um so viel heller oder dunkler, dass er zu den Nachbarn, von denen er nicht klar getrennt ist, {keptHue} Kontrast gewinnt. Dafür darf keine Stufe sinken, und die Farbe bleibt in ihrer Familie: Rosa ist kein Rot. Innerhalb von ΔE*ab {departure} gilt nichts als Änderung, denn amtliche Flaggen eines Landes weichen ebenso weit voneinander ab.",
  "method.optionsOrder":
    "Die klarste steht zuerst, dann die stärkste, dieselbe Familie, der kleinere Abstand. Was ein Drittel vom Umriss einer Figur verschmelzen lässt, bleibt ohne Rang. <em>Zuerst zu ändern</em> sind höchstens die {mostFirst} Farben, deren bester Ersatz bis auf {firstWithin} Punkte an den besten von allen heranreicht, sofern dieser {leastGain} Punkte bringt; ohne einen solchen Gewinn ist eine Flagge ab {wholeClear} klar, wie sie ist. Was am besten aussieht, sagen die Autoren.",
  "method.optionsSource":
    "ΔE*ab {departure}: Melgosa und Gómez-Robledo, <i>Óptica Pura y Aplicada</i> 55(2), 2022, die es vorschlagen; Zusammenfassung gelesen. Helligkeit des bewahrten Farbtons: <ottosson>Ottosson, 2020</ottosson>. Unser eigenes Urteil: alle anderen Zahlen und die Reihenfolge.",
  "method.surveyText":
    "Die <a>Übersicht</a> misst jede Flagge, wie sie heute ist, jede einmal, so viele Studien sie auch hat. Die am wenigsten klare steht zuerst, eine einfarbige zuletzt. Ein hinterer Platz heißt nicht, dass eine Flagge sich ändern soll, ein vorderer nicht, dass sie gut ist.",
  "method.surveySource": "Unser eigenes Urteil: die Reihenfolge.",
  "method.likenessText":
    "Eine klarere Flagge kann die eines Nachbarn sein. Darum wird jeder Neuentwurf auf jede andere hier bekannte Flagge und jeden anderen Neuentwurf gelegt, nur nicht auf das eigene Original und dessen andere Vorschläge. Beide werden in {columns} mal {rows} Zellen mittlerer Farbe als Tuch geteilt; die Zahl ist das mittlere ΔE00 der Zellen: 0 ist dasselbe Bild, und eine Zelle, die einer fehlt, zählt 100. Die andere wird auch gespiegelt und auf dem Kopf verglichen. Unter {threshold} sagt die Studie es.",
  "method.likenessCare":
    "Große Felder zählen viel und kleine Figuren wenig; eine kleine Zahl ist also ein Grund hinzusehen und kein Beweis, wie es dazu kam. Zeichnungen, die nur dafür aufbewahrt werden, sind genannt und nicht gezeigt: Über ihre Lizenz verfügen wir nicht.",
  "method.likenessSource":
    "Unser eigenes Urteil: das Raster, das Mittel und {threshold}. Von den 36 585 Paaren einer offenen Sammlung liegen 144 näher beieinander, 50 davon sind eine Flagge unter zwei Namen; die Hälfte liegt über 36 auseinander.",
  "method.visionText":
    "Vielen Menschen fehlt eine der drei Zapfenarten im Auge. Wir färben beide Zeichnungen um, wie solche Augen sie sehen, und in Grau, und messen noch einmal. Grau behält jeden Kontrast, darum sagen wir dort, wie weit die beiden nächsten Grautöne auseinanderliegen.",
  "method.visionSource":
    "Protan, deutan: Machado, Oliveira, Fernandes, <machado>2009</machado>, Schweregrad 1, in linearem Licht, was der Aufsatz nicht ausdrücklich sagt. Tritan, das dieses Modell nicht erreicht: Brettel, Viénot, Mollon, 1997. Matrizen nach veröffentlichten Umsetzungen.",
  "method.cautionProposal":
    "Jeder Neuentwurf ist ein Vorschlag und keine Flagge in Gebrauch, es sei denn, seine Entscheidung sagt es.",
  "method.cautionLaw":
    "Gesetze über Flaggen sind verschieden. Das örtliche Recht ist zu beachten, bevor etwas hier Gezeigtes hergestellt, geändert oder geführt wird, und die Lizenz jeder Zeichnung ist zu achten.",
  "method.cautionEyes": "Bilder für andere Augen sind Näherungen und keine Prüfung des Sehens.",
  "method.cautionWorth": "Kontrast sagt nicht, ob eine Flagge gut ist, was sie bedeutet oder wem sie gehört.",
  "method.cautionDistance":
    "Entfernung ist ein Modell: Dunst, Blendung und Wind machen jede Entfernung kürzer.",
  "method.cautionCloth":
    "Die Zahlen gelten für die Zeichnung bei Tageslicht. Farbstoffe sind verschieden, und Tuch bleicht aus, wird nass und wirft Falten.",

  // methodgrade: the steps of the method that decide a grade. `em` is an emphasised term, `i` the title of a paper.
  "method.reflectanceText":
    "Ein Farbwert des Bildschirms sagt, wie viel Licht eine Farbe abgibt. Wir nehmen ihre Leuchtdichte, von 0 bis 1, in linearem Licht:",
  "method.reflectanceCloth":
    "Tuch ist nie ganz schwarz oder ganz weiß, und nach den Farbwerten des Bildschirms scheinen zwei dunkle Farben leichter zu unterscheiden, als sie es sind. Darum wird die Leuchtdichte zwischen das schwärzeste und das weißeste Tuch gelegt, in Prozent:",
  "method.reflectanceRanges":
    "Baustoffe reichen von etwa {black} bis {white}, die Anstriche eines Herstellers von {paintBlack} bis {paintWhite}. Eine Stufe, die der weitere Bereich ändern würde, ist <em>an der Schwelle</em> vermerkt. Wo ein Gesetz das Tuch festlegt, setzt eine Galerie 0 und 100, und dann gilt: {laws}.",
  "method.law": "{first} auf {second} hat einen Kontrast von {contrast}, {grade}",
  "method.lawColour": "{colour} {reflectance}",
  "method.near":
    "An der Schwelle: Tuch von {black} bis {white} (Ring) und von {paintBlack} bis {paintWhite} (Punkt)",
  "method.reflectanceSource":
    "Leuchtdichte: <wcag>WCAG 2.2</wcag>. sRGB: IEC 61966-2-1. Bereiche: Seiten über Baustoffe, die Karte eines Farbenherstellers; Gesetze: wie andere sie wiedergeben; alles aus zweiter Hand. Die Gerade von Schwarz nach Weiß: keine Quelle. Unser eigenes Urteil: an der Schwelle.",
  "method.contrastText":
    "Kontrast vergleicht das Licht, das zwei Farben zurückwerfen. Er ist 0 %, wo beide gleich viel zurückwerfen, und umso größer, je weiter sie auseinanderliegen:",
  "method.contrastTable": "Was Menschen mit geringem Sehvermögen mindestens brauchen",
  "method.contrastWeak": "unter 30 %",
  "method.contrastSoft": "30 bis unter 45 %",
  "method.contrastClear": "45 bis unter 60 %",
  "method.contrastStrong": "60 % und mehr",
  "method.needsWeak": "unter jedem Grenzwert",
  "method.needsSoft": "große Bauteile",
  "method.needsClear": "kleine einzelne Gegenstände: Figuren",
  "method.needsStrong": "kleine Gegenstände in zwei Farben",
  "method.contrastClose":
    "Eine Figur ist ein kleiner einzelner Gegenstand, darum ist eine Kante ab 45 % klar. Das mit der Formel veröffentlichte Beispiel, {reflectances}, hat {published}; hier {computed}.",
  "method.pairs": "Wie übliche Paare ausfallen; Marken bei 30, 45 und 60 %",
  "method.pair": "Paar",
  "method.pairContrast": "Kontrast",
  "method.pairScale": "Auf einer Skala von 0 bis 100 Prozent",
  "method.pairRatio": "Verhältnis",
  "method.contrastSource":
    "Bowman und Sapolinski: AS 1428.1:2009, Anhang B; AS/NZS 1428.4.1, Anhang E; aus zweiter Hand. Die Prozentzahl ist mit keiner anderen Skala vergleichbar: Boon und andere, <i>Work</i> 70(4), <boon>2021</boon>. Unser eigenes Urteil: dass eine Figur ein kleiner einzelner Gegenstand ist; die Töne der Paare. Welche Paare klar zu lesen sind: übliche Praxis, keine Quelle.",
  "method.besideText":
    "Drei weitere Maße stehen neben dem Kontrast, und keines entscheidet. Das <em>Kontrastverhältnis</em> des Webs ist für Bildschirme gemacht: {first} auf {second} erfüllt dessen 3 zu 1, und doch nennt es niemand, der Flaggen ansieht, leicht zu erkennen. <em>ΔE00</em> sagt, wie verschieden zwei Farben aussehen, den Farbton eingeschlossen. Das dritte ist die <a>Tinkturregel</a>.",
  "method.besidePair":
    "{first} / {second}: Kontrastverhältnis <number>{ratio}</number>, ΔE00 <number>{deltaE00}</number>, Kontrast <number>{contrast}</number>, {grade}",
  "method.besideSource":
    "WCAG 2.2, <ratio>Verhältnis</ratio> und <objects>1.4.11</objects>. Sharma, Wu, Dalal, <sharma>CIEDE2000</sharma>, 2005; ihre 34 Prüfpaare prüfen dieses Programm. Dass Rot auf Schwarz schwer zu sehen ist: übliche Praxis, keine Quelle.",

  // methodsight: the steps of the method from a drawing to its lines. `em` is an emphasised term, `i` the title of a paper.
  "method.edgesText":
    "Wir zeichnen die Flagge {pixels} Pixel hoch, niedriger, wo sie sehr breit ist, und nummerieren ihre Farben. Wo zwei aneinanderstoßen, zeichnen wir die Linie nach. Alle Linien zwischen denselben zwei Farben sind eine <em>Kante</em>; ihre Länge steht in Höhen der Flagge: quer durch eine von 2:3 sind es 1,5.",
  "method.edgesLimits":
    "Der Rand der Flagge ist keine Kante. Eine Form, die zu weniger als der Hälfte ihrer Stärke zu sehen ist (Deckkraft 0,4), bleibt weg; jede andere zählt als deckend. Eine Kante unter {edge} der Länge aller Kanten wird aufgeführt, ist aber nie die schwächste und ändert kein Urteil.",
  "method.edgesSource":
    "Geprüft an Flaggen, deren Geometrie ein Gesetz festlegt: Anteile stimmen auf 0,2 Punkte genau, Längen auf 1 %, bei feinen Spitzen auf 3 %. Unser eigenes Urteil: die Größe des Bildes, die halbe Stärke, {edge} der Länge aller Kanten.",
  "method.distanceText":
    "Eine Flagge soll von Weitem gesehen werden. Diese Galerie misst aus {distance, plural, one {# Flaggenhöhe} other {# Flaggenhöhen}}; von dort ist das Feinste, was ein Auge erkennt, eine Bogenminute, also {finest} einer Flaggenhöhe. Dünnere Teile werden ihren Nachbarn zugeschlagen, bevor Kanten nachgezeichnet werden; ein dünner Umriss vergeht also, ein breiter bleibt. Ein Teil, der bis auf 10 % an die Grenze herankommt, löst eine Warnung aus.",
  "method.distanceNone":
    "Diese Galerie misst die ganze Zeichnung. Aus einer Entfernung, die sie wählen kann, gehen Teile, die zu dünn sind, um erkannt zu werden, an ihre Nachbarn.",
  "method.distanceFocus":
    "<em>Was gesehen werden muss</em>, sind die Figuren: Teile, die keinen Rand berühren, mit allem, was sie umschließen, und die 0,2 % der Flagge oder mehr füllen. Über 35 % sind sie ein gerahmtes Feld, und wir sehen darin nach; das Loch eines Rings gehört nicht dazu. Ein Stück mit einem Zehntel dieser Fläche ist eine eigene <em>Figur</em>. Autoren können sie stattdessen benennen, und müssen es, wo eine Figur in ein Feld ihrer eigenen Farbe übergeht, denn wir raten nicht. Eine Flagge ohne Figur ist darum nicht schlechter.",
  "method.distanceSame":
    "Eine Farbe, die von einer größeren um höchstens {same} abweicht (<a>ΔE00</a>), zählt mit ihr. Anteile der Farben gelten der ganzen Zeichnung.",
  "method.distanceSource":
    "Eine Bogenminute: volle Sehschärfe, ISO 8596, aus zweiter Hand. Es ist ein Modell: Eine einzelne starke Linie kann noch auffallen. Unser eigenes Urteil: die Entfernung und alle Prozentzahlen, ΔE00 {same}, das Zehntel.",
  "method.lastingText":
    "Aus jeder Entfernung fragen wir zweierlei. Ist klar, was gesehen werden muss? Seine eigenen Kanten haben dort eine <a>Klarheit</a>. Ist es groß genug? Mindestens {left} seiner Fläche müssen übrig sein, und sein größtes Stück muss {span} Bogenminuten messen, wie ein Buchstabe, den man mit voller Sehschärfe liest.",
  "method.lastingLast":
    "<em>Erkennbar bis</em> nennt die letzte Entfernung, aus der es groß genug ist. Das ist eine Frage der Größe, an der keine Farbänderung etwas ändert. Die Bilder sind so unscharf, wie ein Auge sie sieht; keine Zahl wird ihnen entnommen.",
  "method.lastingTable": "Was eine Entfernung aus einer Flagge macht, in Prozent ihrer Höhe",
  "method.lastingFrom": "Flaggenhöhen",
  "method.lastingFinest": "Feinster Teil",
  "method.lastingBlur": "Unschärfe",
  "method.lastingSource":
    "{span} Bogenminuten: ISO 8596, aus zweiter Hand. Unser eigenes Urteil: die {left}, und {span} Bogenminuten vom größten Stück zu verlangen. Unschärfe, 0,5 Bogenminuten Standardabweichung: Levi und andere, <i>Vision Research</i> 30, 1990, <levi>Zusammenfassung</levi>; eine Gaußkurve ist keine Linse: Strasburger und andere, <strasburger>2018</strasburger>.",

  // methodterm: the definitions of the method. `em` is an emphasised term, `i` the title of a book; `move` stands for an
  "method.numbersText":
    "Eine Kante zählt so weit, wie ihr Kontrast an {clear} heranreicht, und von da an ganz: 30 / 45 = 67 %. Klarheit ist das Mittel aller Kanten, jede gewichtet nach ihrer Länge und noch einmal nach dem Teil davon, der an das grenzt, was gesehen werden muss:",
  "method.numbersClose":
    "Eine Flagge, deren Kanten alle klar sind, hat also 100 %, und eine lange schwache Kante kostet mehr als eine kurze. Eine einfarbige Flagge hat keine Kante und keine Klarheit.",
  "method.numbersSource": "Unser eigenes Urteil: die Summe, und dass doppelt zählt, was gesehen werden muss.",
  "method.strength": "Stärke",
  "method.strengthMeans": "dieselbe Summe bis {strong}; sie ordnet, was die Klarheit gleich lässt",
  "method.weakest": "Schwächste Kante",
  "method.weakestMeans": "die Kante mit dem geringsten Kontrast, ohne die kürzesten",
  "method.clearShare": "Anteil klarer Kanten",
  "method.clearShareMeans":
    "der Anteil der Länge, der klar oder stark ist; er springt an einer einzigen Grenze, darum entscheidet er nichts",
  "method.outcomesText": "An einer Kante bewirkt eine Änderung dies:",
  "method.gained": "Gewonnen, verloren",
  "method.gainedMeans":
    "sie wird klar oder ist es nicht mehr, und bewegt sich um {contrastStep} Punkte oder mehr: <move></move>",
  "method.better": "Besser, schlechter",
  "method.betterMeans":
    "sie bewegt sich ebenso weit, ohne klar zu werden oder es nicht mehr zu sein: <move></move>; über {strong} zählt nichts",
  "method.same": "Gleich",
  "method.sameMeans": "sie bewegt sich um weniger: <move></move>",
  "method.merged": "Verschmolzen",
  "method.mergedMeans": "ihre beiden Farben kommen einander so nahe, dass sie als eine zählen",
  "method.parted": "Getrennt",
  "method.partedMeans": "sie ist neu, weil nur ein Teil einer Farbe geändert wurde",
  "method.outcomesPrice":
    "Der <em>Preis</em> einer Änderung sind die Kanten, die verloren, schlechter oder verschmolzen sind, oder getrennt und nicht klar. Das Urteil geht nach der Klarheit in ganzen Prozent und, wo diese gleich ist, nach der Stärke:",
  "method.clearer": "Klarer",
  "method.clearerMeans":
    "um {leastMove, plural, one {# Punkt} other {# Punkte}} oder mehr gestiegen, ohne Preis: <move></move>",
  "method.atAPrice": "Klarer, um einen Preis",
  "method.atAPriceMeans": "um {largeMove} Punkte oder mehr gestiegen, der Preis dabei genannt: <move></move>",
  "method.lessClear": "Weniger klar",
  "method.lessClearMeans":
    "um {largeMove} Punkte oder mehr gefallen: <move></move>; oder um {leastMove}, ohne dass etwas gewonnen, besser oder getrennt und klar ist",
  "method.mixed": "Gemischt",
  "method.mixedMeans": "Gewinne und ein Preis, die Klarheit dazwischen: <move></move>",
  "method.noGain": "Kein Gewinn",
  "method.noGainMeans": "jede Kante bleibt gleich, oder nichts vom Vorigen trifft zu",
  "method.outcomesSource":
    "Unser eigenes Urteil: die Grenzen von {contrastStep}, {leastMove} und {largeMove} Punkten. Eine verschmolzene Kante behält ihre Länge, denn die Formen bleiben, und zählt mit Kontrast 0 %. Gezeigte Zahlen sind gerundet, entscheidende nicht.",
  "method.wordsText":
    "Sätze werden nach Regeln gebildet, allein aus den Zahlen und Namen der Seite. Sie sprechen zuerst von dem, was gesehen werden muss, und von schwachen Kanten vor starken. Ein <em>Saum</em> ist eine schmale Linie in einer dritten Farbe, die zwei andere trennt; solange sie zu sehen ist, zählen ihre eigenen Kanten, und die Worte sagen, was sie für das Paar tut.",
  "method.wordsSource":
    "Was ein Saum ist: übliche Praxis, keine Quelle. Unser eigenes Urteil, woran wir ihn erkennen: eine mittlere Breite unter 8 % der Flaggenhöhe, zwei Seiten, deren Längen bis auf ein Drittel gleich sind, zwischen Farben, die höchstens auf einem Fünftel davon aneinanderstoßen.",
  "method.hue": "Nur Farbton",
  "method.hueMeans":
    "schwach bei einem ΔE00 von 20 oder mehr, in Grau unter 10: vergeht in der Dämmerung, im Graudruck und für viele farbenfehlsichtige Augen",
  "method.tincture": "Tinktur",
  "method.tinctureMeans":
    "kein Metall (Weiß, Gelb) auf Metall, keine Farbe (Rot, Blau, Grün, Schwarz, Violett) auf Farbe. Ausgenommen: Teile des Feldes, die beide an den Rand reichen, Säume; auch Pelzwerk, das hier nicht erkannt wird",
  "method.colours": "Farben",
  "method.coloursMeans":
    "die über 0,5 % der Fläche, ähnliche Töne als eine; Leitfäden raten zu zwei oder drei",
  "method.factsSource":
    "A. C. Fox-Davies, <i>A Complete Guide to Heraldry</i>, 1909, Kapitel VII; Ausnahmen: übliche Praxis, keine Quelle. <good>Good Flag, Bad Flag</good>, North American Vexillological Association, 2006, dritter Grundsatz; <i>Guiding Principles of Flag Design</i>, Joint Commission on Vexillographic Principles, 2014, 3.1. Unser eigenes Urteil: nur Farbton, die 0,5 %.",

  // metric: the measures of an edge.
  "metric.contrastRatio": "Kontrastverhältnis",
  "metric.deltaE00": "Farbabstand, ΔE00",
  "metric.hueOnly": "Nur im Farbton verschieden",
  "metric.tincture": "Tinkturregel",
  "metric.tinctureMeans": "kein Metall auf Metall, keine Farbe auf Farbe",
  "metric.yes": "ja",
  "metric.no": "nein",
  "metric.bothMetals": "Metall auf Metall",
  "metric.bothColours": "Farbe auf Farbe",
  "metric.noObjection": "nicht dagegen",

  // move: from one value to another.
  "move.to": "dann",
  "move.row": "{name}: {before} → {after}",

  // moved: pages at addresses whose own page has gone; a heading, and what stands below it.
  "moved.moved": "Diese Seite ist umgezogen",
  "moved.movedTo": "Sie steht jetzt unter einer anderen Adresse.",
  "moved.near": "Diese Seite ist nicht mehr hier",
  "moved.nearTo": "Was ihr am nächsten kommt:",
  "moved.edge": "Diese Kante gibt es in der Studie nicht mehr",
  "moved.edgeTo": "Farben der Zeichnung haben sich seither geändert. Die Kante mit den ähnlichsten Farben:",
  "moved.withdrawn": "Zurückgezogen",
  "moved.withdrawnHow": "Was unter dieser Adresse stand, wird nicht mehr veröffentlicht.",
  "moved.absent": "Diese Studie wird zurzeit nicht gezeigt",
  "moved.absentHow": "Sie liegt im Ordner der Galerie und kehrt an diese Adresse zurück.",
  "moved.claimed": "Diese Studie hat eine andere Adresse",
  "moved.claimedBy": "Mehr als eine Studie gibt an, hier gestanden zu haben:",
  "moved.claimedByHidden":
    "Mehr als eine Studie gibt an, hier gestanden zu haben, und mindestens eine davon wird zurzeit nicht gezeigt. Die gezeigten:",
  "moved.lastGood":
    "Diese Studie ließ sich aus dem, was jetzt in ihrem Ordner liegt, nicht bauen. Dies ist die Seite, die sie zuletzt hatte.",

  // near: whether a redesign could be mistaken for another flag.
  "near.beside": "Neben den Flaggen, denen er am nächsten kommt",
  "near.hidden": "{name}, hier nicht gezeigt",
  "near.scale":
    "Mittleres ΔE00 über die ganze Flagge als Tuch: 0 ist dasselbe Bild. <how>Wie Ähnlichkeit gemessen wird</how>",
  "near.redesign": "der Neuentwurf „{study}“",

  // number: what stands where there is no number.
  "number.noEdges": "keine Kanten",
  "number.move": "von {was} auf {is}",
  "number.noEmblem": "kein Emblem gefunden",

  // options: other single changes of a flag.
  "options.caption": "Der beste Ersatz für jede Farbe",
  "options.byColour": "Der beste Ersatz je Farbe",
  "options.all": "Alle auf einmal",
  "options.how":
    "Jede Farbe der Flagge wird mit der Palette erprobt, mit den anderen Farben der Flagge und mit dem nächsten klaren Ton ihres eigenen Farbtons. Sie stehen nach ihren Zahlen; was am besten aussieht, sagen die Autoren. <how>Wie die Rangfolge entsteht</how>",
  "options.tried": "Auch erprobt",
  "options.changed": "Geänderte Farbe",
  "options.best": "Bester Ersatz",
  "options.ofFocus": "Dessen, was gesehen werden muss",
  "options.worse": "Was schlechter wird",
  "options.share": "{share} der Flagge",
  "options.none": "Keiner, der jeder Figur ihren Umriss lässt.",
  "options.bestLabel": "Bester Ersatz:",
  "options.worseLabel": "Schlechter wird:",
  "options.nothing": "Nichts.",
  "options.beside": "neben <study>{title}</study>",
  "options.title": "Andere Änderungen einer Farbe",
  "options.titleOf": "Andere Änderungen einer Farbe, {study}",
  "options.description": "Jede andere Änderung einer Farbe neben {title}, gemessen.",
  "options.standing": "Diese Studie: {standing}",
  "options.whole": "Das Original hat eine Klarheit von {clarity}: Keine Änderung kann sie heben.",
  "options.clearest": "Die klarste, {is} statt {was}, erreicht {clarity}.",
  "options.clearestTried": "Die klarste, die bereits erprobte von {was} zu {is}, erreicht {clarity}.",
  "options.clearestTriedInPart":
    "Die klarste, die bereits erprobte von {was} zu {is}, nur {part}, erreicht {clarity}.",
  "options.clearerTried": "Das bereits erprobte {is} statt {was} erreicht {clarity}.",
  "options.clearerTriedInPart": "Das bereits erprobte {is} statt {was}, nur {part}, erreicht {clarity}.",
  "options.onePart": "ein Teil",
  "options.noneLevel": "Keine Änderung hilft; so klar wie heute:",
  "options.noneNearest": "Keine Änderung hilft; am nächsten:",
  "options.triedHas": "{name}, bereits erprobt, hat {clarity}",
  "options.option": "Variante",
  "options.triedAlt": "Die Flagge: {is} statt {was}",
  "options.triedAltInPart": "Die Flagge: {is} statt {was}, nur {part}",
  "options.changeInPart": "{after} statt {before}, nur {part}.",
  "options.figure": "Klarheit {clarity}",
  "options.figureAndFocus": "Klarheit {clarity}; Klarheit dessen, was gesehen werden muss, {focus}",
  "options.strengthRises":
    "die Klarheit bleibt, und die Stärke, um die Kanten über klar hinausgehen, steigt von {was} auf {is}",
  "options.strengthFalls":
    "die Klarheit bleibt, und die Stärke, um die Kanten über klar hinausgehen, sinkt von {was} auf {is}",
  "options.verdict": "{verdict}.",
  "options.verdictWhy": "{verdict}: {why}.",

  // otherchange: other single changes of a flag, which colour to change first, and what was not tried.
  "otherChange.another": "ein anderes {name}",
  "otherChange.equal": "{count, plural, one {{names} leistet dasselbe} other {{names} leisten dasselbe}}",
  "otherChange.equalShort": "ebenso {names}",
  "otherChange.others": "{count, plural, one {# andere} other {# andere}}",
  "otherChange.lost": "Schwerer zu sehen gegen {names}.",
  "otherChange.worse": "Weniger klar gegen {names}.",
  "otherChange.merged": "Eine Farbe geworden: {names}.",
  "otherChange.outlineMerges": "{share} des Umrisses verschmelzen.",
  "otherChange.confusable": "Zu verwechseln mit einer Farbe der Flagge: {names}.",
  "otherChange.confused": "{sights} Sehende halten es für {name}.",
  "otherChange.protan": "protan",
  "otherChange.deutan": "deutan",
  "otherChange.tritan": "tritan",
  "otherChange.fromTo": "{after} statt {before}",
  "otherChange.unranked":
    "{count, plural, one {Ohne Rang: {changes}; dadurch verschmölze ein Drittel vom Umriss einer Figur oder mehr.} other {Ohne Rang: {changes}; durch jede verschmölze ein Drittel vom Umriss einer Figur oder mehr.}}",
  "otherChange.place":
    "{clearer, plural, =0 {Keine von {total} Änderungen einer Farbe ist klarer.} one {# von {total} Änderungen einer Farbe ist klarer.} other {# von {total} Änderungen einer Farbe sind klarer.}}",
  "otherChange.noneTried": "Keine der Farben konnte erprobt werden.",
  "otherChange.allMerge":
    "Durch jede erprobte Änderung verschmilzt ein Drittel vom Umriss einer Figur oder mehr.",
  "otherChange.clear": "Die Flagge ist klar, wie sie ist, mit einer Klarheit von {clarity}.",
  "otherChange.clearAndNone":
    "Die Flagge ist klar, wie sie ist, mit einer Klarheit von {clarity}: Keine Änderung einer Farbe bringt fünf Punkte mehr.",
  "otherChange.none":
    "Die Flagge hat eine Klarheit von {clarity}, und keine Änderung einer Farbe bringt fünf Punkte mehr.",
  "otherChange.detail": "Die Flagge als Ganzes ist klar, mit {clarity}; nur eine Einzelheit gewinnt.",
  "otherChange.first":
    "Zuerst zu ändern: {colour} ({share} der Flagge); dort hebt {best} die Klarheit von {from} auf {to}.",
  "otherChange.firstAlike":
    "{best} statt {colours}, oder statt {last}, hebt die Klarheit von {from} auf {to}.",
  "otherChange.firstOfSeveral": "Zuerst zu ändern: {colours} oder {last}; {moves}.",
  "otherChange.shareFirst": "{colour} ({share} der Flagge)",
  "otherChange.share": "{colour} ({share})",
  "otherChange.moveFirst": "{best} statt {colour} hebt die Klarheit von {from} auf {to}",
  "otherChange.move": "{best} statt {colour} auf {to}",
  "otherChange.mostGained": "Am meisten gewinnt die Kante {colour} / {other} (Kontrast heute {contrast}).",
  "otherChange.uneven": "Keine einheitliche Farbe, darum nicht erprobt: {names}.",
  "otherChange.unseen":
    "{distance, plural, one {Aus # Flaggenhöhe nicht zu sehen, darum nicht erprobt: {names}.} other {Aus # Flaggenhöhen nicht zu sehen, darum nicht erprobt: {names}.}}",
  "otherChange.shared":
    "Auch durchscheinend oder in einem Verlauf oder Muster zu sehen, was die Zahlen lassen, wie es ist: {names}.",
  "otherChange.largest":
    "{all, plural, one {# Farbe} other {# Farben}}: Nur {tried, plural, one {die größte wurde} other {die # größten wurden}} erprobt, mit den Farben der jeweils anderen.",
  "otherChange.palette":
    "{all, plural, one {Die Palette hat # Farbe} other {Die Palette hat # Farben}}: {tried, plural, one {Die erste wurde erprobt.} other {Die ersten # wurden erprobt.}}",

  // outcome: what becomes of an edge, as a word in tables.
  "outcome.gained": "gewonnen",
  "outcome.lost": "verloren",
  "outcome.better": "besser",
  "outcome.worse": "schlechter",
  "outcome.same": "gleich",
  "outcome.merged": "verschmolzen",
  "outcome.parted": "getrennt",

  // ownpage: what stands around the pages that a gallery writes itself.
  "ownPage.pages": "Seiten",
  "ownPage.pagesOf": "Seiten von {gallery}.",
  "ownPage.beside": "Seiten neben dieser",
  "ownPage.next": "Weiter: <a>{title}</a>",

  // paging: the ways between the pages of a long list.
  "paging.ways": "Seiten dieser Liste",
  "paging.place": "Seite {number} von {count}",
  "paging.title": "{title}, Seite {number} von {count}",
  "paging.onward": "{place}. <next>weiter</next>, <last>letzte</last>",
  "paging.both":
    "{place}. <first>Erste</first>, <previous>zurück</previous>, <next>weiter</next>, <last>letzte</last>",
  "paging.back": "{place}. <first>Erste</first>, <previous>zurück</previous>",

  // pair: both flags of a study, and what swaps them.
  "pair.swap": "Am Platz wechseln",
  "pair.both": "Beide zeigen",
  "pair.pressFlag": "Auf eine Flagge drücken",
  "pair.orKey": "oder auf eine Pfeiltaste, oder",
  "pair.pressKey": "Eine Pfeiltaste drücken, oder",
  "pair.bothShown": "Beide Flaggen sind zu sehen",
  "pair.shownAlone": "{name} ist allein zu sehen",
  "pair.split": "Halb Original, halb Neuentwurf",

  // part: the page by which readers propose a study, with the words of its script and of the letter.
  "part.link": "Eine eigene Studie vorschlagen",
  "part.title": "Eine Studie vorschlagen",
  "part.description":
    "Wie man dieser Galerie eine Neuentwurfsstudie vorschlägt: zwei Dateien und eine Nachricht, mit der man sie schickt.",
  "part.lede":
    "Eine Studie ist ein Ordner mit zwei Dateien: der Zeichnung einer Flagge und einem Text, der eine Farbänderung nennt und begründet. Dafür braucht man weder ein Konto noch ein Programm.",
  "part.files": "Die zwei Dateien",
  "part.drawing":
    "Die Flagge, wie sie ist, als SVG gezeichnet, höchstens 512 KB. Pixelbilder und Fotografien lassen sich nicht umfärben.",
  "part.textFile": "Reiner Text: was sich ändert, und warum.",
  "part.study":
    "Zwischen den beiden Zeilen aus Bindestrichen stehen der Titel, die Farbe, die ersetzt wird, und die Farbe, die an ihre Stelle tritt; darunter die Gründe.",
  "part.credit":
    "Ist die Zeichnung von jemand anderem, steht über der zweiten Zeile aus Bindestrichen, von wem sie ist und unter welcher Lizenz, so:",
  "part.template": "Der Text der Studie",
  "part.sampleTitle": "Ein helleres Rad",
  "part.sampleFlag": "Die Flagge der Fähre",
  "part.sampleWhy": "Warum diese Änderung: was vorher nicht zu sehen war, und was sie kostet.",
  "part.send": "Abschicken",
  "part.sendByMail": "Die Zeichnung muss der Nachricht angehängt werden: Das kann keine Seite übernehmen.",
  "part.sendAtForm":
    "Die Zeichnung dort anhängen, wenn Dateien angenommen werden, oder sagen, wo sie zu finden ist.",
  "part.letter": "Nachricht schreiben",
  "part.byMail": "per E-Mail an {address}; der Text steht schon darin.",
  "part.atForm": "bei {host}; der Text steht schon darin.",
  "part.atFormEmpty": "bei {host}; zuerst den Text kopieren.",
  "part.subject": "Eine Studie für {gallery}",
  "part.try": "Eine Änderung erproben",
  "part.private":
    "Die Zeichnung bleibt auf dem eigenen Rechner: Diese Seite lädt nichts hoch und merkt sich nichts.",
  "part.choose": "Eine Zeichnung wählen (SVG)",
  "part.tooBig": "Diese Datei ist größer als 512 KB; mehr darf eine Zeichnung nicht haben.",
  "part.broken":
    "Diese Datei ist nicht als SVG-Zeichnung zu lesen. Als einfaches SVG neu speichern und diese Datei wählen.",
  "part.endless":
    "Diese Zeichnung ist zu groß, um hier gezeigt zu werden, oder verweist endlos auf sich selbst.",
  "part.colourless": "In dieser Zeichnung wurde keine Farbe gefunden, die zu ersetzen wäre.",
  "part.chosen": "Die Zeichnung steht unten, mit ihren Farben.",
  "part.replace": "Ersetzen",
  "part.palette": "durch eine Farbe der Galerie",
  "part.typed": "oder durch eine selbst eingegebene",
  "part.unknown": "Das ist keine deckende Farbe. Zum Beispiel: #f4c430.",
  "part.same": "Das ist die Farbe, die schon da ist.",
  "part.before": "Vorher",
  "part.after": "Nachher",
  "part.beforeShown": "Die Zeichnung, wie sie ist",
  "part.afterShown": "Die Zeichnung mit der Änderung",
  "part.pairs": "Kontrast ihrer Farben",
  "part.pair": "Paar",
  "part.rough":
    "Das sind grobe Werte für jedes Farbpaar, ob es aneinanderstößt oder nicht. Die Galerie misst die Kanten selbst, mit ihrer Länge, und sieht aus der Entfernung hin; ihre Zahlen gelten.",
  "part.more": "Nur die ersten zwölf Farben werden hier verglichen.",
  "part.text": "Der Text",
  "part.textTitle": "Titel der Studie",
  "part.textFlag": "Wie die Flagge heißt",
  "part.textAuthor": "Ihr Name, wie er veröffentlicht werden soll",
  "part.textWhy": "Warum diese Änderung",
  "part.untitled":
    "Die Studie braucht einen Titel und eine Begründung: Dann kann der Text unten abgeschickt werden.",
  "part.ready": "Dies als study.md neben der Zeichnung speichern oder so abschicken.",
  "part.copy": "Text kopieren",
  "part.copied": "Kopiert.",
  "part.refused": "Der Browser hat es nicht erlaubt; den Text markieren und kopieren.",
  "part.unscripted":
    "Mit Skripten zeigt diese Seite eine Zeichnung vom eigenen Rechner mit der Änderung und schreibt den Text. Ohne sie: den Text oben kopieren und ausfüllen.",

  // picture: link pictures, which sites and chats show when someone posts a link; and records for search.
  "picture.redesign": "Neuentwurf · inoffizielle Studie",
  "picture.above": "Oben: {half}",
  "picture.below": "Unten: {half}",
  "picture.clarity": "{verdict}: Klarheit",
  "picture.oneColour": "Eine Farbe",
  "picture.contrast": "{outcome}: Kontrast dieser Kante",
  "picture.alt":
    "Eine Flagge, {split}, halb Original, halb Neuentwurf. {title}. {measure} {move}. Inoffizielle Studie.",
  "picture.altOf":
    "Eine Flagge, {split}, halb Original, halb Neuentwurf. {title} ({of}). {measure} {move}. Inoffizielle Studie.",
  "picture.perPale": "gespalten",
  "picture.perBend": "schrägrechts geteilt",
  "picture.perBendSinister": "schräglinks geteilt",
  "picture.perFess": "geteilt",
  "picture.genre": "Inoffizielle Neuentwurfsstudie einer Flagge",
  "picture.within": "{title}, in {study}",

  // plate: what a flag that is shown is called.
  "plate.original": "Original",
  "plate.redesign": "Neuentwurf",
  "plate.clarity": "Klarheit <number>{clarity}</number>",
  "plate.contrast": "Kontrast <number>{contrast}</number>",
  "plate.asItIs": "Die Flagge, wie sie ist",
  "plate.alt": "{label}: {paints}",

  // price: the edges that a change makes worse, as clauses in a list.
  "price.falls":
    "{one} auf {other} hat jetzt {contrast} Kontrast ({grade}), wo es {wasContrast} ({wasGrade}) waren",
  "price.fallsRenamed":
    "{newOne} auf {newOther} hat {contrast} Kontrast ({grade}), wo {one} auf {other} {wasContrast} ({wasGrade}) hatte",
  "price.graded": "{contrast} ({grade})",
  "price.more": "{count, plural, one {# weitere} other {# weitere}}",

  // proposal: studies among others, and what others said of them.
  "proposal.none": "noch keine Studie dazu",
  "proposal.only": "ein Vorschlag für diese Flagge",
  "proposal.count":
    "{count, plural, =2 {zwei Vorschläge für eine Flagge} =3 {drei Vorschläge für eine Flagge} =4 {vier Vorschläge für eine Flagge} =5 {fünf Vorschläge für eine Flagge} =6 {sechs Vorschläge für eine Flagge} =7 {sieben Vorschläge für eine Flagge} =8 {acht Vorschläge für eine Flagge} =9 {neun Vorschläge für eine Flagge} =10 {zehn Vorschläge für eine Flagge} one {# Vorschlag für eine Flagge} other {# Vorschläge für eine Flagge}}",
  "proposal.countShown": "{count}, die ersten {shown} gezeigt",
  "proposal.oneOf":
    "{count, plural, =2 {einer von zwei Vorschlägen dafür} =3 {einer von drei Vorschlägen dafür} =4 {einer von vier Vorschlägen dafür} =5 {einer von fünf Vorschlägen dafür} =6 {einer von sechs Vorschlägen dafür} =7 {einer von sieben Vorschlägen dafür} =8 {einer von acht Vorschlägen dafür} =9 {einer von neun Vorschlägen dafür} =10 {einer von zehn Vorschlägen dafür} one {einer von # Vorschlägen dafür} other {einer von # Vorschlägen dafür}}",
  "proposal.studies": "{count, plural, one {# Studie} other {# Studien}}",
  "proposal.flags": "{count, plural, one {# Flagge ohne Studie} other {# Flaggen ohne Studie}}",
  "proposal.answer":
    "{says, select, agree {{by} stimmt zu} disagree {{by} widerspricht} doubt {{by} zweifelt} other {{by} fragt}}",
  "proposal.authorReplies": "Antwort der Autoren",
  "proposal.replies": "Antwort von {by}",
  "proposal.authorRepliesOn": "Antwort der Autoren, {date}",
  "proposal.repliesOn": "Antwort von {by}, {date}",
  "proposal.decided":
    "{status, select, adopted {Angenommen am {date}.} declined {Abgelehnt am {date}.} other {Zurückgezogen am {date}.}}",
  "proposal.decidedBy":
    "{status, select, adopted {Angenommen am {date} ({by}).} declined {Abgelehnt am {date} ({by}).} other {Zurückgezogen am {date} ({by}).}}",
  "proposal.decidedVotes":
    "{status, select, adopted {Angenommen am {date}, {votes}.} declined {Abgelehnt am {date}, {votes}.} other {Zurückgezogen am {date}, {votes}.}}",
  "proposal.decidedByVotes":
    "{status, select, adopted {Angenommen am {date} ({by}), {votes}.} declined {Abgelehnt am {date} ({by}), {votes}.} other {Zurückgezogen am {date} ({by}), {votes}.}}",
  "proposal.for": "{count, plural, one {# dafür} other {# dafür}}",
  "proposal.against": "{count, plural, one {# dagegen} other {# dagegen}}",
  "proposal.abstained": "{count, plural, one {# enthalten} other {# enthalten}}",

  // question: questions to a class of what a change does, with answers for the teacher.
  "question.hardest":
    "Das Original vom anderen Ende des Raumes aus betrachtet: Welche zwei Farben, die aneinanderstoßen, sind am schwersten zu unterscheiden?",
  "question.hardestAnswer": "{names}: Kontrast {contrast}, {grade}.",
  "question.hardestIsClear": "{names}: Kontrast {contrast}, {grade}. Selbst das ist klar.",
  "question.lines": "Wie viele Linien zwischen zwei Farben hat der Neuentwurf?",
  "question.linesAnswer": "Keine, die zählt: Die Farben, die aneinanderstießen, sind eine geworden.",
  "question.grade":
    "Im Neuentwurf stoßen {one} und {other} mit einem Kontrast von {contrast} aneinander. Welche Stufe ist das: schwach, weich, klar oder stark?",
  "question.weak": "Schwach: unter {soft}.",
  "question.soft": "Weich: {soft} bis unter {clear}.",
  "question.clear": "Klar: {clear} bis unter {strong}.",
  "question.strong": "Stark: {strong} und mehr.",
  "question.price":
    "Die Änderung hat einen Preis, der oben steht. Ist sie ihn wert? Oder welche Farbe des Originals wäre zu ändern, und in welche, damit es noch klarer wird?",
  "question.priceAnswer": "Ob der Preis zu hoch ist, sagt keine Zahl: nach Gründen fragen.",
  "question.noGain": "{verdict} Kann es einen Grund geben, die Änderung trotzdem vorzunehmen?",
  "question.noGainAnswer":
    "Nicht in diesen Zahlen. Ein Grund muss von anderswo kommen: wofür die Farben stehen, wer sie noch führt, oder der Geschmack.",
  "question.gain":
    "Die Klarheit war {before} und ist nach der Änderung {after}. Wo wächst der Kontrast am meisten?",
  "question.gainOfOne":
    "Die Klarheit war {before} und ist nach der Änderung {after}. Welche zwei Farben machten den Unterschied, und um wie viel?",
  "question.gainAnswer": "{was}, von Kontrast {before} ({wasGrade}) auf {after} ({grade}).",
  "question.gainAnswerRenamed": "{was}, von Kontrast {before} ({wasGrade}) auf {after} ({grade}) als {is}.",
  "question.area": "Geschätzt: Welche Farbe bedeckt am meisten vom Original, und wie viel davon?",
  "question.areaAnswer": "{name}: {share} der Flagge.",
  "question.more":
    "Was wäre hinzuzufügen, damit man diese Flagge quer durch den Raum von anderen unterscheiden kann?",
  "question.moreAnswer":
    "Es gibt viele Antworten. Was immer hinzukommt, muss viel heller oder viel dunkler sein als {name}.",
  "question.field": "das Feld",

  // record: the record at the end of a study.
  "record.onlyIn": "nur {part} (<selector></selector>)",
  "record.source": "Quelle",
  "record.sourceIs": "Quelle: {source}",
  "record.licence": "Lizenz: {licence}.",
  "record.uncertain": "Wo die Zahlen weniger sicher sind",
  "record.colours": "Farben",
  "record.drawings": "Zeichnungen und Daten",
  "record.tags": "Stichwörter",
  "record.history": "Verlauf",
  "record.heading": "Zum Nachschlagen",
  "record.tincture": "Nach der Tinkturregel",
  "record.facts": "Tatsachen",
  "record.reflectanceAndTincture": "Reflexionsgrad und Tinktur jeder Farbe",
  "record.reflectance": "Reflexionsgrad jeder Farbe",
  "record.noSource": "Die Studie nennt keine Quelle für die ursprüngliche Zeichnung.",
  "record.maker":
    "Angenommen: ein <sheet>Blatt für Hersteller</sheet> mit Maßverhältnissen, Konstruktion und Farben.",
  "record.lesson": "Bilder jedes Schritts, für Folien und Aufnahmen",
  "record.originalSvg": "Original, SVG",
  "record.redesignSvg": "Neuentwurf, SVG",
  "record.originalPng": "Original, PNG",
  "record.redesignPng": "Neuentwurf, PNG",
  "record.edgesCsv": "Alle Kanten, CSV",
  "record.json": "Alles Gemessene, JSON",
  "record.selectedPart": "der ausgewählte Teil",
  "record.drawing": "Die Zeichnung",
  "record.by": "{title}, von {author}",
  "record.rights": "{credit}, {licence}",
  "record.unofficial":
    "Der Neuentwurf ist eine inoffizielle Studie: ein Vorschlag zur Diskussion, keine Flagge in Gebrauch.",
  "record.unofficialBy":
    "Der Neuentwurf ist eine inoffizielle Studie, herausgegeben von {society}: ein Vorschlag zur Diskussion, keine Flagge in Gebrauch.",

  // refer: how to cite a study, and the stamp of its state.
  "refer.heading": "Zitierweise",
  "refer.copyText": "Text kopieren",
  "refer.copyBibtex": "BibTeX kopieren",
  "refer.copied": "Kopiert.",
  "refer.notCopied": "Der Browser hat es nicht erlaubt.",
  "refer.bibtexAndStamp": "BibTeX und wozu der Stempel dient",
  "refer.stamp":
    "Stempel <stamp></stamp>: ein kurzes Kennzeichen der Zeichnung, der Änderung und des Maßes. Über <link>eine Adresse mit dem Stempel</link> erfahren spätere Leser, ob sich seither geändert hat, was gemessen wird. Die Worte einer Studie können sich ohne ihn ändern.",
  "refer.changed":
    "<strong>Diese Studie hat sich seither geändert.</strong> Der Verweis, dem Sie gefolgt sind, galt einem früheren Stand mit dem Stempel <came></came>. Was jetzt hier steht, hat den Stempel <now></now>.",
  "refer.study": "inoffizielle Neuentwurfsstudie einer Flagge",
  "refer.edge": "eine Kante einer inoffiziellen Neuentwurfsstudie einer Flagge",
  "refer.series": "Reihe inoffizieller Neuentwurfsstudien von Flaggen",
  "refer.cited": "„{title}“, {kind}. {gallery}. {address}",
  "refer.citedOn": "„{title}“, {kind}. {gallery}, {date}. {address}",
  "refer.note": "{kind}, {gallery}",
  "refer.noteStamped": "{kind}, {gallery}, Stempel {stamp}",

  // ruler: the contrast ruler.
  "ruler.caption":
    "Der Kontrast zweier Farben, die aneinanderstoßen: ein Ring für das Original, ein Punkt für den Neuentwurf; dick bei einer langen Kante.",
  "ruler.fallsNote": "Hohl, wo der Kontrast sinkt.",
  "ruler.crossesNote": "Gewonnen: jetzt klar und vorher nicht; verloren: umgekehrt.",
  "ruler.mergedNote": "Ein Kreuz, wo zwei Farben eine werden.",
  "ruler.outlineNote": "Der Umriss ist der dessen, was gesehen werden muss; er zählt doppelt.",
  "ruler.nearNote": "An der Schwelle: Auf anderem Tuch wäre die Stufe eine andere.",
  "ruler.hueNote":
    "Nur im Farbton: Die beiden unterscheiden sich im Farbton und kaum in der Helligkeit, vergehen also in der Dämmerung und in Grau.",
  "ruler.ladderNote":
    "Daneben, wie viel Licht das Tuch jeder Farbe zurückwirft: Zwei auf gleicher Höhe sind schwer zu unterscheiden.",
  "ruler.edge": "Kante",
  "ruler.contrast": "Kontrast, vom Original zum Neuentwurf",
  "ruler.outcome": "Ergebnis",
  "ruler.guess": "Ihre Schätzung",
  "ruler.title": "Kontrastlineal",
  "ruler.same":
    "{count, plural, one {# Kante, die bleibt, wie sie war} other {# Kanten, die bleiben, wie sie waren}}",
  "ruler.moreMoved":
    "{count, plural, one {# weitere Kante, die sich ändert} other {# weitere Kanten, die sich ändern}}",
  "ruler.moreMovedAndSame": "{moved}, und {same}",
  "ruler.row": "{edge}, {extent}: Kontrast {contrast}, {grades}",

  // rules: what stands around the rules for studies and drawings, which are English in every language.
  "rules.title": "Regeln für Studien und Zeichnungen",
  "rules.description":
    "Was jede Meldung zu einer Studie oder Zeichnung bedeutet, mit einem falschen und einem richtigen Beispiel.",
  "rules.lede":
    "Beim Prüfen einer Studie wird jeder Fehler mit dem Namen einer Regel gemeldet. Hier {count, plural, one {ist die # Regel} other {sind alle # Regeln}}: was jede bedeutet, warum es sie gibt, und ein falsches Beispiel neben einem richtigen. Sie sind auf Englisch, wie die Meldungen.",
  "rules.note":
    "Jede ist ein Fehler, der die Studie aus der Galerie hält, bis er behoben ist, sofern sie nicht als Warnung vermerkt ist, mit der sie bleibt. Beispiele im Rahmen sind, was man tippt, und erprobt: Das falsche verletzt seine Regel und keine andere, das richtige keine.",
  "rules.find": "Regeln mit diesen Wörtern suchen",
  "rules.count": "{count, plural, one {# Regel} other {# Regeln}}",
  "rules.found": "{found} von {count, plural, one {# Regel} other {# Regeln}}",
  "rules.warning": "Warnung",
  "rules.link": "Verweis auf diese Regel",
  "rules.wrong": "Falsch",
  "rules.wrongIn": "Falsch, in {file}",
  "rules.wrongInFolder": "Falsch, im Inhaltsordner",
  "rules.right": "Richtig",
  "rules.rightIn": "Richtig, in {file}",
  "rules.rightInFolder": "Richtig, im Inhaltsordner",
  "rules.leaveOut": "Weglassen.",

  // said: what others said of a study.
  "said.heading": "Was andere sagen",
  "said.about": "zu <about>{name}</about>",
  "said.more": "Mehr bei {host}",

  // seen: both flags as four kinds of sight have them.
  "seen.title": "Mit anderen Augen",
  "seen.caption":
    "Zuerst das Original, dann der Neuentwurf: Näherungen dessen, was Farbenfehlsichtige und ein Graudruck aus beiden Flaggen machen. Sie sind keine Prüfung des Sehens. Grautöne unterscheiden sich um einen Farbabstand, ΔE00: je größer, desto leichter zu unterscheiden.",
  "seen.greys": "Abstand der beiden nächsten Grautöne",
  "seen.clarity": "Klarheit der ganzen Flagge",
  "seen.figure": "{heading}: {measure} {before} → {after}.",
  "seen.looks": "{name} erscheint als {seen}",
  "seen.kept": "{names} {count, plural, one {behält den Namen} other {behalten ihre Namen}}",
  "seen.inGrey": "{name} in Grau",
  "seen.byProtan": "{name}, protan gesehen",
  "seen.byDeutan": "{name}, deutan gesehen",
  "seen.byTritan": "{name}, tritan gesehen",

  // seriespage: the page of a series, and where a study stands in one.
  "seriesPage.count": "Eine Reihe: {entries}",
  "seriesPage.description": "Eine Reihe: {entries}.",
  "seriesPage.show": "Schritt für Schritt zeigen",
  "seriesPage.sheet": "Für den Unterricht drucken",
  "seriesPage.vote": "Abstimmen",
  "seriesPage.step": "Nummer {number}: {title}",
  "seriesPage.today": "Wie sie heute sind",
  "seriesPage.gain": "Klarheit, Studie für Studie",
  "seriesPage.cite": "Zitierweise",
  "seriesPage.unofficial": "Die Neuentwürfe sind inoffizielle Studien.",
  "seriesPage.bare": "Ohne Studie",
  "seriesPage.ask": "Was würden Sie hier ändern?",
  "seriesPage.series": "Reihen",
  "seriesPage.firstShown": "{entries}, die ersten {number} gezeigt",
  "seriesPage.places": "In Reihen",
  "seriesPage.place": "{number} von {count} in <a>{title}</a>",
  "seriesPage.before": "Davor: <a>{title}</a>",
  "seriesPage.next": "Danach: <a>{title}</a>",

  // sheet: sheets for a class, printed on paper: a handout, a worksheet and the answers for the teacher.
  "sheet.title": "{title}, Blätter für den Unterricht",
  "sheet.description": "Handblatt, Arbeitsblatt und Lösungen, zum Drucken. Inoffizielle Neuentwurfsstudie.",
  "sheet.kind": "Blätter für den Unterricht",
  "sheet.print":
    "Zum Drucken: der Druckbefehl des Browsers, A4 oder Letter, hochkant. Jeder Teil füllt eine eigene Seite.",
  "sheet.toStudy": "Zur Studie",
  "sheet.toSeries": "Zur Reihe",
  "sheet.contents": "Inhalt",
  "sheet.handout": "Handblatt",
  "sheet.worksheet": "Arbeitsblatt",
  "sheet.answers": "Lösungen",
  "sheet.redesign": "Neuentwurf, inoffizielle Studie",
  "sheet.questions": "Drei Fragen",
  "sheet.scale":
    "Kontrast ist, wie weit zwei Farben, die aneinanderstoßen, in der Helligkeit auseinanderliegen: schwach unter {soft}, weich ab {soft}, klar ab {clear}, stark ab {strong}.",
  "sheet.left":
    "{count, plural, one {# weitere Kante steht auf der Seite der Studie.} other {# weitere Kanten stehen auf der Seite der Studie.}}",
  "sheet.noRuler": "Eine einzige Farbe: keine Kanten zu messen.",
  "sheet.hatched": "In Schraffuren, für den Graudruck",
  "sheet.hatchedHow":
    "Jede Farbe hat ihre eigene Schraffur, nach Silvester Petra Sancta, Rom 1638. Töne einer Farbe teilen sie.",
  "sheet.originalInLines": "Original in Schraffuren",
  "sheet.redesignInLines": "Neuentwurf in Schraffuren",
  "sheet.inOutlines": "{flag}, in Umrissen",
  "sheet.name": "Name",
  "sheet.change": "Ändere eine Farbe. Male die Flagge aus, mit der neuen an ihrer Stelle.",
  "sheet.own": "Die Farben der Flagge",
  "sheet.palette": "Farben zur Auswahl",
  "sheet.guess":
    "Schätze den Kontrast überall, wo zwei Farben aneinanderstoßen: ein Ring für das Original, ein Punkt für deine Flagge.",
  "sheet.reason": "Ich ändere <line></line> in <line></line>, weil",
  "sheet.price": "Was schlechter wird, und warum ich es hinnehme:",
  "sheet.yours": "Zu dieser Flagge gibt es hier keine Studie: Sie gehört dir.",
  "sheet.teacher": "Für die Lehrkraft",
  "sheet.others": "Andere Änderungen",
  "sheet.onWorksheet": "Das Arbeitsblatt",
  "sheet.opinion":
    "Auf dem Arbeitsblatt ist keine Wahl richtig oder falsch. Was zählt, ist eine Begründung, die eine Kante nennt.",
  "sheet.signs": "Farben in Schraffuren",
  "sheet.signsSource":
    "Linien, die für Farben stehen. Quelle: Silvester Petra Sancta, „Tesserae gentilitiae“, Rom 1638; wiedergegeben in A. C. Fox-Davies, „A Complete Guide to Heraldry“, 1909, Kapitel VII. Orange und Braun: spätere Übereinkunft, in der die Bücher sich unterscheiden; keine Quelle. Grau und Rosa haben keine Linien und bleiben grau: unsere eigene Wahl.",
  "sheet.red": "Rot (gules)",
  "sheet.blue": "Blau (azure)",
  "sheet.green": "Grün (vert)",
  "sheet.black": "Schwarz (sable)",
  "sheet.purple": "Purpur (purpure)",
  "sheet.yellow": "Gelb, Gold (or)",
  "sheet.white": "Weiß, Silber (argent)",
  "sheet.orange": "Orange (tenné), später",
  "sheet.brown": "Braun, später",

  // shelf: lists of the studies of one author, with one tag, that are decided, or of all of them.
  "shelf.studies": "{count, plural, one {# Studie} other {# Studien}}",
  "shelf.authorCount": "{count, plural, one {# Autor} other {# Autoren}}",
  "shelf.tagCount": "{count, plural, one {# Stichwort} other {# Stichwörter}}",
  "shelf.decisionCount": "{count, plural, one {# Entscheidung} other {# Entscheidungen}}",
  "shelf.authors": "Autoren",
  "shelf.authorsLede": "Alle, die hier eine Studie vorgelegt haben, mit dem, was sie vorschlagen.",
  "shelf.noAuthors": "Noch nennt keine Studie einen Autor. Hier wird der erste Name stehen.",
  "shelf.tags": "Stichwörter",
  "shelf.tagsLede": "Wovon die Studien handeln, in den Worten ihrer Autoren, die häufigsten zuerst.",
  "shelf.noTags": "Noch hat keine Studie ein Stichwort. Autoren setzen sie in ihre Studien.",
  "shelf.author": "Autor",
  "shelf.tag": "Stichwort",
  "shelf.list": "Liste",
  "shelf.record": "Verzeichnis",
  "shelf.decisions": "Entscheidungen",
  "shelf.ways": "{studies}. <index>{name}</index>, <all>alle Studien</all>",
  "shelf.waysOrdered": "{studies}, die neueste zuerst. <index>{name}</index>, <all>alle Studien</all>",
  "shelf.allAuthors": "Alle Autoren",
  "shelf.allTags": "Alle Stichwörter",
  "shelf.byAuthor": "Nach Autoren",
  "shelf.aboutAuthor":
    "{count, plural, one {# Studie} other {# Studien}} von {name}: eine Farbe geändert, jede Kante gemessen.",
  "shelf.aboutTag":
    "{count, plural, one {# Studie} other {# Studien}} mit dem Stichwort {name}: eine Farbe geändert, jede Kante gemessen.",
  "shelf.aboutDecisions":
    "{count, plural, one {# entschiedene Studie} other {# entschiedene Studien}}: eine Farbe geändert, jede Kante gemessen.",
  "shelf.aboutAll":
    "{count, plural, one {# Studie} other {# Studien}} im Ganzen: eine Farbe geändert, jede Kante gemessen.",
  "shelf.with": "Mit {authors}",

  // show: the steps of a study or a series for a projector, and what a speaker may say to each.
  "show.title": "{title}, Schritt für Schritt",
  "show.description": "Inoffizielle Neuentwurfsstudie.",
  "show.seriesDescription": "Inoffizielle Neuentwurfsstudien, Schritt für Schritt.",
  "show.toStudy": "Zur Studie",
  "show.toSeries": "Zur Reihe",
  "show.steps": "Schritte",
  "show.notes": "Notizen",
  "show.back": "Zurück",
  "show.next": "Weiter",
  "show.noNote": "Keine Notiz zu diesem Schritt.",
  "show.original": "Das Original",
  "show.redesign": "Der Neuentwurf, eine inoffizielle Studie",
  "show.both": "Das Original und der Neuentwurf, eine inoffizielle Studie",
  "show.ofOriginal": "Original",
  "show.ofRedesign": "Neuentwurf, inoffizielle Studie",
  "show.redesigns": "Neuentwürfe sind inoffizielle Studien",
  "show.from":
    "Aus {from, plural, one {<number>#</number> Flaggenhöhe} other {<number>#</number> Flaggenhöhen}}, vergrößert",
  "show.fromStill": "Aus {from, plural, one {# Flaggenhöhe} other {# Flaggenhöhen}}, vergrößert",
  "show.thisIs": "Die Flagge, wie sie ist: {name}.",
  "show.keep": "Merken Sie sich, wie sie ist.",
  "show.focus": "Was gesehen werden muss",
  "show.focusKey":
    "Durchgezogene Linien sind klar, gepunktete schwer zu sehen. Das Band bezeichnet, was vor dem Übrigen gesehen werden muss.",
  "show.focusSaid": "Was zuerst gesehen werden muss, ist {share} der Flagge.",
  "show.weakest": "Ihre schwächste Kante",
  "show.weakestKey": "{names}: Kontrast {contrast}",
  "show.weakestSaid":
    "Die schwächste Kante liegt, wo {first} und {second} aneinanderstoßen. Sie ist {grade} ({contrast}); ab {clear} ist eine Kante klar.",
  "show.weakestShown": "Die Stelle, an der {names} aneinanderstoßen",
  "show.afar": "Von Weitem",
  "show.afarSaid": "So sieht die Flagge von Weitem aus.",
  "show.colours": "Welche Farbe könnte sich ändern?",
  "show.coloursKey":
    "Jede Zeile ändert eine Farbe. Unter jeder Flagge steht ihre Klarheit, heute {clarity}; die beste einer Zeile ist unterstrichen.",
  "show.coloursKeyOwn":
    "Jede Zeile ändert eine Farbe. Unter jeder Flagge steht ihre Klarheit, heute {clarity}; die beste einer Zeile ist unterstrichen, der Vorschlag dieser Studie gerahmt.",
  "show.tried": "Erprobt, eine inoffizielle Studie. {figures}. {note}",
  "show.triedSaid": "Auch dies habe ich erprobt: {change} {verdict} {figures}.",
  "show.before": "Vorher",
  "show.beforeSaid": "Hier noch einmal die Flagge, wie sie ist.",
  "show.afterSaid": "Und jetzt: {change} Das ist eine inoffizielle Studie.",
  "show.outcomes": "Was besser und was schlechter wird",
  "show.outcomesKey": "Ring: das Original. Punkt: der Neuentwurf.",
  "show.priceSaid":
    "{verdict}. Die Klarheit des Originals ist {before} von 100 Punkten, die des Neuentwurfs {after}. {price}",
  "show.vision": "Für Farbenfehlsichtige und in Grau",
  "show.visionSaid": "Das sehen Farbenfehlsichtige ungefähr. {visions}",
  "show.visionOf": "{heading}, {explanation}: {measure} von {before} auf {after}.",
  "show.choose": "Original oder Neuentwurf?",
  "show.chooseSaid": "Das Original oder der Neuentwurf? Und was würden Sie jemandem sagen, der anders wählt?",
  "show.closing": "Was würden Sie ändern?",
  "show.another": "{name}: ein weiterer Vorschlag",
  "show.opening": "{authors}: {opening}",
  "show.colourChanged": "Geänderte Farbe",
  "show.notTried": "nicht erprobt",
  "show.thisStudy": "Diese Studie:",
  "show.merges": "verschmilzt",

  // sight: kinds of sight.
  "sight.protan": "Protan",
  "sight.deutan": "Deutan",
  "sight.tritan": "Tritan",
  "sight.grey": "Grau",
  "sight.protanMeans": "ohne die Zapfen für lange Wellen",
  "sight.deutanMeans": "ohne die Zapfen für mittlere Wellen",
  "sight.tritanMeans": "ohne die Zapfen für kurze Wellen",
  "sight.greyMeans": "wie ein Schwarzweißkopierer es druckt",

  // sizes: both flags at sizes that stand for distances.
  "sizes.title": "Auf Armeslänge",
  "sizes.caption":
    "Aus 60 cm gesehen ist jede so groß wie die Flagge aus der Entfernung darunter, auf einem Bildschirm oder Papier mit 96 Pixeln je Zoll.",
  "sizes.says": "Beide Flaggen so klein, wie sie aus der Entfernung aussehen, auf Armeslänge: {distances}.",
  "sizes.alt": "{label}, so groß wie aus {distance, plural, one {# Flaggenhöhe} other {# Flaggenhöhen}}",

  // spoken: what a speaker says of a change, with numbers in words. All counts are counts of edges.
  "spoken.percent": "{near} ({percent})",
  "spoken.about": "etwa {part}",
  "spoken.none": "nichts",
  "spoken.almostNone": "fast nichts",
  "spoken.twentieth": "ein Zwanzigstel",
  "spoken.fifteenth": "ein Fünfzehntel",
  "spoken.tenth": "ein Zehntel",
  "spoken.eighth": "ein Achtel",
  "spoken.sixth": "ein Sechstel",
  "spoken.fifth": "ein Fünftel",
  "spoken.quarter": "ein Viertel",
  "spoken.third": "ein Drittel",
  "spoken.twoFifths": "zwei Fünftel",
  "spoken.half": "die Hälfte",
  "spoken.threeFifths": "drei Fünftel",
  "spoken.twoThirds": "zwei Drittel",
  "spoken.threeQuarters": "drei Viertel",
  "spoken.fourFifths": "vier Fünftel",
  "spoken.nineTenths": "neun Zehntel",
  "spoken.almostAll": "fast alles",
  "spoken.all": "alles",
  "spoken.count":
    "{count, plural, =0 {keine} =1 {eine} =2 {zwei} =3 {drei} =4 {vier} =5 {fünf} =6 {sechs} =7 {sieben} =8 {acht} =9 {neun} =10 {zehn} one {#} other {#}}",
  "spoken.edges":
    "{count, plural, one {Die Flagge hat {all} Kante: {moves}.} other {Von {all} Kanten: {moves}.}}",
  "spoken.better":
    "{count, plural, one {{edges} wird besser sichtbar} other {{edges} werden besser sichtbar}}",
  "spoken.worse":
    "{count, plural, one {{edges} wird schlechter sichtbar} other {{edges} werden schlechter sichtbar}}",
  "spoken.betterAndWorse": "{better} und {worse}",
  "spoken.noneMoves": "keine wird besser oder schlechter sichtbar",
  "spoken.price": "Der Preis: {losses}.",
  "spoken.moreLosses":
    "{count, plural, one {und {edges} weitere wird schlechter sichtbar} other {und {edges} weitere werden schlechter sichtbar}}",
  "spoken.merged": "{one} und {other} verschmelzen zu einer Farbe",
  "spoken.parted":
    "{newOne} und {newOther} trennen sich, und die Kante zwischen ihnen ist {grade} ({contrast})",
  "spoken.lost":
    "{how, select, still {wo {one} und {other} aneinanderstoßen, war die Kante {wasGrade} ({wasContrast}); jetzt ist sie noch immer {grade} ({contrast})} only {wo {one} und {other} aneinanderstoßen, war die Kante {wasGrade} ({wasContrast}); jetzt ist sie nur noch {grade} ({contrast})} other {wo {one} und {other} aneinanderstoßen, war die Kante {wasGrade} ({wasContrast}); jetzt ist sie {grade} ({contrast})}}",
  "spoken.lostRenamed":
    "{how, select, still {wo {one} und {other} aneinanderstoßen, war die Kante {wasGrade} ({wasContrast}); jetzt sind es {newOne} und {newOther}, und sie ist noch immer {grade} ({contrast})} only {wo {one} und {other} aneinanderstoßen, war die Kante {wasGrade} ({wasContrast}); jetzt sind es {newOne} und {newOther}, und sie ist nur noch {grade} ({contrast})} other {wo {one} und {other} aneinanderstoßen, war die Kante {wasGrade} ({wasContrast}); jetzt sind es {newOne} und {newOther}, und sie ist {grade} ({contrast})}}",

  // status: what became of a study, in a word and what that word means.
  "status.draft": "Entwurf",
  "status.draftMeans": "noch nicht fertig",
  "status.open": "Offen",
  "status.openMeans": "vorgeschlagen, noch nicht entschieden",
  "status.adopted": "Angenommen",
  "status.adoptedMeans": "von denen angenommen, die hier entscheiden",
  "status.declined": "Abgelehnt",
  "status.declinedMeans": "von denen nicht angenommen, die hier entscheiden",
  "status.withdrawn": "Zurückgezogen",
  "status.withdrawnMeans": "von den Autoren zurückgenommen",

  // still: words in pictures that are taken away, what is offered of them, and the speaker’s script.
  "still.mark": "Inoffizielle Studie, zur Diskussion",
  "still.unofficial": "Inoffizielle Studie: ein Vorschlag zur Diskussion, keine Flagge in Gebrauch.",
  "still.split": "Das Original und sein Neuentwurf als inoffizielle Studie",
  "still.original": "Original",
  "still.redesign": "Neuentwurf",
  "still.figure": "{what}: {title}",
  "still.move": "von {before} auf {after}",
  "still.seen": "{heading}: {measure} von {before} auf {after}",
  "still.merges": "verschmilzt",
  "still.swap": "Der Wechsel, WebP",
  "still.thumbnail": "Vorschaubild",
  "still.map": "Kantenkarte, SVG",
  "still.ruler": "Lineal, SVG",
  "still.matrix": "Matrix, SVG",
  "still.script": "Was zu sagen ist, Markdown",
  "still.scriptStep": "{number}. {heading}",
  "still.scriptPicture": "Bild: {file}",
  "still.scriptOn": "Darauf: {text}",
  "still.scriptSay": "Zu sagen: {text}",
  "still.scriptNote": "Notiz: {text}",

  // strip: the distance strip.
  "strip.from":
    "Aus {distance, plural, one {<number>#</number> Flaggenhöhe} other {<number>#</number> Flaggenhöhen}}",
  "strip.focus": "was gesehen werden muss:",
  "strip.clarity": "Klarheit",
  "strip.caption":
    "Zuerst das Original, dann der Neuentwurf, wie ein scharfes Auge sie von dort sieht, auf eine Größe gebracht: ohne Wind, Dunst und Blendung.",
  "strip.title": "Entfernungsstreifen",
  "strip.label": "{label} aus {distance, plural, one {# Flaggenhöhe} other {# Flaggenhöhen}}",
  "strip.blur": "Unscharf um {blur} Prozent der Höhe.",
  "strip.blurAndFocus": "Unscharf um {blur} Prozent der Höhe; {focus}.",
  "strip.focusClarity": "was gesehen werden muss, hat eine Klarheit von {clarity}",
  "strip.focusLost": "was gesehen werden muss, ist zu klein, um erkannt zu werden",
  "strip.lost": "vergrößert: in wirklicher Größe zu klein, um erkannt zu werden",
  "strip.describe": "Beide Flaggen, wie sie von Weitem aussehen, immer unschärfer: {distances}.",
  "strip.onlyThere": "Die Klarheit steht nur dort, wo noch zu erkennen ist, was gesehen werden muss.",
  "strip.level":
    "Soweit es zu erkennen ist, hat das, was gesehen werden muss, im Original eine Klarheit von {before} und im Neuentwurf von {after}.",
  "strip.rises":
    "Sie steigt mit der Entfernung, wo feine Teile mit schwachen Kanten nicht mehr zu sehen sind und nicht mehr zählen.",

  // study: the page of a study.
  "study.afar": "Von Weitem",
  "study.theStrip": "Der Entfernungsstreifen",
  "study.theSizes": "Die Reihe der Größen",
  "study.contents": "Auf dieser Seite",
  "study.seen": "Für Farbenfehlsichtige und in Grau",
  "study.likeness": "Verwechslungsgefahr?",
  "study.argue": "Dazu Stellung nehmen",
  "study.shown": "{name} steht in <argument>der Begründung</argument>.",
  "study.numbers": "Der Vergleich in Zahlen",
  "study.theSeen": "Was sie sehen",
  "study.unofficial": "inoffizielle Studie",
  "study.allChanges": "Alle Änderungen einer Farbe",
  "study.verdictHow": "Wie das Urteil entsteht",
  "study.show": "Schritt für Schritt, zum Vorführen",
  "study.sheets": "Blätter für den Unterricht",
  "study.argueByMail": "Per E-Mail Stellung nehmen",
  "study.argument": "Die Begründung",
  "study.decision": "Entscheidung",
  "study.meaning": "Bedeutung",
  "study.unofficialLead": "Inoffizielle Neuentwurfsstudie.",

  // summary: the table of a few numbers.
  "summary.measure": "Maß",
  "summary.both": "Vorher und nachher",

  // survey: the survey of all flags as they are.
  "survey.title": "Übersicht",
  "survey.lede":
    "Jede Flagge der Galerie, wie sie heute ist: wie klar ihre Kanten sind, welche die schwächste ist und welche Farbe zuerst zu ändern wäre. Die Zahlen sagen nichts über Schönheit oder Bedeutung.",
  "survey.flags": "{count, plural, one {# Flagge} other {# Flaggen}}",
  "survey.only": "{count, plural, one {# Flagge} other {# Flaggen}}.",
  "survey.ordered": "{count, plural, one {# Flagge} other {# Flaggen}}, die am wenigsten klare zuerst.",
  "survey.description":
    "{count, plural, one {# Flagge} other {# Flaggen}}, die am wenigsten klare zuerst: die schwächste Kante jeder Flagge, die Farbe, die zuerst zu ändern wäre, die beste einzelne Änderung.",
  "survey.told":
    "{weak, plural, =0 {Bei keiner} one {Bei #} other {Bei #}} hat die schwächste Kante einen Kontrast unter {limit}; {helped, plural, =0 {bei keiner} one {bei #} other {bei #}} bringt eine Farbänderung {points, plural, one {# Punkt} other {# Punkte}} Klarheit oder mehr.",
  "survey.how": "Wie die Übersicht entsteht",
  "survey.empty": "Noch gibt es keine Flagge für die Übersicht.",
  "survey.more": "{count, plural, one {# weitere Flagge} other {# weitere Flaggen}}",
  "survey.rest":
    "Die {listed} am wenigsten klaren sind aufgeführt; die anderen {rest} stehen in den Dateien.",
  "survey.failed": "Nicht gemessen",
  "survey.files": "Dateien",
  "survey.failedRest": "Und {count} weitere, alle in der JSON-Datei.",
  "survey.csv": "Die Übersicht, CSV",
  "survey.json": "Die Übersicht, JSON",
  "survey.pictured": "{count, plural, one {# Flagge} other {# Flaggen}}, die am wenigsten klare zuerst",
  "survey.range": "{least} bis {most}",
  "survey.caution": "Die Zahlen sagen nichts über Schönheit oder Bedeutung.",
  "survey.alt": "Ein Bogen mit Flaggen. Übersicht: {flags}. Klarheit: {number}. {caution}",
  "survey.study": "Studie",
  "survey.withStudy": "Mit Studie",
  "survey.withoutStudy": "Ohne Studie",
  "survey.none": "Keine Flagge passt zu alldem. Ein Wort oder eine Auswahl weglassen oder alle zeigen.",
  "survey.found": "{found} von {count, plural, one {# Flagge} other {# Flaggen}}",

  // surveytable: the table of the survey, what can be done with flags chosen in it, and its picture of the whole field.
  "surveyTable.every": "Jede Flagge, wie sie ist",
  "surveyTable.everyOrdered": "Jede Flagge, wie sie ist, die am wenigsten klare zuerst",
  "surveyTable.captionHeads":
    "Groß genug: Aus dieser Entfernung ist die Hälfte dessen übrig, was gesehen werden muss, und sein größtes Stück misst 5 Bogenminuten. Kein Emblem gefunden: Die Flagge besteht nur aus Feldern.",
  "surveyTable.choose":
    "Flaggen wählen, um sie allein zu sehen oder eine Liste mitzunehmen, von der Studien oder eine Serie ausgehen.",
  "surveyTable.flag": "Flagge",
  "surveyTable.focus": "Klarheit dessen, was gesehen werden muss",
  "surveyTable.lasts": "Groß genug bis, in Flaggenhöhen",
  "surveyTable.lastsUnder": "unter {distance, number}",
  "surveyTable.lastsOrMore": "{distance, number} oder mehr",
  "surveyTable.weakest": "Schwächste Kante",
  "surveyTable.first": "Zuerst zu ändernde Farbe",
  "surveyTable.best": "Beste Änderung einer Farbe",
  "surveyTable.chooseOne": "{name} wählen",
  "surveyTable.study": "Studie: <a>{title}</a>",
  "surveyTable.named": "Von Lesern genannt.",
  "surveyTable.noEmblem": "kein Emblem gefunden",
  "surveyTable.noLasts": "–",
  "surveyTable.ofContrast": "Kontrast",
  "surveyTable.ofClarity": "Klarheit",
  "surveyTable.or": "oder",
  "surveyTable.noFirst": "keine",
  "surveyTable.noBest": "keine",
  "surveyTable.chosen": "{count, plural, one {{number} Flagge gewählt} other {{number} Flaggen gewählt}}",
  "surveyTable.onlyChosen": "Nur diese zeigen",
  "surveyTable.list": "Liste für neue Studien",
  "surveyTable.series": "Datei für eine neue Reihe",
  "surveyTable.chooseNone": "Keine wählen",
  "surveyTable.showAll": "Alle Flaggen zeigen",
  "surveyTable.sortBy": "Ordnen nach",
  "surveyTable.listHead":
    "Flaggen, aus der Übersicht von {gallery} gewählt. Die Zeilen, die mit counterchange beginnen, in dem Ordner tippen, in dem flags/ liegt.",
  "surveyTable.seriesTitle": "Aus der Übersicht gewählte Flaggen",
  "surveyTable.seriesNote":
    "Für eine Reihe, die es schon gibt: die Zeilen vom ersten bis zum letzten - unter ihr „studies:“ kopieren.",
  "surveyTable.seriesClosing": "Welche ihrer Farben würden Sie ändern, und in welche?",
  "field.title": "Alle auf einen Blick",
  "field.about": "Jede Flagge bei ihrer heutigen Klarheit; unterstrichen, wo es eine Studie dazu gibt.",
  "field.past": "Am Bild vorbei",
  "field.without":
    "{count, plural, one {# einfarbige Flagge hat keine Kante und darum hier keinen Platz.} other {# einfarbige Flaggen haben keine Kante und darum hier keinen Platz.}}",
  "field.flag": "{name}, Klarheit {clarity}",
  "field.least": "Am wenigsten klar: {name}, Klarheit {clarity}",
  "field.weakest": "Am schwächsten: {one} / {other}, Kontrast {contrast}",

  // verdict: what a change does, and the verdict with its price.
  "verdict.change": "{after} statt {before}.",
  "verdict.changeInPart": "{after} statt {before}, nur {part}.",
  "verdict.selectedPart": "der ausgewählte Teil ({selector})",
  "verdict.clearer": "Klarer",
  "verdict.clearerAtPrice": "Klarer, um einen Preis",
  "verdict.mixed": "Gemischt",
  "verdict.lessClear": "Weniger klar",
  "verdict.noGain": "Kein Gewinn",
  "verdict.semicolon": "{clause}; {more}",
  "verdict.colon": "{clause}: {more}",
  "verdict.and": "{clause}, und {more}",
  "verdict.but": "{clause}, aber {more}",
  "verdict.stays": "die Klarheit bleibt bei {now}",
  "verdict.rises": "die Klarheit steigt von {before} auf {now}",
  "verdict.falls": "die Klarheit sinkt von {before} auf {now}",
  "verdict.stronger": "Kanten werden über klar hinaus stärker",
  "verdict.weaker": "Kanten werden über klar hinaus schwächer",
  "verdict.thePrice": "{clause}. Der Preis: {more}",
  "verdict.gains": "{count, plural, one {eine Kante gewinnt} other {# Kanten gewinnen}}",
  "verdict.onlyShort": "nur Kanten unter {part} der Länge aller Kanten werden schlechter sichtbar",
  "verdict.noneHarder": "keine Kante wird schlechter sichtbar",
  "verdict.tooLittle": "{moved}, zu wenig, um sie zu ändern",
  "verdict.noStep":
    "keine Kante wird um {points, plural, one {# Punkt} other {# Punkte}} klarer oder weniger klar",
  "verdict.noneMoves": "keine Kante wird besser oder schlechter sichtbar",
  "verdict.noneToTheEye": "für das Auge ändert sich nichts als Kanten unter {part} der Länge aller Kanten",

  // vote: the vote on a series, flag by flag.
  "vote.title": "Abstimmung: {series}",
  "vote.description":
    "Original oder Neuentwurf? Eine Abstimmung über {series}, Flagge für Flagge, bevor eine Zahl zu sehen ist.",
  "vote.on": "Eine Abstimmung über <a>{series}</a>",
  "vote.heading": "Welche würden Sie hissen?",
  "vote.how":
    "Die Flagge, wie sie ist, und was an ihrer Stelle vorgeschlagen wird. Welche welche ist, wird nicht gesagt und keine Zahl gezeigt, bis Sie gewählt haben.",
  "vote.unscripted":
    "Zum Abstimmen auf dieser Seite braucht es ein Skript, das dieser Browser nicht ausführt. In einem Raum geht es ohne: die Seite drucken, die Flaggen einzeln hochhalten und für jede Hand ein Kästchen ankreuzen. Am Ende jeder Frage steht, welche welche ist.",
  "vote.questions": "Fragen",
  "vote.back": "Zurück",
  "vote.next": "Weiter",
  "vote.place": "{number} von {count}",
  "vote.flag": "Flagge {number}",
  "vote.alt": "Eine Flagge: {paints}",
  "vote.neither": "Keine von beiden",
  "vote.original": "Das Original",
  "vote.redesign": "Der Neuentwurf",
  "vote.redesignOf": "Der Neuentwurf „{title}“",
  "vote.unofficial": "{name}, eine inoffizielle Studie",
  "vote.cautionOne":
    "Eine davon ist die Flagge, wie sie ist; was vorgeschlagen wird, ist eine inoffizielle Studie.",
  "vote.cautionMany":
    "Eine davon ist die Flagge, wie sie ist; was vorgeschlagen wird, sind inoffizielle Studien.",
  "vote.why": "Warum? (freiwillig)",
  "vote.choose": "Das ist meine Wahl",
  "vote.missing": "Zuerst eine Flagge wählen oder keine von beiden.",
  "vote.told": "Welche welche ist und die Zahlen",
  "vote.which": "{flag}: welche welche ist",
  "vote.headFlag": "Flagge",
  "vote.headChosen": "Gewählt, bei {count, plural, one {# Stimme} other {# Stimmen}}",
  "vote.own": "Ihre Wahl",
  "vote.range": "{low} bis {high}",
  "vote.study": "Zur Studie",
  "vote.verdictOf": "{name}: {sentence}",
  "vote.said": "<quiet>{side}:</quiet> <said></said>",
  "vote.ballot": "Ihr Stimmzettel",
  "vote.answer": "{flag}: {choice}",
  "vote.answerWhy": "{flag}: {choice}, „{why}“",
  "vote.unanswered": "{flag}: nicht beantwortet",
  "vote.kept":
    "Er bleibt allein in diesem Browser, unter einer ausgelosten Nummer, und niemand erfährt davon, bis Sie ihn abgeben.",
  "vote.copy": "Diese Zeile kopieren",
  "vote.copied": "Kopiert.",
  "vote.refused": "Der Browser hat es nicht erlaubt; die Zeile markieren und kopieren.",
  "vote.save": "Als Tabelle speichern (CSV)",
  "vote.mail": "Per E-Mail senden",
  "vote.form": "Mit einem Formular senden",
  "vote.anew": "Neuen Stimmzettel beginnen",
  "vote.letter": "Ein Stimmzettel zu {series}",
  "vote.room": "Für eine Klasse oder eine Versammlung",
  "vote.same":
    "<same>Dieselbe Reihenfolge für alle</same> · <own>Eine eigene Reihenfolge</own>. Mit der ersten sehen alle, die sie öffnen, A und B wie Sie jetzt; mit der zweiten sieht jeder sie in einer ausgelosten Reihenfolge.",
  "vote.paper":
    "Gedruckt ist diese Seite eine Strichliste: die Flaggen, Kästchen für die Hände, und auf der letzten Seite, welche welche ist.",
  "vote.ballots":
    "{count, plural, one {# Stimmzettel kam zurück.} other {# Stimmzettel kamen zurück.}} Neben jedem Anteil steht der Bereich, in dem mit 95 % Sicherheit der aller läge, wären die Abstimmenden ausgelost worden (Intervall nach Wilson); wer von selbst kam, war es nicht.",
  "vote.noBallots": "Noch kam kein Stimmzettel zurück.",
  "vote.key": "Für die Auszählung: welche welche ist",
  "vote.sides": "{flag}: <sides></sides>",
};
