import { expect, test } from "vitest";
import type { ComparedEdge } from "../../../src/measure/comparison.ts";
import { formatNames, presentEdge, presentEdges } from "../../../src/site/present/edge.ts";
import { createFormat } from "../../../src/site/present/format.ts";
import { comparison } from "../sample.ts";

const format = createFormat("en");

test("longest first, with both readings, and the new names only where they changed", () => {
  expect(presentEdges(comparison, format)).toEqual([
    {
      key: "p1-p2",
      names: "dark blue / red",
      renamed: "dark blue / yellow",
      length: "2.00",
      focus: undefined,
      before: {
        hexes: ["#12235c", "#c8202f"],
        names: "dark blue / red",
        contrast: "25",
        grade: "weak",
        clear: false,
      },
      after: {
        hexes: ["#12235c", "#f4c430"],
        names: "dark blue / yellow",
        contrast: "67",
        grade: "strong",
        clear: true,
      },
      outcome: "gained",
    },
    {
      key: "p1-p3",
      names: "dark blue / white",
      renamed: undefined,
      length: "1.50",
      focus: undefined,
      before: {
        hexes: ["#12235c", "#ffffff"],
        names: "dark blue / white",
        contrast: "84",
        grade: "strong",
        clear: true,
      },
      after: {
        hexes: ["#12235c", "#ffffff"],
        names: "dark blue / white",
        contrast: "84",
        grade: "strong",
        clear: true,
      },
      outcome: "same",
    },
  ]);
});

const edge = comparison.edges[1] as ComparedEdge;

test("a merged edge says so in place of a grade, also where the paint is gone from the redesign", () => {
  const after = { ...comparison.after, colours: comparison.after.colours.filter(({ id }) => id !== "p2") };
  const row = presentEdge(
    { ...edge, contrast: [24.6, 0], outcome: "merged" },
    { ...comparison, after },
    format,
  );
  expect(row.after).toMatchObject({
    hexes: ["#12235c", "#12235c"],
    contrast: "0",
    grade: "merged",
    clear: false,
  });
});

test("a parted edge has no reading before", () => {
  expect(
    presentEdge({ ...edge, contrast: [null, 67.2], outcome: "parted" }, comparison, format).before,
  ).toBeUndefined();
});

test("edges of the focus come first, with their part of its outline", () => {
  const focused = comparison.after.edges.map((one) => ({ ...one, focusLength: one.b === "p3" ? 1.2 : 0.4 }));
  const rows = presentEdges({ ...comparison, after: { ...comparison.after, edges: focused } }, format);
  expect(rows.map(({ key, focus }) => [key, focus])).toEqual([
    ["p1-p3", "75% of its outline"],
    ["p1-p2", "25% of its outline"],
  ]);
});

test("the one edge of a focus is its whole outline", () => {
  const focused = comparison.after.edges.map((one) => ({ ...one, focusLength: one.b === "p3" ? 1.2 : 0 }));
  const rows = presentEdges({ ...comparison, after: { ...comparison.after, edges: focused } }, format);
  expect(rows.map(({ focus }) => focus)).toEqual(["its whole outline", undefined]);
});

test("an edge of paints that are in no drawing is our own fault and throws", () => {
  expect(() => presentEdge({ ...edge, a: "p8", b: "p9" }, comparison, format)).toThrow(RangeError);
});

test("an edge is called by its two paints", () => {
  expect(formatNames(["white", "light blue"])).toBe("white / light blue");
});

test("an outline is whole only where nothing of it is elsewhere", () => {
  const focused = comparison.after.edges.map((one) => ({ ...one, focusLength: one.b === "p3" ? 998 : 2 }));
  const rows = presentEdges({ ...comparison, after: { ...comparison.after, edges: focused } }, format);
  expect(rows.map(({ focus }) => focus)).toEqual(["99.8% of its outline", "0.2% of its outline"]);
});
