// Floor 7. English: what a change does, and the verdict with its price.

export const verdict = {
  "verdict.change": "{before} becomes {after}.",
  "verdict.changeInPart": "{before} becomes {after}, only in {part}.",
  "verdict.selectedPart": "the selected part ({selector})",
} as const;
