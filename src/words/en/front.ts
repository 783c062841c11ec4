// Floor 7. English: the front page, the entry of a study in a list, and the form that finds one.

export const front = {
  "front.empty":
    "Nothing is published here yet. The first study will stand on this page; until then, <method>the method</method> tells how it will be measured.",
  /** Headings. */
  "front.earlier": "Earlier studies",
  "front.all": "All studies",
  /** `list` becomes links to flags of one colour. */
  "front.edgeless": "Without an edge to measure: <list></list>.",
  /** Studies that a list leaves out: the end of such a list, or a way to the rest. */
  "front.more": "{count, plural, one {# more} other {# more}}",

  /** Before a percentage. */
  "entry.clarity": "Clarity",
  /** A link, in a list of decisions. */
  "entry.makers": "Sheet for makers",
  "entry.putForward": "Put forward by {authors}",

  /** Labels and buttons of the form. */
  "finder.words": "Words",
  "finder.order": "Order",
  "finder.more": "More filters",
  /** A choice that narrows nothing, whatever it is of. */
  "finder.any": "Any",
  "finder.find": "Find",
  "finder.all": "Show all",
  "finder.none": "No study fits all of this. Take away a word or a choice, or show all.",
  /** `list` becomes links to pages. */
  "finder.pages": "Pages that have these words: <list></list>",
  "finder.status": "Status",
  "finder.verdict": "Verdict",
  "finder.tag": "Tag",
  "finder.author": "Author",
  /** Orders of the list, to choose from. */
  "finder.mostGained": "Most gained",
  "finder.newest": "Newest",
  "finder.mostLost": "Most lost",
  "finder.leastClear": "Least clear redesign",
  "finder.title": "Title",
  /** What is said of a narrowed list. `found` is a number that changes as one types. */
  "finder.found": "{found} of {count, plural, one {# study} other {# studies}}",
  "finder.foundListed": "{found} of the {listed} listed here",
} as const;
