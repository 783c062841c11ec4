// Floor 5, the measuring half of the sequence: a drawing → its paints, label map and edge table, with what they look
// like from the viewing distance.
import { measureDifference } from "../colour/difference.ts";
import { linearOf } from "../colour/parse.ts";
import type { PaintLook } from "../measure/figures.ts";
import { findProportions } from "../measure/proportions.ts";
import { type EdgeTable, tabulate } from "../measure/table.ts";
import { type Areas, measureAreas } from "../regions/area.ts";
import type { LabelMap } from "../regions/label.ts";
import { findNearLimit, furthestLimit } from "../regions/limit.ts";
import { measuringSize } from "../regions/raster.ts";
import { findRuns, type Runs } from "../regions/runs.ts";
import { type Line, traceLines } from "../regions/trace.ts";
import { joinLabels, measureThinnest, Viewer } from "../regions/view.ts";
import type { ResolvedDrawing } from "../svg/instance.ts";
import { findPaints, type Paint, type Selection } from "../svg/paint.ts";
import { findFocus, followFocus } from "./focus.ts";
import { lookAt } from "./look.ts";
import { labelsOf, renderMap, toSeenLines } from "./map.ts";
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
}

/** ΔE00 under which a paint is joined to a larger one before the view is made (our own judgement). */
const nearEqual = 5;

/** Measures a resolved drawing. The parts of a paint that a limited change selects stand for themselves. */
export async function inspectDrawing(resolved: ResolvedDrawing, viewing: Viewing): Promise<Inspection> {
  const { viewBox } = resolved.drawing;
  const size = measuringSize(viewBox.width, viewBox.height, viewing.heightPixels);
  const lap = viewing.lap ?? (() => {});
  const selection = selectionOf(viewing);
  const shapes = findPaints(resolved, selection);
  const map = await renderMap(shapes, size, viewing.render);
  const { paints: allPaints } = shapes;
  const runs = findRuns(map);
  const areas = measureAreas(runs, allPaints.length);
  lap("labels");
  const looks = await lookAt(resolved.drawing, map, allPaints);
  lap("colours");
  const groups =
    viewing.distance === 0
      ? allPaints.map((paint, index) => (paint.selected ? (findWhole(allPaints, paint) ?? index) : index))
      : joinNearEqual(allPaints, areas, looks);
  const base = joinLabels(map, labelsOf(splitGroups(allPaints, groups, viewing)));
  const whole = viewing.change === undefined ? base : joinLabels(map, labelsOf(groups));
  const thinnest = measureThinnest(viewing.distance) * map.height;
  const viewer = new Viewer(
    base,
    Math.max(furthestLimit(thinnest), measureThinnest(40) * map.height),
    whole,
    whole === map ? runs : findRuns(whole),
  );
  const seen = viewer.viewFrom(thinnest);
  const view = seen.map;
  const viewRuns = view === map ? runs : findRuns(view);
  lap("distance view");
  const maps = {
    seen,
    resolved,
    shapes,
    map,
    whole,
    viewer,
    view,
    viewRuns,
    viewing,
    flagPixels: areas.flagPixels,
    groups,
  };
  const focus = await findFocus(maps);
  lap("focus");
  const traced = traceLines(view, focus.mask, viewRuns);
  const lines = toSeenLines(traced);
  lap("lines");
  const steps = followFocus(maps, focus, lines);
  lap("reads to");
  const table = tabulate({
    heightPixels: view.height,
    flagPixels: areas.flagPixels,
    pixels: areas.pixels.slice(1),
    touchesBorder: areas.touchesBorder.slice(1),
    remains: findRemaining(viewRuns, groups),
    group: groups,
    lines,
    focus: { source: focus.source, pixels: focus.pixels, steps },
    part: allPaints.map((paint) => (paint.selected ? findWhole(allPaints, paint) : undefined)),
  });
  const paints = table.order.map((index) => shapes.paints[index] as Paint);
  const nearLimit = findNearLimit(viewer, thinnest, areas.pixels).map(
    (label) => looks[label - 1]?.name ?? "",
  );
  lap("near limit");
  return {
    map,
    view,
    table,
    traced,
    paints,
    looks: table.order.map((index) => looks[index] as PaintLook),
    proportions: findProportions(viewBox.width, viewBox.height),
    warnings: listWarnings(map, shapes.faint.length, nearLimit),
  };
}

function selectionOf({ change }: Viewing): Selection | undefined {
  return change?.only === undefined ? undefined : { instances: change.only, replace: change.replace };
}

/**
 * Returns, for each paint, the index of the paint it is one with: itself, its whole (for a selected part), or the
 * nearest larger paint under ΔE00 5 that is not joined to another itself.
 */
function joinNearEqual(
  paints: readonly Paint[],
  areas: Areas,
  looks: readonly PaintLook[],
): readonly number[] {
  const areaOf = (index: number): number => areas.pixels[index + 1] ?? 0;
  const bySize = paints.map((_, index) => index).sort((a, b) => areaOf(b) - areaOf(a) || a - b);
  const groups = paints.map((_, index) => index);
  const heads: number[] = [];
  for (const index of bySize) {
    const linear = linearOf(looks[index]?.hex ?? "#000000");
    const near = heads
      .map((head) => ({ head, away: measureDifference(linear, linearOf(looks[head]?.hex ?? "#000000")) }))
      .filter(({ away }) => away < nearEqual)
      .sort((a, b) => a.away - b.away)[0];
    if (near === undefined || areaOf(index) === 0) heads.push(index);
    else groups[index] = near.head;
  }
  return groups;
}

/** The same, but paints that the change treats differently stay apart. */
function splitGroups(
  paints: readonly Paint[],
  groups: readonly number[],
  { change }: Viewing,
): readonly number[] {
  if (change === undefined) return groups;
  const isChanged = (paint: Paint | undefined): boolean =>
    paint?.declared === change.replace && (change.only === undefined || paint.selected);
  const headOf = new Map<string, number>();
  return paints.map((paint, index) => {
    const group = groups[index] ?? index;
    if (isChanged(paint) === isChanged(paints[group])) return group;
    const key = `${group} ${isChanged(paint)}`;
    const head = headOf.get(key) ?? index;
    headOf.set(key, head);
    return head;
  });
}

/** Whether each paint, or the one it is joined to, shows in the view. */
function findRemaining({ label }: Runs, groups: readonly number[]): readonly boolean[] {
  const shown = new Set<number>(label);
  return groups.map((group, index) => shown.has(index + 1) || shown.has(group + 1));
}

function findWhole(paints: readonly Paint[], part: Paint): number | undefined {
  const at = paints.findIndex((paint) => !paint.selected && `${paint.key} s` === part.key);
  return at < 0 ? undefined : at;
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
