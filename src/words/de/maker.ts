// Floor 7. German: the sheet from which an adopted redesign is made as a flag.
import type { In } from "../en/all.ts";
import type { maker as english } from "../en/maker.ts";

export const maker: In<typeof english> = {
  "maker.title": "{title}, Blatt für Hersteller",
  "maker.description": "Maßverhältnisse, Konstruktion und Farben des angenommenen Neuentwurfs, zum Drucken.",
  "maker.kind": "Blatt für Hersteller",
  "maker.for": "Für Hersteller",
  "maker.print": "Zum Drucken: der Druckbefehl des Browsers, A4 oder Letter, hochkant. Eine Seite.",
  "maker.toStudy": "Zur Studie",
  "maker.redesign": "Neuentwurf",
  "maker.outline": "Der Neuentwurf in Umrissen: {name}",
  "maker.proportions": "Höhe zu Breite <number>{proportions}</number>. Liek links.",
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
};
