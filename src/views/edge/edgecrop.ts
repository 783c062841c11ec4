// Floor 8. The part of a flag that shows where two paints meet: as much of their line as fits, and little of any other.
import type { EdgeLine } from "../../analysis/result.ts";
import { type Crop, cutPieces, isClosed, measureLength, type Piece, weigh } from "./linepiece.ts";

/** A part of a published drawing, shown by itself: the drawing in thousandths of its height, and the part as a view box. */
export interface DetailView {
  readonly src: string;
  readonly viewBox: string;
  readonly width: number;
  readonly height: number;
}

/** Width to height of every part. */
const aspect = 1.5;
/** What may be left free on each side of a line, of the longer side of its box. */
const margins = [0.14, 0.1, 0.06];
/** No part is lower, and a line that needs a higher one is shown in part. */
const leastHeight = 0.26;
const greatestHeight = 0.95;
/** A box that is flatter than this is a line that parts fields, of which any part does. */
const flatness = 0.15;
/** Lines that fit are shown, though others do not, where they have this share of the length: less if one goes around. */
const leastShare = { open: 0.55, closed: 0.3 };
/** Heights of a part that is tried along a line that is not shown whole, and the places along it. */
const partHeights = [0.72, 0.56, 0.42, 0.32, 0.22];
const mostCentres = 60;
/** How much a line of other paints counts against one of these two. */
const otherWeight = 1.5;
/** How much each line counts against a part that cuts it off. */
const cutWeight = 0.2;

interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/**
 * Returns the part of a flag of these proportions (height, width) that shows the edge between `a` and `b` best, or
 * undefined where none of its lines is traced: its longest line that bounds what has to be seen, or of all, whole and
 * in the middle, with the others that there is room for; of a line that is too long, the part with most of it and least of other lines. The first of equals wins.
 */
export function findCrop(
  lines: readonly EdgeLine[],
  { a, b }: Pick<EdgeLine, "a" | "b">,
  [high, wide]: readonly [number, number],
): Crop | undefined {
  const flagWidth = wide / high;
  const own = lines.filter((line) => line.a === a && line.b === b && line.points.length >= 4);
  const pieces = lines.flatMap((line) => cutPieces(line, own.includes(line)));
  const focused = own.filter(({ focusShare }) => focusShare > 0.5);
  const box = gatherBox(focused.length > 0 ? focused : own, flagWidth);
  if (box === undefined) return findPart(pieces, flagWidth);
  const crops = margins.map((margin) => cropAround(box, heightFor(box, margin), flagWidth));
  return chooseBest(crops, (crop) => {
    const { other, cut } = weigh(crop, pieces);
    return 2 * crop.height - other / 2 - cutWeight * cut;
  });
}

/** The box of the longest line that fits, and of all others that fit together with it, nearest first. */
function gatherBox(own: readonly EdgeLine[], flagWidth: number): Box | undefined {
  const boxes = own.map((line) => ({
    box: boxOf(line),
    length: measureLength(line),
    isClosed: isClosed(line),
  }));
  const all = boxes.reduce((sum, { length }) => sum + length, 0);
  const fitting = boxes.filter(({ box }) => fits(box, flagWidth));
  const first = chooseBest(fitting, ({ length }) => length);
  if (first === undefined) return undefined;
  let { box, length } = first;
  const left = new Set(fitting);
  left.delete(first);
  while (left.size > 0) {
    const next = chooseBest([...left], (one) => -sizeOf(join(box, one.box)));
    if (next === undefined || !fits(join(box, next.box), flagWidth)) break;
    box = join(box, next.box);
    length += next.length;
    left.delete(next);
  }
  const share = leastShare[first.isClosed ? "closed" : "open"];
  return length >= share * all && !isFlat(box) ? box : undefined;
}

function findPart(pieces: readonly Piece[], flagWidth: number): Crop | undefined {
  const own = pieces.filter((piece) => piece.own);
  const step = Math.max(1, Math.floor(own.length / mostCentres));
  const centres = own.filter((_, index) => index % step === 0);
  const around = (x: number, y: number, height: number) =>
    cropAround({ left: x, right: x, top: y, bottom: y }, height, flagWidth);
  const crops = partHeights.flatMap((height) =>
    centres.flatMap(({ x, y }) => {
      const { middle } = weigh(around(x, y, height), pieces);
      return [around(x, y, height), around(...middle, height)];
    }),
  );
  return chooseBest(crops, (crop) => {
    const { own: shown, other, middle } = weigh(crop, pieces);
    const aside = Math.hypot(middle[0] - crop.x - crop.width / 2, middle[1] - crop.y - crop.height / 2);
    return (shown - otherWeight * other - aside) / crop.height;
  });
}

function chooseBest<T>(all: readonly T[], value: (one: T) => number): T | undefined {
  let best: { one: T; worth: number } | undefined;
  for (const one of all) {
    const worth = value(one);
    if (best === undefined || worth > best.worth + 1e-9) best = { one, worth };
  }
  return best?.one;
}

function cropAround({ left, top, right, bottom }: Box, wished: number, flagWidth: number): Crop {
  const height = Math.min(wished, flagWidth / aspect, 1);
  const width = height * aspect;
  return {
    x: clamp((left + right - width) / 2, flagWidth - width),
    y: clamp((top + bottom - height) / 2, 1 - height),
    width,
    height,
  };
}

function heightFor({ left, top, right, bottom }: Box, margin: number): number {
  const free = 2 * margin * Math.max(right - left, bottom - top);
  return Math.max(leastHeight, bottom - top + free, (right - left + free) / aspect);
}

function fits(box: Box, flagWidth: number): boolean {
  const least = margins.reduce((one, other) => Math.min(one, other));
  return heightFor(box, least) <= Math.min(greatestHeight, flagWidth / aspect);
}

function isFlat({ left, top, right, bottom }: Box): boolean {
  const [width, height] = [right - left, bottom - top];
  return Math.min(width, height) < flatness * Math.max(width, height);
}

function boxOf({ points }: EdgeLine): Box {
  const xs = points.filter((_, index) => index % 2 === 0);
  const ys = points.filter((_, index) => index % 2 === 1);
  const least = (values: readonly number[]) => values.reduce((one, other) => Math.min(one, other));
  const most = (values: readonly number[]) => values.reduce((one, other) => Math.max(one, other));
  return { left: least(xs), top: least(ys), right: most(xs), bottom: most(ys) };
}

function join(one: Box, other: Box): Box {
  return {
    left: Math.min(one.left, other.left),
    top: Math.min(one.top, other.top),
    right: Math.max(one.right, other.right),
    bottom: Math.max(one.bottom, other.bottom),
  };
}

function sizeOf({ left, top, right, bottom }: Box): number {
  return right - left + bottom - top;
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

function clamp(value: number, most: number): number {
  return Math.max(0, Math.min(value, most));
}
