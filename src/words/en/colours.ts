// Floor 7. English: the colours of a study.

export const colours = {
  "colours.caption":
    "Colours of the original, largest first. Share of the full drawing; reflectance of the cloth.",
  /** Head of a column. */
  "colours.colour": "Colour",
  /** Head of a column: the part of the flag that a colour covers. */
  "colours.share": "Share",
  /** Head of a column: how much light the cloth gives back. */
  "colours.reflectance": "Reflectance",
  /** Head of a column: metal, colour or fur in heraldry. */
  "colours.tincture": "Tincture",
  /** Between the name of a colour and the one that takes its place. */
  "colours.becomes": "becomes",
  "colours.vanishes": "not told apart from {distance, plural, one {# flag height} other {# flag heights}}",
  /** The two tags are small pieces of the colours at both ends. */
  "colours.uneven": "uneven, from <first></first> to <last></last>",
  /** In heraldry: gold and silver. */
  "colours.metal": "metal",
  /** In heraldry: what is no metal. */
  "colours.ofTincture": "colour",
} as const;
