// Floor 3. Views from far away on coarser maps, in which no thin outline is lost: where a block shows two labels they
// stay apart, and how deep a paint is there is measured once, for every coarser map.
import { measureDepth } from "./depth.ts";
import type { LabelMap } from "./label.ts";
import { PixelList } from "./pixels.ts";
import { reclaimFromCentres, thin } from "./reclaim.ts";
import { shrinkMap } from "./shrink.ts";
import type { ThinParts } from "./view.ts";

/** A label that no paint has. */
const wall = 0xffff;

/** A map in square blocks, and how deep each block lies in its paint. */
export class CoarseMap {
  private readonly fine: LabelMap;
  private readonly factor: number;
  private readonly walled: LabelMap;
  private readonly depth: Float32Array;

  /** Blocks are `factor` × `factor` pixels of `fine`. */
  constructor(fine: LabelMap, factor: number) {
    this.fine = fine;
    this.factor = factor;
    this.walled = buildWalls(fine, shrinkMap(fine, factor), factor);
    this.depth = measureDepth(this.walled);
  }

  /** What is thin on a map that is coarser still: `factor` pixels of the fine map to one of its own. */
  thicknessAt(factor: number): ThinParts & { readonly map: LabelMap } {
    const map = shrinkMap(this.fine, factor);
    const blocks = factor / this.factor;
    const deepest = findDeepest(this.walled, this.depth, map, blocks);
    return { map, findThinner: (thickness) => findThinner(map, deepest, blocks, thickness) };
  }
}

/** Puts a wall into every block that shows more than one label. */
function buildWalls(fine: LabelMap, coarse: LabelMap, factor: number): LabelMap {
  const labels = coarse.labels.slice();
  for (let y = 0; y < coarse.height * factor; y += 1) {
    const row = Math.floor(y / factor) * coarse.width;
    for (let x = 0; x < coarse.width; x += 1) {
      const label = coarse.labels[row + x];
      const from = y * fine.width + x * factor;
      for (let at = from; at < from + factor; at += 1) if (fine.labels[at] !== label) labels[row + x] = wall;
    }
  }
  return { ...coarse, labels };
}

/** For each pixel of `map` the deepest block of its label within it: squared distance in blocks. */
function findDeepest(walled: LabelMap, depth: Float32Array, map: LabelMap, blocks: number): Float32Array {
  const deepest = new Float32Array(map.labels.length);
  for (let y = 0; y < map.height * blocks; y += 1) {
    const row = Math.floor(y / blocks) * map.width;
    for (let x = 0; x < map.width; x += 1) {
      const label = map.labels[row + x];
      const from = y * walled.width + x * blocks;
      for (let at = from; at < from + blocks; at += 1)
        if (walled.labels[at] === label && (depth[at] as number) > (deepest[row + x] as number))
          deepest[row + x] = depth[at] as number;
    }
  }
  return deepest;
}

function findThinner(map: LabelMap, deepest: Float32Array, blocks: number, thickness: number): Int32Array {
  // The middle of a stripe is half its thickness from its edge, and up to half a block further from the next block.
  const apart = (blocks * thickness) / 2 + 0.25;
  const state = new Uint8Array(map.labels.length);
  const thinner = new PixelList();
  for (let at = 0; at < state.length; at += 1) {
    if (map.labels[at] === 0 || (deepest[at] as number) >= apart * apart) continue;
    state[at] = thin;
    thinner.add(at);
  }
  // To the right-angled corner of a stripe, and from the place itself to the middle of its pixel.
  reclaimFromCentres(map, state, thinner.pixels, (Math.SQRT2 * thickness) / 2 + 0.35);
  return thinner.pixels.filter((at) => state[at] === thin);
}
