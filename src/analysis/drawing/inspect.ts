// Floor 6, the measuring half of the sequence: a drawing → its paints, label map and edge table, with what they look
// like from the viewing distance.
import type { Hex } from "../../colour/colour.ts";
import type { PaintLook } from "../../measure/edgefigure.ts";
import { type EdgeTable, type SeenLine, type SeenStep, tabulate } from "../../measure/edgetable.ts";
import type { Doubt } from "../../measure/measurement.ts";
import { findProportions } from "../../measure/proportions.ts";
import type { LabelMap } from "../../regions/labelmap.ts";
import { findRuns, type Runs } from "../../regions/runs.ts";
import { type Line, traceLines } from "../../regions/traceline.ts";
import { joinLabels, joinRuns, measureThinnest, Viewer } from "../../regions/view/distanceview.ts";
import { findNearLimit, furthestLimit } from "../../regions/view/sightlimit.ts";
import type { ResolvedDrawing } from "../../svg/instance.ts";
import type { Paint } from "../../svg/paint.ts";
import { type List, labelOf, type PaintIndex, paintOf, type Rank } from "../../svg/paintnumber.ts";
import type { EffectLook } from "../../svg/tree.ts";
import { findFocus, type SeenFocus } from "./findfocus.ts";
import { followFocus } from "./followfocus.ts";
import { toSeenLines } from "./measuregeometry.ts";
import { findWhole, type Groups, groupPaints, splitGroups } from "./paintgroup.ts";
import { lookAlong, reachOf } from "./paintlook.ts";
import { renderScene, type Scene } from "./scene.ts";
import type { Viewing } from "./viewing.ts";

/** Everything that is known of a drawing before any change of colour. `paints` and `looks` are those of `table`. */
export interface Inspection {
  readonly map: LabelMap;
  readonly view: LabelMap;
  readonly table: EdgeTable;
  /** The lines of `view`, by label. */
  readonly traced: readonly Line[];
  readonly paints: List<Rank, Paint>;
  readonly looks: List<Rank, PaintLook>;
  readonly proportions: readonly [number, number];
  readonly warnings: readonly Doubt[];
  readonly ground: Ground;
}

/** What other tables of the same drawing can be made from. */
export interface Ground {
  readonly scene: Scene;
  readonly groups: Groups;
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
  const viewer = lookThrough(scene, groups, thinnest, viewing);
  const seen = viewer.viewFrom(thinnest);
  const view = seen.map;
  const viewRuns = view === map ? scene.runs : findRuns(view);
  lap("distance view");
  const { flagPixels } = areas;
  const maps = { seen, resolved, shapes, map, viewer, view, viewRuns, viewing, flagPixels, groups };
  const focus = await findFocus(maps);
  lap("focus");
  const traced = traceLines(view, focus.marks, viewRuns);
  const lines = toSeenLines(traced);
  lap("lines");
  const steps = viewing.followsFocus === false ? [] : followFocus(maps, focus, lines);
  lap("distance steps");
  const ground = { scene, groups, focus };
  const table = tabulateLines(ground, view, viewRuns, lines, steps);
  const looks = lookAlongLines(scene, table, traced, thinnest);
  lap("colours along lines");
  const nearLimit = viewing.isBrief !== true ? findNearLimit(viewer, thinnest, areas.pixels) : [];
  viewer.release();
  lap("near limit");
  return {
    map,
    view,
    table,
    traced,
    paints: table.order.map((paint) => shapes.paints[paint] as Paint),
    looks,
    proportions: findProportions(resolved.drawing.viewBox.width, resolved.drawing.viewBox.height),
    warnings: listDoubts(
      resolved.drawing.effects?.looks ?? [],
      map,
      shapes.faint.length,
      nearLimit.map((label) => scene.looks[paintOf(label)]?.name ?? ""),
      scene.joined,
    ),
    ground,
  };
}

/**
 * Returns the table, with its looks, that {@link inspectDrawing} would give for a change of `replace` everywhere: a paint
 * that is one with others of nearly its colour stands apart from them, and what is too thin for itself vanishes. The focus
 * is that of the original, and what is left of it from other distances is not looked at. `ground` must have been found
 * without a change.
 */
export function tabulateApart(
  ground: Ground,
  viewing: Viewing,
  replace: Hex,
): { readonly table: EdgeTable; readonly looks: List<Rank, PaintLook> } {
  const { scene, groups, focus } = ground;
  const thinnest = measureThinnest(viewing.distance) * scene.map.height;
  const changed = { ...viewing, change: { replace } };
  const viewer = lookThrough(scene, groups, thinnest, changed);
  const view = viewer.viewFrom(thinnest).map;
  viewer.release();
  const runs = findRuns(view);
  const traced = traceLines(view, focus.marks, runs);
  const table = tabulateLines(ground, view, runs, toSeenLines(traced), []);
  return { table, looks: lookAlongLines(scene, table, traced, thinnest) };
}

/** What the paints of a table look like, along their lines too, in a view without what is thinner than `thinnest` pixels. */
function lookAlongLines(
  { looks, picture, map }: Scene,
  { order }: EdgeTable,
  lines: readonly Line[],
  thinnest: number,
): List<Rank, PaintLook> {
  const ordered = order.map((paint) => looks[paint] as PaintLook);
  return lookAlong(ordered, order.map(labelOf), { picture, map, lines, reach: reachOf(thinnest) });
}

/** Paints that `viewing.change` treats differently stand apart, also where one of them vanishes. */
function lookThrough(
  { shapes, map, runs }: Scene,
  groups: Groups,
  thinnest: number,
  viewing: Viewing,
): Viewer {
  const joins = splitGroups(shapes.paints, groups, viewing).map(labelOf);
  return new Viewer(joinLabels(map, joins), furthestLimit(thinnest), joinRuns(runs, joins));
}

function tabulateLines(
  { scene: { shapes, areas }, groups, focus }: Ground,
  view: LabelMap,
  viewRuns: Runs,
  lines: readonly SeenLine[],
  steps: readonly SeenStep[],
): EdgeTable {
  return tabulate({
    heightPixels: view.height,
    flagPixels: areas.flagPixels,
    pixels: areas.pixels,
    touchesBorder: areas.touchesBorder,
    remains: findRemaining(viewRuns, groups),
    group: groups,
    lines,
    focus: { source: focus.source, pixels: focus.pixels, chargeCount: focus.chargeCount, steps },
    part: shapes.paints.map((paint) => findWhole(shapes.paints, paint)),
  });
}

/** Whether each paint, or the one it is joined to, shows in the view. */
function findRemaining({ label }: Runs, groups: Groups): List<PaintIndex, boolean> {
  const shown = new Set<number>(label);
  return groups.map((group, paint) => shown.has(labelOf(paint)) || shown.has(labelOf(group)));
}

function listDoubts(
  looks: readonly EffectLook[],
  map: LabelMap,
  faintShapes: number,
  nearLimit: readonly string[],
  joined: number,
): readonly Doubt[] {
  return [
    ...(looks.length > 0 ? [{ about: "effect", looks } as const] : []),
    ...(joined > 0 ? [{ about: "joined", count: joined } as const] : []),
    ...(faintShapes > 0 ? [{ about: "faint", count: faintShapes } as const] : []),
    ...(map.exactShare < 0.98 ? [{ about: "inexact", exactShare: map.exactShare } as const] : []),
    ...(nearLimit.length > 0 ? [{ about: "nearLimit", names: nearLimit } as const] : []),
  ];
}
