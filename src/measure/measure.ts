// Floor 4. The shape of a measured drawing: what `measure --json` prints, in plain numbers.

import type { Hex } from "../colour/colour.ts";
import type { Grade } from "../colour/contrast.ts";
import type { Tincture } from "../colour/tincture.ts";

/** The part of a paint that `only` selects: `of` is the name of the whole, `called` what readers call the part. */
export interface PaintPart {
  readonly of: string;
  readonly called?: string;
}

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

/** Contrast (percent), grade and ΔE00 of an edge as one kind of colour vision sees it. */
export interface VisionFigures {
  readonly contrast: number;
  readonly grade: Grade;
  readonly deltaE00: number;
}

/** A pair of paints that meet. Length in flag heights, contrast in percent, contrast ratio 1 to 21. */
export interface MeasuredEdge {
  readonly a: string;
  readonly b: string;
  readonly names: readonly [string, string];
  readonly length: number;
  /** The part of `length` with the focus on at least one side. */
  readonly focusLength: number;
  readonly contrast: number;
  readonly grade: Grade;
  readonly contrastRatio: number;
  readonly deltaE00: number;
  readonly hueOnly: boolean;
  /** `both metals` and `both colours` break the rule of tincture; null where the rule does not speak. */
  readonly tincture: "both metals" | "both colours" | null;
  readonly vision: {
    readonly protan: VisionFigures;
    readonly deutan: VisionFigures;
    readonly tritan: VisionFigures;
    readonly grey: { readonly deltaE00: number };
  };
}

/**
 * What has to be seen, the charges. `share` of the flag's area; `clarity` of the focus edges alone, percent or null;
 * `readsTo` is a distance step in flag heights (320 stands for 320 or more), null where it fails at the first.
 */
export interface MeasuredFocus {
  readonly source: "found" | "named" | "none";
  readonly share: number;
  readonly clarity: number | null;
  readonly readsTo: number | null;
}

/** A drawing with its numbers. `distance` is the viewing distance in flag heights; 0 is the full drawing. */
export interface Measure {
  readonly file: string;
  readonly proportions: readonly [number, number];
  readonly distance: number;
  readonly colours: readonly MeasuredColour[];
  readonly edges: readonly MeasuredEdge[];
  readonly clearEdgeShare: number | null;
  readonly clarity: number | null;
  readonly weakestEdge: { readonly a: string; readonly b: string; readonly contrast: number } | null;
  readonly focus: MeasuredFocus;
  readonly warnings: readonly string[];
}
