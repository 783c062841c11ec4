// Floor 7. German: what has to be seen, the emblem or charge of a flag, from where the flag is seen, and how far that lasts.
import type { In } from "../en/all.ts";
import type { focus as english } from "../en/focus.ts";

export const focus: In<typeof english> = {
  "focus.none":
    "Kein Emblem gefunden: Nichts muss vor dem Übrigen gesehen werden, und keine Kante zählt doppelt. Das ist eine Tatsache, kein Mangel.",
  "focus.notGuessed":
    "Eine Figur geht in eine Fläche ihrer eigenen Farbe über. Sie wurde nicht erraten, darum zählt nichts doppelt. Wer sie benennen will, schreibt in die Studie:",
  "focus.fullDrawing": "Gemessen an der ganzen Zeichnung, nicht aus der Entfernung.",
  "focus.fromAway":
    "Gemessen, wie man es aus {away} Flaggenhöhen sieht: eine Flagge von einem Meter Höhe aus {away} Metern. Teile, die dünner sind als {finest} ihrer Höhe, werden dem zugeschlagen, was neben ihnen liegt. Das ist ein Modell der Sehschärfe.",
  "focus.afar": "Was von Weitem bleibt",
  "focus.afarDescription": "{lasting} Klarheit dessen, was gesehen werden muss: {steps}.",
  "focus.step": "aus {distance}: {is}",
  "focus.stepMove": "aus {distance}: von {was} auf {is}",
  "focus.afarCaption":
    "Erkennbar bis {lasts}, allein nach der Größe: {left} davon müssen übrig sein, und das größte Stück muss {arcminutes, plural, one {# Bogenminute} other {# Bogenminuten}} messen, die Größe eines Buchstabens, den man mit voller Sehschärfe liest.",
  "focus.noEmblem": "kein Emblem gefunden",
  "focus.lastsUnder": "{distance, plural, one {unter # Flaggenhöhe} other {unter # Flaggenhöhen}}",
  "focus.lasts": "{distance, plural, one {# Flaggenhöhe} other {# Flaggenhöhen}}",
  "focus.lastsOrMore": "{distance, plural, one {# Flaggenhöhe oder mehr} other {# Flaggenhöhen oder mehr}}",
  "focus.nothingLeft": "nichts übrig",
  "focus.tooSmall":
    "{distance, plural, one {Was gesehen werden muss, ist aus # Flaggenhöhe, der kürzesten geprüften Entfernung, zu klein, um erkannt zu werden, gleich in welchen Farben.} other {Was gesehen werden muss, ist aus # Flaggenhöhen, der kürzesten geprüften Entfernung, zu klein, um erkannt zu werden, gleich in welchen Farben.}}",
  "focus.largeEnough":
    "{distance, plural, one {Was gesehen werden muss, ist groß genug, um aus bis zu # Flaggenhöhe erkannt zu werden, gleich in welchen Farben.} other {Was gesehen werden muss, ist groß genug, um aus bis zu # Flaggenhöhen erkannt zu werden, gleich in welchen Farben.}}",
  "focus.largeEnoughAlways":
    "{distance, plural, one {Was gesehen werden muss, ist groß genug, um aus # Flaggenhöhe, der weitesten geprüften Entfernung, erkannt zu werden.} other {Was gesehen werden muss, ist groß genug, um aus # Flaggenhöhen, der weitesten geprüften Entfernung, erkannt zu werden.}}",
};
