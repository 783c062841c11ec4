// Floor 3. How far regions reach: the upright boxes around them.
import type { List } from "../../svg/paintnumber.ts";
import type { RegionIndex, RegionMap } from "../component.ts";
import type { Box } from "../mapcrop.ts";

/** Returns the box around each region, in their order; right and bottom are exclusive. Linear in runs. */
export function findBoxes({ runs, regions, regionOf }: RegionMap): List<RegionIndex, Box> {
  const { width, height, rowStart, start } = runs;
  const boxes = regions.map(() => ({ left: width, top: height, right: 0, bottom: 0 }));
  for (let y = 0; y < height; y += 1) {
    const end = rowStart[y + 1] as number;
    for (let run = rowStart[y] as number; run < end; run += 1) {
      const box = boxes[regionOf[run] as RegionIndex];
      if (box === undefined) continue;
      box.left = Math.min(box.left, (start[run] as number) - y * width);
      box.right = Math.max(box.right, (start[run + 1] as number) - y * width);
      box.top = Math.min(box.top, y);
      box.bottom = y + 1;
    }
  }
  return boxes;
}

/** Returns the box around several. */
export function joinBoxes(boxes: readonly Box[]): Box {
  return boxes.reduce((one, other) => ({
    left: Math.min(one.left, other.left),
    top: Math.min(one.top, other.top),
    right: Math.max(one.right, other.right),
    bottom: Math.max(one.bottom, other.bottom),
  }));
}

export const widthOf = ({ left, right }: Box): number => right - left;
export const heightOf = ({ top, bottom }: Box): number => bottom - top;
export const areaOf = (box: Box): number => widthOf(box) * heightOf(box);
