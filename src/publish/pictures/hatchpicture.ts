// Floor 9. A label map → a picture in black on white, each paint in the lines that stand for its colour.
import type { Hex } from "../../colour/colour.ts";
import { linearOf } from "../../colour/colourtext.ts";
import { measureDifference } from "../../colour/difference.ts";
import { type Hatching, type HatchLine, hatchingOf } from "../../colour/hatching.ts";
import { colourLimits } from "../../measure/limit.ts";
import type { Picture } from "../../regions/eyeblur.ts";
import type { LabelMap } from "../../regions/labelmap.ts";
import { joinLabels } from "../../regions/view/distanceview.ts";
import { type Label, type List, labelOf, type PaintIndex, paintOf } from "../../svg/paintnumber.ts";

/** Pixels from one line to the next, and how thick a line or a dot is. */
export const hatchGrid = { step: 14, thick: 2, dot: 3 } as const;
/** Half the thickness in pixels of the line between two paints. */
const reach = { hatched: 1, outline: 2 };
/** Of a colour that has no lines, 0 to 255. */
const tone = 190;

/** Pixels across and down after which every hatching repeats: a multiple of an upright line's period and of a slanted one's. */
const tile = 10 * hatchGrid.step;

/** Where a pixel stands across lines of each direction. */
const acrossOf: Readonly<Record<HatchLine, (x: number, y: number) => number>> = {
  vertical: (x) => x,
  horizontal: (_x, y) => y,
  down: (x, y) => x - y,
  up: (x, y) => x + y,
};

/**
 * The picture of `map`, in which the paints have the colours `hexes`; with `isOutline` without any lines within
 * a paint. Lines part what two colours to the eye show, and run along the border; what is transparent stays so.
 */
export function hatchPicture(map: LabelMap, hexes: List<PaintIndex, Hex>, isOutline = false): Picture {
  const tiles = layTiles(hexes);
  const { width, height, labels } = joinLabels(map, findShades(hexes).map(labelOf));
  const near = isOutline ? reach.outline : reach.hatched;
  const rgba = new Uint8Array(4 * width * height);
  for (let y = 0, at = 0; y < height; y += 1) {
    const isInner = y >= near && y < height - near;
    for (let x = 0; x < width; x += 1, at += 4) {
      const own = at / 4;
      const shade = labels[own] ?? 0;
      if (shade === 0) continue;
      const isBorder =
        !isInner ||
        x < near ||
        x >= width - near ||
        labels[own + near] !== shade ||
        labels[own - near] !== shade ||
        labels[own + near * width] !== shade ||
        labels[own - near * width] !== shade;
      const ground = isOutline
        ? 255
        : (tiles[paintOf(shade as Label)]?.[(y % tile) * tile + (x % tile)] ?? 0);
      const grey = isBorder ? 0 : ground;
      rgba[at] = grey;
      rgba[at + 1] = grey;
      rgba[at + 2] = grey;
      rgba[at + 3] = 255;
    }
  }
  return { width, height, rgba };
}

/** For each paint the first that is the same to the eye. */
function findShades(hexes: List<PaintIndex, Hex>): List<PaintIndex, PaintIndex> {
  const all = hexes.map(linearOf);
  return all.map((one) =>
    all.findIndex((other) => one === other || measureDifference(one, other) < colourLimits.same),
  );
}

/** For each colour the greys of its hatching, row by row; colours of one hatching share them. */
function layTiles(hexes: List<PaintIndex, Hex>): List<PaintIndex, Uint8Array> {
  const laid = new Map<Hatching, Uint8Array>();
  return hexes.map((hex) => {
    const hatching = hatchingOf(hex);
    const greys =
      laid.get(hatching) ??
      Uint8Array.from({ length: tile * tile }, (_, at) => greyAt(hatching, at % tile, Math.floor(at / tile)));
    laid.set(hatching, greys);
    return greys;
  });
}

function greyAt({ lines, isDotted, isToned }: Hatching, x: number, y: number): number {
  if (isToned) return tone;
  const { step, thick, dot } = hatchGrid;
  if (isDotted) {
    // Dots of every second row stand between those of the row above.
    const shift = Math.floor(y / step) % 2 === 0 ? 0 : step / 2;
    return y % step < dot && (x + shift) % step < dot ? 0 : 255;
  }
  const isInked = lines.some((line) => {
    // Lines aslant are as far apart and as thick as upright ones.
    const slant = line === "down" || line === "up" ? Math.SQRT2 : 1;
    const period = Math.round(step * slant);
    return ((acrossOf[line](x, y) % period) + period) % period < thick * slant;
  });
  return isInked ? 0 : 255;
}
