import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { findPieces, labelPieces, measureRemaining, spreadPieces } from "../../../src/regions/focus/piece.ts";
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
    const pieces = labelPieces(findPieces(Uint8Array.from(labels), width, height));
    return measureRemaining(pieces, [0.2, 0.3], Uint8Array.from(readMap(...left).labels));
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
    const pieces = labelPieces(findPieces(Uint8Array.from(labels), width, height));
    expect(measureRemaining(pieces, [], new Uint8Array(2))).toEqual({ left: 0, span: 0 });
  });
});
