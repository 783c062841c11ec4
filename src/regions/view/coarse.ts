// Floor 3. Views from far away on coarser maps, in which no thin outline is lost: how deep a paint is there is measured on
// the fine map.
import type { LabelMap } from "../labelmap.ts";
import { PixelList } from "../pixellist.ts";
import { giveBack, takeBytes } from "../scratch.ts";
import { keepThin, reclaimFromCentres, thin } from "./dilate.ts";
import type { ThinParts } from "./distanceview.ts";
import { shrinkMap } from "./shrink.ts";

/**
 * Returns a coarser map, one pixel for `factor` × `factor` of `fine`, and what is thin on it. `depth` is that of `fine`, as
 * measureDepth gives it as far as is asked for.
 */
export function coarsen(
  fine: LabelMap,
  depth: Float32Array,
  factor: number,
): { readonly map: LabelMap; readonly thinParts: ThinParts } {
  const map = shrinkMap(fine, factor);
  return {
    map,
    thinParts: { findThinner: (thickness) => findThinner({ fine, depth, map, factor }, thickness) },
  };
}

/** A coarse map with the fine one that it comes from. */
interface Coarse {
  readonly fine: LabelMap;
  readonly depth: Float32Array;
  readonly map: LabelMap;
  readonly factor: number;
}

function findThinner(coarse: Coarse, thickness: number): Int32Array {
  const { map, factor } = coarse;
  // The middle of a stripe is half its thickness, and up to half a fine pixel, from the first pixel outside.
  const apart = (factor * thickness) / 2 + 0.25;
  const state = takeBytes(map.labels.length);
  const thinner = new PixelList();
  for (let y = 0; y < map.height; y += 1)
    for (let x = 0; x < map.width; x += 1) {
      const at = y * map.width + x;
      if (map.labels[at] === 0 || isDeep(coarse, x, y, apart)) continue;
      state[at] = thin;
      thinner.add(at);
    }
  // To the right-angled corner of a stripe, and from the place itself to the middle of its coarse pixel.
  reclaimFromCentres(map, state, thinner.pixels, (Math.SQRT2 * thickness) / 2 + 0.35);
  const left = keepThin(thinner.pixels, state);
  giveBack(state, thinner.pixels);
  return left;
}

/**
 * Whether some fine pixel of a coarse one, of its label, lies `apart` or further from other labels. From pixel to pixel of one
 * label that distance changes by no more than they are apart: mostly the middle one, whose label the coarse one has, tells.
 */
function isDeep({ fine, depth, factor }: Coarse, x: number, y: number, apart: number): boolean {
  const first = y * factor * fine.width + x * factor;
  const half = factor >> 1;
  const middle = first + half * fine.width + half;
  const there = depth[middle] as number;
  if (there >= apart * apart) return true;
  if (there < Math.max(0, apart - Math.SQRT2 * half - 0.01) ** 2) return false;
  for (let row = first; row < first + factor * fine.width; row += fine.width)
    for (let at = row; at < row + factor; at += 1)
      if (fine.labels[at] === fine.labels[middle] && (depth[at] as number) >= apart * apart) return true;
  return false;
}
