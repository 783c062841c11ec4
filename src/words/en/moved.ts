// Floor 7. English: pages at addresses whose own page has gone; a heading, and what stands below it.

export const moved = {
  "moved.moved": "This page has moved",
  "moved.movedTo": "It is now at another address.",
  "moved.near": "This page is no longer here",
  /** A link follows. */
  "moved.nearTo": "What is nearest to it:",
  "moved.edge": "This edge is no longer in the study",
  /** A link follows. */
  "moved.edgeTo": "Colours of the drawing have changed since. The edge whose colours are nearest:",
  "moved.withdrawn": "This was withdrawn",
  "moved.withdrawnHow": "What stood at this address is no longer published.",
  "moved.absent": "This study is not shown at present",
  "moved.absentHow": "It stands in the gallery's folder, and will be back at this address.",
  "moved.claimed": "This study has another address",
  /** Links to some studies follow. */
  "moved.claimedBy": "More than one study says that it stood here:",
  "moved.claimedByHidden":
    "More than one study says that it stood here, and at least one of them is not shown at present. Those that are:",
  "moved.lastGood":
    "This study could not be built from what its folder holds now. This is the page that it last had.",
} as const;
