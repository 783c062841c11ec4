// Floor 7. English: which flags a redesign could be taken for.

export const likeness = {
  /** Within a sentence, and under a flag, where the first letter is made a capital. */
  "likeness.figure": "mean colour difference ΔE00 {difference}",
  "likeness.figureMirrored": "mean colour difference ΔE00 {difference}, seen from behind",
  "likeness.figureTurned": "mean colour difference ΔE00 {difference}, upside down",
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
