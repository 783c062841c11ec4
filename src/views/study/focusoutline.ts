// Floor 8. Where the band along what has to be seen lies: traced lines joined to rings, those within another left out.

type Point = readonly [number, number];
type Line = readonly Point[];

/** Ends of lines that meet lie nearer than this, in flag heights: tracing moves them by less (our own judgement). */
const joinWithin = 0.03;

/** The outer rings around lines, all in flag heights: x, y, x, y … */
export function traceOutline(lines: readonly (readonly number[])[]): readonly (readonly number[])[] {
  const rings = joinLines(lines.map(pairUp).filter((line) => line.length > 1));
  return rings
    .filter((ring) => !rings.some((other) => other !== ring && isWithin(ring, other)))
    .map((ring) => ring.flat());
}

function pairUp(points: readonly number[]): Line {
  return points.flatMap((x, at): readonly Point[] => (at % 2 === 0 ? [[x, points[at + 1] ?? 0]] : []));
}

/** Each line goes on at both ends with the one that is nearest, until it comes back to where it began or nothing is near. */
function joinLines(lines: readonly Line[]): readonly Line[] {
  const rest = [...lines];
  const rings: Line[] = [];
  for (let line = rest.pop(); line !== undefined; line = rest.pop()) {
    const forth = goOn(line, rest);
    rings.push(goOn([...forth].reverse(), rest));
  }
  return rings;
}

/** Takes out of `rest` what it joins to the end of a line. */
function goOn(line: Line, rest: Line[]): Line {
  const end = line.at(-1);
  let nearest = Math.min(joinWithin, gap(end, line[0]));
  let found: { readonly at: number; readonly next: Line } | undefined;
  for (const [at, one] of rest.entries()) {
    for (const next of [one, [...one].reverse()]) {
      const away = gap(end, next[0]);
      if (away < nearest) [nearest, found] = [away, { at, next }];
    }
  }
  if (found === undefined) return line;
  rest.splice(found.at, 1);
  return goOn([...line, ...found.next], rest);
}

function gap(a: Point | undefined, b: Point | undefined): number {
  return a && b ? Math.hypot(a[0] - b[0], a[1] - b[1]) : Number.POSITIVE_INFINITY;
}

/** By its first point: a ray from it crosses the other an odd number of times. */
function isWithin([first]: Line, other: Line): boolean {
  const [x, y] = first ?? [0, 0];
  let isInside = false;
  for (const [at, [x1, y1]] of other.entries()) {
    const [x2, y2] = other.at(at - 1) ?? [x1, y1];
    if (y1 > y !== y2 > y && x < x1 + ((y - y1) / (y2 - y1)) * (x2 - x1)) isInside = !isInside;
  }
  return isInside;
}
