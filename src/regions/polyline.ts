// Floor 3, part of step 4. Open paths of x, y pairs: straightened within a tolerance, and measured.

/**
 * Returns the path with every point left out that lies within `tolerance` of the straight piece between the points
 * that stay (Douglas and Peucker 1973). First and last point stay; where they are the same point the path is split at
 * the point furthest from it.
 */
export function simplify(points: readonly number[], tolerance: number): number[] {
  const count = points.length / 2;
  if (count <= 2) return [...points];
  const keep = new Uint8Array(count);
  keep[0] = 1;
  keep[count - 1] = 1;
  const stack: number[] = [0, count - 1];
  while (stack.length > 0) {
    const last = stack.pop() as number;
    const first = stack.pop() as number;
    const { index, distance } = findFurthest(points, first, last);
    if (distance <= tolerance) continue;
    keep[index] = 1;
    stack.push(first, index, index, last);
  }
  const kept: number[] = [];
  for (let at = 0; at < count; at += 1)
    if (keep[at] === 1) kept.push(points[2 * at] as number, points[2 * at + 1] as number);
  return kept;
}

function findFurthest(
  points: readonly number[],
  first: number,
  last: number,
): { readonly index: number; readonly distance: number } {
  const x0 = points[2 * first] as number;
  const y0 = points[2 * first + 1] as number;
  const dx = (points[2 * last] as number) - x0;
  const dy = (points[2 * last + 1] as number) - y0;
  const chord = Math.hypot(dx, dy);
  let index = first;
  let distance = -1;
  for (let at = first + 1; at < last; at += 1) {
    const px = (points[2 * at] as number) - x0;
    const py = (points[2 * at + 1] as number) - y0;
    const away = chord === 0 ? Math.hypot(px, py) : Math.abs(dx * py - dy * px) / chord;
    if (away > distance) {
      distance = away;
      index = at;
    }
  }
  return { index, distance };
}

/** Length of a path of x, y pairs, in the unit of its points. */
export function measurePath(points: readonly number[]): number {
  let length = 0;
  for (let at = 2; at < points.length; at += 2) {
    length += Math.hypot(
      (points[at] as number) - (points[at - 2] as number),
      (points[at + 1] as number) - (points[at - 1] as number),
    );
  }
  return length;
}
