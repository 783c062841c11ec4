// Floor 4, step 6c. Options in order, equals side by side, by the colour that is changed, and the colours to change first.
import type { Hex } from "../../colour/colour.ts";
import { wordOf } from "../../colour/colourname.ts";
import { clearFrom } from "../../colour/contrast.ts";
import { roundMark } from "../clarity.ts";
import { edgeLimits, flagLimits } from "../limit.ts";
import type { Option, OptionMarks, TodayEdge } from "./tryoptions.ts";

/**
 * `place` counts from 1 and is shared: equals have the same, and the next group goes on after all of them. `placeInColour`
 * is the same among the options of one paint.
 */
export interface RankedOption extends Option {
  readonly place: number;
  readonly placeInColour: number;
}

export interface Ranking {
  readonly options: readonly RankedOption[];
  /** Options by which a charge loses a third of its outline: by paint, then in the order given, without a place. */
  readonly vanishing: readonly Option[];
}

/** A paint with its options: the first of them, those that do equally well, and how many there are in all. */
export interface ColourOptions {
  readonly id: string;
  readonly hex: Hex;
  /** Share of the flag's area that changes, 0 to 1. */
  readonly share: number;
  readonly best: RankedOption;
  readonly equals: readonly RankedOption[];
  readonly count: number;
}

/**
 * Puts options in order: clarity in whole percent, then strength in whole percent, highest first; then what stays of the
 * same family of colour; then the smaller departure; then the order given.
 */
export function rankOptions(options: readonly Option[]): Ranking {
  const sorted = options
    .filter(({ mergedOutline }) => mergedOutline < edgeLimits.merged)
    .map((option, index) => ({
      option,
      keys: [
        -roundMark(option.clarity),
        -roundMark(option.strength),
        wordOf(option.replace) === wordOf(option.with) ? 0 : 1,
        roundDeparture(option),
        index,
      ],
    }))
    .sort((x, y) => compareKeys(x.keys, y.keys))
    .map(({ option }) => option);
  const placeOf = (option: Option, among: readonly Option[]): number =>
    1 + among.findIndex((other) => areEqual(option, other));
  const byPaint = groupById(sorted);
  return {
    options: sorted.map((option) => ({
      ...option,
      place: placeOf(option, sorted),
      placeInColour: placeOf(option, byPaint.get(option.id) ?? []),
    })),
    vanishing: options.filter(({ mergedOutline }) => mergedOutline >= edgeLimits.merged),
  };
}

/** Returns the options by the paint that is changed, the paint with the best first. */
export function groupByColour(ranked: readonly RankedOption[]): readonly ColourOptions[] {
  return [...groupById(ranked).values()].flatMap((options) => {
    const [best, ...others] = options;
    if (best === undefined) return [];
    const equals = others.filter(({ placeInColour }) => placeInColour === 1);
    return [{ id: best.id, hex: best.replace, share: best.share, best, equals, count: options.length }];
  });
}

/**
 * Returns the paints to change first, in the order of their options: those whose best option comes within 3 points of
 * clarity of the best of all, three at most. Null where no option gains 5 points on `today`, the clarity as it is.
 */
export function findFirst(
  colours: readonly ColourOptions[],
  { clarity }: Pick<OptionMarks, "clarity">,
): readonly ColourOptions[] | null {
  const [first] = colours;
  if (first === undefined) return null;
  const top = roundMark(first.best.clarity);
  if (top - roundMark(clarity) < flagLimits.gain) return null;
  return colours
    .filter(({ best }) => top - roundMark(best.clarity) <= flagLimits.firstWithin)
    .slice(0, flagLimits.mostFirst);
}

/**
 * Returns which of a paint's edges gains most by its best option: its weight times what it lacks of clear today; null where
 * none of those that get clearer lacks anything.
 */
export function findMostGained({ best }: ColourOptions, edges: readonly TodayEdge[]): TodayEdge | null {
  const up = new Set([...best.gained, ...best.better].map(({ a, b }) => `${a} ${b}`));
  const lack = ({ weight, contrast }: TodayEdge): number => weight * (clearFrom - contrast);
  const [most = null] = edges
    .filter(({ pair, contrast }) => up.has(`${pair.a} ${pair.b}`) && contrast < clearFrom)
    .sort((one, other) => lack(other) - lack(one));
  return most;
}

/** Whether two options do equally well. */
export function areEqual(one: OptionMarks, other: OptionMarks): boolean {
  return (
    roundMark(one.clarity) === roundMark(other.clarity) &&
    roundMark(one.strength) === roundMark(other.strength)
  );
}

function groupById<O extends Option>(options: readonly O[]): ReadonlyMap<string, readonly O[]> {
  const groups = new Map<string, O[]>();
  for (const option of options) {
    const group = groups.get(option.id);
    if (group === undefined) groups.set(option.id, [option]);
    else group.push(option);
  }
  return groups;
}

function compareKeys(one: readonly number[], other: readonly number[]): number {
  for (const [index, key] of one.entries()) {
    const difference = key - (other[index] ?? 0);
    if (difference !== 0) return difference;
  }
  return 0;
}

/** ΔE00 is the same both ways round, save for the last digits that arithmetic leaves. */
function roundDeparture({ deltaE00 }: Option): number {
  return Math.round(deltaE00 * 1e6) / 1e6;
}
