// Floor 7. French: kinds of sight.
import type { In } from "../en/all.ts";
import type { sight as english } from "../en/sight.ts";

export const sight: In<typeof english> = {
  "sight.protan": "Protan",
  "sight.deutan": "Deutan",
  "sight.tritan": "Tritan",
  "sight.grey": "Gris",
  "sight.protanMeans": "sans les cônes des ondes longues",
  "sight.deutanMeans": "sans les cônes des ondes moyennes",
  "sight.tritanMeans": "sans les cônes des ondes courtes",
  "sight.greyMeans": "tel que l’imprime un copieur en noir et blanc",
};
