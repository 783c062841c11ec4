// Floor 7. German: the page by which readers propose a study, with the words of its script and of the letter.
import type { In } from "../en/all.ts";
import type { part as english } from "../en/part.ts";

export const part: In<typeof english> = {
  "part.link": "Eine eigene Studie vorschlagen",
  "part.title": "Eine Studie vorschlagen",
  "part.description":
    "Wie man dieser Galerie eine Neuentwurfsstudie vorschlägt: zwei Dateien und eine Nachricht, mit der man sie schickt.",
  "part.lede":
    "Eine Studie ist ein Ordner mit zwei Dateien: der Zeichnung einer Flagge und einem Text, der eine Farbänderung nennt und begründet. Dafür braucht man weder ein Konto noch ein Programm.",
  "part.files": "Die zwei Dateien",
  "part.drawing":
    "original.svg: die Flagge, wie sie ist, als SVG gezeichnet, höchstens 512 KB. Pixelbilder und Fotografien lassen sich nicht umfärben.",
  "part.study":
    "study.md: reiner Text. Zwischen den beiden Zeilen aus Bindestrichen stehen der Titel, die Farbe, die ersetzt wird, und die Farbe, die an ihre Stelle tritt; darunter die Gründe.",
  "part.credit":
    "Ist die Zeichnung von jemand anderem, steht über der zweiten Zeile aus Bindestrichen, von wem sie ist und unter welcher Lizenz, so:",
  "part.template": "Ein Text zum Anfangen",
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
};
