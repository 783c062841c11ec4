// Floor 7. French: the grades of a contrast, within a sentence and in tables.
import type { In } from "../en/all.ts";
import type { grade as english } from "../en/grade.ts";

export const grade: In<typeof english> = {
  "grade.weak": "faible",
  "grade.soft": "douce",
  "grade.clear": "nette",
  "grade.strong": "forte",
  "grade.now": "désormais {is}",
  "grade.from": "de {was}",
  "grade.move": "de {was} à {is}",
};
