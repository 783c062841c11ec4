// Floor 5. The focus of a drawing: found as charges in the distance view or named by the author, and followed from
// step to step of the viewing distance.
import { distanceSteps, leastRemaining } from "../measure/reads.ts";
import type { SeenGeometry, TableFocus } from "../measure/table.ts";
import { findRegions } from "../regions/component.ts";
import { findCharges, maskLabels, maskRegions } from "../regions/focus.ts";
import type { LabelMap } from "../regions/label.ts";
import { traceLines } from "../regions/trace.ts";
import { measureThinnest, shrinkMap, shrinkMask, viewFrom } from "../regions/view.ts";
import type { ResolvedDrawing } from "../svg/instance.ts";
import { findPaints, type PaintedShapes } from "../svg/paint.ts";
import { renderMap, toSeenLines } from "./map.ts";
import type { NamedFocus, Viewing } from "./viewing.ts";

export interface SeenFocus {
  readonly source: TableFocus["source"];
  /** 1 where a pixel of the view belongs to the focus. */
  readonly mask: Uint8Array;
  readonly pixels: number;
  readonly steps: SeenGeometry["focus"]["steps"];
}

/** The maps of one drawing: `map` as drawn, `base` with near-equal paints joined, `whole` as the original shows them. */
export interface Maps {
  readonly resolved: ResolvedDrawing;
  readonly shapes: PaintedShapes;
  readonly size: { readonly width: number; readonly height: number };
  readonly map: LabelMap;
  readonly base: LabelMap;
  readonly whole: LabelMap;
  readonly view: LabelMap;
  readonly viewing: Viewing;
  readonly flagPixels: number;
  readonly groups: readonly number[];
}

/** Finds the focus and looks at it from every distance step until less than half of it is left. */
export async function findFocus(maps: Maps): Promise<SeenFocus> {
  const named = maps.viewing.focus === undefined ? undefined : await maskNamed(maps, maps.viewing.focus);
  const mask = named === undefined ? maskCharges(maps) : keepVisible(maps, named);
  const full = named ?? mask;
  const pixels = full.reduce((sum, value) => sum + value, 0);
  const source = named !== undefined ? "named" : pixels > 0 ? "found" : "none";
  return { source, mask, pixels, steps: pixels === 0 ? [] : followSteps(maps, full) };
}

function maskCharges({ view, groups, flagPixels }: Maps): Uint8Array {
  const whole = joinGroups(view, groups);
  const regions = findRegions(whole);
  return maskRegions(regions, findCharges(regions, flagPixels));
}

/** The view with paints that are one in the original as one label. */
function joinGroups(view: LabelMap, groups: readonly number[]): LabelMap {
  if (groups.every((group, index) => group === index)) return view;
  return { ...view, labels: view.labels.map((label) => (label === 0 ? 0 : (groups[label - 1] ?? label - 1) + 1)) };
}

async function maskNamed({ resolved, shapes, size, map }: Maps, focus: NamedFocus): Promise<Uint8Array> {
  if ("colour" in focus) return maskLabels(map.labels, (label) => shapes.paints[label - 1]?.declared === focus.colour);
  const split = findPaints(resolved, { instances: focus.select, replace: "any" });
  const selected = await renderMap(split, size);
  return maskLabels(selected.labels, (label) => split.paints[label - 1]?.selected === true);
}

/** A named focus in the view: where its own paint is still seen. */
function keepVisible({ base, view }: Maps, full: Uint8Array): Uint8Array {
  return full.map((value, at) => (value === 1 && view.labels[at] === base.labels[at] ? 1 : 0));
}

function followSteps(maps: Maps, full: Uint8Array): SeenFocus["steps"] {
  const steps: SeenFocus["steps"][number][] = [];
  for (const distance of distanceSteps) {
    // From further away nothing that thin is seen, so a coarser map shows the same.
    const factor = Math.max(1, 2 ** Math.floor(Math.log2(distance / 40)));
    const base = shrinkMap(maps.base, factor);
    const whole = maps.whole === maps.base ? base : shrinkMap(maps.whole, factor);
    const mask = shrinkMask(full, maps.base, factor);
    const view = viewFrom(base, measureThinnest(distance) * base.height, whole);
    let all = 0;
    let left = 0;
    const seen = new Uint8Array(mask.length);
    for (let at = 0; at < mask.length; at += 1) {
      if (mask[at] !== 1) continue;
      all += 1;
      if (view.labels[at] !== base.labels[at]) continue;
      left += 1;
      seen[at] = 1;
    }
    const remaining = all === 0 ? 0 : left / all;
    const lines = remaining < leastRemaining ? [] : toSeenLines(traceLines(view, seen)).filter((line) => line.focusShare > 0);
    steps.push({ distance, remaining, heightPixels: base.height, lines });
    if (remaining < leastRemaining) break;
  }
  return steps;
}
