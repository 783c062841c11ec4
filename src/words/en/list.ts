// Floor 7. English: what stands between the items of a list that has no “and”.

export const list = {
  "list.comma": ", ",
  /** Between clauses. */
  "list.semicolon": "; ",
  /** What something is called, and what is said of it. */
  "list.colon": "{name}: {said}",
} as const;
