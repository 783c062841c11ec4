// Floor 4, step 6e. Where one change stands among the ranked options.
import { roundMark } from "../clarity.ts";
import type { RankedOption } from "./rank.ts";

/** Where a change stands. Clarity in whole percent; `total` counts the change itself, whether it was an option or not. */
export interface Standing {
  readonly place: number;
  readonly total: number;
  /** How many others have the same place. */
  readonly level: number;
  /** Points of clarity to the best option: 0 where none is better. */
  readonly behindBest: number;
}

/** A change to be placed. `clarity` in percent, as its comparison has it. */
export interface PlacedChange {
  readonly replace: string;
  readonly with: string;
  /** Whether only a part of the paint changes: then it is none of the options. */
  readonly isPart: boolean;
  readonly clarity: number;
}

/** Returns where `change` stands in clarity, in whole percent, among `options`. */
export function findStanding(change: PlacedChange, options: readonly RankedOption[]): Standing {
  const own = roundMark(change.clarity);
  const others = options
    .filter((option) => change.isPart || option.replace !== change.replace || option.with !== change.with)
    .map((option) => roundMark(option.clarity));
  const best = others.reduce((most, clarity) => Math.max(most, clarity), own);
  return {
    place: 1 + others.filter((clarity) => clarity > own).length,
    total: others.length + 1,
    level: others.filter((clarity) => clarity === own).length,
    behindBest: best - own,
  };
}
