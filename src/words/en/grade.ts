// Floor 7. English: the grades of a contrast, within a sentence and in tables.

export const grade = {
  "grade.weak": "weak",
  "grade.soft": "soft",
  "grade.clear": "clear",
  "grade.strong": "strong",
  "grade.now": "now {is}",
  "grade.from": "from {was}",
  /** From one grade to another: “weak to strong”. */
  "grade.move": "{was} to {is}",
} as const;
