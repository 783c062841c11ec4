// Floor 7. French: whether a redesign could be mistaken for another flag.
import type { In } from "../en/all.ts";
import type { near as english } from "../en/near.ts";

export const near: In<typeof english> = {
  "near.beside": "À côté des drapeaux dont il est le plus proche",
  "near.hidden": "{name}, non montré ici",
  "near.scale":
    "ΔE00 moyen sur tout le drapeau, comme étoffe : 0 est la même image. <how>Comment se mesure la ressemblance</how>",
  "near.redesign": "le nouveau dessin « {study} »",
};
