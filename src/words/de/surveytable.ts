// Floor 7. German: the table of the survey, what can be done with flags chosen in it, and its picture of the whole field.
import type { In } from "../en/all.ts";
import type { surveyTable as english } from "../en/surveytable.ts";

export const surveyTable: In<typeof english> = {
  "surveyTable.caption": "Jede Flagge, wie sie ist.",
  "surveyTable.captionOrdered": "Jede Flagge, wie sie ist, die am wenigsten klare zuerst.",
  "surveyTable.captionHeads":
    "Groß genug: Aus dieser Entfernung ist die Hälfte dessen übrig, was gesehen werden muss, und sein größtes Stück misst 5 Bogenminuten. Kein Emblem gefunden: Die Flagge besteht nur aus Feldern.",
  "surveyTable.choose": "Wählen",
  "surveyTable.flag": "Flagge",
  "surveyTable.focus": "Klarheit dessen, was gesehen werden muss",
  "surveyTable.lasts": "Groß genug bis",
  "surveyTable.weakest": "Schwächste Kante",
  "surveyTable.first": "Zuerst zu ändernde Farbe",
  "surveyTable.best": "Beste Änderung einer Farbe",
  "surveyTable.chooseOne": "{name} wählen",
  "surveyTable.study": "Studie: <a>{title}</a>",
  "surveyTable.named": "Von Lesern genannt.",
  "surveyTable.noEmblem": "kein Emblem gefunden",
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
};
