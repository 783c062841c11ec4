// Floor 7. French: what stands where there is no number.
import type { In } from "../en/all.ts";
import type { number as english } from "../en/number.ts";

export const number: In<typeof english> = {
  "number.noEdges": "aucune limite",
  "number.move": "de {was} à {is}",
  "number.noEmblem": "aucun emblème trouvé",
};
