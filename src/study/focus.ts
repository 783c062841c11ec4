// Floor 5. The focus of a drawing: found as charges in the distance view or named by the author, and followed from
// step to step of the viewing distance.
import { distanceSteps, leastRemaining } from "../measure/reads.ts";
import type { SeenGeometry, SeenLine, TableFocus } from "../measure/table.ts";
import { findRegions } from "../regions/component.ts";
import { countMask, findCharges, maskLabels, maskRegions } from "../regions/focus.ts";
import type { LabelMap } from "../regions/label.ts";
import { findRuns } from "../regions/runs.ts";
import { shrinkMap, shrinkMask } from "../regions/shrink.ts";
import { traceLines } from "../regions/trace.ts";
import { joinLabels, measureThinnest, Viewer } from "../regions/view.ts";
import type { ResolvedDrawing } from "../svg/instance.ts";
import { findPaints, type PaintedShapes } from "../svg/paint.ts";
import { labelsOf, renderMap, toSeenLines } from "./map.ts";
import type { NamedFocus, Viewing } from "./viewing.ts";

export interface SeenFocus {
  readonly source: TableFocus["source"];
  /** 1 where a pixel of the view belongs to the focus; absent where there is none. */
  readonly mask?: Uint8Array;
  /** The focus before anything of it vanishes: as named, or as found from the gallery's distance. */
  readonly full?: Uint8Array;
  readonly pixels: number;
}

/** The maps of one drawing: `map` as drawn, `whole` as the original shows it, with the views of the base map. */
export interface Maps {
  readonly resolved: ResolvedDrawing;
  readonly shapes: PaintedShapes;
  readonly map: LabelMap;
  readonly whole: LabelMap;
  readonly viewer: Viewer;
  readonly view: LabelMap;
  readonly viewing: Viewing;
  readonly flagPixels: number;
  readonly groups: readonly number[];
}

/** Finds the focus in the view: named by the author, else the charges. */
export async function findFocus(maps: Maps): Promise<SeenFocus> {
  const named = maps.viewing.focus === undefined ? undefined : await maskNamed(maps, maps.viewing.focus);
  if (named !== undefined) return { source: "named", full: named, mask: keepVisible(maps, named), pixels: countMask(named) };
  const { view, groups, flagPixels, viewer, whole } = maps;
  const runs = view === viewer.base ? viewer.runs : findRuns(whole === viewer.base ? view : joinLabels(view, labelsOf(groups)));
  const regions = findRegions(runs);
  const charges = findCharges(regions, flagPixels);
  if (charges.size === 0) return { source: "none", pixels: 0 };
  const mask = maskRegions(regions, charges);
  return { source: "found", full: mask, mask, pixels: countMask(mask) };
}

async function maskNamed({ resolved, shapes, map }: Maps, focus: NamedFocus): Promise<Uint8Array> {
  if ("colour" in focus) return maskLabels(map.labels, [false, ...shapes.paints.map((paint) => paint.declared === focus.colour)]);
  const split = findPaints(resolved, { instances: focus.select, replace: "any" });
  const selected = await renderMap(split, map);
  return maskLabels(selected.labels, [false, ...split.paints.map((paint) => paint.selected)]);
}

/** A named focus in the view: where its own paint is still seen. */
function keepVisible({ viewer, view }: Maps, full: Uint8Array): Uint8Array {
  return view === viewer.base ? full : full.map((value, at) => (value === 1 && view.labels[at] === viewer.base.labels[at] ? 1 : 0));
}

/**
 * Looks at the focus from every distance step until less than half of it is left. `lines` are those already traced
 * in the view of the gallery's distance.
 */
export function followFocus(maps: Maps, focus: SeenFocus, lines: readonly SeenLine[]): SeenGeometry["focus"]["steps"] {
  const steps: SeenGeometry["focus"]["steps"][number][] = [];
  const { full } = focus;
  if (full === undefined) return steps;
  for (const distance of distanceSteps) {
    // From further away nothing that thin is seen, so a coarser map shows the same.
    const factor = Math.max(1, 2 ** Math.floor(Math.log2(distance / 40)));
    const viewer = factor === 1 ? maps.viewer : shrinkViewer(maps, factor, distance);
    const view = viewer.viewFrom(measureThinnest(distance) * viewer.base.height);
    const mask = factor === 1 ? full : shrinkMask(full, maps.map, factor);
    const { left, remaining } = keepRemaining(mask, view, viewer.base);
    const isKnown = factor === 1 && view === maps.view && left === focus.mask;
    const seen = remaining < leastRemaining ? [] : isKnown ? lines : toSeenLines(traceLines(view, left));
    steps.push({ distance, remaining, heightPixels: view.height, lines: seen.filter((line) => line.focusShare > 0) });
    if (remaining < leastRemaining) break;
  }
  return steps;
}

function shrinkViewer({ viewer, whole }: Maps, factor: number, distance: number): Viewer {
  const base = shrinkMap(viewer.base, factor);
  const thinnest = measureThinnest(distance) * base.height;
  return new Viewer(base, thinnest, whole === viewer.base ? base : shrinkMap(whole, factor));
}

function keepRemaining(mask: Uint8Array, view: LabelMap, base: LabelMap): { readonly left: Uint8Array; readonly remaining: number } {
  if (view === base) return { left: mask, remaining: 1 };
  const left = new Uint8Array(mask.length);
  let all = 0;
  let count = 0;
  for (let at = 0; at < mask.length; at += 1) {
    if (mask[at] !== 1) continue;
    all += 1;
    if (view.labels[at] !== base.labels[at]) continue;
    left[at] = 1;
    count += 1;
  }
  return { left, remaining: all === 0 ? 0 : count / all };
}
