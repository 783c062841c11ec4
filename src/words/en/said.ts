// Floor 7. English: what others said of a study.

export const said = {
  /** Heading. */
  "said.heading": "What others say",
  /** What an answer is about: an edge, or another change. */
  "said.about": "on <about>{name}</about>",
  /** A link; the host is that of an address. */
  "said.more": "More at {host}",
} as const;
