// Floor 7. English: the entry of a study in a list.

export const entry = {
  /** A link, in a list of decisions. */
  "entry.makers": "Sheet for makers",
  "entry.putForward": "Put forward by {authors}",
} as const;
