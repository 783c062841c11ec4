// Floor 8. Traced lines as short pieces, and what of them a part of the flag shows.
import type { EdgeLine } from "../../analysis/result.ts";

/** A part of the flag, in flag heights from the upper hoist corner. */
export interface Crop {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** A short piece of a line by its middle, in flag heights. `own` where it is a line of the edge that is looked for. */
export interface Piece {
  readonly x: number;
  readonly y: number;
  readonly length: number;
  readonly own: boolean;
  /** The first of its line. */
  readonly begins: boolean;
}

/** A line as short pieces, so that a long straight one has places to stand on. */
export function cutPieces({ points }: EdgeLine, own: boolean): readonly Piece[] {
  const pieces: Piece[] = [];
  for (let at = 2; at + 1 < points.length; at += 2) {
    const [x0, y0, x1, y1] = [points[at - 2] ?? 0, points[at - 1] ?? 0, points[at] ?? 0, points[at + 1] ?? 0];
    const whole = Math.hypot(x1 - x0, y1 - y0);
    const count = Math.max(1, Math.ceil(whole / 0.05));
    for (let part = 0; part < count; part += 1) {
      const along = (part + 0.5) / count;
      pieces.push({
        x: x0 + along * (x1 - x0),
        y: y0 + along * (y1 - y0),
        length: whole / count,
        own,
        begins: pieces.length === 0,
      });
    }
  }
  return pieces;
}

export interface Weight {
  /** Length inside of these two paints, and of others. */
  readonly own: number;
  readonly other: number;
  /** Where the middle of the first lies. */
  readonly middle: readonly [number, number];
  /** How often the part cuts a line. */
  readonly cut: number;
}

/** What of these pieces lies in the part. */
export function weigh({ x: left, y: top, width, height }: Crop, pieces: readonly Piece[]): Weight {
  let [own, other, x, y, cut] = [0, 0, 0, 0, 0];
  let wasInside = false;
  for (const piece of pieces) {
    const isInside = piece.x >= left && piece.x <= left + width && piece.y >= top && piece.y <= top + height;
    if (isInside !== wasInside && !piece.begins) cut += 1;
    wasInside = isInside;
    if (!isInside) continue;
    if (piece.own) own += piece.length;
    else other += piece.length;
    if (!piece.own) continue;
    x += piece.length * piece.x;
    y += piece.length * piece.y;
  }
  const middle = own === 0 ? ([left + width / 2, top + height / 2] as const) : ([x / own, y / own] as const);
  return { own, other, middle, cut };
}

/** Whether a line ends where it begins. */
export function isClosed({ points }: EdgeLine): boolean {
  const [x = 0, y = 0] = points;
  return Math.hypot(x - (points.at(-2) ?? 0), y - (points.at(-1) ?? 0)) < 0.01;
}

/** Length of a line in flag heights. */
export function measureLength(line: EdgeLine): number {
  return cutPieces(line, true).reduce((sum, { length }) => sum + length, 0);
}
