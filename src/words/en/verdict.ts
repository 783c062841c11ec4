// Floor 7. English: what a change does, and the verdict with its price.

/** `before`, `after`: names of colours, such as “dark red”. The first letter of each sentence is made a capital. */
export const verdict = {
  "verdict.change": "{before} becomes {after}.",
  "verdict.changeInPart": "{before} becomes {after}, only in {part}.",
  "verdict.selectedPart": "the selected part ({selector})",
  /** The verdicts: headings, and words in lists. */
  "verdict.clearer": "Clearer",
  "verdict.clearerAtPrice": "Clearer, at a price",
  "verdict.mixed": "Mixed",
  "verdict.lessClear": "Less clear",
  "verdict.noGain": "No gain",
  /** Two clauses of a verdict; each is one of those below, or two of them joined so. */
  "verdict.semicolon": "{clause}; {more}",
  "verdict.colon": "{clause}: {more}",
  "verdict.and": "{clause}, and {more}",
  "verdict.but": "{clause}, but {more}",
  "verdict.stays": "clarity stays at {now}",
  "verdict.rises": "clarity rises from {before} to {now}",
  "verdict.falls": "clarity falls from {before} to {now}",
  "verdict.stronger": "edges grow stronger beyond clear",
  "verdict.weaker": "edges grow weaker beyond clear",
  /** `more`: a list of edges, of `price.…`. */
  "verdict.thePrice": "{clause}. The price: {more}",
  "verdict.gains": "{count, plural, one {one edge gains} other {# edges gain}}",
  "verdict.onlyShort": "only edges under {part} of all edge length become harder to see",
  "verdict.noneHarder": "no edge becomes harder to see",
  /** `moved`: clauses, as before. It: clarity. */
  "verdict.tooLittle": "{moved}, too little to move it",
  "verdict.noStep": "no edge gets clearer or less clear by {points, plural, one {# point} other {# points}}",
  "verdict.noneMoves": "no edge becomes easier or harder to see",
  "verdict.noneToTheEye": "nothing changes to the eye but edges under {part} of all edge length",
} as const;
