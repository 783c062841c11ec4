// Floor 7. English: the distance strip.

export const strip = {
  /** Over two flags as they look from there. */
  "strip.from":
    "From {distance, plural, one {<number>#</number> flag height} other {<number>#</number> flag heights}}",
  /** A line break may follow. */
  "strip.focus": "what has to be seen:",
  /** Before a number. */
  "strip.clarity": "clarity",
  "strip.caption":
    "The original first, then the redesign, as a sharp eye has them from there, enlarged to one size: no wind, no haze, no glare.",
  /** Head of a caption. */
  "strip.title": "Distance strip",
  /** Read to screen readers; `label` is “Original” or “Redesign”. */
  "strip.label": "{label} from {distance, plural, one {# flag height} other {# flag heights}}",
  /** Read to screen readers. */
  "strip.blur": "Blurred by {blur} percent of its height.",
  /** `focus` is strip.focusClarity or strip.focusLost. */
  "strip.blurAndFocus": "Blurred by {blur} percent of its height; {focus}.",
  "strip.focusClarity": "what has to be seen has a clarity of {clarity}",
  "strip.focusLost": "what has to be seen is too small to be made out",
  "strip.lost": "enlarged: at its real size too small to make out",
  /** A list such as “20 flag heights, 80 flag heights”. */
  "strip.describe": "Both flags as they look from afar, softer and softer: {distances}.",
  "strip.onlyThere": "Clarity is told only where what has to be seen can still be made out.",
  "strip.level":
    "As far as it can be made out, what has to be seen has a clarity of {before} in the original and {after} in the redesign.",
  "strip.rises":
    "It rises from further away where fine parts with weak edges can no longer be seen, and count no more.",
} as const;
