import { expect, test } from "vitest";
import type { ComparedEdge } from "../../../src/measure/comparison.ts";
import { presentSeen } from "../../../src/views/study/seenotherwise.ts";
import { createFormat } from "../../../src/words/format.ts";
import { comparison } from "../../publish/sample.ts";

const format = createFormat("en");

test("four kinds of vision, each with one number before and after", () => {
  // Before: (2 · 24.6 / 45 + 1.5) / 3.5 = 74.1; after, both are beyond 45.
  expect(presentSeen(comparison, format).map((seen) => [seen.vision, seen.before, seen.after])).toEqual([
    ["protan", "74%", "100%"],
    ["deutan", "74%", "100%"],
    ["tritan", "74%", "100%"],
    ["grey", "14", "55"],
  ]);
});

test("a merged edge keeps its length and counts as contrast 0", () => {
  const edges = comparison.edges.map((edge) =>
    edge.b === "p2" ? { ...edge, outcome: "merged" as const } : edge,
  );
  const none = { contrast: 0, grade: "weak", deltaE00: 0 } as const;
  const vision = { protan: none, deutan: none, tritan: none, grey: { deltaE00: 0 } };
  const after = {
    ...comparison.after,
    edges: comparison.after.edges.map((edge) => (edge.b === "p2" ? { ...edge, vision } : edge)),
  };
  const [protan, , , grey] = presentSeen({ ...comparison, edges, after }, format);
  // 1.5 of 3.5 flag heights.
  expect(protan).toMatchObject({ before: "74%", after: "43%" });
  expect(grey).toMatchObject({ before: "14", after: "0" });
});

test("a parted edge counts only after", () => {
  const edges = comparison.edges.map(
    (edge): ComparedEdge => (edge.b === "p2" ? { ...edge, contrast: [null, 67.2], outcome: "parted" } : edge),
  );
  const before = {
    ...comparison.before,
    edges: comparison.before.edges.filter((edge) => edge.b !== "p2"),
  };
  expect(presentSeen({ ...comparison, before, edges }, format)[0]).toMatchObject({
    before: "100%",
    after: "100%",
  });
});

test("an edge under 1 % of the length is not the nearest two greys", () => {
  const tiny: ComparedEdge = {
    a: "p2",
    b: "p3",
    names: [
      ["red", "white"],
      ["yellow", "white"],
    ],
    length: 0.01,
    contrast: [68, 20],
    outcome: "lost",
  };
  expect(presentSeen({ ...comparison, edges: [...comparison.edges, tiny] }, format)[3]).toMatchObject({
    before: "14",
  });
});

test("one colour has no number", () => {
  const bare = { ...comparison.before, edges: [] };
  const none = presentSeen({ ...comparison, before: bare, after: bare, edges: [] }, format);
  expect(none.map((seen) => seen.before)).toEqual(Array(4).fill("no edges"));
});

test("says what becomes of each colour, by the name of what is seen", () => {
  const [protan, , , grey] = presentSeen(comparison, format);
  // Grey keeps luminance Y, and its OKLab lightness is the cube root of it: 0.27 for dark blue, 0.51 for red, 0.84 for
  // yellow. Up to 0.31 is black, under 0.525 a dark grey, over 0.77 a light one.
  expect(grey?.looks).toEqual([
    "dark blue looks black and red looks dark grey; white keeps its name",
    "dark blue looks black and yellow looks light grey; white keeps its name",
  ]);
  // Without the cones for long waves red loses its red: Machado, Oliveira, Fernandes 2009, figure 4.
  expect(protan?.looks[0]).toMatch(/red looks (?!.*\bred\b)/);
  expect(protan?.looks[1]).toContain("yellow");
});
