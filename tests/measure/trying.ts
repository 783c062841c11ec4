// Every single change of a flag tried a second time, written from the design's words alone: nothing comes from src/.
import { difference, difference76 } from "./oracle.ts";
import { after, type Flag, focusClarityOf, judge, marksOf } from "./twin.ts";

export interface TriedByHand {
  /** Paint by index, and the colour tried. */
  readonly at: number;
  readonly next: string;
  readonly clarity: number;
  readonly strength: number;
  readonly isSameFamily: boolean;
  readonly departure: number;
  /** The largest share of a charge's outline that merges. */
  readonly mergedOutline: number;
}

/** The largest share of any charge's outline that merges when paint `at` becomes `next`. */
const mergedOutline = (flag: Flag, at: number, next: string): number => {
  const changed = flag.paints.map((hex, index) => (index === at ? next : hex));
  const shares = (flag.charges ?? []).map((outline) => {
    let [merged, all] = [0, 0];
    for (const [a, b, length] of outline) {
      all += length;
      const near = (paints: readonly string[]) => difference(paints[a] ?? "", paints[b] ?? "") < 5;
      if (near(changed) && !near(flag.paints)) merged += length;
    }
    return all === 0 ? 0 : merged / all;
  });
  return Math.max(0, ...shares);
};

/** Every paint by every candidate that is 10 CIELAB units or more from today's colour, in the given order. */
export const tryAll = (
  flag: Flag,
  candidates: readonly string[],
  familyOf: (hex: string) => string,
): TriedByHand[] =>
  flag.paints.flatMap((today, at) =>
    candidates
      .filter((next) => difference76(today, next) >= 10)
      .map((next) => {
        const { clarity, strength } = after(flag, at, next);
        return {
          at,
          next,
          clarity: clarity ?? 0,
          strength: strength ?? 0,
          isSameFamily: familyOf(next) === familyOf(today),
          departure: difference(today, next),
          mergedOutline: mergedOutline(flag, at, next),
        };
      }),
  );

/** Clarity, then strength, in whole percent; the same family first; the least departure; the given order. */
const inOrder = (x: TriedByHand, y: TriedByHand): number =>
  Math.round(y.clarity) - Math.round(x.clarity) ||
  Math.round(y.strength) - Math.round(x.strength) ||
  Number(y.isSameFamily) - Number(x.isSameFamily) ||
  x.departure - y.departure;

/** Those in order, and those left out because a charge loses a third of its outline or more. */
export const rankByHand = (tried: readonly TriedByHand[]) => ({
  ranked: tried.filter(({ mergedOutline }) => mergedOutline < 1 / 3).sort(inOrder),
  vanishing: tried.filter(({ mergedOutline }) => mergedOutline >= 1 / 3),
});

/**
 * Paints by index whose best option is within 3 points of the best of all, three at most, in the order of options; null
 * where nothing gains 5 points.
 */
export const changeFirst = (ranked: readonly TriedByHand[], today: number): number[] | null => {
  const best = ranked[0];
  if (best === undefined || Math.round(best.clarity) - Math.round(today) < 5) return null;
  const first: number[] = [];
  for (const { at, clarity } of ranked) {
    const isNear = Math.round(best.clarity) - Math.round(clarity) <= 3;
    if (isNear && !first.includes(at) && first.length < 3) first.push(at);
  }
  return first;
};

/** Focus clarity after the change: edges of the focus alone, a merged one counting 0. */
export const focusClarityAfter = (flag: Flag, at: number, next: string): number | null =>
  focusClarityOf(
    judge(
      flag,
      flag.paints.map((hex, index) => (index === at ? next : hex)),
    ).map(({ after: percent, focusLength }) => [percent, focusLength] as const),
  );

/** Clarity and strength of the flag as it is. */
export const today = (flag: Flag) => marksOf(judge(flag, flag.paints), "before");
