// Floor 4. Numbers in percent as text, for pages, pictures and the command alike: rounded, but never so far that the
// text says what the number does not.
import { gradeOf } from "../colour/contrast.ts";

/** Writes a number that is rounded already, with exactly so many decimals. */
export type WriteNumber = (value: number, decimals: number) => string;

interface Rounded {
  readonly value: number;
  readonly decimals: number;
}

/** In percent: what arithmetic leaves of a sum or of a half. */
const noise = 1e-9;
/** More are cut off, towards the side of the line on which the number is. */
const mostDecimals = 2;

const writePlain: WriteNumber = (value, decimals) => value.toFixed(decimals);
const writePercent: WriteNumber = (value, decimals) => `${value.toFixed(decimals)} %`;

/**
 * Returns a number in percent, 0 or more, as text; `none` for null. 100 stands only for 100 and 0 only for 0: beside
 * them another decimal is shown, two at most.
 *
 * Examples, without decimals: 58.3 → `58 %`; 99.9 → `99.9 %`; 0.004 → `0.01 %`.
 */
export function formatPercent(percent: number | null, decimals = 1, write = writePercent): string {
  if (percent === null) return "none";
  const rounded = roundPercent(percent, decimals);
  return write(rounded.value, rounded.decimals);
}

/** Returns a fraction, 0 to 1, in percent, as {@link formatPercent} does. */
export function formatShare(share01: number | null, decimals = 1, write = writePercent): string {
  return formatPercent(share01 === null ? null : 100 * share01, decimals, write);
}

/**
 * Returns a contrast, in percent, as text that has the grade of the unrounded number, and 0 and 100 only where it is
 * that. Throws RangeError where it is not 0 to 100.
 *
 * Examples, with one decimal: 44.96, soft → `44.96 %`; 44.999 → `44.99 %`; 45.04, clear → `45.0 %`.
 */
export function formatContrast(contrast: number, decimals = 1, write = writePercent): string {
  const grade = gradeOf(contrast);
  const rounded = roundKeeping(
    contrast,
    decimals,
    (value) => gradeOf(value) === grade && keepsEnds(value, contrast),
  );
  return write(rounded.value, rounded.decimals);
}

/** Returns a ΔE00 as text with one decimal, or two where one would move it to the other side of `limit`. */
export function formatDifference(deltaE00: number, limit: number, write = writePlain): string {
  const rounded = roundKeeping(deltaE00, 1, (value) => value < limit === deltaE00 < limit);
  return write(rounded.value, rounded.decimals);
}

/** Returns a limit in percent with one decimal, rounded so that what keeps the text keeps the limit. */
export function formatLimit(percent: number, kind: "at least" | "at most"): string {
  const round = kind === "at least" ? Math.ceil : Math.floor;
  return writePercent(round(10 * percent + (kind === "at least" ? -noise : noise)) / 10, 1);
}

/** Returns whether a fraction, 0 to 1, is the whole: only then may a text say “all” or “every”. */
export function isWhole(share01: number): boolean {
  return 100 * share01 >= 100 - noise;
}

function roundPercent(percent: number, decimals: number): Rounded {
  return roundKeeping(percent, decimals, (value) => keepsEnds(value, percent));
}

function keepsEnds(value: number, percent: number): boolean {
  return (value === 0) === percent <= noise && (value === 100) === Math.abs(percent - 100) <= noise;
}

function roundKeeping(value: number, decimals: number, isKept: (rounded: number) => boolean): Rounded {
  for (let more = decimals; more <= mostDecimals; more += 1) {
    const rounded = Math.round(value * 10 ** more + noise) / 10 ** more;
    if (isKept(rounded)) return { value: rounded, decimals: more };
  }
  const [scale, shift] = [10 ** mostDecimals, noise];
  const below = Math.floor(value * scale + shift) / scale;
  return { value: isKept(below) ? below : below + 1 / scale, decimals: mostDecimals };
}
