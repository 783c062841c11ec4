// Floor 4. How far a share that was counted among a few may be from that among all.

/** The standard normal deviate that leaves out 2.5 % at either end. */
const z = 1.959963984540054;

/**
 * Returns the limits, 0 to 1, between which the share lies with 95 % confidence where `count` of `total` chose so: Wilson's
 * score interval, without a correction for continuity. Throws RangeError unless 0 ≤ count ≤ total and total > 0.
 *
 * Example: 81 of 263 → 0.2553 to 0.3662.
 *
 * Source: E. B. Wilson, “Probable inference, the law of succession, and statistical inference”, Journal of the American
 * Statistical Association 22 (1927), 209–212.
 */
export function wilsonInterval(count: number, total: number): readonly [low: number, high: number] {
  if (!(count >= 0 && count <= total && total > 0)) throw new RangeError(`${count} of ${total}`);
  const share = count / total;
  const weight = z * z + total;
  const middle = (count + (z * z) / 2) / weight;
  const half = (z * Math.sqrt(total * share * (1 - share) + (z * z) / 4)) / weight;
  return [Math.max(0, middle - half), Math.min(1, middle + half)];
}
