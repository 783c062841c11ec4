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
  /** Shapes smaller than 1/256 of a unit are not drawn by the measuring renderer. */
  viewBoxSideMin: 0.1,
  viewBoxSideMax: 1e6,
  aspect: 20,
  /**
   * How far from the viewBox a shape may reach, in longer sides of it: at 1440 pixels that is 72,000, and beyond 100,000
   * the measuring renderer leaves out shapes with slanted borders. The most of 798 real drawings is 24.
   */
  reach: 50,
  /**
   * How far what is moved to and fro may be on the way, in longer sides: single floats, in which browsers reckon, then have
   * a twentieth of a pixel. The most of real drawings is 56.
   */
  detour: 1_000,
  /**
   * By how much transforms may shrink or stretch a shape that shows, in thousandths of the longer side for a unit: browsers
   * draw nothing where a unit comes to 4e-6 pixels. Real drawings have 3.5e-5 to 333.
   */
  scaleMin: 2e-5,
  scaleMax: 1e6,
  /**
   * How many times as far transforms, and boxes that something is fitted to, may stretch in one direction as in another. The
   * most of real drawings is 5, and 6,668 of gradients, which are often fitted to thin shapes.
   */
  uneven: 100,
  unevenGradient: 20_000,
  /** How often the longer side of the flag may be as long as a tile of a pattern. No real drawing has a pattern. */
  tiles: 500,
  /** The least side of a viewport or a viewBox inside: below 1/256 the measuring renderer draws nothing of what is in it. */
  viewportSideMin: 0.01,
  /** How many times as long as one radius of an arc the other may be: from some 100 on it is not drawn. Real drawings have 6. */
  radii: 50,
  /** How many times as long as a radius the way may be that an arc goes. Real drawings have 241. */
  chord: 10_000,
  /** How far from the centre of a radial gradient its focus may be, in radii. */
  focus: 0.9,
  /** How many times as far as what it is of the region of a filter may reach. */
  filterRegion: 20,
  /** By how many units the steps of a filter may blur and move, and how far its region may reach in them. */
  filterNumber: 1e5,
  filterSteps: 20,
  /** Filters and blends that are drawn once, with their repetitions. */
  effects: 200,
  /** Degrees of a rotation: single floats then have a five-hundredth of a degree. */
  angle: 36_000,
  /** A dash pattern may repeat this often along the diagonal of the drawing. */
  dashesPerDiagonal: 5_000,
  cssBytes: 128 * 1024,
  /** Characters of any value that is not a path, a list of points, a style or free text. */
  valueLength: 4096,
  paints: 1_000,
} as const;
