// Floor 6. What is known of a study's change among all single changes of its drawing: plain data for pages.
import type { Hex } from "../../colour/colour.ts";
import type { ComparedEdge, Verdict } from "../../measure/comparison.ts";
import type { Standing } from "../../measure/options/standing.ts";
import type { Matrix } from "./optionmatrix.ts";
import type { OptionsReport } from "./rankoptions.ts";

/** Where a change stands; `lost` is how many edges it makes unclear, merged ones among them. */
export interface CountedStanding extends Standing {
  readonly lost: number;
}

/** A change that the author tried and tells about, measured as a comparison. `drawing` is its redesign as SVG text. */
export interface NotedResult {
  /** Which of the study's `options` it is, from 0. */
  readonly index: number;
  readonly replace: Hex;
  readonly with: Hex;
  readonly only?: string;
  readonly part?: string;
  readonly name: string;
  readonly note?: string;
  readonly clarity: number | null;
  readonly strength: number | null;
  readonly focusClarity: number | null;
  readonly verdict: Verdict;
  /** What got worse and decides, longest first. */
  readonly price: readonly ComparedEdge[];
  readonly standing: CountedStanding | null;
  readonly drawing: string;
}

export interface StudyRanking {
  readonly report: OptionsReport;
  /** Every option as a small flag; absent where there is none. */
  readonly matrix?: Matrix;
  readonly standing: CountedStanding | null;
  readonly noted: readonly NotedResult[];
}
