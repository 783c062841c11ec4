// Floor 7. English: both flags of a study, and what swaps them.

export const pair = {
  /** A button: shows the two flags by turns in one place. */
  "pair.swap": "Swap in place",
  /** A button. */
  "pair.both": "Show both",
  /** Followed by pair.orKey where there is a keyboard. */
  "pair.pressFlag": "Press a flag",
  /** Goes on from pair.pressFlag; the button “Swap in place” follows. */
  "pair.orKey": "or an arrow key, or",
  /** The button “Swap in place” follows. */
  "pair.pressKey": "Press an arrow key, or",
  /** Read to screen readers. */
  "pair.bothShown": "Both flags shown",
  /** Read to screen readers; `name` is “Original”, “Redesign” or “Proposal 2”, or what a flag is called. */
  "pair.shownAlone": "{name} shown alone",
  /** Under one flag made of both, on paper. */
  "pair.split": "Half original, half redesign",
} as const;
