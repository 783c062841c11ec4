// Floor 7. English: the grades of a contrast, within a sentence and in tables.

export const grade = {
  "grade.weak": "weak",
  "grade.soft": "soft",
  "grade.clear": "clear",
  "grade.strong": "strong",
} as const;
