import { expect, test } from "vitest";
import { listMoves } from "../../../src/site/present/account.ts";
import { createFormat } from "../../../src/site/present/format.ts";
import { describeEdge, describeInWords } from "../../../src/site/present/words.ts";
import { compared, type Edge, type Focus, type Paint } from "../compared.ts";

const format = createFormat("en-GB");
const tell = (...given: Parameters<typeof compared>) => describeInWords(compared(...given), format);

const blue: Paint = { name: "dark blue", hex: "#12235c" };
const white: Paint = { name: "white", hex: "#ffffff" };
const red: Paint = {
  name: "red",
  hex: "#c8202f",
  becomes: { name: "yellow", hex: "#f4c430" },
};
const focus = (lastsTo: number | null, before: number, after: number): Focus => ({
  lastsTo,
  clarity: [before, after],
});
const edge = (
  between: Edge["between"],
  outcome: Edge["outcome"],
  contrast: Edge["contrast"],
  more: Partial<Edge> = {},
): Edge => ({
  between,
  outcome,
  contrast,
  length: 2,
  ...more,
});

test("gained, over the whole outline of the focus, and nothing lost", () => {
  expect(
    tell([blue, red], [edge(["p1", "p2"], "gained", [24.6, 67.2], { focus: 2 })], focus(160, 55, 100)),
  ).toEqual([
    "Yellow now stands out from dark blue over the whole outline of the focus: contrast 67, strong, where red had 25, weak. No edge becomes harder to see.",
    "The clarity of what has to be seen goes from 55% to 100%. By its size, whatever its colours, it lasts to 160 flag heights.",
  ]);
});

test("mixed: says what is lost as plainly as what is gained, each with its part of the outline", () => {
  const edges = [
    edge(["p1", "p2"], "gained", [24.6, 67.2], { focus: 2, length: 2 }),
    edge(["p2", "p3"], "lost", [71, 27.3], { focus: 3, length: 3 }),
    edge(["p1", "p3"], "same", [84.2, 84.2], { length: 5 }),
  ];
  expect(tell([blue, red, white], edges, focus(80, 80, 79))).toEqual([
    "Yellow now stands out from dark blue over 40% of the outline of the focus: contrast 67, strong, where red had 25, weak.",
    "Yellow no longer stands out from white over 60% of the outline of the focus: contrast 27, weak, where red had 71, strong.",
    "Dark blue against white (84) stays strong.",
    "The clarity of what has to be seen goes from 80% to 79%. By its size, whatever its colours, it lasts to 80 flag heights.",
  ]);
});

test("merged: which two, over how much of the outline, and that the line is gone", () => {
  const told = tell(
    [blue, red, white],
    [
      edge(["p1", "p2"], "merged", [24.6, 0], { focus: 1, length: 1 }),
      edge(["p2", "p3"], "same", [50, 50], { focus: 3, length: 3 }),
    ],
    focus(null, 80, 75),
  );
  expect(told).toEqual([
    "Yellow and dark blue become one colour to the eye over 25% of the outline of the focus: the line between them, which had a contrast of 25, weak, is gone.",
    "Yellow against white (50) stays clear.",
    "The clarity of what has to be seen goes from 80% to 75%. By its size, whatever its colours, it does not last to 10 flag heights, the nearest distance tried.",
  ]);
});

test("parted: with a clear edge it is a gain, with a weak one it is said to be weak", () => {
  const part: Paint = { ...red, name: "red, selected part" };
  const whole: Paint = { name: "red", hex: "#c8202f" };
  const apart = (contrast: number) => tell([whole, part], [edge(["p1", "p2"], "parted", [null, contrast])]);
  expect(apart(59)).toEqual([
    "Yellow and red were one colour and now meet in a clear edge, over every line of the flag: contrast 59. No edge becomes harder to see.",
  ]);
  expect(apart(12)).toEqual([
    "Yellow and red were one colour and are now two, but the edge between them is weak: contrast 12.",
  ]);
});

test("better: more of what was clear, or less of what was not, and never called clear before it is", () => {
  const say = (contrast: readonly [number, number]) =>
    tell([blue, red], [edge(["p1", "p2"], "better", contrast)])[0];
  expect(say([56, 83])).toBe(
    "Yellow stands out from dark blue more than red did, over every line of the flag: contrast 56 to 83, clear to strong. No edge becomes harder to see.",
  );
  expect(say([10, 44.8])).toBe(
    "Yellow is easier to tell from dark blue than red was, over every line of the flag, but not clear: contrast 10 to 44.8, weak to soft. No edge becomes harder to see.",
  );
});

test("worse: still clear, or harder still", () => {
  const say = (contrast: readonly [number, number]) =>
    tell([blue, red], [edge(["p1", "p2"], "worse", contrast)])[0];
  expect(say([90, 70])).toBe(
    "Yellow stands out from dark blue less than red did, over every line of the flag: contrast 90 to 70, still strong.",
  );
  expect(say([25, 12])).toBe(
    "Yellow is harder still to tell from dark blue than red was, over every line of the flag: contrast 25 to 12, still weak.",
  );
});

test("no gain: says so, and what stays, weakest first", () => {
  const edges = [
    edge(["p1", "p3"], "same", [84.2, 84.2], { length: 5 }),
    edge(["p1", "p2"], "same", [24, 25], { length: 2 }),
  ];
  expect(tell([blue, red, white], edges, focus(320, 70, 70))).toEqual([
    "No edge becomes easier or harder to see. Yellow against dark blue (25) stays weak. Dark blue against white (84) stays strong.",
    "The clarity of what has to be seen stays at 70%. By its size, whatever its colours, it lasts to 320 flag heights or more, the furthest distance tried.",
  ]);
});

test("no focus: parts are of all edge length, and nothing is said of how far it lasts", () => {
  const edges = [
    edge(["p1", "p2"], "gained", [24, 60], { length: 1 }),
    edge(["p1", "p3"], "same", [84, 84], { length: 3 }),
  ];
  expect(tell([blue, red, white], edges)).toEqual([
    "Yellow now stands out from dark blue over 25% of all edge length: contrast 60, strong, where red had 24, weak. No edge becomes harder to see.",
    "Dark blue against white (84) stays strong. Every edge of the redesign is clear or strong.",
  ]);
});

test("an edge that runs on beyond the focus says both", () => {
  const edges = [
    edge(["p1", "p2"], "gained", [2, 74], { length: 3, focus: 1 }),
    edge(["p1", "p3"], "same", [54, 54]),
  ];
  expect(tell([blue, red, white], edges, focus(320, 40, 90))[0]).toContain(
    "over the whole outline of the focus and more, 60% of all edge length:",
  );
});

test("one colour has nothing to tell", () => {
  expect(tell([blue], [])).toEqual(["One colour: no edges to measure."]);
});

test("edges too short to decide are left to the table, and said to be", () => {
  const edges = [
    edge(["p1", "p2"], "gained", [24, 60], { length: 10 }),
    edge(["p2", "p3"], "lost", [60, 20], { length: 0.05 }),
  ];
  const [better, rest] = tell([blue, red, white], edges);
  expect(better).toContain("Nothing becomes harder to see but edges under 1% of all edge length.");
  expect(rest).toBe("Edges under 1% of all edge length are left to the table.");
});

test("two sides that change at once stand apart, without one of them being the ground", () => {
  const blackNow: Paint = { ...white, becomes: { name: "black", hex: "#000000" } };
  expect(tell([blackNow, red], [edge(["p1", "p2"], "gained", [20, 58])])[0]).toBe(
    "Black and yellow now stand apart over every line of the flag: contrast 58, clear, where white and red had 20, weak. No edge becomes harder to see.",
  );
});

test("every line, and the whole outline, only where it is all of it", () => {
  const edges = [
    edge(["p1", "p2"], "gained", [24.6, 67.2], { focus: 0.998, length: 0.998 }),
    edge(["p1", "p3"], "same", [84.2, 84.2], { focus: 0.002, length: 0.002 }),
  ];
  expect(tell([blue, red, white], edges)[0]).toContain("over 99.8% of the outline of the focus: contrast");
  const bare = edges.map((one) => ({ ...one, focus: 0 }));
  expect(tell([blue, red, white], bare)[0]).toContain("over 99.8% of all edge length: contrast");
});

test("a new edge that is not clear is no reason to say that nothing is harder to see", () => {
  const part: Paint = { ...red, name: "red, selected part" };
  const edges = [edge(["p1", "p2"], "gained", [24.6, 67.2]), edge(["p2", "p3"], "parted", [null, 20])];
  expect(tell([blue, part, red], edges)[0]).not.toContain("No edge");
});

test("an edge that is to the eye what it was: clear, hard to tell apart, or over a grade by a hair", () => {
  const say = (contrast: readonly [number, number]) => {
    const [move] = listMoves(compared([blue, white], [edge(["p1", "p2"], "same", contrast)]));
    return move && describeEdge(move, format);
  };
  expect(say([84, 84])).toBe(
    "Dark blue and white stay clear over every line of the flag: contrast 84, strong.",
  );
  expect(say([90, 65])).toBe(
    "Dark blue and white stay clear over every line of the flag: contrast 90 to 65, still strong.",
  );
  expect(say([20, 22])).toBe(
    "Dark blue and white stay hard to tell apart over every line of the flag: contrast 20 to 22, still weak.",
  );
  expect(say([44, 46])).toBe(
    "Dark blue and white hardly change over every line of the flag: contrast 44 to 46, soft to clear.",
  );
});
