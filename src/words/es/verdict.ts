// Floor 7. Spanish: what a change does, and the verdict with its price.
import type { In } from "../en/all.ts";
import type { verdict as english } from "../en/verdict.ts";

export const verdict: In<typeof english> = {
  "verdict.change": "{before} pasa a {after}.",
  "verdict.changeInPart": "{before} pasa a {after}, solo en {part}.",
  "verdict.selectedPart": "la parte elegida ({selector})",
  "verdict.clearer": "Más nítido",
  "verdict.clearerAtPrice": "Más nítido, a un precio",
  "verdict.mixed": "Desigual",
  "verdict.lessClear": "Menos nítido",
  "verdict.noGain": "Sin ganancia",
  "verdict.semicolon": "{clause}; {more}",
  "verdict.colon": "{clause}: {more}",
  "verdict.and": "{clause}, y {more}",
  "verdict.but": "{clause}, pero {more}",
  "verdict.stays": "la nitidez se mantiene en {now}",
  "verdict.rises": "la nitidez sube de {before} a {now}",
  "verdict.falls": "la nitidez baja de {before} a {now}",
  "verdict.stronger": "hay límites que ganan fuerza más allá de lo nítido",
  "verdict.weaker": "hay límites que pierden fuerza más allá de lo nítido",
  "verdict.thePrice": "el precio: {price}",
  "verdict.gains": "{count, plural, one {gana un límite} other {ganan # límites}}",
  "verdict.onlyShort": "solo límites de menos de {part} de la longitud total se vuelven más difíciles de ver",
  "verdict.noneHarder": "ningún límite se vuelve más difícil de ver",
  "verdict.tooLittle": "{moved}, demasiado poco para moverla",
  "verdict.noStep": "ningún límite gana o pierde nitidez en {points, plural, one {# punto} other {# puntos}}",
  "verdict.noneMoves": "ningún límite se vuelve más fácil o más difícil de ver",
  "verdict.noneToTheEye": "nada cambia a la vista salvo límites de menos de {part} de la longitud total",
};
