import { expect, test } from "vitest";
import { accountFor, findMeasured } from "../../../src/site/present/account.ts";
import { compared } from "../compared.ts";

const paints = [
  { name: "white", hex: "#ffffff" },
  { name: "red", hex: "#c8202f", becomes: { name: "black", hex: "#000000" } },
  { name: "blue", hex: "#12235c" },
] as const;

test("focus first, then by length; parts add up; short ones that moved stand apart", () => {
  const { edges, short } = accountFor(
    compared(
      paints,
      [
        { between: ["p1", "p3"], length: 6, contrast: [80, 80], outcome: "same" },
        { between: ["p1", "p2"], length: 4, focus: 1, contrast: [50, 80], outcome: "better" },
        { between: ["p2", "p3"], length: 0.01, contrast: [20, 10], outcome: "worse" },
      ],
      { lastsTo: 40, clarity: [50, 50] },
    ),
  );
  expect(edges.map(({ was, is, neighbour, focusPart }) => [was, is, neighbour, focusPart])).toEqual([
    ["red", "black", "white", 1],
    ["white and blue", "white and blue", undefined, 0],
  ]);
  expect(edges[1]?.part).toBeCloseTo(6 / 10.01, 6);
  expect(short.map(({ is }) => is)).toEqual(["black"]);
});

test("the sides of an edge may be named in either order", () => {
  const { after } = compared(paints, [
    { between: ["p1", "p2"], length: 1, contrast: [50, 80], outcome: "better" },
  ]);
  expect(findMeasured(after.edges, { a: "p2", b: "p1" })?.contrast).toBe(80);
  expect(findMeasured(after.edges, { a: "p2", b: "p3" })).toBeUndefined();
});
