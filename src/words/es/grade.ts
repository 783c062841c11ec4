// Floor 7. Spanish: the grades of a contrast, within a sentence and in tables.
import type { In } from "../en/all.ts";
import type { grade as english } from "../en/grade.ts";

export const grade: In<typeof english> = {
  "grade.weak": "débil",
  "grade.soft": "suave",
  "grade.clear": "nítido",
  "grade.strong": "fuerte",
  "grade.now": "ahora {is}",
  "grade.from": "de {was}",
  "grade.move": "de {was} a {is}",
};
