// Floor 7. German: the survey of all flags as they are.
import type { In } from "../en/all.ts";
import type { survey as english } from "../en/survey.ts";

export const survey: In<typeof english> = {
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
};
