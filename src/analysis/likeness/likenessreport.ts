// Floor 6. Which other flags a redesign looks like: every drawing made into a coarse grid once, then compared.
import type { Cloth } from "../../colour/cloth.ts";
import { linearOf } from "../../colour/colourtext.ts";
import { compareGrids, type FlagGrid, prepareGrid } from "../../measure/gridlikeness.ts";
import { findNearest, type Likeness, remember } from "../../measure/nearestflag.ts";
import type { Outcome, Problem } from "../../problem/problem.ts";
import { gridColumns, gridRows, measureGrid } from "../../regions/flaggrid.ts";
import { measuringSize } from "../../regions/raster.ts";
import { readDrawing } from "../../svg/gate/sanitise.ts";
import { resolveDrawing } from "../../svg/instance.ts";
import { findPaints } from "../../svg/paint.ts";
import { labelsOf, renderMap } from "../drawing/measuregeometry.ts";
import { notDrawable, nothingDrawn } from "../drawing/norendering.ts";
import { lookAt, renderNeeded } from "../drawing/paintlook.ts";

/** A flag to compare with. */
export interface IndexedFlag {
  readonly file: string;
  readonly grid: FlagGrid;
}

/** The nearest three flags. */
export interface LikenessReport {
  readonly nearest: readonly Likeness[];
  /** How many flags it was compared with. */
  readonly compared: number;
}

/** Height in pixels of the picture a grid is made from: ten pixels a cell are enough for its mean. */
const gridHeight = 160;

/** Mean ΔE00 under which an indexed flag is the original itself, under whatever name. */
const sameFlag = 0.5;

/**
 * Makes the grid of a drawing: every paint as it looks, transparent where the drawing is.
 *
 * Problems: those of readDrawing; study/nothing-drawn, study/not-drawable.
 */
export async function gridOf(file: string, bytes: Uint8Array, cloth: Cloth): Promise<Outcome<FlagGrid>> {
  const read = readDrawing(file, bytes);
  if (read.value === undefined) return { value: undefined, problems: read.problems };
  const refuse = (problem: Problem): Outcome<FlagGrid> => ({
    value: undefined,
    problems: [...read.problems, problem],
  });
  try {
    const resolved = resolveDrawing(read.value);
    const shapes = findPaints(resolved);
    const { width, height } = resolved.drawing.viewBox;
    const map = await renderMap(shapes, measuringSize(width, height, gridHeight));
    const picture = await renderNeeded(resolved.drawing, map, shapes.paints);
    const looks = lookAt(picture, map, shapes.paints, labelsOf(shapes));
    const cells = measureGrid(
      map,
      looks.map(({ hex }) => linearOf(hex)),
    );
    if (cells.every((cell) => cell === null)) return refuse(nothingDrawn(file));
    return {
      value: prepareGrid(gridColumns, gridRows, cells, cloth),
      problems: read.problems,
    };
  } catch (error) {
    return refuse(notDrawable(file, error, "rendered"));
  }
}

/**
 * Compares a redesign with every flag of `index`, save its own original: a flag that looks just like `original` is the
 * original, whatever its file is called.
 */
export function findLikeness(
  redesign: FlagGrid,
  original: FlagGrid,
  index: readonly IndexedFlag[],
): LikenessReport {
  const isOther = remember((grid) => compareGrids(original, grid, "as it is", sameFlag) > sameFlag);
  const others = index.filter(({ grid }) => isOther(grid));
  return { nearest: findNearest(redesign, others), compared: others.length };
}
