// Floor 7. French: the colours of a study.
import type { In } from "../en/all.ts";
import type { colours as english } from "../en/colours.ts";

export const colours: In<typeof english> = {
  "colours.caption":
    "Couleurs de l’original, les plus étendues d’abord. Part du dessin entier ; réflectance de l’étoffe.",
  "colours.colour": "Couleur",
  "colours.share": "Part",
  "colours.reflectance": "Réflectance",
  "colours.tincture": "Émail",
  "colours.becomes": "devient",
  "colours.vanishes": "ne se distingue plus à {distance} hauteurs de drapeau",
  "colours.uneven": "inégale, de <first></first> à <last></last>",
  "colours.metal": "métal",
  "colours.ofTincture": "couleur",
};
