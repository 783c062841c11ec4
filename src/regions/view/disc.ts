// Floor 3, part of step 3. Discs as lists of offsets, cut down to the directions in which they can matter.

/** Offsets with four times their squared length, which is a whole number for pixel centres and corners alike. */
export interface Stamp {
  readonly dx: Int32Array;
  readonly dy: Int32Array;
  readonly fourSquares: Int32Array;
}

/** Bits of the sides on which a pixel has no neighbour of its own kind. */
export const left = 1;
export const right = 2;
export const up = 4;
export const down = 8;

type Half = 0 | 1;
const known: readonly [Map<number, readonly Stamp[]>, Map<number, readonly Stamp[]>] = [new Map(), new Map()];

/**
 * Returns the 16 stamps of a disc, by the sides that are open. A stamp holds the whole offsets no longer than `radius`
 * that lie straight on or towards an open side: where a neighbour is of the same kind, whatever lies beyond it is
 * nearer to the neighbour.
 */
export function stampsFor(radius: number): readonly Stamp[] {
  return makeStamps(radius, 0);
}

/** The same from a pixel corner, numbered by the pixel right below it: to that one and the three others around it at least. */
export function stampsFromCorner(radius: number): readonly Stamp[] {
  return makeStamps(radius, 1);
}

/** Returns the offsets from a pixel corner to pixels over `inner` and no further than `radius` away, furthest first. */
export function ringFromCorner(radius: number, inner: number): Stamp {
  return collect(radius, 1, (x, y) => Math.hypot(x + 0.5, y + 0.5) > inner);
}

function makeStamps(radius: number, half: Half): readonly Stamp[] {
  const stamps =
    known[half].get(radius) ?? Array.from({ length: 16 }, (_, sides) => makeStamp(radius, half, sides));
  known[half].set(radius, stamps);
  return stamps;
}

function makeStamp(radius: number, half: Half, sides: number): Stamp {
  const isToward = (offset: number, before: number, behind: number): boolean =>
    offset < -half ? before !== 0 : offset <= 0 || behind !== 0;
  return collect(
    radius,
    half,
    (x, y) => isToward(x, sides & left, sides & right) && isToward(y, sides & up, sides & down),
  );
}

function collect(radius: number, half: Half, isWanted: (x: number, y: number) => boolean): Stamp {
  const span = Math.ceil(radius) + 1;
  const found: { readonly x: number; readonly y: number; readonly fourSquares: number }[] = [];
  for (let y = -span; y <= span; y += 1) {
    for (let x = -span; x <= span; x += 1) {
      const fourSquares = (2 * x + half) ** 2 + (2 * y + half) ** 2;
      if (fourSquares <= 4 * radius * radius && isWanted(x, y)) found.push({ x, y, fourSquares });
    }
  }
  found.sort((a, b) => b.fourSquares - a.fourSquares);
  return {
    dx: Int32Array.from(found, ({ x }) => x),
    dy: Int32Array.from(found, ({ y }) => y),
    fourSquares: Int32Array.from(found, (offset) => offset.fourSquares),
  };
}
