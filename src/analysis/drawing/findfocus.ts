// Floor 6. The focus of a drawing: found as charges in the distance view or named by the author, and followed from
// step to step of the viewing distance.

import type { SeenLine, SeenStep, TableFocus } from "../../measure/edgetable.ts";
import { distanceSteps } from "../../measure/focusclarity.ts";
import { findRegions } from "../../regions/component.ts";
import { countMask, findCharges, maskLabels, maskRegions } from "../../regions/focus/charges.ts";
import { markCharges } from "../../regions/focus/markcharge.ts";
import {
  findPieces,
  labelPieces,
  measureRemaining,
  mostLabels,
  type Pieces,
} from "../../regions/focus/piece.ts";
import type { LabelMap } from "../../regions/labelmap.ts";
import { cropMap, cropMask, findBox } from "../../regions/mapcrop.ts";
import { findRuns, type Runs } from "../../regions/runs.ts";
import { traceLines } from "../../regions/traceline.ts";
import { coarsen } from "../../regions/view/coarse.ts";
import { measureDepth } from "../../regions/view/depth.ts";
import { joinLabels, measureThinnest, type View, Viewer } from "../../regions/view/distanceview.ts";
import { shrinkMap, shrinkMask } from "../../regions/view/shrink.ts";
import type { ResolvedDrawing } from "../../svg/instance.ts";
import { findPaints, type PaintedShapes } from "../../svg/paint.ts";
import { labelOf } from "../../svg/paintnumber.ts";
import { renderMap, toSeenLines } from "./measuregeometry.ts";
import type { Groups } from "./paintgroup.ts";
import type { NamedFocus, Viewing } from "./viewing.ts";

/** Masks have 1 where a pixel belongs to the focus; all three are absent where there is none. */
export interface SeenFocus {
  readonly source: TableFocus["source"];
  /** The focus before anything of it vanishes: as named, or as found from the gallery's distance. */
  readonly full?: Uint8Array;
  /** What of it is seen from the gallery's distance. */
  readonly mask?: Uint8Array;
  /** The same with its charges apart, for tracing. */
  readonly marks?: Uint8Array;
  /** The pieces of `full`, where all of it is seen. */
  readonly pieces?: Pieces;
  readonly chargeCount: number;
  readonly pixels: number;
}

/** The maps of one drawing: `map` as drawn, `view` as seen, `groups` the paints that are one in the original. */
export interface Maps {
  readonly resolved: ResolvedDrawing;
  readonly shapes: PaintedShapes;
  readonly map: LabelMap;
  readonly viewer: Viewer;
  readonly seen: View;
  readonly view: LabelMap;
  readonly viewRuns: Runs;
  readonly viewing: Viewing;
  readonly flagPixels: number;
  readonly groups: Groups;
}

/** Finds the focus in the view: named by the author, else the charges. */
export async function findFocus(maps: Maps): Promise<SeenFocus> {
  const { view, seen, viewing } = maps;
  const source = viewing.focus === undefined ? "found" : "named";
  const full = viewing.focus === undefined ? maskFound(maps) : await maskNamed(maps, viewing.focus);
  if (full === undefined) return { source: "none", chargeCount: 0, pixels: 0 };
  const mask = source === "found" ? full : keepRemaining(full, seen);
  const pieces = findPieces(mask, view.width, view.height);
  const whole = mask === full ? { pieces } : {};
  const pixels =
    mask === full ? pieces.pieces.reduce((sum, piece) => sum + piece.pixels, 0) : countMask(full);
  return { source, full, mask, ...whole, ...markCharges(pieces), pixels };
}

function maskFound({ view, viewRuns, groups, flagPixels }: Maps): Uint8Array | undefined {
  const joined = joinLabels(view, groups.map(labelOf));
  const regions = findRegions(joined === view ? viewRuns : findRuns(joined));
  const charges = findCharges(regions, flagPixels);
  return charges.size === 0 ? undefined : maskRegions(regions, charges);
}

async function maskNamed({ resolved, shapes, map, viewing }: Maps, focus: NamedFocus): Promise<Uint8Array> {
  if ("colour" in focus)
    return maskLabels(
      map.labels,
      shapes.paints.map(({ declared }) => declared === focus.colour),
    );
  const split = findPaints(resolved, { instances: focus.select, replace: "any" });
  const selected = await renderMap(split, map, viewing.render);
  return maskLabels(
    selected.labels,
    split.paints.map((paint) => paint.selected),
  );
}

/** Steps up to this distance, in flag heights, are looked at in full; from further away a coarser map shows the same. */
const closest = 40;

/** The focus from every distance step. `lines` are those traced already in the view of the gallery's distance. */
export function followFocus(maps: Maps, focus: SeenFocus, lines: readonly SeenLine[]): readonly SeenStep[] {
  const { full, mask } = focus;
  if (full === undefined || mask === undefined) return [];
  const whole = findWhole(full, focus.pieces, maps.view);
  const lookClose = lookFromNear(maps, whole);
  const lookFar = lookFromFar(maps, whole);
  let most = 1;
  return distanceSteps.map((distance) => {
    const step =
      distance === maps.viewing.distance
        ? { ...measureLeft(whole, mask), heightPixels: maps.view.height, lines }
        : distance <= closest
          ? lookClose(distance)
          : lookFar(distance);
    // What is gone from one distance does not come back further away.
    most = Math.min(most, step.left);
    return { ...step, left: most, distance, lines: step.lines.filter(({ focusShare }) => focusShare > 0) };
  });
}

type Step = Omit<SeenStep, "distance">;

/** The focus before anything of it vanishes: its pieces as labels from 1, and how far each reaches in flag heights. */
interface Whole {
  readonly mask: Uint8Array;
  readonly pieces: LabelMap;
  readonly spans: readonly number[];
  /** Whether the maps have every pixel of every piece. */
  readonly isExact: boolean;
}

function findWhole(mask: Uint8Array, known: Pieces | undefined, { width, height }: LabelMap): Whole {
  const found = known ?? findPieces(mask, width, height);
  const spans = found.pieces.slice(0, mostLabels).map(({ span }) => span / height);
  return { mask, pieces: labelPieces(found), spans, isExact: true };
}

function lookFromNear(maps: Maps, whole: Whole): (distance: number) => Step {
  const { map, ...cropped } = cropAround(maps, whole, closest);
  const asked = distanceSteps.filter((distance) => distance <= closest && distance !== maps.viewing.distance);
  const viewer = new Viewer(map, measureThinnest(Math.max(...asked)) * maps.view.height);
  let asDrawn: Step | undefined;
  return (distance) => {
    const { height } = maps.view;
    if (viewer.viewFrom(measureThinnest(distance) * height).map !== viewer.base)
      return look(viewer, cropped, height, distance);
    asDrawn ??= look(viewer, cropped, height, distance);
    return asDrawn;
  };
}

/** Coarse pixels are as large as can be while what vanishes is some eight of them thick, whatever the measuring size. */
const leastThickness = 8.3;

function lookFromFar(maps: Maps, whole: Whole): (distance: number) => Step {
  const { height } = maps.view;
  const { map, mask, pieces, spans } = cropAround(maps, whole, Math.max(...distanceSteps));
  const depth = measureDepth(map, 1 + (measureThinnest(Math.max(...distanceSteps)) * height) / 2);
  return (distance) => {
    const thinnest = measureThinnest(distance) * height;
    const factor = 2 ** Math.max(0, Math.floor(Math.log2(thinnest / leastThickness)));
    const coarse = coarsen(map, depth, factor);
    const viewer = new Viewer(coarse.map, coarse.thinParts);
    const shrunk = {
      mask: shrinkMask(mask, map, factor),
      pieces: shrinkMap(pieces, factor),
      spans,
      isExact: factor === 1,
    };
    return look(viewer, shrunk, height / factor, distance);
  };
}

/** The surroundings of the focus: what lies further away than the thickest part that could vanish does not matter. */
function cropAround({ viewer, view }: Maps, { mask, pieces, spans, isExact }: Whole, furthest: number) {
  const thickest = Math.ceil(measureThinnest(furthest) * view.height);
  const box = findBox(mask, view, 2 * thickest + 4);
  return {
    map: cropMap(viewer.base, box),
    mask: cropMask(mask, view, box),
    pieces: cropMap(pieces, box),
    spans,
    isExact,
  };
}

function look(viewer: Viewer, whole: Whole, heightPixels: number, distance: number): Step {
  const view = viewer.viewFrom(measureThinnest(distance) * heightPixels);
  const remaining = keepRemaining(whole.mask, view);
  const runs = view.map === viewer.base ? viewer.runs : undefined;
  return {
    ...measureLeft(whole, remaining),
    heightPixels,
    // Where nothing is left no line bounds it.
    lines: remaining.includes(1) ? toSeenLines(traceLines(view.map, remaining, runs)) : [],
  };
}

/** How much of the focus is left; all of it where its mask is as it was. */
function measureLeft(
  { mask, pieces, spans, isExact }: Whole,
  remaining: Uint8Array,
): Pick<Step, "left" | "span"> {
  return isExact && remaining === mask
    ? { left: Math.min(1, spans.length), span: spans.reduce((most, span) => Math.max(most, span), 0) }
    : measureRemaining(pieces, spans, remaining);
}

/** The mask in a view: a pixel that was given away belongs to the focus if the pixel it was given to does. */
function keepRemaining(mask: Uint8Array, { pixels, sources }: View): Uint8Array {
  if (pixels.length === 0) return mask;
  const left = mask.slice();
  for (let index = 0; index < pixels.length; index += 1)
    left[pixels[index] as number] = mask[sources[index] as number] as number;
  return left;
}
