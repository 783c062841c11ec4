// Floor 7. Arabic: the table of a few numbers.
import type { In } from "../en/all.ts";
import type { summary as english } from "../en/summary.ts";

export const summary: In<typeof english> = {
  "summary.measure": "المقياس",
  "summary.both": "قبلُ وبعدُ",
};
