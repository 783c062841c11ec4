// Floor 7. German: what a change does, and the verdict with its price.
import type { In } from "../en/all.ts";
import type { verdict as english } from "../en/verdict.ts";

export const verdict: In<typeof english> = {
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
  "verdict.thePrice": "der Preis: {price}",
  "verdict.gains": "{count, plural, one {eine Kante gewinnt} other {# Kanten gewinnen}}",
  "verdict.onlyShort": "nur Kanten unter {part} der Länge aller Kanten werden schlechter sichtbar",
  "verdict.noneHarder": "keine Kante wird schlechter sichtbar",
  "verdict.tooLittle": "{moved}, zu wenig, um sie zu ändern",
  "verdict.noStep":
    "keine Kante wird um {points, plural, one {# Punkt} other {# Punkte}} klarer oder weniger klar",
  "verdict.noneMoves": "keine Kante wird besser oder schlechter sichtbar",
  "verdict.noneToTheEye": "für das Auge ändert sich nichts als Kanten unter {part} der Länge aller Kanten",
};
