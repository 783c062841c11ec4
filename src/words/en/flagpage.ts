// Floor 7. English: the page of a flag with several redesigns, or that readers named.

export const flagPage = {
  /** Numbers of two proposals. */
  "flagPage.two": "{flag}: {one} or {other}",
  "flagPage.pair": "{one} and {other}",
  "flagPage.namedShort": "Named by readers.",
  /** A heading. */
  "flagPage.named": "Named by readers",
  "flagPage.proposal": "Proposal {number}",
  /** Under the original. */
  "flagPage.weakest": "Weakest edge {contrast}",
  /** What leads: one, or several that are level. `numbers`: a list. */
  "flagPage.clearest":
    "{count, plural, one {Proposal {numbers} is} other {Proposals {numbers} are}} the clearest{priced, select, yes {, at a price} other {}}: clarity rises from {before} to {after}.",
  /** The same where each, two or more, is clearer at a price; `next`: the clarity of the second. */
  "flagPage.clearerOfTwo":
    "Both are clearer at a price; proposal {numbers} is the clearer: {before} to {after}, against {next}.",
  "flagPage.clearestOfPriced":
    "All shown here are clearer at a price; proposal {numbers} is the clearest: {before} to {after}, the next {next}.",
  "flagPage.noneClearer": "No proposal is clearer than the original: its clarity is {before}.",
  /** A way. */
  "flagPage.all": "All proposals",
  /** `list` becomes links: “1 and 2, 1 and 3”. */
  "flagPage.pairs": "Two side by side: <list></list>",
  /** A heading over what a redesign does to the edges. */
  "flagPage.edges": "What each makes better and worse",
  "flagPage.survey": "Its numbers in the survey",
  /** A button beside “Swap in place”. */
  "flagPage.showAll": "Show all",
  /** Read to screen readers, of what that button shows. */
  "flagPage.allShown": "All flags shown",
  /** Heads of the table. */
  "flagPage.head": "Proposal",
  "flagPage.verdict": "Verdict",
  "flagPage.share": "Share that changes",
} as const;
