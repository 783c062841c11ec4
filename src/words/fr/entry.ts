// Floor 7. French: the entry of a study in a list.
import type { In } from "../en/all.ts";
import type { entry as english } from "../en/entry.ts";

export const entry: In<typeof english> = {
  "entry.clarity": "Netteté",
  "entry.makers": "Fiche pour fabricants",
  "entry.putForward": "Proposée par {authors}",
};
