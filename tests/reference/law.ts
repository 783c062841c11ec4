// Colours that a law fixes, and what comes of them. All were read second-hand: through other pages, not in the laws' print.

/**
 * L* and the luminance factor Y in percent of the red and the yellow of the flag of Spain, and their contrast.
 * Source, second-hand: Real Decreto 441/1981 (CIELAB hue, chroma, lightness and CIE-1931 x, y, Y of both colours under
 * illuminant C), as told by christusrex.org (Flags of the World, es_color) and altiusdirectory.com.
 */
export const spanishLaw = {
  red: { lightness: 37, chroma: 70, hueDegrees: 35, x: 0.614, y: 0.32, luminancePercent: 9.5 },
  yellow: { lightness: 80, chroma: 95, hueDegrees: 85, x: 0.488, y: 0.469, luminancePercent: 56.7 },
} as const;

/** CIELAB under D65 of the flag of Thailand. Source, second-hand: Royal Gazette 134, special part 245, 30 September 2017. */
export const thaiLaw = {
  red: { l: 36.4, a: 55.47, b: 25.42 },
  white: { l: 96.61, a: -0.15, b: -1.48 },
  blue: { l: 18.63, a: 7.89, b: -19.45 },
} as const;

/** The colours for screens that are published with them. Source, second-hand: programmerthailand.com, grappik.com. */
export const thaiScreen = { red: "#a51931", white: "#f4f5f8", blue: "#2d2a4a" } as const;

/**
 * Luminance factors in percent of two colours of a flag, and the contrast that they have.
 * Source, second-hand: Spain, Real Decreto 441/1981; India, IS 1:1968, khadi; Thailand, as above, worked out from the
 * lightness. The contrasts are worked out by hand from the formula of AS 1428.1:2009 Appendix B.
 */
export const lawContrastRows: readonly (readonly [
  law: string,
  darker: number,
  lighter: number,
  contrast: number,
])[] = [
  // 125 · 47.2 / 91.2
  ["Spain, red and yellow", 9.5, 56.7, 64.7],
  // 125 · 51.1 / 119.1
  ["India, saffron and white", 21.5, 72.6, 53.6],
  // 125 · 88.8 / 119.2
  ["Thailand, blue and white", 2.7, 91.5, 93.1],
];
