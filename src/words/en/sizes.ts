// Floor 7. English: both flags at sizes that stand for distances.

export const sizes = {
  /** Head of a caption. */
  "sizes.title": "At arm’s length",
  "sizes.caption":
    "Seen from 60 cm, each is as large as the flag from the distance under it, on a screen or on paper with 96 pixels to the inch.",
  /** A list such as “20 flag heights, 80 flag heights”. */
  "sizes.says": "Both flags as small as they look from a distance, at arm’s length: {distances}.",
  /** For those who do not see it. */
  "sizes.alt": "{label}, as large as from {distance, plural, one {# flag height} other {# flag heights}}",
} as const;
