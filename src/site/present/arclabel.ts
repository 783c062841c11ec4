// Floor 6. Where the contrast of each arc of the reflectance scale stands: beside its own line, and on no other.

export interface Point {
  readonly x: number;
  readonly y: number;
}

/** A drawn arc, its lines bulging towards smaller x. `width` is that of its stroke. */
export interface Curve {
  readonly start: Point;
  readonly end: Point;
  /** Of both control points of the cubic. */
  readonly control: number;
  readonly width: number;
  readonly text: string;
}

interface Box {
  readonly left: number;
  readonly right: number;
  readonly y: number;
}

/** At the type size of the scale: a digit, the gap to the own line, between two texts, and a line's height; no source. */
const type = { digit: 8, gap: 5, apart: 9, height: 15 };
/** Half a chip, with a little room. */
const chip = { width: 12, height: 7 };
/** Places along an arc, its middle first. */
const places = [0.5, 0.42, 0.58, 0.34, 0.66, 0.27, 0.73, 0.2, 0.8, 0.14, 0.86];
const steps = 64;

/**
 * The place of each text: the end of it that is nearer to the chips, and its middle height. Outside its arc or inside,
 * first near the middle, then further up and down; where nothing is free, the place with least in it. `chips` are the
 * middles of the chips, `leftmost` and `rightmost` how far a text may reach.
 */
export function placeLabels(
  curves: readonly Curve[],
  chips: readonly Point[],
  { leftmost, rightmost }: { readonly leftmost: number; readonly rightmost: number },
): readonly Point[] {
  const lines = curves.map((curve) => ({ points: sample(curve), half: curve.width / 2 }));
  const placed: Box[] = [];
  for (const [index, curve] of curves.entries()) {
    const others = lines.filter((_, other) => other !== index);
    const costOf = (box: Box) =>
      (box.left < leftmost || box.right > rightmost ? 1000 : 0) +
      100 * placed.filter((other) => meet(box, other)).length +
      50 * chips.filter((middle) => isOver(box, middle, chip.width, chip.height)).length +
      others.reduce((sum, { points, half }) => sum + countInside(box, points, half + 1), 0);
    placed.push(pickCheapest(listPlaces(curve, lines[index]?.points ?? []), costOf));
  }
  return placed.map(({ right, y }) => ({ x: right, y }));
}

function sample({ start, end, control }: Curve): readonly Point[] {
  return Array.from({ length: steps + 1 }, (_, step) => pointAt(start, end, control, step / steps));
}

function pointAt(start: Point, end: Point, control: number, t: number): Point {
  const [outer, inner] = [(1 - t) ** 3 + t ** 3, 3 * t * (1 - t)];
  return {
    x: outer * start.x + inner * control,
    y: start.y * ((1 - t) ** 3 + 3 * t * (1 - t) ** 2) + end.y * (t ** 3 + 3 * t ** 2 * (1 - t)),
  };
}

/**
 * Outside before inside at each place, far enough from the whole of the own line to stand clear of it; for arcs that are
 * shorter than their text also above and below.
 */
function listPlaces(curve: Curve, own: readonly Point[]): readonly Box[] {
  const long = curve.text.length * type.digit;
  const away = curve.width / 2 + type.gap;
  const boxAt = (x: number, y: number): Box => ({ left: x - long, right: x, y });
  const beside = places.flatMap((t) => {
    const at = pointAt(curve.start, curve.end, curve.control, t);
    const near = own.filter(({ y }) => Math.abs(y - at.y) <= type.height / 2).map(({ x }) => x);
    return [boxAt(Math.min(at.x, ...near) - away, at.y), boxAt(Math.max(at.x, ...near) + away + long, at.y)];
  });
  const middle = pointAt(curve.start, curve.end, curve.control, 0.5);
  const shifted = [1, -1, 2, -2].map((lines) => boxAt(middle.x - away, middle.y + lines * type.height));
  return [...beside, ...shifted];
}

function pickCheapest(boxes: readonly Box[], costOf: (box: Box) => number): Box {
  const priced = boxes.map((box) => ({ box, cost: costOf(box) }));
  const [first, ...rest] = priced;
  if (first === undefined) throw new RangeError("no place to choose from");
  return rest.reduce((best, next) => (next.cost < best.cost ? next : best), first).box;
}

function meet(a: Box, b: Box): boolean {
  return a.left < b.right + type.apart && b.left < a.right + type.apart && Math.abs(a.y - b.y) < type.height;
}

function isOver({ left, right, y }: Box, middle: Point, width: number, height: number): boolean {
  const across = middle.x + width > left && middle.x - width < right;
  return across && Math.abs(middle.y - y) < type.height / 2 + height;
}

function countInside({ left, right, y }: Box, points: readonly Point[], room: number): number {
  return points.filter(
    (point) =>
      point.x > left - room && point.x < right + room && Math.abs(point.y - y) < type.height / 2 + room,
  ).length;
}
