// Floor 7. English: both flags as four kinds of sight have them.

export const seen = {
  /** Head of a caption. */
  "seen.title": "Seen otherwise",
  "seen.caption":
    "The original first, then the redesign: approximations of what readers with a colour-vision deficiency, and grey print, make of both flags. They are no test of anyone’s sight. Greys differ by a colour difference, ΔE00: the more, the easier to tell apart.",
  /** Two numbers follow. */
  "seen.greys": "nearest two greys differ by",
  /** Two numbers follow. */
  "seen.clarity": "clarity of the whole flag",
  /** One kind of sight, where the figure cannot be shown; `measure` is one of the two before. */
  "seen.figure": "{heading}: {measure} {before} → {after}.",
  /** Two names of colours. */
  "seen.looks": "{name} looks {seen}",
  /** A list of names of colours. */
  "seen.kept": "{names} {count, plural, one {keeps its name} other {keep their names}}",
  /** Read to screen readers; `name` is “Original” or “Redesign”. */
  "seen.inGrey": "{name} in grey",
  "seen.byProtan": "{name} as seen by protan eyes",
  "seen.byDeutan": "{name} as seen by deutan eyes",
  "seen.byTritan": "{name} as seen by tritan eyes",
} as const;
