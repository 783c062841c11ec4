// Floor 7. Spanish: the marks of a flag.
import type { In } from "../en/all.ts";
import type { mark as english } from "../en/mark.ts";

export const mark: In<typeof english> = {
  "mark.clarity": "Nitidez",
  "mark.contrast": "Contraste",
  "mark.length": "Longitud",
  "mark.near": "en el umbral",
  "mark.nearNow": "ahora en el umbral",
  "mark.nearBefore": "antes en el umbral",
  "mark.hue": "solo por el tono",
  "mark.hueNow": "ahora solo por el tono",
  "mark.hueBefore": "antes solo por el tono",
  "mark.clarityMeans": "100 % si todo límite es nítido",
  "mark.focusClarity": "Nitidez de lo que debe verse",
  "mark.weakest": "Límite más débil",
  "mark.weakestMeans": "contraste de los dos colores",
};
