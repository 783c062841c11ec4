// Floor 6. The focus of a drawing: found as charges in the distance view or named by the author.

import type { TableFocus } from "../../measure/edgetable.ts";
import { findRegions, type RegionIndex } from "../../regions/component.ts";
import { countMask, findCharges, maskLabels, maskRegions } from "../../regions/focus/charges.ts";
import { markCharges } from "../../regions/focus/markcharge.ts";
import { findPieces, findPiecesOf, type Pieces } from "../../regions/focus/piece.ts";
import type { LabelMap } from "../../regions/labelmap.ts";
import { type Runs, relabelRuns } from "../../regions/runs.ts";
import { joinRuns, type View, type Viewer } from "../../regions/view/distanceview.ts";
import type { ResolvedDrawing } from "../../svg/instance.ts";
import { findPaints, type PaintedShapes } from "../../svg/paint.ts";
import { labelOf } from "../../svg/paintnumber.ts";
import { renderMap } from "./measuregeometry.ts";
import type { Groups } from "./paintgroup.ts";
import type { NamedFocus, Viewing } from "./viewing.ts";

/** Masks have 1 where a pixel belongs to the focus; all are absent where there is none. */
export interface SeenFocus {
  readonly source: TableFocus["source"];
  /** The focus before anything of it vanishes: as named, or as found from the gallery's distance. */
  readonly full?: Uint8Array;
  /** What of it is seen from the gallery's distance. */
  readonly mask?: Uint8Array;
  /** The same with its charges apart, for tracing. */
  readonly marks?: Uint8Array;
  /** The pieces of `full`. */
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
  return maps.viewing.focus === undefined ? findCharged(maps) : await findNamed(maps, maps.viewing.focus);
}

function findCharged({ viewRuns, groups, flagPixels }: Maps): SeenFocus {
  const regions = findRegions(joinRuns(viewRuns, groups.map(labelOf)));
  const charges = findCharges(regions, flagPixels);
  if (charges.size === 0) return { source: "none", chargeCount: 0, pixels: 0 };
  const full = maskRegions(regions, charges);
  const pieces = findPiecesOf(
    relabelRuns(regions.runs, (run) => (charges.has(regions.regionOf[run] as RegionIndex) ? 1 : 0)),
  );
  const pixels = pieces.pieces.reduce((sum, piece) => sum + piece.pixels, 0);
  return { source: "found", full, mask: full, pieces, ...markCharges(pieces), pixels };
}

async function findNamed(maps: Maps, focus: NamedFocus): Promise<SeenFocus> {
  const { width, height } = maps.view;
  const full = await maskNamed(maps, focus);
  const mask = keepRemaining(full, maps.seen);
  const pieces = findPieces(mask, width, height);
  const whole = mask === full ? pieces : findPieces(full, width, height);
  return { source: "named", full, mask, pieces: whole, ...markCharges(pieces), pixels: countMask(full) };
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

/** The mask in a view: a pixel that was given away belongs to the focus if the pixel it was given to does. */
function keepRemaining(mask: Uint8Array, { pixels, sources }: View): Uint8Array {
  if (pixels.length === 0) return mask;
  const left = mask.slice();
  for (let index = 0; index < pixels.length; index += 1)
    left[pixels[index] as number] = mask[sources[index] as number] as number;
  return left;
}
