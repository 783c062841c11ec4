// Floor 7. Spanish: whether a redesign could be mistaken for another flag.
import type { In } from "../en/all.ts";
import type { near as english } from "../en/near.ts";

export const near: In<typeof english> = {
  "near.beside": "Junto a las banderas que le son más cercanas",
  "near.hidden": "{name}, no se muestra aquí",
  "near.scale":
    "ΔE00 medio en toda la bandera, como tela: 0 es la misma imagen. <how>Cómo se mide el parecido</how>",
  "near.redesign": "el rediseño «{study}»",
};
