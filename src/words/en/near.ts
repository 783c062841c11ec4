// Floor 7. English: whether a redesign could be mistaken for another flag.

export const near = {
  "near.beside": "Beside the flags it is nearest to",
  "near.hidden": "{name}, not shown here",
  "near.scale":
    "Mean ΔE00 over the whole flag as cloth: 0 is the same picture. <how>How likeness is measured</how>",
  /** Names a flag in a sentence; `study` is the title of a study. */
  "near.redesign": "the redesign of “{study}”",
} as const;
