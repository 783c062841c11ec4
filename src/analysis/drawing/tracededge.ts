// Floor 6. Traced lines → plain data for figures: whose edge each line belongs to, and where it runs in flag heights.
import { createRanker, type EdgeTable } from "../../measure/edgetable.ts";
import type { Line } from "../../regions/traceline.ts";
import { paintOf } from "../../svg/paintnumber.ts";
import type { EdgeLine } from "../result.ts";

/** The map that lines were traced on: its size in pixels, and for each pixel whether the focus lies there (not 0). */
interface TracedMap {
  readonly width: number;
  readonly height: number;
  readonly marks: Uint8Array | undefined;
}

type Piece = Pick<Line, "points" | "focusShare">;

/** Shares from which on a line is whole in the focus, and up to which it is outside. */
const mixed = { least: 0.02, most: 0.98 };
/** Between places at which a line is asked whether the focus lies beside it, and how far beside, in pixels. */
const stride = 2;
const reach = 2;
/** Stretches that are shorter, in places, belong to what lies before them. */
const shortest = 4;

/**
 * Returns the lines with the ids of their two paints, the larger paint first as in the edge table, and points in flag
 * heights to 0.001. A line that has the focus beside it in part is told in pieces, with it and without.
 */
export function toEdgeLines(lines: readonly Line[], table: EdgeTable, map: TracedMap): readonly EdgeLine[] {
  const rankPair = createRanker(table.order);
  return lines.flatMap((line) => {
    const pair = rankPair(paintOf(line.a), paintOf(line.b));
    if (pair === undefined) return [];
    const [a = "", b = ""] = pair.map((rank) => table.paints[rank]?.id);
    return splitByFocus(line, map).map(({ points, focusShare }) => ({
      a,
      b,
      points: points.map((value) => Math.round((value / map.height) * 1000) / 1000),
      focusShare,
    }));
  });
}

function splitByFocus({ points, focusShare }: Piece, map: TracedMap): readonly Piece[] {
  if (map.marks === undefined || focusShare < mixed.least || focusShare > mixed.most)
    return [{ points, focusShare }];
  const places = findPlaces(points, map);
  const pieces: { points: number[]; focusShare: number }[] = [];
  for (let at = 0; at < places.length; ) {
    const { isFocus, x, y } = places[at] as Place;
    let end = at;
    while (places[end]?.isFocus === isFocus) end += 1;
    const share = isFocus ? 1 : 0;
    const before = pieces.at(-1);
    before?.points.push(x, y);
    const goesOn = before !== undefined && (end - at < shortest || before.focusShare === share);
    const piece = goesOn ? before : { points: [x, y], focusShare: share };
    if (!goesOn) pieces.push(piece);
    for (const place of places.slice(at + 1, end)) if (place.isCorner) piece.points.push(place.x, place.y);
    at = end;
  }
  return pieces.filter((piece) => piece.points.length >= 4);
}

interface Place {
  readonly x: number;
  readonly y: number;
  readonly isCorner: boolean;
  readonly isFocus: boolean;
}

/** Places along a line, its corners among them. */
function findPlaces(points: readonly number[], map: TracedMap): readonly Place[] {
  const places: Place[] = [];
  for (let at = 2; at + 1 < points.length; at += 2) {
    const [x0, y0, x1, y1] = points.slice(at - 2, at + 2) as [number, number, number, number];
    const length = Math.hypot(x1 - x0, y1 - y0);
    const count = Math.max(1, Math.ceil(length / stride));
    const [dx, dy] = [((y1 - y0) / (length || 1)) * reach, ((x0 - x1) / (length || 1)) * reach];
    for (let part = at === 2 ? 0 : 1; part <= count; part += 1) {
      const [x, y] = [x0 + ((x1 - x0) * part) / count, y0 + ((y1 - y0) * part) / count];
      const isFocus = isMarked(map, x + dx, y + dy) || isMarked(map, x - dx, y - dy);
      places.push({ x, y, isCorner: part === 0 || part === count, isFocus });
    }
  }
  return places;
}

function isMarked({ width, height, marks }: TracedMap, x: number, y: number): boolean {
  const [column, row] = [Math.floor(x), Math.floor(y)];
  const isOutside = column < 0 || row < 0 || column >= width || row >= height;
  return !isOutside && marks !== undefined && marks[row * width + column] !== 0;
}
