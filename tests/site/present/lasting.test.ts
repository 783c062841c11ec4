import { expect, test } from "vitest";
import { createFormat } from "../../../src/site/present/format.ts";
import { describeReach, formatReach, presentReads } from "../../../src/site/present/reads.ts";
import { compared } from "../compared.ts";

const format = createFormat("en-GB");
const paints = [{ name: "white", hex: "#ffffff" } as const];
const reads = (before: number | null, after: number | null) => compared(paints, [], [before, after]);

test.each([
  [null, null, "The focus does not read from 10 flag heights, the nearest distance tried, before or after."],
  [null, 80, "The focus did not read from 10 flag heights, the nearest distance tried; it now reads to 80."],
  [
    80,
    null,
    "The focus read to 80 flag heights; now it does not read from 10 flag heights, the nearest distance tried.",
  ],
  [80, 80, "The focus reads to 80 flag heights, as before."],
  [80, 320, "The focus now reads to 320 or more flag heights, after 80."],
  [320, 40, "The focus reads only to 40 flag heights, after 320 or more."],
] as const)("from %s to %s", (before, after, sentence) => {
  expect(describeReach(reads(before, after), format)).toEqual([sentence]);
});

test("the clarity of the focus alone is told where it moves", () => {
  const moved = reads(80, 160);
  const after = { ...moved.after, focus: { ...moved.after.focus, clarity: 90 } };
  expect(describeReach({ ...moved, after }, format)[1]).toBe(
    "The clarity of its edges alone goes from 50% to 90%.",
  );
});

test("without a focus there is no figure and nothing to say", () => {
  expect(presentReads(compared(paints, []), format)).toBeUndefined();
  expect(describeReach(compared(paints, []), format)).toEqual([]);
  expect(formatReach(compared(paints, []).before.focus, format)).toBe("no focus");
});

test("the figure: steps evenly spaced, both reaches on their steps, the description says them in words", () => {
  const view = presentReads(reads(null, 160), format);
  if (view === undefined) throw new Error("there is a focus");
  const gaps = view.ticks.slice(1).map((tick, index) => tick.x - (view.ticks[index]?.x ?? 0));
  for (const gap of gaps) expect(gap).toBeCloseTo(gaps[0] ?? 0, 0);
  expect(view.reaches.map(({ to, text, isOpen }) => ({ to, text, isOpen }))).toEqual([
    { to: undefined, text: "under 10", isOpen: false },
    { to: view.ticks.find(({ text }) => text === "160")?.x, text: "160", isOpen: false },
  ]);
  expect(view.measuredX).toBe(view.ticks.find(({ text }) => text === "40")?.x);
  expect(view.description).toMatch(/^Original: under 10\. Redesign: 160\. In flag heights/);
});

test("320 is open to the far side", () => {
  expect(presentReads(reads(320, 320), format)?.reaches.every(({ isOpen }) => isOpen)).toBe(true);
});
