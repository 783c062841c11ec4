// Floor 3, step 5. What each paint covers: pixels, and whether it reaches the border of the flag.
import { type List, listed, type PaintIndex } from "../svg/paintnumber.ts";
import { eachContact, type Runs } from "./runs.ts";

/** Figures by paint. `flagPixels` counts everything that is not transparent. */
export interface Areas {
  readonly pixels: List<PaintIndex, number>;
  readonly touchesBorder: List<PaintIndex, boolean>;
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
  const flagPixels = width * height - (pixels[0] as number);
  return { pixels: listed(pixels.slice(1)), touchesBorder: listed(touchesBorder.slice(1)), flagPixels };
}
