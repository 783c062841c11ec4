// Floor 7. Spanish: the colours of a study.
import type { In } from "../en/all.ts";
import type { colours as english } from "../en/colours.ts";

export const colours: In<typeof english> = {
  "colours.caption":
    "Colores del original, los más extensos primero. Parte del dibujo entero; reflectancia de la tela.",
  "colours.colour": "Color",
  "colours.share": "Parte",
  "colours.reflectance": "Reflectancia",
  "colours.tincture": "Esmalte",
  "colours.becomes": "pasa a",
  "colours.vanishes": "no se distingue a {distance} alturas de bandera",
  "colours.uneven": "desigual, de <first></first> a <last></last>",
  "colours.metal": "metal",
  "colours.ofTincture": "color",
};
