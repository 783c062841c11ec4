// Pairs with the contrast that others print for them.

/**
 * Luminance contrast: two reflectances and the contrast, all in percent.
 * Source: the worked examples at luminancecontrast.net.au, “49 %” and “54 %” (that page cuts decimals off), worked out
 * to four decimals from the formula of AS 1428.1:2009 Appendix B; full contrast by definition of the formula.
 */
export const luminanceContrastRows: readonly (readonly [number, number, number])[] = [
  [62, 20, 49.0654],
  [27, 3, 54.5455],
  [100, 0, 100],
  [50, 50, 0],
  // The yellow and red that Real Decreto 441/1981 fixes for the flag of Spain, Y 56.7 and 9.5.
  [56.7, 9.5, 64.693],
];

/**
 * Contrast ratio of two sRGB colours to four decimals, with what W3C prints where it prints something.
 * Source: WCAG 2.2 and its Understanding pages 1.4.3 and 1.4.11 for the pairs and the printed figures; the decimals
 * worked out from the definition. W3C prints 5.6 for the fifth row: it cut the decimals off.
 */
export const contrastRatioRows: readonly (readonly [
  `#${string}`,
  `#${string}`,
  ratio: number,
  printed: number | null,
])[] = [
  ["#949494", "#ffffff", 3.0335, 3],
  ["#fff000", "#ffffff", 1.1854, 1.2],
  ["#9d9d9d", "#ffffff", 2.712, 2.7],
  ["#6e747b", "#ffffff", 4.7221, 4.7],
  ["#e5e5e5", "#6221ea", 5.6994, null],
  ["#777777", "#ffffff", 4.4781, null],
  ["#767676", "#ffffff", 4.5422, null],
  ["#959595", "#ffffff", 2.9953, null],
  ["#000000", "#ffffff", 21, 21],
  ["#ff0000", "#ffffff", 3.9985, null],
  ["#0000ff", "#ffffff", 8.5925, null],
  ["#00ff00", "#ffffff", 1.3722, null],
  ["#ffff00", "#ffffff", 1.0738, null],
];

/**
 * Pairs of graphical objects that W3C calls passing or failing at 3:1.
 * Source: Understanding WCAG 2.2, 1.4.11 Non-text Contrast.
 */
export const graphicalObjectRows: readonly (readonly [`#${string}`, `#${string}`, "passes" | "fails"])[] = [
  ["#4189b9", "#4b933a", "fails"],
  ["#ffff00", "#4189b9", "passes"],
  ["#008000", "#4189b9", "fails"],
];
