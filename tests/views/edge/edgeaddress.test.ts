import { expect, test } from "vitest";
import { keyEdges, placeEdges } from "../../../src/views/edge/edgeaddress.ts";
import { compared } from "../../publish/compared.ts";
import { comparison } from "../../publish/sample.ts";

test("an edge is called by its two original colours, lower first, whatever they become", () => {
  expect(keyEdges(comparison)).toEqual(["12235c-ffffff", "12235c-c8202f"]);
  expect(placeEdges("a-square", comparison)({ a: "p1", b: "p2" })).toBe(
    "/studies/a-square/edges/12235c-c8202f/",
  );
});

test("the selected part has an s behind its colour, also against the rest of its own paint", () => {
  const whole = comparison.before.colours[1];
  if (whole === undefined) throw new Error("the sample has two colours");
  const colours = [...comparison.before.colours, { ...whole, id: "p2s", part: { of: whole.name } }];
  const [first] = comparison.edges;
  if (first === undefined) throw new Error("the sample has an edge");
  const parted = { ...comparison, before: { ...comparison.before, colours } };
  expect(keyEdges({ ...parted, edges: [{ ...first, a: "p2", b: "p2s" }] })).toEqual(["c8202f-c8202fs"]);
  expect(keyEdges({ ...parted, edges: [{ ...first, a: "p3", b: "p2s" }] })).toEqual(["c8202fs-ffffff"]);
});

test("two edges of the same two colours get two addresses", () => {
  const twice = compared(
    [
      { name: "white", hex: "#ffffff" },
      { name: "red", hex: "#c8202f" },
      { name: "red", hex: "#c8202f" },
    ],
    [
      { between: ["p1", "p2"], length: 2, contrast: [60, 60], outcome: "same" },
      { between: ["p1", "p3"], length: 1, contrast: [60, 60], outcome: "same" },
    ],
  );
  expect(keyEdges(twice)).toEqual(["c8202f-ffffff", "c8202f-ffffff-2"]);
});

test("an edge that the study does not have is our own fault and throws", () => {
  expect(() => placeEdges("a-square", comparison)({ a: "p2", b: "p3" })).toThrow(/no edge p2 p3/);
});
