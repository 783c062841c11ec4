// Floor 3, step 5. What each paint covers: pixels, and whether it reaches the border of the flag.
import { eachContact, type Runs } from "./runs.ts";

/** Figures by label (index 0 is transparent). `flagPixels` counts everything that is not transparent. */
export interface Areas {
  readonly pixels: readonly number[];
  readonly touchesBorder: readonly boolean[];
  readonly flagPixels: number;
}

/** Counts the pixels of the labels 0 to `labelCount`. The border is that of the picture and of transparent parts. */
export function measureAreas(runs: Runs, labelCount: number): Areas {
  const { width, height, rowStart, start, label, count } = runs;
  const pixels = new Array<number>(labelCount + 1).fill(0);
  const touchesBorder = new Array<boolean>(labelCount + 1).fill(false);
  for (let run = 0; run < count; run += 1) {
    const at = label[run] as number;
    pixels[at] = (pixels[at] as number) + (start[run + 1] as number) - (start[run] as number);
  }
  for (let y = 0; y < height; y += 1) {
    const first = rowStart[y] as number;
    const end = rowStart[y + 1] as number;
    for (let run = first; run < end; run += 1) {
      const here = label[run] as number;
      const isAtSide = run === first || run === end - 1 || y === 0 || y === height - 1;
      if (isAtSide || label[run - 1] === 0 || label[run + 1] === 0) touchesBorder[here] = true;
    }
    if (y > 0 && pixels[0] !== 0) {
      eachContact(runs, y, (above, below) => {
        if (label[above] === 0) touchesBorder[label[below] as number] = true;
        if (label[below] === 0) touchesBorder[label[above] as number] = true;
      });
    }
  }
  return { pixels, touchesBorder, flagPixels: width * height - (pixels[0] as number) };
}
