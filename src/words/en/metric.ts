// Floor 7. English: the measures of an edge.

export const metric = {
  /** Heads of lists of figures. */
  "metric.contrastRatio": "Contrast ratio",
  "metric.deltaE00": "Colour difference, ΔE00",
  "metric.hueOnly": "Only hue differs",
  "metric.tincture": "Rule of tincture",
  /** Under “Rule of tincture”. */
  "metric.tinctureMeans": "no metal on metal, no colour on colour",
  "metric.yes": "yes",
  "metric.no": "no",
  /** The rule of tincture in heraldry: no metal on metal (white, yellow), no colour on colour. */
  "metric.bothMetals": "metal on metal",
  "metric.bothColours": "colour on colour",
  "metric.noObjection": "not against it",
} as const;
