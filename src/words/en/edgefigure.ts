// Floor 7. English: one edge, before and after, as a figure.

export const edgefigure = {
  /** Head of a caption. */
  "edgefigure.edge": "Edge",
  /** Behind the names of two colours. */
  "edgefigure.becomes": ", which becomes {is}",
  /** Behind the names of two colours. */
  "edgefigure.outcome": ": {outcome}, over {extent}.",
  /** Read to screen readers. */
  "edgefigure.sideBySide": "Side by side; contrast {contrast}.",
  /** Where a figure cannot be shown, in a feed. */
  "edgefigure.says": "{edge}: contrast {before} before, {after} after; {outcome}.",
  "edgefigure.saysAfter": "{edge}: contrast {after} after; {outcome}.",
} as const;
