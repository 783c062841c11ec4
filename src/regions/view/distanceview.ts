// Floor 3, step 3. The distance view: parts too thin to be told apart go to the neighbours that remain.
// A model of resolution: an opening of every paint by a disc as wide as the thinnest part that is seen.

import { type Label, type List, labelOf, type PaintIndex, transparent } from "../../svg/paintnumber.ts";
import type { LabelMap } from "../labelmap.ts";
import { type Box, cropMap } from "../mapcrop.ts";
import { cropRuns, findRuns, type Runs, relabelRuns } from "../runs.ts";
import { fillVanished } from "./fillvanished.ts";
import { closeSlits, hasTransparent, joinGivings } from "./slit.ts";
import { Thickness } from "./thickness.ts";

/** tan of one arcminute: what a 20/20 eye resolves (20/20 is by definition 1 arcminute of detail). */
const oneArcminute = Math.tan(Math.PI / (180 * 60));

/** Returns the thickness, in flag heights, under which parts are not told apart from `distanceHeights` away. */
export function measureThinnest(distanceHeights: number): number {
  return distanceHeights * oneArcminute;
}

const changesNothing = (joins: List<PaintIndex, Label>): boolean =>
  joins.every((to, from) => to === labelOf(from));

/** Returns the runs of the map with each paint given its label in `joins`. */
export function joinRuns(runs: Runs, joins: List<PaintIndex, Label>): Runs {
  if (changesNothing(joins)) return runs;
  const table = Uint16Array.from([transparent, ...joins]);
  return relabelRuns(runs, (run) => table[runs.label[run] as number] as number);
}

/** Returns the map with each paint given its label in `joins`. */
export function joinLabels(map: LabelMap, joins: List<PaintIndex, Label>): LabelMap {
  if (changesNothing(joins)) return map;
  const table = Uint16Array.from([transparent, ...joins]);
  const labels = new Uint16Array(map.labels.length);
  for (let at = 0; at < labels.length; at += 1) labels[at] = table[map.labels[at] as number] as number;
  return { ...map, labels };
}

/** A map as seen from a distance: `pixels[i]` took its label from the pixel `sources[i]`, which remains. */
export interface View {
  readonly map: LabelMap;
  readonly pixels: Int32Array;
  readonly sources: Int32Array;
}

const none = new Int32Array(0);

/** Says which pixels of a map belong to parts thinner than some thickness in pixels. */
export interface ThinParts {
  findThinner(thickness: number, isWorth?: (pixels: Int32Array) => boolean): Int32Array;
  /** Gives back the memory that it keeps. */
  release?(): void;
}

/** A map whose slits are closed, as one thickness asks, with what they were given to. */
interface Closed extends View {
  readonly runs: Runs;
  readonly thickness: ThinParts;
}

/** Views of one map from several distances. Thicknesses are in pixels. */
export class Viewer {
  readonly runs: Runs;
  private readonly open: Closed;
  private readonly hasTransparent: boolean;
  private readonly closed = new Map<number, Closed>();
  private readonly views = new Map<number, View>();
  private readonly thinner = new Map<number, Int32Array>();
  readonly base: LabelMap;

  /** `runs` are those of `base`; `greatest` is the greatest thickness that will be asked for, or what knows of any. */
  constructor(base: LabelMap, greatest: number | ThinParts, runs: Runs = findRuns(base)) {
    this.base = base;
    this.runs = runs;
    this.hasTransparent = hasTransparent(runs);
    const thickness =
      typeof greatest === "number" ? new Thickness(base, runs, Math.max(1, Math.ceil(greatest))) : greatest;
    this.open = { map: base, pixels: none, sources: none, runs, thickness };
  }

  /** Gives back what was kept to answer sooner. Views stay; what is asked afterwards is found anew. */
  release(): void {
    for (const { thickness } of [this.open, ...this.closed.values()]) thickness.release?.();
  }

  /** Returns the pixels of parts thinner than `thinnestPixels`, slits aside. */
  findVanished(thinnestPixels: number): Int32Array {
    const known =
      this.thinner.get(thinnestPixels) ??
      (this.isKnownEmpty(thinnestPixels)
        ? new Int32Array(0)
        : this.close(thinnestPixels).thickness.findThinner(thinnestPixels));
    this.thinner.set(thinnestPixels, known);
    return known;
  }

  /** The same where `isWorth` says of pixels among which all of them are that they are worth it; else none. */
  findWorthwhile(thinnestPixels: number, isWorth: (pixels: Int32Array) => boolean): Int32Array {
    const known = this.thinner.get(thinnestPixels);
    return known ?? this.close(thinnestPixels).thickness.findThinner(thinnestPixels, isWorth);
  }

  /**
   * Returns the map as seen when nothing thinner than `thinnestPixels` is told apart. A part stays if a disc of that
   * diameter fits into its paint near it; right-angled corners stay whole. The border of the flag and transparent
   * parts bound a paint like any other, but for slits: transparent parts thinner than that between paints belong to
   * these, and part nothing. Nothing is given to transparent parts. Where nothing goes, or nothing would remain, its map
   * is the very same object as `base`, or differs by its slits alone.
   */
  viewFrom(thinnestPixels: number): View {
    const known = this.views.get(thinnestPixels);
    if (known !== undefined) return known;
    const vanished = this.findVanished(thinnestPixels);
    const closed = this.close(thinnestPixels);
    const { map, pixels, sources } = closed;
    const view =
      vanished.length === 0 || isEverything(closed, vanished)
        ? { map, pixels, sources }
        : fill(closed, vanished);
    this.views.set(thinnestPixels, view);
    return view;
  }

  /** Returns a viewer of the part inside `box`. Where nothing of the whole is known to be thin, nothing of it is looked at. */
  crop(box: Box, greatest: number): Viewer {
    const known = this.isKnownEmpty(greatest) ? { findThinner: () => none } : greatest;
    return new Viewer(cropMap(this.base, box), known, cropRuns(this.runs, box));
  }

  private close(thinnestPixels: number): Closed {
    if (!this.hasTransparent) return this.open;
    const known = this.closed.get(thinnestPixels) ?? this.closeNew(thinnestPixels);
    this.closed.set(thinnestPixels, known);
    return known;
  }

  private closeNew(thinnestPixels: number): Closed {
    const { base } = this;
    const slits = closeSlits(base, thinnestPixels);
    if (slits === undefined) return this.open;
    const map = { ...base, labels: slits.labels };
    const closed = { map, pixels: slits.pixels, sources: slits.sources };
    const runs = findRuns(map);
    return {
      ...closed,
      runs,
      thickness: new Thickness(map, runs, Math.max(1, Math.ceil(thinnestPixels))),
    };
  }

  /** Where nothing is thinner than a larger thickness, nothing is thinner than `thinnestPixels`, unless slits part it. */
  private isKnownEmpty(thinnestPixels: number): boolean {
    if (this.hasTransparent) return false;
    for (const [thickness, vanished] of this.thinner)
      if (thickness >= thinnestPixels && vanished.length === 0) return true;
    return false;
  }
}

function fill(closed: Closed, vanished: Int32Array): View {
  const { labels, ...given } = fillVanished(closed.map, vanished);
  return {
    map: { ...closed.map, labels },
    ...(closed.pixels.length === 0 ? given : joinGivings(closed, given)),
  };
}

function isEverything({ map, runs }: Closed, { length }: Int32Array): boolean {
  let painted = 0;
  if (length < map.labels.length / 4) return false;
  for (let run = 0; run < runs.count; run += 1) {
    if (runs.label[run] !== 0) painted += (runs.start[run + 1] as number) - (runs.start[run] as number);
  }
  return length === painted;
}
