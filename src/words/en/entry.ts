// Floor 7. English: the entry of a study in a list.

export const entry = {
  /** Before a percentage, and in the heads of tables. */
  "entry.clarity": "Clarity",
  /** A link, in a list of decisions. */
  "entry.makers": "Sheet for makers",
  "entry.putForward": "Put forward by {authors}",
} as const;
