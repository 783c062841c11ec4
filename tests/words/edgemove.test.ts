import { expect, test } from "vitest";
import { findMeasured, listMoves } from "../../src/words/edgemove.ts";
import { plainFormat } from "../../src/words/format.ts";
import { compared } from "../publish/compared.ts";

const paints = [
  { name: "white", hex: "#ffffff" },
  { name: "red", hex: "#c8202f", becomes: { name: "black", hex: "#000000" } },
  { name: "blue", hex: "#12235c" },
] as const;

test("what changed beside what, along how much of all edges and of the outline", () => {
  const moves = listMoves(
    compared(
      paints,
      [
        { between: ["p1", "p3"], length: 6, contrast: [80, 80], outcome: "same" },
        { between: ["p1", "p2"], length: 4, focus: 1, contrast: [50, 80], outcome: "better" },
      ],
      { lastsTo: 40, clarity: [50, 50] },
    ),
    plainFormat,
  );
  expect(
    moves.map(({ was, is, neighbour, part, focusPart }) => [was, is, neighbour, part, focusPart]),
  ).toEqual([
    ["white and blue", "white and blue", undefined, 0.6, 0],
    ["red", "black", "white", 0.4, 1],
  ]);
});

test("the sides of an edge may be named in either order", () => {
  const { after } = compared(paints, [
    { between: ["p1", "p2"], length: 1, contrast: [50, 80], outcome: "better" },
  ]);
  expect(findMeasured(after.edges, { a: "p2", b: "p1" })?.contrast).toBe(80);
  expect(findMeasured(after.edges, { a: "p2", b: "p3" })).toBeUndefined();
});
