// Floor 7. English: how long an edge is.

export const length = {
  /** The length of an edge, a number as text. */
  "length.heights": "{length} flag heights",
  "length.offFocus": "{length} flag heights, none on the outline of what has to be seen",
  "length.onFocus": "{length} flag heights, all on the outline of what has to be seen",
  /** `part` is a number of flag heights. */
  "length.partOnFocus": "{length} flag heights, {part} on the outline of what has to be seen",
  "length.wholeOutline": "whole outline",
  /** A part of the outline of what has to be seen, in percent. */
  "length.ofOutline": "{share} of outline",
  /** `length` is length.heights, `own` a number of flag heights, `part` one of the two before. */
  "length.partly": "{length}, {own} of it {part}",
  "length.wholly": "{length}, {part}",
} as const;
