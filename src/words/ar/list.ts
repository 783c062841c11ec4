// Floor 7. Arabic: what stands between the items of a list that has no “and”.
import type { In } from "../en/all.ts";
import type { list as english } from "../en/list.ts";

export const list: In<typeof english> = {
  "list.comma": "، ",
  "list.semicolon": "؛ ",
};
