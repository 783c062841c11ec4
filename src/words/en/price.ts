// Floor 7. English: the edges that a change makes worse, as clauses in a list.

/**
 * `one`, `other`: the two colours of an edge in the original, `newOne` and `newOther` in the redesign, the one that changes first.
 * `grade`, `wasGrade`: weak, soft, clear or strong, in words. Edges that merge or part: `spoken.merged`, `spoken.parted`.
 */
export const price = {
  /** Both colours are called as before. */
  "price.falls":
    "{one} on {other} now has contrast {contrast} ({grade}), where it had {wasContrast} ({wasGrade})",
  "price.fallsRenamed":
    "{newOne} on {newOther} has contrast {contrast} ({grade}), where {one} on {other} had {wasContrast} ({wasGrade})",
  /** A contrast under a picture. */
  "price.graded": "{contrast} ({grade})",
  /** The end of the list: edges that are not named. */
  "price.more": "{count, plural, one {# more} other {# more}}",
} as const;
