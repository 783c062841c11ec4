// Floor 4. Into how many equal parts a height is divided so that lengths are whole numbers of them.

/** Parts that are still told (our own judgement): many drawings are 1200 units high. */
const mostParts = 1200;
/** What rounding leaves of nothing, in parts. */
const tiny = 1e-6;

/**
 * Returns the least number of parts of the height in which every length of a group is whole, for as many groups as there are
 * such numbers up to 1200, the first ones first; 1 where there is none. Lengths are in heights.
 *
 * Example: [[0.5], [1 / 3, 0.25]] → 12.
 */
export function divideHeight(groups: readonly (readonly number[])[]): number {
  let parts = 1;
  for (const group of groups) {
    const all = group.reduce<number | undefined>((sum, length) => {
      const own = findDivisor(length);
      return sum === undefined || own === undefined ? undefined : joinDivisors(sum, own);
    }, parts);
    if (all !== undefined && all <= mostParts) parts = all;
  }
  return parts;
}

/** Whether each of these lengths, in heights, is a whole number of parts of the height. */
export function areWhole(lengths: readonly number[], parts: number): boolean {
  return lengths.every((length) => isWhole(length * parts));
}

function findDivisor(length: number): number | undefined {
  for (let parts = 1; parts <= mostParts; parts += 1) if (isWhole(length * parts)) return parts;
  return undefined;
}

function isWhole(value: number): boolean {
  return Math.abs(value - Math.round(value)) <= tiny;
}

function joinDivisors(first: number, second: number): number {
  let [a, b] = [first, second];
  while (b > 0) [a, b] = [b, a % b];
  return (first / a) * second;
}
