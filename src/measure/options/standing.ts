// Floor 4, step 6e. Where one change stands among the ranked options. Looks are the author's: it says numbers, no advice.
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

/**
 * Says a standing in one neutral sentence. `lost` is how many edges the change makes unclear, merged ones among them.
 *
 * Examples: “3rd of 58 in clarity, within 2 points of the best; no edge is lost or merged.” “1st of 58 in clarity, level with 6
 * others; 1 edge is lost or merged.”
 */
export function describeStanding({ place, total, level, behindBest }: Standing, lost: number): string {
  const shared = level === 0 ? "" : `, level with ${level === 1 ? "1 other" : `${level} others`}`;
  const behind =
    behindBest === 0 ? "" : `, within ${behindBest === 1 ? "1 point" : `${behindBest} points`} of the best`;
  const edges = lost === 0 ? "no edge is" : lost === 1 ? "1 edge is" : `${lost} edges are`;
  return `${formatOrdinal(place)} of ${total} in clarity${shared}${behind}; ${edges} lost or merged.`;
}

function formatOrdinal(count: number): string {
  const tens = count % 100;
  const ones = count % 10;
  const ending =
    tens >= 11 && tens <= 13 ? "th" : ones === 1 ? "st" : ones === 2 ? "nd" : ones === 3 ? "rd" : "th";
  return `${count}${ending}`;
}
