// Floor 7. Arabic: what stands where there is no number.
import type { In } from "../en/all.ts";
import type { number as english } from "../en/number.ts";

export const number: In<typeof english> = {
  "number.noEdges": "لا حواف",
  "number.move": "من {was} إلى {is}",
  "number.noEmblem": "لم يُعثر على شارة",
};
