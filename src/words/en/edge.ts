// Floor 7. English: what an edge is called.

export const edge = {
  /** A part of the flag, as its author calls it, on a colour: “the leaf on dark green”. */
  "edge.on": "{part} on {field}",
} as const;
