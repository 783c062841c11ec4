// Floor 3. Views from far away on coarser maps, in which no thin outline is lost: how deep a paint is there is measured on
// the fine map.
import type { LabelMap } from "../labelmap.ts";
import { PixelList } from "../pixellist.ts";
import { reclaimFromCentres, thin } from "./dilate.ts";
import type { ThinParts } from "./distanceview.ts";
import { shrinkMap } from "./shrink.ts";

/**
 * Returns a coarser map, one pixel for `factor` × `factor` of `fine`, and what is thin on it. `depth` is that of `fine`, as
 * measureDepth gives it.
 */
export function coarsen(
  fine: LabelMap,
  depth: Float32Array,
  factor: number,
): { readonly map: LabelMap; readonly thinParts: ThinParts } {
  const map = shrinkMap(fine, factor);
  const deepest = findDeepest(fine, depth, map, factor);
  return { map, thinParts: { findThinner: (thickness) => findThinner(map, deepest, factor, thickness) } };
}

/** For each coarse pixel the deepest place of its label within it: squared distance in fine pixels. */
function findDeepest(fine: LabelMap, depth: Float32Array, map: LabelMap, factor: number): Float32Array {
  const deepest = new Float32Array(map.labels.length);
  for (let y = 0; y < map.height * factor; y += 1) {
    const row = Math.floor(y / factor) * map.width;
    for (let x = 0; x < map.width; x += 1) {
      const label = map.labels[row + x];
      const from = y * fine.width + x * factor;
      for (let at = from; at < from + factor; at += 1)
        if (fine.labels[at] === label && (depth[at] as number) > (deepest[row + x] as number))
          deepest[row + x] = depth[at] as number;
    }
  }
  return deepest;
}

function findThinner(map: LabelMap, deepest: Float32Array, factor: number, thickness: number): Int32Array {
  // The middle of a stripe is half its thickness, and up to half a fine pixel, from the first pixel outside.
  const apart = (factor * thickness) / 2 + 0.25;
  const state = new Uint8Array(map.labels.length);
  const thinner = new PixelList();
  for (let at = 0; at < state.length; at += 1) {
    if (map.labels[at] === 0 || (deepest[at] as number) >= apart * apart) continue;
    state[at] = thin;
    thinner.add(at);
  }
  // To the right-angled corner of a stripe, and from the place itself to the middle of its coarse pixel.
  reclaimFromCentres(map, state, thinner.pixels, (Math.SQRT2 * thickness) / 2 + 0.35);
  return thinner.pixels.filter((at) => state[at] === thin);
}
