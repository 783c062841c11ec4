// Floor 7. English: what stands around the content of every page.

export const frame = {
  "frame.skip": "Skip to the content",
} as const;
