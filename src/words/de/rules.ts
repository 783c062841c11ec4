// Floor 7. German: what stands around the rules for studies and drawings, which are English in every language.
import type { In } from "../en/all.ts";
import type { rules as english } from "../en/rules.ts";

export const rules: In<typeof english> = {
  "rules.title": "Regeln für Studien und Zeichnungen",
  "rules.description":
    "Was jede Meldung zu einer Studie oder Zeichnung bedeutet, mit einem falschen und einem richtigen Beispiel.",
  "rules.lede":
    "Jede Meldung zu einer Studie endet mit dem Namen ihrer Regel. Hier {count, plural, one {ist die # Regel} other {sind alle # Regeln}}: was jede bedeutet, warum es sie gibt, und ein falsches Beispiel neben einem richtigen. Sie sind auf Englisch, wie die Meldungen.",
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
};
