// Floor 3. Views from far away on a coarser map: thickness is that of the finer map, so that no thin outline is lost on the way.
import type { LabelMap } from "./label.ts";
import { PixelList } from "./pixels.ts";
import { reclaimFromCentres, thin } from "./reclaim.ts";
import { shrinkMap } from "./shrink.ts";

/**
 * Says which pixels of a coarser map belong to parts thinner than any thickness of several coarse pixels. `map` is the
 * coarser one.
 */
export class CoarseThickness {
  readonly map: LabelMap;
  private readonly factor: number;
  /** For each coarse pixel the deepest place of its label within its block: squared distance in fine pixels. */
  private readonly deepest: Float32Array;

  /** `depth` as measureDepth gives it for `fine`; blocks are `factor` × `factor` fine pixels. */
  constructor(fine: LabelMap, depth: Float32Array, factor: number) {
    this.factor = factor;
    this.map = shrinkMap(fine, factor);
    this.deepest = findDeepest(fine, depth, this.map, factor);
  }

  /** Returns the pixels that are not within reach of a place where a disc of that diameter (coarse pixels) fits. */
  findThinner(thickness: number): Int32Array {
    // The middle of a stripe is half its thickness, and up to half a fine pixel, from the first pixel outside.
    const apart = (this.factor * thickness) / 2 + 0.25;
    const state = new Uint8Array(this.map.labels.length);
    const thinner = new PixelList();
    for (let at = 0; at < state.length; at += 1) {
      if (this.map.labels[at] === 0 || (this.deepest[at] as number) >= apart * apart) continue;
      state[at] = thin;
      thinner.add(at);
    }
    // To the right-angled corner of a stripe, and from the place itself to the middle of its block.
    reclaimFromCentres(this.map, state, thinner.pixels, (Math.SQRT2 * thickness) / 2 + 0.35);
    return thinner.pixels.filter((at) => state[at] === thin);
  }
}

function findDeepest(
  fine: LabelMap,
  depth: Float32Array,
  { width, height, labels }: LabelMap,
  factor: number,
): Float32Array {
  const deepest = new Float32Array(labels.length);
  for (let y = 0; y < height * factor; y += 1) {
    const row = Math.floor(y / factor) * width;
    for (let x = 0; x < width * factor; x += 1) {
      const at = row + Math.floor(x / factor);
      const from = y * fine.width + x;
      if (fine.labels[from] === labels[at] && (depth[from] as number) > (deepest[at] as number))
        deepest[at] = depth[from] as number;
    }
  }
  return deepest;
}
