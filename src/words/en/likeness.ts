// Floor 7. English: which flags a redesign could be taken for.

export const likeness = {
  /** Under a flag; within a sentence its first letter is small. */
  "likeness.figure": "Mean colour difference ΔE00 {difference}",
  "likeness.figureMirrored": "Mean colour difference ΔE00 {difference}, seen from behind",
  "likeness.figureTurned": "Mean colour difference ΔE00 {difference}, upside down",
  "likeness.flags": "{count, plural, one {# other flag or redesign} other {# other flags and redesigns}}",
  /** Under the heading “Could it be mistaken?”. `nearest` is what a flag is called. */
  "likeness.hardly":
    "Hardly. Of {flags}, {nearest} comes nearest: {figure}; under {limit} one flag is easily taken for another.",
  "likeness.could":
    "It could. Of {flags}, {names} {count, plural, one {is} other {are}} near: under {limit} one flag is easily taken for another, and the nearest has {figure}.",
  "likeness.rivals": "Other proposals for this flag are not counted.",
  /** Under a flag. */
  "likeness.own": "This redesign",
} as const;
