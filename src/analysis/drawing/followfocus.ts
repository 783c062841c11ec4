// Floor 6. The focus of a drawing followed from step to step of the viewing distance: how much of it is left, and its lines.

import type { SeenLine, SeenStep } from "../../measure/edgetable.ts";
import { distanceSteps } from "../../measure/focusclarity.ts";
import {
  type CutPieces,
  cutPieces,
  listPieces,
  measureGone,
  measureRemaining,
  type Pieces,
  type Remaining,
} from "../../regions/focus/piece.ts";
import { type Box, cropMap, widenBox } from "../../regions/mapcrop.ts";
import { giveBack, takeBytes } from "../../regions/scratch.ts";
import { traceLines } from "../../regions/traceline.ts";
import { coarsen } from "../../regions/view/coarse.ts";
import { measureDepth } from "../../regions/view/depth.ts";
import { measureThinnest, type View, Viewer } from "../../regions/view/distanceview.ts";
import { shrinkLabels, shrinkMask } from "../../regions/view/shrink.ts";
import type { Maps, SeenFocus } from "./findfocus.ts";
import { toSeenLines } from "./measuregeometry.ts";

/** Steps up to this distance, in flag heights, are looked at in full; from further away a coarser map shows the same. */
const closest = 40;

/** Coarse pixels are as large as can be while what vanishes is some eight of them thick, whatever the measuring size. */
const leastThickness = 8.3;

type Step = Omit<SeenStep, "distance">;

/** The pieces of the focus before anything of it vanishes; spans in flag heights, sizes in pixels. */
interface Whole {
  readonly pieces: Pieces;
  readonly spans: readonly number[];
  readonly sizes: Uint32Array;
}

/** What looks at the focus from some of the distances. */
interface Look {
  readonly from: (distance: number) => Step;
  /** Gives back its memory. */
  readonly end: () => void;
}

/** The focus from every distance step. `lines` are those traced already in the view of the gallery's distance. */
export function followFocus(maps: Maps, focus: SeenFocus, lines: readonly SeenLine[]): readonly SeenStep[] {
  const { pieces } = focus;
  if (pieces === undefined) return [];
  const { height } = maps.view;
  if (pieces.pieces.length === 0)
    return distanceSteps.map((distance) => ({ distance, left: 0, span: 0, heightPixels: height, lines: [] }));
  const { spans, sizes } = listPieces(pieces);
  const whole = { pieces, spans: spans.map((span) => span / height), sizes };
  const near = lookFromNear(maps, whole);
  const far = lookFromFar(maps, whole);
  let most = 1;
  const steps = distanceSteps.map((distance) => {
    const step =
      distance === maps.viewing.distance
        ? { ...measureSeen(maps, focus, whole), heightPixels: height, lines }
        : (distance <= closest ? near : far).from(distance);
    // What is gone from one distance does not come back further away.
    most = Math.min(most, step.left);
    return { ...step, left: most, distance, lines: step.lines.filter(({ focusShare }) => focusShare > 0) };
  });
  near.end();
  far.end();
  return steps;
}

/** What is left from the gallery's distance. */
function measureSeen({ view, seen }: Maps, { mask, full }: SeenFocus, whole: Whole): Remaining {
  if (mask === undefined || mask === full) return measureAll(whole);
  const { width, height } = view;
  const cut = cutPieces(whole.pieces, { left: 0, top: 0, right: width, bottom: height });
  const remaining = measureGone(cut, whole.spans, whole.sizes, seen.pixels, mask);
  giveBack(cut.mask, cut.labels);
  return remaining;
}

const measureAll = ({ spans }: Whole): Remaining => ({
  left: 1,
  span: spans.reduce((most, span) => Math.max(most, span), 0),
});

/** The surroundings of the focus: what lies further away than the thickest part that could vanish does not matter. */
function boxAround({ view }: Maps, { pieces }: Whole, furthest: number): Box {
  const thickest = Math.ceil(measureThinnest(furthest) * view.height);
  return widenBox(pieces.box, view, 2 * thickest + 4);
}

/** Views in full of the surroundings. Where nothing of them vanishes, one step serves all. */
function lookFromNear(maps: Maps, whole: Whole): Look {
  const { height } = maps.view;
  const box = boxAround(maps, whole, closest);
  const asked = distanceSteps.filter((distance) => distance <= closest && distance !== maps.viewing.distance);
  const viewer = maps.viewer.crop(box, measureThinnest(Math.max(...asked)) * height);
  const cut = cutPieces(whole.pieces, box);
  let asDrawn: Step | undefined;
  return {
    from: (distance) => {
      const view = viewer.viewFrom(measureThinnest(distance) * height);
      if (view.map === viewer.base && asDrawn !== undefined) return asDrawn;
      const measure = (remaining: Uint8Array): Remaining =>
        remaining === cut.mask
          ? measureAll(whole)
          : measureGone(cut, whole.spans, whole.sizes, view.pixels, remaining);
      const step = look(viewer, view, cut.mask, measure, height);
      if (view.map === viewer.base) asDrawn = step;
      return step;
    },
    end: () => {
      viewer.release();
      giveBack(viewer.base.labels, cut.mask, cut.labels);
    },
  };
}

/** Views on coarser maps, the coarser the further away. */
function lookFromFar(maps: Maps, whole: Whole): Look {
  const { height } = maps.view;
  const furthest = Math.max(...distanceSteps);
  const box = boxAround(maps, whole, furthest);
  const map = cropMap(maps.viewer.base, box);
  const cut = cutPieces(whole.pieces, box);
  const depth = measureDepth(map, 1 + (measureThinnest(furthest) * height) / 2);
  return {
    from: (distance) => {
      const thinnest = measureThinnest(distance) * height;
      const factor = 2 ** Math.max(0, Math.floor(Math.log2(thinnest / leastThickness)));
      const coarse = coarsen(map, depth, factor);
      const viewer = new Viewer(coarse.map, coarse.thinParts);
      const view = viewer.viewFrom(thinnest / factor);
      const shrunk: CutPieces = {
        mask: shrinkMask(cut.mask, map, factor),
        labels: shrinkLabels(cut.labels, map, factor),
      };
      const measure = (remaining: Uint8Array): Remaining => measureRemaining(shrunk, whole.spans, remaining);
      return look(viewer, view, shrunk.mask, measure, height / factor);
    },
    end: () => giveBack(map.labels, cut.mask, cut.labels, depth),
  };
}

/** One step: what `measure` says of the part of a mask that a view leaves, and its lines. Nobody uses the view again. */
function look(
  viewer: Viewer,
  view: View,
  mask: Uint8Array,
  measure: (remaining: Uint8Array) => Remaining,
  heightPixels: number,
): Step {
  const remaining = view.pixels.length === 0 ? mask : keepRemaining(mask, view);
  const isWhole = view.map === viewer.base;
  // Where nothing is left no line bounds it.
  const lines = remaining.includes(1)
    ? toSeenLines(traceLines(view.map, remaining, isWhole ? viewer.runs : undefined))
    : [];
  const step = { ...measure(remaining), heightPixels, lines };
  if (remaining !== mask) giveBack(remaining);
  if (!isWhole) giveBack(view.map.labels);
  return step;
}

/** The mask in a view: a pixel that was given away belongs to the focus if the pixel it was given to does. */
function keepRemaining(mask: Uint8Array, { pixels, sources }: View): Uint8Array {
  const left = takeBytes(mask.length);
  left.set(mask);
  for (let index = 0; index < pixels.length; index += 1)
    left[pixels[index] as number] = mask[sources[index] as number] as number;
  return left;
}
