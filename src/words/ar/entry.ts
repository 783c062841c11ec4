// Floor 7. Arabic: the entry of a study in a list.
import type { In } from "../en/all.ts";
import type { entry as english } from "../en/entry.ts";

export const entry: In<typeof english> = {
  "entry.clarity": "الوضوح",
  "entry.makers": "ورقة للصانعين",
  "entry.putForward": "مقدَّمة من {authors}",
};
