// Floor 7. English: how far what has to be seen lasts, as a figure.

export const lasting = {
  "lasting.caption":
    "Clarity of what has to be seen from so many flag heights away: a ring for the original, a dot for the redesign.",
  /** A link. */
  "lasting.model": "A model of sight",
} as const;
