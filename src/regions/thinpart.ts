// Floor 3, a check on step 2. Parts of the label map so thin that screens show them as a mixture with what is beside them.
import type { LabelMap } from "./labelmap.ts";

/** Returns how many pixels with a label lie in a stretch of it, along the row or the column, of at most `most` pixels. */
export function countThin({ width, height, labels }: LabelMap, most: number): number {
  const thin = new Uint8Array(labels.length);
  const look = (first: number, stride: number, count: number): void => {
    let start = 0;
    for (let index = 1; index <= count; index += 1) {
      if (index < count && labels[first + index * stride] === labels[first + start * stride]) continue;
      if (index - start <= most) for (; start < index; start += 1) thin[first + start * stride] = 1;
      start = index;
    }
  };
  for (let y = 0; y < height; y += 1) look(y * width, 1, width);
  for (let x = 0; x < width; x += 1) look(x, width, height);
  return thin.reduce((sum, each, at) => sum + (each === 1 && labels[at] !== 0 ? 1 : 0), 0);
}
