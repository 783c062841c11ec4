// Floor 7. English: how long an edge is.

export const length = {
  /** `length` is a number, which `::.00` writes with two decimals. */
  "length.heights": "{length, number, ::.00} flag heights",
  /** Under a length: how much of it. */
  "length.offFocus": "none on the outline of what has to be seen",
  "length.onFocus": "all on the outline of what has to be seen",
  /** `part` is a number as `length` is. */
  "length.partOnFocus": "{part, number, ::.00} of it on the outline of what has to be seen",
  /** From where a flag is seen; by itself, too. */
  "length.distance": "{distance, plural, one {# flag height} other {# flag heights}}",
  "length.wholeOutline": "whole outline",
  /** A part of the outline of what has to be seen, in percent. */
  "length.ofOutline": "{share} of outline",
  /** `length` is length.heights as text, `own` a number of flag heights, `part` one of the two before. */
  "length.partly": "{length}, {own, number, ::.00} of it {part}",
  "length.wholly": "{length}, {part}",
} as const;
