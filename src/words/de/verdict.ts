// Floor 7. German: what a change does, and the verdict with its price.
import type { In } from "../en/all.ts";
import type { verdict as english } from "../en/verdict.ts";

export const verdict: In<typeof english> = {
  "verdict.change": "{before} wird zu {after}.",
  "verdict.changeInPart": "{before} wird zu {after}, nur in {part}.",
  "verdict.selectedPart": "dem ausgewählten Teil ({selector})",
  "verdict.clearer": "Klarer",
  "verdict.clearerAtPrice": "Klarer, zu einem Preis",
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
  "verdict.onlyShort": "nur Kanten unter {part} der ganzen Kantenlänge werden schwerer zu sehen",
  "verdict.noneHarder": "keine Kante wird schwerer zu sehen",
  "verdict.tooLittle": "{moved}, zu wenig, um sie zu bewegen",
  "verdict.noStep":
    "keine Kante wird um {points, plural, one {# Punkt} other {# Punkte}} klarer oder weniger klar",
  "verdict.noneMoves": "keine Kante wird leichter oder schwerer zu sehen",
  "verdict.noneToTheEye": "für das Auge ändert sich nichts als Kanten unter {part} der ganzen Kantenlänge",
};
