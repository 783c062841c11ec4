// Floor 2. The caps on a contributed drawing. Over 798 drawings of two open flag collections the largest reached
// 242 KB, 1,012 elements and depth 8, so each cap leaves at least twice that.

export const limit = {
  fileBytes: 512 * 1024,
  /** A drawing as it is published; less, so that the note of a redesign leaves it one that can be read. */
  writtenBytes: 500 * 1024,
  elements: 20_000,
  depth: 64,
  attributes: 200,
  entityReferences: 256,
  entityLength: 255,
  /** Elements in one another, with those that references put there. */
  chain: 256,
  instances: 200_000,
  /** Points of all paths, with their repetitions. */
  vertices: 1_000_000,
  /** Masks, clip paths, patterns and translucent groups, with their repetitions: each is drawn apart. */
  layers: 1_000,
  /** Dashes of all strokes, by the longest that the coordinates allow. */
  dashes: 200_000,
  /** Tests of one selector on one element, by the most that its combinators allow. */
  selectorTests: 4_000_000,
  viewBoxSideMin: 1e-3,
  viewBoxSideMax: 1e6,
  aspect: 20,
  /** A dash pattern may repeat this often along the diagonal of the drawing. */
  dashesPerDiagonal: 5_000,
  cssBytes: 128 * 1024,
  /** Characters of any value that is not a path, a list of points, a style or free text. */
  valueLength: 4096,
  paints: 1_000,
} as const;
