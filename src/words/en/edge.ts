// Floor 7. English: what an edge is called.

export const edge = {
  /** Two colours that meet: “white / light blue”. */
  "edge.names": "{one} / {other}",
  /** A part of the flag, as its author calls it, on a colour: “the leaf on dark green”. */
  "edge.on": "{part} on {field}",
} as const;
