// Floor 7. English: what stands around the pages that a gallery writes itself.

export const ownPage = {
  /** The list of those that nothing else leads to. */
  "ownPage.pages": "Pages",
  "ownPage.pagesOf": "Pages of {gallery}.",
  /** Names the ways, read to screen readers. */
  "ownPage.beside": "Pages beside this one",
  "ownPage.next": "Next: <a>{title}</a>",
} as const;
