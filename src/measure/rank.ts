// Floor 4, step 4c. Options in order, equals side by side, and the colour to change first.
import type { Hex } from "../colour/colour.ts";
import type { Option } from "./options.ts";

/** `place` counts from 1 and is shared: equals have the same, and the next group goes on after all of them. */
export interface RankedOption extends Option {
  readonly place: number;
}

export interface Ranking {
  readonly options: readonly RankedOption[];
  /** Options that merge an edge of the focus: by paint, then in the order given, without a place. */
  readonly vanishing: readonly Option[];
}

/** A paint whose best option gains as much as any. `best` is the first of its options that gain 1 or more. */
export interface FirstChange {
  readonly id: string;
  readonly hex: Hex;
  readonly best: RankedOption;
}

/** Points of clarity from which a gain counts. */
const clarityStep = 1;

/**
 * Puts options in order: clarity rounded to whole percent, highest first; inside such a group of equals the smaller
 * departure first; then the order given.
 */
export function rankOptions(options: readonly Option[]): Ranking {
  const sorted = options
    .filter((option) => !option.vanishes)
    .map((option, index) => ({
      option,
      index,
      clarity: roundClarity(option.clarity),
      departure: roundDeparture(option),
    }))
    .sort((x, y) => y.clarity - x.clarity || x.departure - y.departure || x.index - y.index);
  let place = 1;
  const ranked = sorted.map(({ option, clarity }, index) => {
    if (index > 0 && clarity !== sorted[index - 1]?.clarity) place = index + 1;
    return { ...option, place };
  });
  return {
    options: ranked,
    vanishing: options.filter((option) => option.vanishes),
  };
}

/** Returns clarity in whole percent, as options are compared by it. What arithmetic leaves of a half rounds up. */
export function roundClarity(percent: number): number {
  return Math.round(percent + 1e-9);
}

/**
 * Returns the paints to change first: those whose best option has the highest clarity, in whole percent; if several, the
 * ones whose best option departs least. Null where no option gains 1 or more on `today`, the clarity as it is.
 */
export function findFirst(options: readonly RankedOption[], today: number): readonly FirstChange[] | null {
  const best = new Map<string, FirstChange>();
  for (const option of options) {
    if (option.clarity - today < clarityStep - 1e-9 || best.has(option.id)) continue;
    best.set(option.id, { id: option.id, hex: option.replace, best: option });
  }
  const all = [...best.values()];
  const top = Math.max(...all.map((first) => roundClarity(first.best.clarity)));
  const level = all.filter((first) => roundClarity(first.best.clarity) === top);
  const least = Math.min(...level.map((first) => roundDeparture(first.best)));
  const chosen = level.filter((first) => roundDeparture(first.best) === least);
  return chosen.length === 0 ? null : chosen;
}

/** ΔE00 is the same both ways round, save for the last digits that arithmetic leaves. */
function roundDeparture({ deltaE00 }: Option): number {
  return Math.round(deltaE00 * 1e6) / 1e6;
}
