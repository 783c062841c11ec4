// Floor 7. English: what stands where there is no number.

export const number = {
  "number.noEdges": "no edges",
  /** From one number to another; as `move` in picture.alt too. */
  "number.move": "{was} to {is}",
  /** In the place of a number. */
  "number.noEmblem": "no emblem found",
} as const;
