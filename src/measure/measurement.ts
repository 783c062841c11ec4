// Floor 4. The shape of a measured drawing: what `measure --json` prints, in plain numbers.

import type { Hex } from "../colour/colour.ts";
import type { Tincture } from "../colour/tincture.ts";
import type { EffectLook } from "../svg/tree.ts";
import type { PaintPart } from "./edgefigure.ts";
import type { EdgeFigures } from "./edgemetric.ts";

/** One paint of a drawing. Shares are fractions of the flag's area; reflectance is cloth reflectance in percent. */
export interface MeasuredColour {
  /** `p1`, `p2` … by area, largest first; `p1s` is the part of `p1` that `only` selects. */
  readonly id: string;
  readonly hex: Hex;
  readonly name: string;
  /** Absent where it is a whole paint. */
  readonly part?: PaintPart;
  readonly tincture: Tincture;
  readonly share: number;
  readonly touchesBorder: boolean;
  readonly reflectance: number;
  /** Whether nothing of it is left from the viewing distance. */
  readonly vanishes: boolean;
  /** Lightest and darkest hex of a paint that is not one flat colour, or null. */
  readonly uneven: { readonly lightest: Hex; readonly darkest: Hex } | null;
}

/** A pair of paints that meet, with what `edgeMetrics` has of it. Lengths in flag heights. */
export interface MeasuredEdge extends EdgeFigures {
  readonly a: string;
  readonly b: string;
  readonly names: readonly [string, string];
  readonly length: number;
  /** The part of `length` with the focus on at least one side. */
  readonly focusLength: number;
}

/**
 * The focus from one distance (flag heights): how much of its area is left, 0 to 1; the clarity of its edges in percent
 * and the share of their length that is clear or strong, 0 to 1, both null where nothing of it has an edge.
 */
export interface FocusView {
  readonly distance: number;
  readonly left: number;
  readonly clarity: number | null;
  readonly outlineClear: number | null;
}

/**
 * What has to be seen, the charges. `share` of the flag's area; `clarity` of the focus edges alone from the viewing
 * distance, percent or null; `from` each distance step, empty where there is no focus. `lastsTo` is the last step, in flag
 * heights, from which its size lets it be seen (320 stands for 320 or more); null where it lasts to none of them, and
 * where `source` is `none`.
 */
export interface MeasuredFocus {
  readonly source: "found" | "named" | "none";
  readonly share: number;
  readonly clarity: number | null;
  readonly from: readonly FocusView[];
  readonly lastsTo: number | null;
}

/**
 * What makes figures less certain: what, with how many colours or shapes, which share 0 to 1 was exact, which paints, or what
 * that was left out looked like.
 */
export type Doubt =
  | { readonly about: "joined" | "faint"; readonly count: number }
  | { readonly about: "inexact"; readonly exactShare: number }
  | { readonly about: "nearLimit"; readonly names: readonly string[] }
  | { readonly about: "effect"; readonly looks: readonly EffectLook[] };

/** A drawing with its numbers. `distance` is the viewing distance in flag heights; 0 is the full drawing. */
export interface Measure {
  readonly file: string;
  readonly proportions: readonly [number, number];
  readonly distance: number;
  readonly colours: readonly MeasuredColour[];
  readonly edges: readonly MeasuredEdge[];
  readonly clearEdgeShare: number | null;
  readonly clarity: number | null;
  readonly strength: number | null;
  readonly weakestEdge: { readonly a: string; readonly b: string; readonly contrast: number } | null;
  readonly focus: MeasuredFocus;
  readonly warnings: readonly Doubt[];
}
