// Which pairs of typical flag shades read clearly from afar.
// Source: common practice, no source. The shades are ours.

type Shade = readonly [name: string, hex: `#${string}`];

// biome-ignore format: one pair a line
export const tradePairs: readonly (readonly [first: Shade, second: Shade, reads: "clear" | "not clear"])[] = [
  [["red", "#c8202f"], ["black", "#000000"], "not clear"],
  [["bright red", "#ee1c25"], ["black", "#000000"], "not clear"],
  [["red", "#c8202f"], ["green", "#0b7a3b"], "not clear"],
  [["red", "#c8202f"], ["dark green", "#0a5c36"], "not clear"],
  [["white", "#ffffff"], ["yellow", "#fcd20f"], "not clear"],
  [["white", "#ffffff"], ["light blue", "#6cb4e4"], "not clear"],
  [["yellow", "#fcd20f"], ["sky blue", "#0aa6d6"], "not clear"],
  [["yellow", "#fcd20f"], ["light blue", "#6cb4e4"], "not clear"],
  [["deep orange", "#f05a1a"], ["green", "#0b7a3b"], "not clear"],
  [["purple", "#6a2c8c"], ["red", "#c8202f"], "not clear"],
  [["light orange", "#ff8c1a"], ["mid green", "#1c8c2c"], "not clear"],
  [["black", "#000000"], ["yellow", "#fcd20f"], "clear"],
  [["red", "#c8202f"], ["yellow", "#fcd20f"], "clear"],
  [["white", "#ffffff"], ["deep orange", "#f05a1a"], "clear"],
  [["yellow", "#fcd20f"], ["dark blue", "#12235c"], "clear"],
  [["white", "#ffffff"], ["dark blue", "#12235c"], "clear"],
  [["white", "#ffffff"], ["green", "#0b7a3b"], "clear"],
  [["yellow", "#fcd20f"], ["green", "#0b7a3b"], "clear"],
  [["yellow", "#fcd20f"], ["dark green", "#0a5c36"], "clear"],
  [["purple", "#6a2c8c"], ["white", "#ffffff"], "clear"],
  [["light orange", "#ff8c1a"], ["black", "#000000"], "clear"],
  [["deep orange", "#f05a1a"], ["black", "#000000"], "clear"],
  [["yellow", "#fcd20f"], ["mid green", "#1c8c2c"], "clear"],
  [["black", "#000000"], ["white", "#ffffff"], "clear"],
  [["red", "#c8202f"], ["white", "#ffffff"], "clear"],
];
