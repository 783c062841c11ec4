// Floor 7. English: the form that finds studies.

export const finder = {
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
