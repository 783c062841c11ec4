// Floor 7. German: the entry of a study in a list.
import type { In } from "../en/all.ts";
import type { entry as english } from "../en/entry.ts";

export const entry: In<typeof english> = {
  "entry.clarity": "Klarheit",
  "entry.makers": "Blatt für Hersteller",
  "entry.putForward": "Vorgeschlagen von {authors}",
};
