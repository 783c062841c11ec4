// Floor 7. English: the ladder of reflectance.

export const ladder = {
  "ladder.title": "How light each colour is",
  /** Beside a rung. */
  "ladder.rung": "{name} {reflectance}",
  /** Read to screen readers; a list of colours with their reflectance, and a sentence. */
  "ladder.says": "Lightest first: {colours}. {change}",
} as const;
