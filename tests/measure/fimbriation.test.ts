import { expect, test } from "vitest";
import { findFimbriations } from "../../src/measure/fimbriation.ts";
import type { Measure, MeasuredColour } from "../../src/measure/measurement.ts";
import { compared, type Edge } from "../publish/compared.ts";

/** A flag 1 high and 1.5 wide, by hand: red over green, with a white line of `width` between them. */
function striped(width: number, more: Partial<MeasuredColour> = {}): Measure {
  const stripe = (1 - width) / 2;
  const edge = (between: Edge["between"], contrast: number): Edge => ({
    between,
    length: 1.5,
    contrast: [contrast, contrast],
    outcome: "same",
  });
  return compared(
    [
      { name: "red", hex: "#c8202f", more: { share: stripe, reflectance: 15.8 } },
      { name: "green", hex: "#0b7a3b", more: { share: stripe, reflectance: 16.4 } },
      { name: "white", hex: "#ffffff", more: { share: width, reflectance: 85, ...more } },
    ],
    [edge(["p1", "p3"], 69), edge(["p2", "p3"], 68)],
  ).before;
}

test("a narrow line parts two fields that would hardly differ", () => {
  const [found, ...others] = findFimbriations(striped(0.04));
  expect(others).toEqual([]);
  expect(found).toMatchObject({ line: "p3", pair: ["p1", "p2"], across: 68 });
  // 125 · 0.6 / (15.8 + 16.4 + 25), by hand.
  expect(found?.direct).toBeCloseTo(1.311, 3);
});

test("a stripe of 8 % of the height or more is a stripe", () => {
  expect(findFimbriations(striped(0.079))).toHaveLength(1);
  expect(findFimbriations(striped(0.081))).toEqual([]);
});

test("a line that is not seen, or not one flat colour, parts nothing", () => {
  expect(findFimbriations(striped(0.04, { vanishes: true }))).toEqual([]);
  expect(findFimbriations(striped(0.04, { uneven: { lightest: "#ffffff", darkest: "#808080" } }))).toEqual(
    [],
  );
});

test("a pair that meets along most of the line is not parted by it", () => {
  const flag = striped(0.04);
  const [first] = flag.edges;
  if (first === undefined) throw new Error("the flag has edges");
  const meeting = (length: number) => ({
    ...flag,
    edges: [...flag.edges, { ...first, a: "p1", b: "p2", length }],
  });
  expect(findFimbriations(meeting(0.2))).toHaveLength(1);
  expect(findFimbriations(meeting(0.6))).toEqual([]);
});

test("a thin charge on one field is no line between two", () => {
  const flag = striped(0.04);
  expect(findFimbriations({ ...flag, edges: flag.edges.slice(0, 1) })).toEqual([]);
});

test("a cross with two fields outside parts its colour from each of them", () => {
  const edge = (between: Edge["between"], length: number, contrast: number): Edge => ({
    between,
    length,
    contrast: [contrast, contrast],
    outcome: "same",
  });
  const colours = ["blue", "red", "green", "white"].map((name) => ({
    name,
    hex: "#808080" as const,
    more: { share: name === "white" ? 0.1 : 0.3 },
  }));
  const { before } = compared(colours, [
    edge(["p1", "p4"], 4, 70),
    edge(["p2", "p4"], 1.8, 60),
    edge(["p3", "p4"], 1.7, 65),
  ]);
  expect(findFimbriations(before).map(({ pair, across }) => [...pair, across])).toEqual([
    ["p1", "p2", 60],
    ["p1", "p3", 65],
  ]);
});
