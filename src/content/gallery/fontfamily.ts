// Floor 5. The families that are installed with the program.

/** By the name of their package of @fontsource. */
export const familyNames = {
  "source-serif-4": "Source Serif 4",
  "source-sans-3": "Source Sans 3",
} as const;

export type Family = keyof typeof familyNames;
