// Floor 7. German: sheets for a class, printed on paper: a handout, a worksheet and the answers for the teacher.
import type { In } from "../en/all.ts";
import type { sheet as english } from "../en/sheet.ts";

export const sheet: In<typeof english> = {
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
  "sheet.ruler":
    "Kontrast ist, wie weit zwei Farben, die aneinanderstoßen, in der Helligkeit auseinanderliegen. Ring: das Original. Punkt: der Neuentwurf.",
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
};
