// Floor 3. The part of a map inside a box, for views in which only what is near the focus matters.
import type { LabelMap } from "./labelmap.ts";
import { takeWords } from "./scratch.ts";

/** A rectangle in pixels; right and bottom are exclusive. */
export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** Returns a box `margin` pixels wider on each side, within the map. */
export function widenBox(
  box: Box,
  { width, height }: Pick<LabelMap, "width" | "height">,
  margin: number,
): Box {
  return {
    left: Math.max(0, box.left - margin),
    top: Math.max(0, box.top - margin),
    right: Math.min(width, box.right + margin),
    bottom: Math.min(height, box.bottom + margin),
  };
}

/** Returns the part of a map inside `box`. */
export function cropMap(map: LabelMap, box: Box): LabelMap {
  const width = box.right - box.left;
  const height = box.bottom - box.top;
  const labels = takeWords(width * height);
  for (let y = 0; y < height; y += 1) {
    const from = (box.top + y) * map.width + box.left;
    labels.set(map.labels.subarray(from, from + width), y * width);
  }
  return { width, height, exactShare: map.exactShare, labels };
}
