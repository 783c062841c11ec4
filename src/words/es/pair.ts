// Floor 7. Spanish: both flags of a study, and what swaps them.
import type { In } from "../en/all.ts";
import type { pair as english } from "../en/pair.ts";

export const pair: In<typeof english> = {
  "pair.swap": "Alternar en el sitio",
  "pair.both": "Mostrar las dos",
  "pair.pressFlag": "Pulse una bandera",
  "pair.orKey": "o una tecla de flecha, o",
  "pair.pressKey": "Pulse una tecla de flecha, o",
  "pair.bothShown": "Se muestran las dos banderas",
  "pair.shownAlone": "{name}, a solas",
  "pair.split": "Mitad original, mitad rediseño",
};
