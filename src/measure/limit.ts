// Floor 4. Where our own judgement draws a line: each of these numbers stands here and nowhere else, and the method page
// prints them. The steps of contrast, 30, 45 and 60, are published ones and stand in colour/contrast.ts.

/** Of two colours, in ΔE00. */
export const colourLimits = {
  /** Under it two colours are one to the eye. */
  same: 5,
  /** Under it two colours are easily taken for each other. */
  confusable: 10,
  /** From it on a pair of low contrast, whose greys are easily taken for each other, counts as told apart by hue. */
  hue: 20,
  /**
   * ΔE*ab under which a colour is no change: official flags of one nation differ by as much.
   *
   * Source: M. Melgosa, L. Gómez-Robledo, Óptica Pura y Aplicada 55(2), 2022, who propose it as tolerance (abstract read).
   */
  noChange: 10,
} as const;

/** Of an edge, and of what an edge counts. Points of contrast; shares 0 to 1. */
export const edgeLimits = {
  /** By which contrast has to move for an outcome. */
  step: 3,
  /** Share of all edge length under which an edge is listed but decides nothing. */
  deciding: 0.01,
  /** Beyond clear that a kept hue has in hand. */
  inHand: 5,
  /** Part of a charge's outline that may merge: from it on the charge is no longer to be made out. */
  merged: 1 / 3,
} as const;

/** Of a flag as a whole, in points of clarity or strength and percent of clarity. */
export const flagLimits = {
  /** The least move that makes a verdict, and the one that outweighs a price. */
  move: 1,
  largeMove: 5,
  /** What a single change must bring, by how much colours to change first may differ, and how many there are at most. */
  gain: 5,
  firstWithin: 3,
  mostFirst: 3,
  /** From which a flag as a whole is clear. */
  clear: 90,
} as const;

/** Shares of the flag's area, 0 to 1: over which a paint counts as a colour of the flag, and up to which it is a detail. */
export const areaLimits = { counts: 0.004, detail: 0.03 } as const;
