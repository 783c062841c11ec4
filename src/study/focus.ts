// Floor 5. The focus of a drawing: found as charges in the distance view or named by the author, and followed from
// step to step of the viewing distance.
import { distanceSteps, leastRemaining } from "../measure/reads.ts";
import type { SeenGeometry, SeenLine, TableFocus } from "../measure/table.ts";
import { findRegions } from "../regions/component.ts";
import { cropMap, cropMask, findBox } from "../regions/crop.ts";
import { countMask, findCharges, maskLabels, maskRegions } from "../regions/focus.ts";
import type { LabelMap } from "../regions/label.ts";
import { findRuns, type Runs } from "../regions/runs.ts";
import { shrinkMap, shrinkMask } from "../regions/shrink.ts";
import { traceLines } from "../regions/trace.ts";
import { joinLabels, measureThinnest, type View, Viewer } from "../regions/view.ts";
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
  readonly seen: View;
  readonly view: LabelMap;
  readonly viewRuns: Runs;
  readonly viewing: Viewing;
  readonly flagPixels: number;
  readonly groups: readonly number[];
}

/** Finds the focus in the view: named by the author, else the charges. */
export async function findFocus(maps: Maps): Promise<SeenFocus> {
  const named = maps.viewing.focus === undefined ? undefined : await maskNamed(maps, maps.viewing.focus);
  if (named !== undefined)
    return { source: "named", full: named, mask: keepVisible(maps, named), pixels: countMask(named) };
  const { view, groups, flagPixels, viewer, whole } = maps;
  const runs =
    view === viewer.base
      ? viewer.runs
      : whole === viewer.base
        ? maps.viewRuns
        : findRuns(joinLabels(view, labelsOf(groups)));
  const regions = findRegions(runs);
  const charges = findCharges(regions, flagPixels);
  if (charges.size === 0) return { source: "none", pixels: 0 };
  const mask = maskRegions(regions, charges);
  const pixels = [...charges].reduce((sum, index) => sum + (regions.regions[index]?.pixels ?? 0), 0);
  return { source: "found", full: mask, mask, pixels };
}

async function maskNamed({ resolved, shapes, map, viewing }: Maps, focus: NamedFocus): Promise<Uint8Array> {
  if ("colour" in focus)
    return maskLabels(map.labels, [false, ...shapes.paints.map((paint) => paint.declared === focus.colour)]);
  const split = findPaints(resolved, { instances: focus.select, replace: "any" });
  const selected = await renderMap(split, map, viewing.render);
  return maskLabels(selected.labels, [false, ...split.paints.map((paint) => paint.selected)]);
}

/** A named focus in the view: where it is still seen. */
function keepVisible({ seen }: Maps, full: Uint8Array): Uint8Array {
  return seen.pixels.length === 0 ? full : keepRemaining(full, seen).left;
}

/**
 * Looks at the focus from every distance step until less than half of it is left, or `fails` says of its lines that it is
 * lost. `lines` are those already traced in the view of the gallery's distance.
 */
export function followFocus(
  maps: Maps,
  focus: SeenFocus,
  lines: readonly SeenLine[],
  fails: (lines: readonly SeenLine[]) => boolean = () => false,
): SeenGeometry["focus"]["steps"] {
  const steps: SeenGeometry["focus"]["steps"][number][] = [];
  const { full } = focus;
  if (full === undefined || focus.pixels === 0) return steps;
  const close = cropScene(maps, full);
  for (const distance of distanceSteps) {
    const isGallery = distance === maps.viewing.distance && focus.mask === full;
    const step = isGallery
      ? { remaining: 1, heightPixels: maps.view.height, lines }
      : lookFrom(distance <= closest ? close : shrinkScene(maps, full, distance), distance);
    const own = step.lines.filter((line) => line.focusShare > 0);
    steps.push({ ...step, distance, lines: own });
    if (step.remaining < leastRemaining || fails(own)) break;
  }
  return steps;
}

/** Steps up to this distance, in flag heights, are looked at in full; from further away a coarser map shows the same. */
const closest = 40;

/** What one step looks at. `flagHeight` is the height of the whole flag in pixels of the scene. */
interface Scene {
  readonly viewer: Viewer;
  readonly mask: Uint8Array;
  readonly flagHeight: number;
}

/** The surroundings of the focus: what lies further away than the thickest part that could vanish does not matter. */
function cropScene({ viewer, whole, view }: Maps, full: Uint8Array): Scene {
  const thickest = Math.ceil(measureThinnest(closest) * view.height);
  const box = findBox(full, view, 2 * thickest + 4);
  const base = cropMap(viewer.base, box);
  const cropped = new Viewer(base, thickest, whole === viewer.base ? base : cropMap(whole, box));
  return { viewer: cropped, mask: cropMask(full, view, box), flagHeight: view.height };
}

function shrinkScene({ viewer, whole, map }: Maps, full: Uint8Array, distance: number): Scene {
  const factor = 2 ** Math.floor(Math.log2(distance / closest));
  const base = shrinkMap(viewer.base, factor);
  const thickest = measureThinnest(distance) * base.height;
  const small = new Viewer(base, thickest, whole === viewer.base ? base : shrinkMap(whole, factor));
  return { viewer: small, mask: shrinkMask(full, map, factor), flagHeight: base.height };
}

function lookFrom({ viewer, mask, flagHeight }: Scene, distance: number) {
  const view = viewer.viewFrom(measureThinnest(distance) * flagHeight);
  const { left, remaining } = keepRemaining(mask, view);
  const lines = remaining < leastRemaining ? [] : toSeenLines(traceLines(view.map, left));
  return { remaining, heightPixels: flagHeight, lines };
}

/** The mask in a view: a pixel that was given away belongs to the focus if the pixel it was given to does. */
function keepRemaining(
  mask: Uint8Array,
  { pixels, sources }: View,
): { readonly left: Uint8Array; readonly remaining: number } {
  if (pixels.length === 0) return { left: mask, remaining: 1 };
  const left = mask.slice();
  let gone = 0;
  for (let index = 0; index < pixels.length; index += 1) {
    const at = pixels[index] as number;
    const is = mask[sources[index] as number] as number;
    if (mask[at] === 1 && is === 0) gone += 1;
    left[at] = is;
  }
  return { left, remaining: gone === 0 ? 1 : 1 - gone / countMask(mask) };
}
