// Floor 7. French: how far what has to be seen lasts, as a figure.
import type { In } from "../en/all.ts";
import type { lasting as english } from "../en/lasting.ts";

export const lasting: In<typeof english> = {
  "lasting.caption":
    "Netteté de ce qui doit se voir, à tant de hauteurs de drapeau : un anneau pour l’original, un point pour le nouveau dessin.",
  "lasting.model": "Un modèle de la vue",
};
