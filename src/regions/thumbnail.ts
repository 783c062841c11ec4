// Floor 3. A label map → small pictures of the flag in any colours, without rendering it again, and many of them in one.
import type { LinearRgb } from "../colour/colour.ts";
import { encodeByte } from "../colour/srgb.ts";
import { type Label, type List, type PaintIndex, paintOf } from "../svg/paintnumber.ts";
import type { LabelMap } from "./labelmap.ts";
import type { Raster } from "./raster.ts";

/** How much of each small pixel every label covers, found once; each painting is a sum. */
export class Thumbnail {
  readonly width: number;
  readonly height: number;
  /** Per small pixel: where its part of `labels` and `counts` begins. */
  private readonly starts: Int32Array;
  private readonly labels: Label[] = [];
  private readonly counts: number[] = [];

  /** Small pixels are boxes of `map`; `width` and `height` are at least 1 and no more than those of the map. */
  constructor(map: LabelMap, width: number, height: number) {
    this.width = width;
    this.height = height;
    this.starts = new Int32Array(width * height + 1);
    const counts = new Map<Label, number>();
    for (let y = 0; y < height; y += 1) {
      const [top, bottom] = bounds(y, height, map.height);
      for (let x = 0; x < width; x += 1) {
        const [left, right] = bounds(x, width, map.width);
        counts.clear();
        for (let row = top; row < bottom; row += 1)
          for (let at = row * map.width + left; at < row * map.width + right; at += 1) {
            const label = map.labels[at] as Label;
            counts.set(label, (counts.get(label) ?? 0) + 1);
          }
        this.labels.push(...counts.keys());
        this.counts.push(...counts.values());
        this.starts[y * width + x + 1] = this.labels.length;
      }
    }
  }

  /** Paints the flag: `colours` in linear light, none for what is transparent. */
  paint(colours: List<PaintIndex, LinearRgb | undefined>): Raster {
    const rgba = new Uint8Array(4 * this.width * this.height);
    const whole = colours.map((colour) =>
      colour === undefined
        ? [0, 0, 0, 0]
        : [encodeByte(colour.linearR), encodeByte(colour.linearG), encodeByte(colour.linearB), 255],
    );
    for (let at = 0; at < this.width * this.height; at += 1) {
      // Most pixels show one label alone.
      if ((this.starts[at + 1] as number) - (this.starts[at] as number) === 1) {
        rgba.set(whole[paintOf(this.labels[this.starts[at] as number] as Label)] ?? [], 4 * at);
        continue;
      }
      let [r, g, b, painted, all] = [0, 0, 0, 0, 0];
      for (let index = this.starts[at] as number; index < (this.starts[at + 1] as number); index += 1) {
        const [colour, count] = [colours[paintOf(this.labels[index] as Label)], this.counts[index] as number];
        all += count;
        if (colour === undefined) continue;
        painted += count;
        r += count * colour.linearR;
        g += count * colour.linearG;
        b += count * colour.linearB;
      }
      if (painted === 0) continue;
      rgba[4 * at] = encodeByte(r / painted);
      rgba[4 * at + 1] = encodeByte(g / painted);
      rgba[4 * at + 2] = encodeByte(b / painted);
      rgba[4 * at + 3] = Math.round((255 * painted) / all);
    }
    return { width: this.width, height: this.height, rgba };
  }
}

/**
 * Copies `tile` into `all` with a frame of `frame` pixels, in which the outermost pixels of the tile are repeated. The upper
 * left corner of the frame comes to `left`, `top`; all of it has to lie within `all`.
 */
export function layFramed(
  all: Raster,
  { width, height, rgba }: Raster,
  left: number,
  top: number,
  frame: number,
): void {
  const clamp = (at: number, size: number) => Math.min(size - 1, Math.max(0, at - frame));
  for (let y = 0; y < height + 2 * frame; y += 1)
    for (let x = 0; x < width + 2 * frame; x += 1) {
      const from = 4 * (clamp(y, height) * width + clamp(x, width));
      all.rgba.set(rgba.subarray(from, from + 4), 4 * ((top + y) * all.width + left + x));
    }
}

function bounds(at: number, count: number, size: number): readonly [number, number] {
  const from = Math.floor((at * size) / count);
  return [from, Math.max(from + 1, Math.floor(((at + 1) * size) / count))];
}
