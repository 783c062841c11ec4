// Floor 7. English: what stands where there is no number.

export const number = {
  "number.noEdges": "no edges",
} as const;
