// Floor 3. A label map and its colours → a coarse grid of mean colours, every flag stretched to the same proportions.
import type { LinearRgb } from "../colour/colour.ts";
import { type Label, type List, type PaintIndex, paintOf, transparent } from "../svg/paintnumber.ts";
import type { LabelMap } from "./labelmap.ts";

/** Cells of the grid by which flags are compared: 3 to 2, the proportions most flags have or are near to. */
export const gridColumns = 24;
export const gridRows = 16;

/** Less of a cell than this share covered, and the flag does not reach there (our own judgement). */
const coveredFrom = 1 / 2;

/**
 * Returns `gridColumns` × `gridRows` cells, row by row from the upper hoist: the mean colour, in linear light, of the
 * painted pixels in each; null where less than half of the cell is painted. `colours` are those of the paints.
 *
 * Throws RangeError where a label has no colour.
 */
export function measureGrid(
  map: LabelMap,
  colours: List<PaintIndex, LinearRgb>,
): readonly (LinearRgb | null)[] {
  const cells: (LinearRgb | null)[] = [];
  for (let row = 0; row < gridRows; row += 1) {
    for (let column = 0; column < gridColumns; column += 1) {
      const [left, right] = stretch(column, gridColumns, map.width);
      const [top, bottom] = stretch(row, gridRows, map.height);
      cells.push(meanOf(map, colours, left, right, top, bottom));
    }
  }
  return cells;
}

/** Pixels from … to (without) of the cell at `at`: at least one, also where there are more cells than pixels. */
function stretch(at: number, cells: number, pixels: number): readonly [number, number] {
  const from = Math.min(pixels - 1, Math.round((at * pixels) / cells));
  return [from, Math.max(from + 1, Math.round(((at + 1) * pixels) / cells))];
}

function meanOf(
  { width, labels }: LabelMap,
  colours: List<PaintIndex, LinearRgb>,
  left: number,
  right: number,
  top: number,
  bottom: number,
): LinearRgb | null {
  const counts = new Map<Label, number>();
  for (let y = top; y < bottom; y += 1) {
    for (let x = left; x < right; x += 1) {
      const label = labels[y * width + x] as Label;
      counts.set(label, (counts.get(label) ?? 0) + 1);
    }
  }
  const empty = counts.get(transparent) ?? 0;
  const painted = (right - left) * (bottom - top) - empty;
  if (painted < coveredFrom * (painted + empty)) return null;
  let [linearR, linearG, linearB] = [0, 0, 0];
  for (const [label, count] of counts) {
    if (label === transparent) continue;
    const colour = colours[paintOf(label)];
    if (colour === undefined) throw new RangeError(`label ${label} has no colour`);
    linearR += (count * colour.linearR) / painted;
    linearG += (count * colour.linearG) / painted;
    linearB += (count * colour.linearB) / painted;
  }
  return { linearR, linearG, linearB };
}
