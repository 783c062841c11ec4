// Floor 7. German: the grades of a contrast, within a sentence and in tables.
import type { In } from "../en/all.ts";
import type { grade as english } from "../en/grade.ts";

export const grade: In<typeof english> = {
  "grade.weak": "schwach",
  "grade.soft": "weich",
  "grade.clear": "klar",
  "grade.strong": "stark",
  "grade.now": "jetzt {is}",
  "grade.from": "zuvor {was}",
  "grade.move": "von {was} zu {is}",
};
