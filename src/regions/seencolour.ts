// Floor 3, step 6. The colour that really shows where a paint is translucent, a gradient or a pattern.
import type { LinearRgb } from "../colour/colour.ts";
import { linearOfByte } from "../colour/srgb.ts";
import type { Label } from "../svg/paintnumber.ts";
import type { LabelMap } from "./labelmap.ts";
import type { Raster } from "./raster.ts";

/** Mean, lightest and darkest colour of one label, in linear light. Null where no pixel lies inside it. */
export interface SeenPaint {
  readonly mean: LinearRgb;
  readonly lightest: LinearRgb;
  readonly darkest: LinearRgb;
}

/** Share of the pixels at either end that are passed over, so that a few odd pixels do not decide. */
const trimmed = 0.02;

/**
 * Looks at the true rendering, at least 1 px inside `label` (anywhere in it where it is thinner than that).
 * `picture` has the size of `map`. Lightest and darkest are the means of the outermost 2 % by luminance.
 */
export function measureSeen(picture: Raster, map: LabelMap, label: Label): SeenPaint | null {
  let inside = pixelsOf(map, label, true);
  if (inside.length === 0) inside = pixelsOf(map, label, false);
  return summariseSeen(picture, inside);
}

/** The same for pixels by number; null where there are none. */
export function summariseSeen(picture: Raster, pixels: readonly number[]): SeenPaint | null {
  if (pixels.length === 0) return null;
  const colours = pixels.map((at) => linearAt(picture, at)).sort((a, b) => luminanceOf(a) - luminanceOf(b));
  const end = Math.max(1, Math.round(colours.length * trimmed));
  return {
    mean: meanOf(colours),
    darkest: meanOf(colours.slice(0, end)),
    lightest: meanOf(colours.slice(-end)),
  };
}

function pixelsOf(map: LabelMap, label: Label, inner: boolean): number[] {
  const { width, height, labels } = map;
  const found: number[] = [];
  for (let y = 0; y < height; y += 1) {
    for (let x = 0; x < width; x += 1) {
      const at = y * width + x;
      if (labels[at] === label && (!inner || isInner(map, x, y, label))) found.push(at);
    }
  }
  return found;
}

/** Whether a pixel and the four beside it lie in the map and have `label`. */
export function isInner({ width, height, labels }: LabelMap, x: number, y: number, label: Label): boolean {
  if (x < 1 || y < 1 || x >= width - 1 || y >= height - 1) return false;
  const at = y * width + x;
  return (
    labels[at] === label &&
    labels[at - 1] === label &&
    labels[at + 1] === label &&
    labels[at - width] === label &&
    labels[at + width] === label
  );
}

function linearAt({ rgba }: Raster, at: number): LinearRgb {
  return {
    linearR: linearOfByte[rgba[4 * at] as number] as number,
    linearG: linearOfByte[rgba[4 * at + 1] as number] as number,
    linearB: linearOfByte[rgba[4 * at + 2] as number] as number,
  };
}

function luminanceOf({ linearR, linearG, linearB }: LinearRgb): number {
  return 0.2126 * linearR + 0.7152 * linearG + 0.0722 * linearB;
}

function meanOf(colours: readonly LinearRgb[]): LinearRgb {
  let linearR = 0;
  let linearG = 0;
  let linearB = 0;
  for (const colour of colours) {
    linearR += colour.linearR;
    linearG += colour.linearG;
    linearB += colour.linearB;
  }
  const count = colours.length;
  return { linearR: linearR / count, linearG: linearG / count, linearB: linearB / count };
}
