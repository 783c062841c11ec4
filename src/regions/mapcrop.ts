// Floor 3. The part of a map around a mask, for views in which only what is near the mask matters.
import type { LabelMap } from "./labelmap.ts";

/** A rectangle in pixels; right and bottom are exclusive. */
export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** Returns the rectangle around the set pixels of `mask`, `margin` pixels wider on each side, within the map; an empty one where none is set. */
export function findBox(mask: Uint8Array, { width, height }: LabelMap, margin: number): Box {
  let [left, top, right, bottom] = [width, height, 0, 0];
  for (let y = 0; y < height; y += 1) {
    const row = mask.subarray(y * width, (y + 1) * width);
    const first = row.indexOf(1);
    if (first < 0) continue;
    top = Math.min(top, y);
    bottom = y + 1;
    left = Math.min(left, first);
    right = Math.max(right, row.lastIndexOf(1) + 1);
  }
  if (bottom === 0) return { left: 0, top: 0, right: 0, bottom: 0 };
  return {
    left: Math.max(0, left - margin),
    top: Math.max(0, top - margin),
    right: Math.min(width, right + margin),
    bottom: Math.min(height, bottom + margin),
  };
}

/** Returns the part of a map inside `box`. */
export function cropMap(map: LabelMap, box: Box): LabelMap {
  const width = box.right - box.left;
  const height = box.bottom - box.top;
  const labels = new Uint16Array(width * height);
  for (let y = 0; y < height; y += 1) {
    const from = (box.top + y) * map.width + box.left;
    labels.set(map.labels.subarray(from, from + width), y * width);
  }
  return { width, height, exactShare: map.exactShare, labels };
}

/** The same for a mask of a map's size. */
export function cropMask(mask: Uint8Array, map: LabelMap, box: Box): Uint8Array {
  const width = box.right - box.left;
  const cropped = new Uint8Array(width * (box.bottom - box.top));
  for (let y = box.top; y < box.bottom; y += 1) {
    const from = y * map.width + box.left;
    cropped.set(mask.subarray(from, from + width), (y - box.top) * width);
  }
  return cropped;
}
