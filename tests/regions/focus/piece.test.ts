import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  cutPieces,
  findPieces,
  findPiecesOf,
  listPieces,
  measureGone,
  measureRemaining,
  spreadPieces,
} from "../../../src/regions/focus/piece.ts";
import { findRuns } from "../../../src/regions/runs.ts";
import { floodParts, smallMaps } from "../naive.ts";
import { readMap } from "../picture.ts";

/** Pieces of a mask drawn in rows of 0 and 1. */
function piecesOf(...rows: readonly string[]) {
  const { width, height, labels } = readMap(...rows);
  const found = findPieces(Uint8Array.from(labels), width, height);
  return { pieces: found.pieces, pieceOf: spreadPieces(found) };
}

describe("findPieces", () => {
  test("an empty mask has none", () => {
    const { pieces, pieceOf } = piecesOf("000", "000");
    expect(pieces).toEqual([]);
    expect([...pieceOf]).toEqual([-1, -1, -1, -1, -1, -1]);
  });

  test("what touches at a corner only is two pieces, each with the longer side of its box", () => {
    const { pieces, pieceOf } = piecesOf("11000", "11000", "00111");
    expect(pieces).toEqual([
      { pixels: 4, span: 2 },
      { pixels: 3, span: 3 },
    ]);
    expect([...pieceOf]).toEqual([0, 0, -1, -1, -1, 0, 0, -1, -1, -1, -1, -1, 1, 1, 1]);
  });

  test("a bent piece spans as far as its box: what reaches the border of the map is a piece like others", () => {
    expect(piecesOf("1000", "1000", "1000", "1111").pieces).toEqual([{ pixels: 7, span: 4 }]);
    expect(piecesOf("1", "1", "0", "1").pieces).toEqual([
      { pixels: 2, span: 2 },
      { pixels: 1, span: 1 },
    ]);
  });

  test("a ring and what lies free inside it are two pieces", () => {
    expect(piecesOf("11111", "10001", "10101", "10001", "11111").pieces).toEqual([
      { pixels: 16, span: 5 },
      { pixels: 1, span: 1 },
    ]);
  });
});

test("on any mask the pieces are the parts that a flood of paint finds", () => {
  fc.assert(
    fc.property(smallMaps(0), (map) => {
      const mask = Uint8Array.from(map.labels, (label) => (label === 2 ? 1 : 0));
      const found = findPieces(mask, map.width, map.height);
      const [pieces, pieceOf] = [found.pieces, spreadPieces(found)];
      expect([...pieceOf]).toEqual(floodParts({ ...map, labels: Uint16Array.from(mask) }));
      const set = [...mask.keys()].filter((at) => mask[at] === 1);
      const [xs, ys] = [set.map((at) => at % map.width), set.map((at) => Math.floor(at / map.width))];
      if (set.length > 0)
        expect(found.box).toEqual({
          left: Math.min(...xs),
          top: Math.min(...ys),
          right: Math.max(...xs) + 1,
          bottom: Math.max(...ys) + 1,
        });
      for (const [index, { pixels, span }] of pieces.entries()) {
        const own = [...pieceOf.keys()].filter((at) => pieceOf[at] === index);
        const across = own.map((at) => at % map.width);
        const down = own.map((at) => Math.floor(at / map.width));
        const reach = (places: readonly number[]): number => Math.max(...places) - Math.min(...places) + 1;
        expect(pixels).toBe(own.length);
        expect(span).toBe(Math.max(reach(across), reach(down)));
      }
    }),
    { numRuns: 300 },
  );
});

describe("measureRemaining", () => {
  const rows = ["11000", "11000", "00111"];
  const remainingOf = (...left: readonly string[]) => {
    const { width, height, labels } = readMap(...rows);
    const found = findPieces(Uint8Array.from(labels), width, height);
    const cut = cutPieces(found, { left: 0, top: 0, right: width, bottom: height });
    const remaining = Uint8Array.from(readMap(...left).labels);
    const measured = measureRemaining(cut, [0.2, 0.3], remaining);
    const all = Int32Array.from(remaining.keys());
    expect(measureGone(cut, [0.2, 0.3], listPieces(found).sizes, all, remaining)).toEqual(measured);
    return measured;
  };

  test("the share of all that is left, and the longest of the pieces that are there by half", () => {
    expect(remainingOf(...rows)).toEqual({ left: 1, span: 0.3 });
    // One of three is not half of the bar; two of four are half of the square.
    expect(remainingOf("11000", "00000", "00100")).toEqual({ left: 3 / 7, span: 0.2 });
    expect(remainingOf("00000", "00000", "00110")).toEqual({ left: 2 / 7, span: 0.3 });
    expect(remainingOf("10000", "00000", "00100")).toEqual({ left: 2 / 7, span: 0 });
    expect(remainingOf("00000", "00000", "00000")).toEqual({ left: 0, span: 0 });
  });

  test("what lies outside the pieces does not count", () => {
    expect(remainingOf("00111", "00111", "11000")).toEqual({ left: 0, span: 0 });
  });

  test("an empty mask has nothing left", () => {
    const { width, height, labels } = readMap("00");
    const found = findPieces(Uint8Array.from(labels), width, height);
    const cut = cutPieces(found, { left: 0, top: 0, right: width, bottom: height });
    expect(measureRemaining(cut, [], new Uint8Array(2))).toEqual({ left: 0, span: 0 });
  });
});

test("pixels that were looked at and stay are no loss", () => {
  const found = findPieces(Uint8Array.from([1, 1, 0, 1]), 4, 1);
  const cut = cutPieces(found, { left: 0, top: 0, right: 4, bottom: 1 });
  const { spans, sizes } = listPieces(found);
  expect(spans).toEqual([2, 1]);
  expect(measureGone(cut, spans, sizes, Int32Array.of(1, 3), Uint8Array.of(1, 0, 0, 1))).toEqual({
    left: 2 / 3,
    span: 2,
  });
});

test("the box around all pieces, and what is cut out by one", () => {
  const { width, height, labels } = readMap("00000", "01100", "00010", "00000");
  const found = findPieces(Uint8Array.from(labels), width, height);
  expect(found.box).toEqual({ left: 1, top: 1, right: 4, bottom: 3 });
  const cut = cutPieces(found, { left: 1, top: 0, right: 5, bottom: 3 });
  expect([...cut.mask]).toEqual([0, 0, 0, 0, 1, 1, 0, 0, 0, 0, 1, 0]);
  expect([...cut.labels]).toEqual([0, 0, 0, 0, 1, 1, 0, 0, 0, 0, 2, 0]);
  const { runs: _, ...bare } = found;
  const { runs: __, ...ofRuns } = findPiecesOf(findRuns(readMap("00000", "01100", "00010", "00000")));
  expect(ofRuns).toEqual(bare);
});

test("without a piece the box is empty", () => {
  expect(findPieces(new Uint8Array(4), 2, 2).box).toEqual({ left: 0, top: 0, right: 0, bottom: 0 });
});
