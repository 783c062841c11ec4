// Floor 1. Guards the numbers: whatever goes into a formula is finite and inside its range, or a RangeError says which value was not.
import type { LinearRgb } from "./colour.ts";

/** How far a value may stray out of its range by rounding alone (a weighted mean of ones can be 1 + 2e-16). */
const roundingSlack = 1e-9;

/**
 * Returns `value`, moved onto the nearer limit where it strays out of `low` to `high` by rounding alone.
 *
 * Throws RangeError, with the value, where it is NaN, infinite or further outside.
 */
export function checkRange(what: string, value: number, low: number, high: number): number {
  if (!(value >= low - roundingSlack && value <= high + roundingSlack)) {
    throw new RangeError(`${what} must be a number from ${low} to ${high}, got ${value}`);
  }
  return Math.min(high, Math.max(low, value));
}

/** Returns `linear` with each component checked to be 0 to 1. Throws RangeError as {@link checkRange} does. */
export function checkLinear(linear: LinearRgb): LinearRgb {
  return {
    linearR: checkRange("linear red", linear.linearR, 0, 1),
    linearG: checkRange("linear green", linear.linearG, 0, 1),
    linearB: checkRange("linear blue", linear.linearB, 0, 1),
  };
}
