// Floor 9. One flag of both halves, as a picture: the original on one side of a division, the redesign on the other.
import type { Picture } from "../../regions/eyeblur.ts";
import type { LinkPicture } from "../../views/linkview.ts";
import { type Split, showsOriginal } from "../../views/study/splitline.ts";
import { drawHairline, ink, type Placed } from "./paper.ts";

/** Joins two pictures of one size. Throws RangeError where their sizes differ. */
export function joinHalves(
  [original, redesign]: readonly [Picture, Picture],
  { split, direction }: Pick<LinkPicture, "split" | "direction">,
): Picture {
  const { width, height } = original;
  if (width !== redesign.width || height !== redesign.height)
    throw new RangeError("flags of two sizes have no halves");
  const rgba = Uint8Array.from(redesign.rgba);
  for (let y = 0; y < height; y += 1) {
    for (let x = 0; x < width; x += 1) {
      if (!showsOriginal(split, (x + 0.5) / width, (y + 0.5) / height, direction)) continue;
      const at = 4 * (y * width + x);
      for (let channel = at; channel < at + 4; channel += 1) rgba[channel] = original.rgba[channel] ?? 0;
    }
  }
  return { width, height, rgba };
}

/** Where each division ends, as shares of width and height. */
const ends: Readonly<Record<Split, readonly (readonly [number, number])[]>> = {
  "per pale": [
    [0.5, 0],
    [0.5, 1],
  ],
  "per bend": [
    [0, 0],
    [1, 1],
  ],
  "per bend sinister": [
    [1, 0],
    [0, 1],
  ],
  "per fess": [
    [0, 0.5],
    [1, 0.5],
  ],
};

/** SVG text of a hairline round the flag and, outside it, a stroke in line with each end of the division. */
export function drawDivision(flag: Placed, split: Split): string {
  const { width, height } = flag.picture;
  const strokes = ends[split].map(([x, y]) => {
    const [across, down] = [(x - 0.5) * width, (y - 0.5) * height];
    const length = Math.hypot(across, down);
    const [stepX, stepY] = [across / length, down / length];
    const at = (step: number) =>
      `${round(flag.x + x * width + step * stepX)} ${round(flag.y + y * height + step * stepY)}`;
    return `M${at(4)}L${at(14)}`;
  });
  return `${drawHairline(flag)}<path d="${strokes.join("")}" fill="none" stroke="${ink.text}" stroke-width="2"/>`;
}

function round(pixels: number): number {
  return Math.round(100 * pixels) / 100;
}
