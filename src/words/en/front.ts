// Floor 7. English: the front page.

export const front = {
  /** The tag is a link to a letter or a form. */
  "front.nominate": "A flag that should have a study? <name>Name it, and say why</name>",
  "front.empty":
    "Nothing is published here yet. The first study will stand on this page; until then, <method>the method</method> tells how it will be measured.",
  /** A heading. */
  "front.earlier": "Earlier studies",
  /** `list` becomes links to flags of one colour. */
  "front.edgeless": "Without an edge to measure: <list></list>.",
  /** Studies that a list leaves out: the end of such a list, or a way to the rest. */
  "front.more": "{count, plural, one {# more} other {# more}}",
} as const;
