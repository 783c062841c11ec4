// Floor 7. English: what a flag that is shown is called.

export const plate = {
  "plate.original": "Original",
  "plate.redesign": "Redesign",
  /** Behind “Original” and “Redesign”, under the flag. */
  "plate.clarity": "clarity <number>{clarity}</number>",
  /** The same of a part of it where two colours meet. */
  "plate.contrast": "contrast <number>{contrast}</number>",
  /** A flag without a study. */
  "plate.asItIs": "The flag as it is",
  /** For those who do not see it: `label` is “Original”, `paints` tells of its colours. */
  "plate.alt": "{label}: {paints}",
} as const;
