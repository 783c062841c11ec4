// Floor 7. English: the marks of a flag.

export const mark = {
  /** The mark of a flag, 0 to 100: its name everywhere, before a percentage and in the heads of tables too. */
  "mark.clarity": "Clarity",
  /** How far two colours are apart, 0 to 100 %. */
  "mark.contrast": "Contrast",
  /** Of an edge. */
  "mark.length": "Length",
  /** The grade would be another on other cloth. */
  "mark.near": "near the line",
  "mark.nearNow": "near the line now",
  "mark.nearBefore": "near the line before",
  /** The two colours differ in hue and hardly in lightness. */
  "mark.hue": "by hue alone",
  "mark.hueNow": "by hue alone now",
  "mark.hueBefore": "by hue alone before",
  /** Under “Clarity”. */
  "mark.clarityMeans": "100% where every edge is clear",
  /** The mark of the emblem or whatever else has to be seen. */
  "mark.focusClarity": "Clarity of what has to be seen",
  /** Under “Clarity of what has to be seen”. */
  "mark.focusMeans": "the edges of the emblem alone",
  "mark.weakest": "Weakest edge",
  /** Under “Weakest edge”. */
  "mark.weakestMeans": "contrast of the two colours",
  /** The longest edge that falls, where a flag is clearer at a price. */
  "mark.price": "The price",
  /** Under the contrast of “The price”, in the place of two colours: that of “Weakest edge”. */
  "mark.sameEdge": "the same edge",
} as const;
