// Floor 7. English: kinds of sight.

export const sight = {
  /** A kind of sight, as a heading. */
  "sight.protan": "Protan",
  "sight.deutan": "Deutan",
  "sight.tritan": "Tritan",
  "sight.grey": "Grey",
  /** Behind “Protan”. */
  "sight.protanMeans": "without the cones for long waves",
  /** Behind “Deutan”. */
  "sight.deutanMeans": "without the cones for middle waves",
  /** Behind “Tritan”. */
  "sight.tritanMeans": "without the cones for short waves",
  /** Behind “Grey”. */
  "sight.greyMeans": "as a black-and-white copier prints it",
} as const;
