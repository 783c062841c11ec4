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

const known = new Map<number, readonly Stamp[]>();
const knownFromCorner = new Map<number, Stamp>();

/**
 * Returns the 16 stamps of a disc, by the sides that are open. A stamp holds the whole offsets no longer than `radius`
 * that lie straight on or towards an open side: where a neighbour is of the same kind, whatever lies beyond it is
 * nearer to the neighbour.
 */
export function stampsFor(radius: number): readonly Stamp[] {
  const stamps = known.get(radius) ?? Array.from({ length: 16 }, (_, sides) => makeStamp(radius, sides));
  known.set(radius, stamps);
  return stamps;
}

function makeStamp(radius: number, sides: number): Stamp {
  return collect(
    radius,
    0,
    (x, y) => isToward(x, sides & left, sides & right) && isToward(y, sides & up, sides & down),
  );
}

function isToward(offset: number, before: number, behind: number): boolean {
  return offset < 0 ? before !== 0 : offset === 0 || behind !== 0;
}

/**
 * Returns the offsets from a pixel corner, numbered by the pixel right below it, to pixels no further than `radius`,
 * furthest first: that is where another paint is met soonest.
 */
export function stampFromCorner(radius: number): Stamp {
  const stamp = knownFromCorner.get(radius) ?? collect(radius, 1, () => true);
  knownFromCorner.set(radius, stamp);
  return stamp;
}

function collect(radius: number, half: 0 | 1, isWanted: (x: number, y: number) => boolean): Stamp {
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
