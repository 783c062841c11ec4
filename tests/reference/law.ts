// Colours that a law fixes in CIELAB.

/**
 * L* and the luminance factor Y in percent of the red and the yellow of the flag of Spain, and their contrast.
 * Source: Real Decreto 441/1981 (CIELAB hue, chroma, lightness and CIE-1931 x, y, Y of both colours).
 */
export const spanishLaw = {
  red: { lightness: 37, luminancePercent: 9.5 },
  yellow: { lightness: 80, luminancePercent: 56.7 },
} as const;
