// Floor 3, step 5. What each paint covers: pixels, and whether it reaches the border of the flag.
import type { LabelMap } from "./label.ts";

/** Figures by label (index 0 is transparent). `flagPixels` counts everything that is not transparent. */
export interface Areas {
  readonly pixels: readonly number[];
  readonly touchesBorder: readonly boolean[];
  readonly flagPixels: number;
}

/** Counts the pixels of the labels 0 to `labelCount`. The border is that of the picture and of transparent parts. */
export function measureAreas(map: LabelMap, labelCount: number): Areas {
  const { width, height, labels } = map;
  const pixels = new Array<number>(labelCount + 1).fill(0);
  const touches = new Array<boolean>(labelCount + 1).fill(false);
  for (let y = 0; y < height; y += 1) {
    const row = y * width;
    let start = 0;
    for (let x = 1; x <= width; x += 1) {
      if (x < width && labels[row + x] === labels[row + start]) continue;
      const label = labels[row + start] as number;
      pixels[label] = (pixels[label] as number) + x - start;
      if (start === 0 || x === width || y === 0 || y === height - 1 || labels[row + start - 1] === 0 || labels[row + x] === 0) touches[label] = true;
      start = x;
    }
  }
  markTransparentBelow(map, touches);
  return { pixels, touchesBorder: touches, flagPixels: labels.length - (pixels[0] as number) };
}

function markTransparentBelow({ width, labels }: LabelMap, touches: boolean[]): void {
  for (let at = width; at < labels.length; at += 1) {
    const here = labels[at] as number;
    const above = labels[at - width] as number;
    if (here !== above && (here === 0 || above === 0)) touches[here === 0 ? above : here] = true;
  }
}
