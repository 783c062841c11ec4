// Floor 7. English: the edges that a change makes worse, as clauses in a list.

/** `pair`, `was`, `now`: the two colours of an edge, such as “white / red”. `grade`: weak, soft, clear or strong, in words. */
export const price = {
  "price.merged": "{was} becomes one colour",
  "price.parted": "{now} parts, {grade} at {contrast}",
  /** `from` and `to`: a `price.contrast` or a `price.graded`. */
  "price.falls": "{was} falls from {from} to {to}",
  "price.fallsRenamed": "{was}, now {now}, falls from {from} to {to}",
  "price.contrast": "contrast {contrast} ({grade})",
  "price.graded": "{contrast} ({grade})",
  /** The end of the list: edges that are not named. */
  "price.more": "{count, plural, one {# more} other {# more}}",
} as const;
