// Floor 7. Spanish: kinds of sight.
import type { In } from "../en/all.ts";
import type { sight as english } from "../en/sight.ts";

export const sight: In<typeof english> = {
  "sight.protan": "Protán",
  "sight.deutan": "Deután",
  "sight.tritan": "Tritán",
  "sight.grey": "Gris",
  "sight.protanMeans": "sin los conos de ondas largas",
  "sight.deutanMeans": "sin los conos de ondas medias",
  "sight.tritanMeans": "sin los conos de ondas cortas",
  "sight.greyMeans": "como lo imprime una copiadora en blanco y negro",
};
