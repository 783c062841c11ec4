// Floor 8. The pictures of a study's steps and what goes with them: their names, in the order in which they are offered.

/** Where they are, in the folder of a study whose author offers them. */
export const stillsFolder = "stills/";

/** What goes with the steps of a study. Figures are there where it has them. */
export const lessonFiles = {
  swap: "swap.webp",
  thumbnail: "thumbnail.png",
  original: "original.png",
  redesign: "redesign.png",
  map: "edge-map.svg",
  ruler: "ruler.svg",
  matrix: "matrix.svg",
  script: "script.md",
} as const;

/** The name of a step's still: `03-the-weakest-edge.png`. */
export function nameStill(index: number, anchor: string): string {
  return `${String(index + 1).padStart(2, "0")}-${anchor}.png`;
}
