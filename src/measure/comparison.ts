// Floor 4. The shape of one comparison: an original against the same drawing after one colour change.
import type { Measure } from "./measurement.ts";
import type { Outcome, Verdict } from "./outcome.ts";

export type { Outcome, Verdict };

/** One edge before and after. `contrast` in percent; before is null for a parted edge; a merged edge is 0 after. */
export interface ComparedEdge {
  readonly a: string;
  readonly b: string;
  /** Names of the two paints before and after: `[[a, b] before, [a, b] after]`. */
  readonly names: readonly [readonly [string, string], readonly [string, string]];
  /** In flag heights. */
  readonly length: number;
  readonly contrast: readonly [number | null, number];
  readonly outcome: Outcome;
}

export interface Comparison {
  readonly change: {
    readonly replace: string;
    readonly with: string;
    readonly only?: string;
    /** What readers call the part that `only` selects. */
    readonly part?: string;
  };
  readonly before: Measure;
  readonly after: Measure;
  readonly edges: readonly ComparedEdge[];
  /** Fractions 0 to 1, before and after; null where there is no edge. */
  readonly clearEdgeShare: readonly [number | null, number | null];
  /** Percent, before and after; null where there is no edge. */
  readonly clarity: readonly [number | null, number | null];
  readonly strength: readonly [number | null, number | null];
  readonly verdict: Verdict;
  /** What got worse and decides: edges lost, worse, merged, or parted and not clear; longest first. */
  readonly price: readonly ComparedEdge[];
}
