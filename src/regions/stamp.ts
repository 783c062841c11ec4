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

const known = new Map<string, readonly Stamp[]>();

/**
 * Returns the 16 stamps of a disc, by the sides that are open. A stamp holds the offsets (x, y) with
 * |(x − half / 2, y − half / 2)| ≤ `radius` that lie straight on or towards an open side: where a neighbour is of the
 * same kind, whatever lies beyond it is nearer to the neighbour. `half` is 0 between pixel centres, 1 from a pixel to
 * upper left corners, −1 from such a corner to pixels.
 */
export function stampsFor(radius: number, half: -1 | 0 | 1): readonly Stamp[] {
  const key = `${radius} ${half}`;
  const stamps = known.get(key) ?? Array.from({ length: 16 }, (_, sides) => makeStamp(radius, half, sides));
  known.set(key, stamps);
  return stamps;
}

function makeStamp(radius: number, half: -1 | 0 | 1, sides: number): Stamp {
  const span = Math.ceil(radius) + 1;
  const found: { readonly x: number; readonly y: number; readonly fourSquares: number }[] = [];
  for (let y = -span; y <= span; y += 1) {
    for (let x = -span; x <= span; x += 1) {
      const fourSquares = (2 * x - half) ** 2 + (2 * y - half) ** 2;
      if (
        fourSquares > 4 * radius * radius ||
        !isToward(2 * x - half, sides & left, sides & right) ||
        !isToward(2 * y - half, sides & up, sides & down)
      )
        continue;
      found.push({ x, y, fourSquares });
    }
  }
  return {
    dx: Int32Array.from(found, ({ x }) => x),
    dy: Int32Array.from(found, ({ y }) => y),
    fourSquares: Int32Array.from(found, (offset) => offset.fourSquares),
  };
}

/** Up to half a pixel off, the neighbours are no nearer, so those offsets are never left out. */
function isToward(twice: number, before: number, behind: number): boolean {
  return twice < -1 ? before !== 0 : twice <= 1 || behind !== 0;
}
