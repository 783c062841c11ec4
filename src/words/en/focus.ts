// Floor 7. English: what has to be seen, the emblem or charge of a flag, from where the flag is seen, and how far that lasts.

export const focus = {
  "focus.none":
    "No emblem found: nothing has to be seen before the rest, and no edge counts twice. A fact, not a fault.",
  /** A line to write follows. */
  "focus.notGuessed":
    "A charge runs into an area of its own colour. It was not guessed, so nothing counts twice. To name it, write into the study:",
  "focus.fullDrawing": "Measured on the full drawing, not from a distance.",
  "focus.fromAway":
    "Measured as seen from {away, plural, one {# flag height} other {# flag heights}}: a flag one metre high, {away, plural, one {# metre} other {# metres}} away. Parts thinner than {finest} of its height are given to what lies beside them. That is a model of resolution.",
  /** Heading of a figure. */
  "focus.afar": "What is left from afar",
  /** The figure read to screen readers. `lasting`: one of the sentences below. `steps`: `focus.step` or `focus.stepMove`, joined. */
  "focus.afarDescription": "{lasting} Clarity of what has to be seen: {steps}.",
  "focus.step": "from {distance}, {is}",
  "focus.stepMove": "from {distance}, {was} to {is}",
  /** `lasts`: `length.distance` or a `focus.lasts…`. */
  "focus.afarCaption":
    "It lasts to {lasts}, by its size alone: {left} of it has to be left, and its largest piece has to span {arcminutes, plural, one {# arcminute} other {# arcminutes}}, the size of a letter that 20/20 sight reads.",
  "focus.noEmblem": "no emblem found",
  "focus.lastsUnder": "{distance, plural, one {under # flag height} other {under # flag heights}}",
  "focus.lastsOrMore": "{distance, plural, one {# flag height or more} other {# flag heights or more}}",
  /** In place of a clarity. */
  "focus.nothingLeft": "nothing left",
  "focus.tooSmall":
    "{distance, plural, one {What has to be seen is too small to be made out from # flag height away, the nearest distance tried, whatever its colours.} other {What has to be seen is too small to be made out from # flag heights away, the nearest distance tried, whatever its colours.}}",
  "focus.largeEnough":
    "{distance, plural, one {What has to be seen is large enough to be made out from up to # flag height away, whatever its colours.} other {What has to be seen is large enough to be made out from up to # flag heights away, whatever its colours.}}",
  "focus.largeEnoughAlways":
    "{distance, plural, one {What has to be seen is large enough to be made out from # flag height away, the furthest distance tried.} other {What has to be seen is large enough to be made out from # flag heights away, the furthest distance tried.}}",
} as const;
