// Floor 7. German: what stands where there is no number.
import type { In } from "../en/all.ts";
import type { number as english } from "../en/number.ts";

export const number: In<typeof english> = {
  "number.noEdges": "keine Kanten",
  "number.move": "von {was} auf {is}",
  "number.noEmblem": "kein Emblem gefunden",
};
