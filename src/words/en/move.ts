// Floor 7. English: from one value to another.

export const move = {
  /** Read to screen readers in the place of an arrow between two values. */
  "move.to": "to",
  /** A number before and after, in a letter. */
  "move.row": "{name}: {before} → {after}",
} as const;
