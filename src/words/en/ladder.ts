// Floor 7. English: the ladder of reflectance.

export const ladder = {
  "ladder.title": "How light each colour is",
  /** Read to screen readers; a list of colours with their reflectance. */
  "ladder.says": "Lightest first: {colours}. {before} becomes {after}.",
} as const;
