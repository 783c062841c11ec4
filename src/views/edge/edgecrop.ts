// Floor 8. The part of a flag that shows where two paints meet: as much of their line as fits, and little of any other.
import type { EdgeLine } from "../../analysis/result.ts";

/** A part of the flag, in flag heights from the upper hoist corner. */
export interface Crop {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** A part of a published drawing, shown by itself: the drawing in thousandths of its height, and the part as a view box. */
export interface DetailView {
  readonly src: string;
  readonly viewBox: string;
  readonly width: number;
  readonly height: number;
}

/** The part is this high, and half as wide again, where the flag has room. */
const cropHeight = 0.45;
/** How much a line of other paints counts against one of these two. */
const otherWeight = 0.4;
/** Centres that are tried along each line. */
const mostCentres = 60;

interface Piece {
  readonly x: number;
  readonly y: number;
  readonly length: number;
  readonly own: boolean;
}

/**
 * Returns the part of a flag of these proportions (height, width) that shows the edge between `a` and `b` best, or
 * undefined where none of its lines is traced. The first of equals wins.
 */
export function findCrop(
  lines: readonly EdgeLine[],
  { a, b }: Pick<EdgeLine, "a" | "b">,
  [high, wide]: readonly [number, number],
): Crop | undefined {
  const flagWidth = wide / high;
  const height = Math.min(cropHeight, flagWidth / 1.5);
  const width = height * 1.5;
  const pieces = lines.flatMap((line) => cutPieces(line, line.a === a && line.b === b));
  const own = pieces.filter((piece) => piece.own);
  const step = Math.max(1, Math.floor(own.length / mostCentres));
  let best: { crop: Crop; worth: number } | undefined;
  for (let at = 0; at < own.length; at += step) {
    const centre = own[at];
    if (centre === undefined) continue;
    const crop = {
      x: clamp(centre.x - width / 2, flagWidth - width),
      y: clamp(centre.y - height / 2, 1 - height),
      width,
      height,
    };
    const worth = weigh(crop, pieces);
    if (best === undefined || worth > best.worth + 1e-9) best = { crop, worth };
  }
  return best?.crop;
}

/** The part `crop` of the drawing at `src`, of these proportions (height, width). */
export function presentDetail(crop: Crop, src: string, [high, wide]: readonly [number, number]): DetailView {
  const { x, y, width, height } = crop;
  return {
    src,
    viewBox: [x, y, width, height].map((heights) => Math.round(heights * 1000)).join(" "),
    width: Math.round((1000 * wide) / high),
    height: 1000,
  };
}

/** A line as short pieces, so that a long straight one has places to stand on. */
function cutPieces({ points }: EdgeLine, own: boolean): readonly Piece[] {
  const pieces: Piece[] = [];
  for (let at = 2; at + 1 < points.length; at += 2) {
    const [x0, y0, x1, y1] = [points[at - 2] ?? 0, points[at - 1] ?? 0, points[at] ?? 0, points[at + 1] ?? 0];
    const whole = Math.hypot(x1 - x0, y1 - y0);
    const count = Math.max(1, Math.ceil(whole / 0.05));
    for (let part = 0; part < count; part += 1) {
      const along = (part + 0.5) / count;
      pieces.push({ x: x0 + along * (x1 - x0), y: y0 + along * (y1 - y0), length: whole / count, own });
    }
  }
  return pieces;
}

function weigh(crop: Crop, pieces: readonly Piece[]): number {
  let worth = 0;
  for (const { x, y, length, own } of pieces) {
    const isInside = x >= crop.x && x <= crop.x + crop.width && y >= crop.y && y <= crop.y + crop.height;
    if (isInside) worth += own ? length : -otherWeight * length;
  }
  return worth;
}

function clamp(value: number, most: number): number {
  return Math.max(0, Math.min(value, most));
}
