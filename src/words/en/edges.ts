// Floor 7. English: what became of each edge of a study.

export const edges = {
  "edges.none": "One colour: no edges to measure.",
  "edges.where": "Where the edges are",
  "edges.map": "The edge map",
  "edges.ruler": "The contrast ruler",
  "edges.moreOnDistance": "More on <distance>distance</distance>",
  "edges.moreOnDistanceAndCloth": "More on <distance>distance</distance> and <cloth>cloth</cloth>",
  "edges.fimbriations": "Lines that keep two colours apart",
  "edges.fimbriationMoves":
    "From the contrast of the pair itself to that of the weaker of the two edges that stand instead. <more>More on fimbriation</more>",
  /** Heading. */
  "edges.every": "Every edge, before and after",
  /** Heading. */
  "edges.betterAndWorse": "What got better and worse",
  "edges.paged": "The {paged} longest of these {all} edges have pages of their own.",
} as const;
