// Floor 3. Coarser maps, for views from so far away that nothing lost by them would be seen.
import type { LabelMap } from "../labelmap.ts";

type Size = Pick<LabelMap, "width" | "height">;

/** Returns the middle pixel of every `factor` × `factor` block. */
export function shrinkMap(map: LabelMap, factor: number): LabelMap {
  if (factor <= 1) return map;
  return {
    ...shrunkSize(map, factor),
    exactShare: map.exactShare,
    labels: shrinkLabels(map.labels, map, factor),
  };
}

/** The same for labels of the size of `map`. */
export function shrinkLabels(labels: Uint16Array, map: Size, factor: number): Uint16Array {
  if (factor <= 1) return labels;
  const { width, height } = shrunkSize(map, factor);
  const small = new Uint16Array(width * height);
  copy(labels, map.width, factor, small, width, height);
  return small;
}

/** The same for a mask of the size of `map`. */
export function shrinkMask(mask: Uint8Array, map: Size, factor: number): Uint8Array {
  if (factor <= 1) return mask;
  const { width, height } = shrunkSize(map, factor);
  const small = new Uint8Array(width * height);
  copy(mask, map.width, factor, small, width, height);
  return small;
}

function shrunkSize(map: Size, factor: number): Size {
  return {
    width: Math.max(1, Math.floor(map.width / factor)),
    height: Math.max(1, Math.floor(map.height / factor)),
  };
}

function copy(
  from: Uint8Array | Uint16Array,
  stride: number,
  factor: number,
  to: Uint8Array | Uint16Array,
  width: number,
  height: number,
): void {
  const half = factor >> 1;
  for (let y = 0; y < height; y += 1) {
    const row = (y * factor + half) * stride + half;
    for (let x = 0; x < width; x += 1) to[y * width + x] = from[row + x * factor] as number;
  }
}
