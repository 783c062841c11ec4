import { expect, test } from "vitest";
import { listMoves } from "../../src/words/edgemove.ts";
import { createFormat } from "../../src/words/format.ts";
import { describeEdge } from "../../src/words/outcomewords.ts";
import { compared, type Edge, type Focus, type Paint } from "../publish/compared.ts";

const format = createFormat("en-GB");
const tell = (...given: Parameters<typeof compared>) =>
  listMoves(compared(...given), format).map((move) => describeEdge(move, format));

const blue: Paint = { name: "dark blue", hex: "#12235c" };
const white: Paint = { name: "white", hex: "#ffffff" };
const red: Paint = {
  name: "red",
  hex: "#c8202f",
  becomes: { name: "yellow", hex: "#f4c430" },
};
const focus: Focus = { lastsTo: 80, clarity: [80, 79] };
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

test("gained, over the whole outline of what has to be seen", () => {
  expect(tell([blue, red], [edge(["p1", "p2"], "gained", [24.6, 67.2], { focus: 2 })], focus)).toEqual([
    "Yellow now stands out from dark blue over the whole outline of what has to be seen: contrast 67%, strong, where red had 25%, weak.",
  ]);
});

test("what is lost is said as plainly as what is gained, each with its part of the outline", () => {
  const edges = [
    edge(["p1", "p2"], "gained", [24.6, 67.2], { focus: 2, length: 2 }),
    edge(["p2", "p3"], "lost", [71, 27.3], { focus: 3, length: 3 }),
  ];
  expect(tell([blue, red, white], edges, focus)).toEqual([
    "Yellow now stands out from dark blue over 40% of the outline of what has to be seen: contrast 67%, strong, where red had 25%, weak.",
    "Yellow no longer stands out from white over 60% of the outline of what has to be seen: contrast 27%, weak, where red had 71%, strong.",
  ]);
});

test("merged: which two, over how much of the outline, and that the line is gone", () => {
  const edges = [
    edge(["p1", "p2"], "merged", [24.6, 0], { focus: 1, length: 1 }),
    edge(["p2", "p3"], "same", [50, 50], { focus: 3, length: 3 }),
  ];
  expect(tell([blue, red, white], edges, focus)[0]).toBe(
    "Yellow and dark blue become one colour to the eye over 25% of the outline of what has to be seen: the line between them, which had a contrast of 25%, weak, is gone.",
  );
});

test("parted: with its grade", () => {
  const part: Paint = { ...red, name: "red, selected part" };
  const whole: Paint = { name: "red", hex: "#c8202f" };
  expect(tell([whole, part], [edge(["p1", "p2"], "parted", [null, 59])])).toEqual([
    "Yellow and red were one colour and now meet in a clear edge, over every line of the flag: contrast 59%.",
  ]);
});

test("better: more of what was clear, or less of what was not, and never called clear before it is", () => {
  const say = (contrast: readonly [number, number]) =>
    tell([blue, red], [edge(["p1", "p2"], "better", contrast)])[0];
  expect(say([56, 83])).toBe(
    "Yellow stands out from dark blue more than red did, over every line of the flag: contrast 56% to 83%, clear to strong.",
  );
  expect(say([10, 44.8])).toBe(
    "Yellow is easier to tell from dark blue than red was, over every line of the flag, but not clear: contrast 10% to 44.8%, weak to soft.",
  );
});

test("worse: still clear, or harder still", () => {
  const say = (contrast: readonly [number, number]) =>
    tell([blue, red], [edge(["p1", "p2"], "worse", contrast)])[0];
  expect(say([90, 70])).toBe(
    "Yellow stands out from dark blue less than red did, over every line of the flag: contrast 90% to 70%, still strong.",
  );
  expect(say([25, 12])).toBe(
    "Yellow is harder still to tell from dark blue than red was, over every line of the flag: contrast 25% to 12%, still weak.",
  );
});

test("where nothing has to be seen, parts are of all edge length", () => {
  const edges = [
    edge(["p1", "p2"], "gained", [24, 60], { length: 1 }),
    edge(["p1", "p3"], "same", [84, 84], { length: 3 }),
  ];
  expect(tell([blue, red, white], edges)[0]).toBe(
    "Yellow now stands out from dark blue over 25% of all edge length: contrast 60%, strong, where red had 24%, weak.",
  );
});

test("an edge that runs on beyond what has to be seen says both", () => {
  const edges = [
    edge(["p1", "p2"], "gained", [2, 74], { length: 3, focus: 1 }),
    edge(["p1", "p3"], "same", [54, 54]),
  ];
  expect(tell([blue, red, white], edges, focus)[0]).toContain(
    "over the whole outline of what has to be seen and more, 60% of all edge length:",
  );
});

test("two sides that change at once stand apart, without one of them being the ground", () => {
  const blackNow: Paint = { ...white, becomes: { name: "black", hex: "#000000" } };
  expect(tell([blackNow, red], [edge(["p1", "p2"], "gained", [20, 58])])[0]).toBe(
    "Black and yellow now stand apart over every line of the flag: contrast 58%, clear, where white and red had 20%, weak.",
  );
});

test("every line, and the whole outline, only where it is all of it", () => {
  const edges = [
    edge(["p1", "p2"], "gained", [24.6, 67.2], { focus: 0.998, length: 0.998 }),
    edge(["p1", "p3"], "same", [84.2, 84.2], { focus: 0.002, length: 0.002 }),
  ];
  expect(tell([blue, red, white], edges)[0]).toContain("over 99.8% of the outline of what has to be seen:");
  const bare = edges.map((one) => ({ ...one, focus: 0 }));
  expect(tell([blue, red, white], bare)[0]).toContain("over 99.8% of all edge length: contrast");
});

test("an edge that is to the eye what it was: clear, hard to tell apart, or over a grade by a hair", () => {
  const say = (contrast: readonly [number, number]) =>
    tell([blue, white], [edge(["p1", "p2"], "same", contrast)])[0];
  expect(say([84, 84])).toBe(
    "Dark blue and white stay clear over every line of the flag: contrast 84%, strong.",
  );
  expect(say([90, 65])).toBe(
    "Dark blue and white stay clear over every line of the flag: contrast 90% to 65%, still strong.",
  );
  expect(say([20, 22])).toBe(
    "Dark blue and white stay hard to tell apart over every line of the flag: contrast 20% to 22%, still weak.",
  );
  expect(say([44, 46])).toBe(
    "Dark blue and white hardly change over every line of the flag: contrast 44% to 46%, soft to clear.",
  );
});
