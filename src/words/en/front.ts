// Floor 7. English: the front page.

export const front = {
  /** The tag is a link to a letter or a form. */
  "front.nominate": "A flag that should have a study? <name>Name it, and say why</name>",
} as const;
