// Floor 7. French: what a change does, and the verdict with its price.
import type { In } from "../en/all.ts";
import type { verdict as english } from "../en/verdict.ts";

export const verdict: In<typeof english> = {
  "verdict.change": "{before} devient {after}.",
  "verdict.changeInPart": "{before} devient {after}, seulement dans {part}.",
  "verdict.selectedPart": "la partie choisie ({selector})",
  "verdict.clearer": "Plus net",
  "verdict.clearerAtPrice": "Plus net, mais à un prix",
  "verdict.mixed": "Partagé",
  "verdict.lessClear": "Moins net",
  "verdict.noGain": "Sans gain",
  "verdict.semicolon": "{clause} ; {more}",
  "verdict.colon": "{clause} : {more}",
  "verdict.and": "{clause}, et {more}",
  "verdict.but": "{clause}, mais {more}",
  "verdict.stays": "la netteté reste à {now}",
  "verdict.rises": "la netteté monte de {before} à {now}",
  "verdict.falls": "la netteté baisse de {before} à {now}",
  "verdict.stronger": "des limites gagnent en force au-delà du net",
  "verdict.weaker": "des limites perdent en force au-delà du net",
  "verdict.thePrice": "le prix : {price}",
  "verdict.gains": "{count, plural, one {une limite gagne} other {# limites gagnent}}",
  "verdict.onlyShort":
    "seules des limites de moins de {part} de la longueur totale deviennent plus difficiles à voir",
  "verdict.noneHarder": "aucune limite ne devient plus difficile à voir",
  "verdict.tooLittle": "{moved}, trop peu pour la changer",
  "verdict.noStep":
    "aucune limite ne devient plus ou moins nette de {points, plural, one {# point} other {# points}}",
  "verdict.noneMoves": "aucune limite ne devient plus facile ou plus difficile à voir",
  "verdict.noneToTheEye":
    "rien ne change à l’œil, sinon des limites de moins de {part} de la longueur totale",
};
