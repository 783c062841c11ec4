// Floor 7. Spanish: the entry of a study in a list.
import type { In } from "../en/all.ts";
import type { entry as english } from "../en/entry.ts";

export const entry: In<typeof english> = {
  "entry.clarity": "Nitidez",
  "entry.makers": "Hoja para fabricantes",
  "entry.putForward": "Propuesto por {authors}",
};
