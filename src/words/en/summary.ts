// Floor 7. English: the table of a few numbers.

export const summary = {
  /** Head of a column, read to screen readers. */
  "summary.measure": "Measure",
  /** Head of a column that stands for both flags. */
  "summary.both": "Before and after",
} as const;
