import { expect, test } from "vitest";
import { createFormat } from "../../src/words/format.ts";
import { formatFocusFrom, formatLastsTo, presentLasting } from "../../src/words/fromafar.ts";
import { compared, type Focus } from "../publish/compared.ts";

const format = createFormat("en-GB");
const paints = [{ name: "white", hex: "#ffffff" } as const];
const lasting = (lastsTo: number | null, more: Partial<Focus> = {}) =>
  compared(paints, [], { lastsTo, clarity: [50, 90], ...more });

test.each([
  [
    null,
    "What has to be seen is too small to be made out from 10 flag heights away, the nearest distance tried, whatever its colours.",
  ],
  [
    80,
    "What has to be seen is large enough to be made out from up to 80 flag heights away, whatever its colours.",
  ],
  [
    320,
    "What has to be seen is large enough to be made out from 320 flag heights away, the furthest distance tried.",
  ],
] as const)("lasts to %s", (lastsTo, sentence) => {
  expect(presentLasting(lasting(lastsTo), format)?.description).toContain(
    `${sentence} Clarity of what has to be seen:`,
  );
});

test("no focus is told apart from one that lasts to no step", () => {
  const none = compared(paints, []);
  expect(presentLasting(none, format)).toBeUndefined();
  expect(formatLastsTo(none.before.focus, format)).toBe("no emblem found");
  expect([null, 80, 320].map((step) => formatLastsTo(lasting(step).before.focus, format))).toEqual([
    "under 10 flag heights",
    "80 flag heights",
    "320 flag heights or more",
  ]);
});

test("focus clarity at a step, or that nothing is left", () => {
  const { before } = lasting(20, { from: { 160: [0.3, 41.2, 60], 320: [0, null, null] } });
  expect([10, 160, 320].map((step) => formatFocusFrom(before.focus, step, format))).toEqual([
    "50%",
    "41%",
    "nothing left",
  ]);
});

test("the figure: steps evenly spaced, clarity from 0 below to 100 above, the line to the step it lasts to", () => {
  const view = presentLasting(lasting(160, { from: { 320: [0, null, null] } }), format);
  if (view === undefined) throw new Error("there is a focus");
  const gaps = view.steps.slice(1).map((step, index) => step.x - (view.steps[index]?.x ?? 0));
  for (const gap of gaps) expect(gap).toBeCloseTo(gaps[0] ?? 0, 0);
  const [zero, half, full] = view.levels.map(({ y }) => y);
  expect(view.levels.map(({ text }) => text)).toEqual(["0", "50", "100"]);
  expect(view.steps[0]?.before).toBe(half);
  expect(view.steps[0]?.after).toBeCloseTo((zero ?? 0) + 0.9 * ((full ?? 0) - (zero ?? 0)), 0);
  expect(view.steps[5]).toMatchObject({ before: undefined, after: undefined });
  expect(view.lasts).toBe(view.steps[4]?.x);
  expect(view.steps.filter(({ isMeasured }) => isMeasured).map(({ text }) => text)).toEqual(["40"]);
});

test("a focus that lasts to no step has no line, and the caption says so", () => {
  const view = presentLasting(lasting(null), format);
  expect(view?.lasts).toBeUndefined();
  expect(view?.caption).toBe(
    "It lasts to under 10 flag heights, by its size alone: 50% of it has to be left, and its largest piece has to span 5 arcminutes, the size of a letter that 20/20 sight reads.",
  );
});

test("the description has every step in words", () => {
  const focus = { from: { 80: [1, 40, 90], 160: [1, 70, 70], 320: [0, null, null] } } as const;
  expect(presentLasting(lasting(20, focus), format)?.description).toBe(
    "What has to be seen is large enough to be made out from up to 20 flag heights away, whatever its colours. Clarity of what has to be seen: from 10, 50% to 90%; from 20, 50% to 90%; from 40, 50% to 90%; from 80, 40% to 90%; from 160, 70%; from 320, nothing left.",
  );
});
