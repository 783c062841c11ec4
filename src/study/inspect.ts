// Floor 5, the measuring half of the sequence: a drawing → its paints, label map and edge table, with what they look
// like from the viewing distance.
import type { Hex } from "../colour/colour.ts";
import { measureContrastOf, type PaintLook } from "../measure/figures.ts";
import { findProportions } from "../measure/proportions.ts";
import { isSurelyLost } from "../measure/reads.ts";
import { type EdgeTable, type SeenGeometry, type SeenLine, tabulate } from "../measure/table.ts";
import type { LabelMap } from "../regions/label.ts";
import { findNearLimit, furthestLimit } from "../regions/limit.ts";
import { findRuns, type Runs } from "../regions/runs.ts";
import { type Line, traceLines } from "../regions/trace.ts";
import { joinLabels, measureThinnest, seenAlike, type View, Viewer } from "../regions/view.ts";
import type { ResolvedDrawing } from "../svg/instance.ts";
import type { Paint } from "../svg/paint.ts";
import { findFocus, followFocus, type SeenFocus } from "./focus.ts";
import { findWhole, groupPaints, splitGroups } from "./group.ts";
import { lookAlong, orderLooks, reachOf } from "./look.ts";
import { labelsOf, toSeenLines } from "./map.ts";
import { renderScene, type Scene } from "./scene.ts";
import type { Viewing } from "./viewing.ts";

/** Everything that is known of a drawing before any change of colour. `paints[i]` belongs to `table.paints[i]`. */
export interface Inspection {
  readonly map: LabelMap;
  readonly view: LabelMap;
  readonly table: EdgeTable;
  /** The lines of `view`, by label. */
  readonly traced: readonly Line[];
  readonly paints: readonly Paint[];
  readonly looks: readonly PaintLook[];
  readonly proportions: readonly [number, number];
  readonly warnings: readonly string[];
  readonly ground: Ground;
}

/** What other tables of the same drawing can be made from. */
export interface Ground {
  readonly scene: Scene;
  /** For each paint of the scene, the index of the paint it is one with. */
  readonly groups: readonly number[];
  readonly seen: View;
  readonly focus: SeenFocus;
}

/** Measures a resolved drawing. The parts of a paint that a limited change selects stand for themselves. */
export async function inspectDrawing(resolved: ResolvedDrawing, viewing: Viewing): Promise<Inspection> {
  return inspectScene(await renderScene(resolved, viewing), viewing);
}

/** Measures a drawing that is rendered already, by a scene that serves `viewing`. */
export async function inspectScene(scene: Scene, viewing: Viewing): Promise<Inspection> {
  const { resolved, shapes, map, areas } = scene;
  const lap = viewing.lap ?? (() => {});
  const groups = groupPaints(shapes.paints, areas, scene.looks, viewing);
  const thinnest = measureThinnest(viewing.distance) * map.height;
  const { viewer, whole } = lookThrough(scene, groups, thinnest, viewing);
  const seen = viewer.viewFrom(thinnest);
  const view = seen.map;
  const viewRuns = view === map ? scene.runs : findRuns(view);
  lap("distance view");
  const { flagPixels } = areas;
  const maps = { seen, resolved, shapes, map, whole, viewer, view, viewRuns, viewing, flagPixels, groups };
  const focus = await findFocus(maps);
  lap("focus");
  const traced = traceLines(view, focus.mask, viewRuns);
  const lines = toSeenLines(traced);
  lap("lines");
  const looks = lookAlongLines(scene, traced, thinnest);
  lap("colours along lines");
  const steps = followFocus(maps, focus, lines, failsIn(looks, viewing));
  lap("reads to");
  const ground = { scene, groups, seen, focus };
  const table = tabulateLines(ground, view, viewRuns, lines, steps);
  const nearLimit = viewing.asked === undefined ? findNearLimit(viewer, thinnest, areas.pixels) : [];
  lap("near limit");
  return {
    map,
    view,
    table,
    traced,
    paints: table.order.map((index) => shapes.paints[index] as Paint),
    looks: orderLooks(looks, table.order),
    proportions: findProportions(resolved.drawing.viewBox.width, resolved.drawing.viewBox.height),
    warnings: listWarnings(
      map,
      shapes.faint.length,
      nearLimit.map((label) => looks[label - 1]?.name ?? ""),
    ),
    ground,
  };
}

/**
 * Returns the table, with its looks, that {@link inspectDrawing} would give for a change of `replace` everywhere: a paint
 * that is one with others of nearly its colour stands apart from them. What vanishes, and what the focus is, stays as it
 * was found for the whole, so nothing is looked at again; how far the focus reads is left out. `ground` must have been
 * found without a change.
 */
export function tabulateApart(
  ground: Ground,
  viewing: Viewing,
  replace: Hex,
): { readonly table: EdgeTable; readonly looks: readonly PaintLook[] } {
  const { scene, groups, seen, focus } = ground;
  const { shapes, map } = scene;
  const split = splitGroups(shapes.paints, groups, { ...viewing, change: { replace } });
  const view = seenAlike(seen, joinLabels(map, labelsOf(split)));
  const runs = findRuns(view);
  const traced = traceLines(view, focus.mask, runs);
  const table = tabulateLines(ground, view, runs, toSeenLines(traced), []);
  const looks = lookAlongLines(scene, traced, measureThinnest(viewing.distance) * map.height);
  return { table, looks: orderLooks(looks, table.order) };
}

/** What the paints of a scene look like, along their lines too, in a view without what is thinner than `thinnest` pixels. */
function lookAlongLines(
  { looks, picture, map }: Scene,
  lines: readonly Line[],
  thinnest: number,
): readonly PaintLook[] {
  const labels = looks.map((_, index) => index + 1);
  return lookAlong(looks, labels, { picture, map, lines, reach: reachOf(thinnest) });
}

function lookThrough(
  { shapes, map, runs }: Scene,
  groups: readonly number[],
  thinnest: number,
  viewing: Viewing,
): { readonly viewer: Viewer; readonly whole: LabelMap } {
  const base = joinLabels(map, labelsOf(splitGroups(shapes.paints, groups, viewing)));
  const whole = viewing.change === undefined ? base : joinLabels(map, labelsOf(groups));
  const greatest = Math.max(furthestLimit(thinnest), measureThinnest(40) * map.height);
  return { viewer: new Viewer(base, greatest, whole, whole === map ? runs : findRuns(whole)), whole };
}

function tabulateLines(
  { scene: { shapes, areas }, groups, focus }: Ground,
  view: LabelMap,
  viewRuns: Runs,
  lines: readonly SeenLine[],
  steps: SeenGeometry["focus"]["steps"],
): EdgeTable {
  return tabulate({
    heightPixels: view.height,
    flagPixels: areas.flagPixels,
    pixels: areas.pixels.slice(1),
    touchesBorder: areas.touchesBorder.slice(1),
    remains: findRemaining(viewRuns, groups),
    group: groups,
    lines,
    focus: { source: focus.source, pixels: focus.pixels, steps },
    part: shapes.paints.map((paint) => findWhole(shapes.paints, paint)),
  });
}

/** Whether the focus surely fails at a step, where only today's colours matter; undefined where others are to be tried. */
function failsIn(
  looks: readonly PaintLook[],
  { asked }: Viewing,
): ((lines: readonly SeenLine[]) => boolean) | undefined {
  if (asked === undefined) return undefined;
  return (lines) =>
    isSurelyLost(
      lines.map((line) => ({
        focusLength: line.length * line.focusShare,
        contrast: measureContrastOf({ ...line, focusLength: 0 }, looks, asked.cloth),
      })),
    );
}

/** Whether each paint, or the one it is joined to, shows in the view. */
function findRemaining({ label }: Runs, groups: readonly number[]): readonly boolean[] {
  const shown = new Set<number>(label);
  return groups.map((group, index) => shown.has(index + 1) || shown.has(group + 1));
}

function listWarnings(map: LabelMap, faintShapes: number, nearLimit: readonly string[]): readonly string[] {
  const warnings: string[] = [];
  if (faintShapes > 0) {
    warnings.push(
      faintShapes === 1
        ? "One shape shows at less than half and is left out of the measurement."
        : `${faintShapes} shapes show at less than half and are left out of the measurement.`,
    );
  }
  if (map.exactShare < 0.98)
    warnings.push(
      `Only ${Math.floor(map.exactShare * 100)} % of the drawing could be told apart exactly; its figures are less certain.`,
    );
  if (nearLimit.length > 0) warnings.push(`Near the limit of sight: parts in ${nearLimit.join(", ")}.`);
  return warnings;
}
