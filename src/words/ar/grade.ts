// Floor 7. Arabic: the grades of a contrast, within a sentence and in tables.
import type { In } from "../en/all.ts";
import type { grade as english } from "../en/grade.ts";

export const grade: In<typeof english> = {
  "grade.weak": "ضعيفة",
  "grade.soft": "لينة",
  "grade.clear": "واضحة",
  "grade.strong": "قوية",
  "grade.now": "الآن {is}",
  "grade.from": "كانت {was}",
  "grade.move": "من {was} إلى {is}",
};
