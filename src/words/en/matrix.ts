// Floor 7. English: the matrix of all single changes.

export const matrix = {
  /** Read to screen readers in the place of a dash. */
  "matrix.notTried": "not tried",
  /** Under the flag of the study’s own change. */
  "matrix.own": "this study",
  /** A link to what the author said of this change. */
  "matrix.note": "note {number}",
  /** Under a flag where two colours become one. */
  "matrix.merges": "merges",
  /** Under a flag where so much of a charge becomes one colour with its ground that it has no place. */
  "matrix.notRanked": "not ranked",
  /** Read to screen readers, behind a number. */
  "matrix.clearest": "clearest of the row",
  /** Head of a caption. */
  "matrix.title": "Every change of one colour",
  /** Head of a column: each colour in a lighter or darker shade. */
  "matrix.ownHue": "its own hue",
  /** Head of a column, where two have a colour of one name. */
  "matrix.studys": "the study’s {name}",
  "matrix.unranked": "not ranked: {share} of a charge’s outline merges",
  "matrix.moreColours":
    "{count, plural, one {# more of the flag’s colours} other {# more of the flag’s colours}}",
  "matrix.moreReplacements": "{count, plural, one {# more replacement} other {# more replacements}}",
  "matrix.reading": "A row changes one colour of the flag, a column says into which.",
  /** Where each row is a block of flags with their names. */
  "matrix.readingBlocks": "Each block changes one colour of the flag; over each number stands into which.",
  "matrix.clarity": "Under each flag its clarity.",
  "matrix.clarityToday": "Under each flag its clarity; the original has {today}.",
  "matrix.bold": "Bold: the clearest of its row, more than one where several are as clear.",
  /** The words are matrix.merges and matrix.notRanked. */
  "matrix.mergesNote": "“Merges”: two colours become one.",
  "matrix.greyNote": "“Not ranked”: a third of a charge’s outline or more would merge.",
  "matrix.dash": "A dash: not tried, or no change to be seen.",
  "matrix.partAlone": "The change of this study is of one part alone, and not among them.",
  /** matrix.moreColours, matrix.moreReplacements or both. */
  "matrix.left": "Not shown: {what}.",
} as const;
