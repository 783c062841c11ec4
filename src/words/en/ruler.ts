// Floor 7. English: the contrast ruler.

export const ruler = {
  "ruler.caption":
    "The contrast of two colours that meet: a ring for the original, a dot for the redesign; thick for a long edge.",
  /** Behind ruler.caption. */
  "ruler.fallsNote": "Hollow where contrast falls.",
  /** The words are outcome.gained and outcome.lost. */
  "ruler.crossesNote": "Gained: clear now and not before; lost: the other way round.",
  "ruler.mergedNote": "A cross where two colours become one.",
  "ruler.outlineNote": "The outline is that of what has to be seen, which counts twice.",
  "ruler.nearNote": "Near the line: on other cloth the grade would be another.",
  "ruler.hueNote":
    "By hue alone: the two differ in hue and hardly in lightness, so they fade in dusk and in grey.",
  "ruler.ladderNote":
    "Beside it, how much light the cloth of each colour gives back: two at one height are hard to tell apart.",
  /** Head of a column. */
  "ruler.edge": "Edge",
  /** Head of a column, read to screen readers. */
  "ruler.contrast": "Contrast, original to redesign",
  /** Head of a column. */
  "ruler.outcome": "Outcome",
  /** Head of a column on paper, to be filled in by hand. */
  "ruler.guess": "Your guess",
  /** Head of a caption. */
  "ruler.title": "Contrast ruler",
  "ruler.same": "{count, plural, one {# edge that stays as it was} other {# edges that stay as they were}}",
  "ruler.moreMoved": "{count, plural, one {# more edge that changes} other {# more edges that change}}",
  /** The two before it. */
  "ruler.moreMovedAndSame": "{moved}, and {same}",
  /** Read to screen readers, for each edge. */
  "ruler.row": "{edge}, {extent}: contrast {contrast}, {grades}",
} as const;
