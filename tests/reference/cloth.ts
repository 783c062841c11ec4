// What is published of the range of cloth and paint, of its spread, and of the smallest thing that an eye reads.

/**
 * Reflectance in percent of the blackest and of the whitest: building materials on average, then the paints of one maker.
 * Source, second-hand: rtp.net.au (colour/lrv, quoting T. Sawaya) and rowmark.com (guide to the ADA); a paint maker's
 * published light reflectance values of its black and its white.
 */
export const publishedRanges = {
  materials: { black: 5, white: 85 },
  paint: { black: 4, white: 92 },
} as const;

/**
 * ΔE*ab between official flags of one country, the tolerance that is proposed for it, and how far flags of the shops are
 * from the law.
 * Source: M. Melgosa, L. Gómez-Robledo, “A proposal on the colors of the flags of the current autonomous communities and
 * cities of Spain”, Óptica Pura y Aplicada 55(2), 2022; the abstract was read.
 */
export const clothSpread = { amongOfficialFlags: 6.2, proposedTolerance: 10, shopAgainstLaw: 20 } as const;

/**
 * A letter that 20/20 sight just reads fills five arcminutes, its details one; at 20 feet (6.096 m) it is 8.87 mm high.
 * Source: Snellen's optotypes; ISO 8596, in which the gap of a ring is a fifth of it and the acuity is one over the gap in
 * arcminutes. Read second-hand (the height: opticiancertification.com). No published rule for flags was found.
 */
export const optotype = {
  arcminutes: 5,
  detailArcminutes: 1,
  distanceMetres: 6.096,
  heightMillimetres: 8.87,
} as const;
