// Floor 7. Spanish: what stands where there is no number.
import type { In } from "../en/all.ts";
import type { number as english } from "../en/number.ts";

export const number: In<typeof english> = {
  "number.noEdges": "sin límites",
  "number.move": "de {was} a {is}",
  "number.noEmblem": "no se halló emblema",
};
