import { expect, test } from "vitest";
import { describeViewing, finestPart, presentFocus } from "../../../src/site/present/focus.ts";
import { createFormat } from "../../../src/site/present/format.ts";
import { compared } from "../compared.ts";

const format = createFormat("en-GB");
const paints = [{ name: "white", hex: "#ffffff" } as const];
const found = compared(paints, [], [40, 40]);
const named = {
  ...found,
  before: { ...found.before, focus: { ...found.before.focus, source: "named" as const } },
};

test("found, named by shapes, named by colour", () => {
  expect(presentFocus(found, undefined, format)).toMatchObject({ heading: "Focus: found" });
  expect(presentFocus(found, undefined, format).sentence).toContain("10% of the flag");
  expect(presentFocus(named, { select: "#tower" }, format).sentence).toContain(
    "by the author, the shapes #tower: 10%",
  );
  expect(presentFocus(named, { colour: "#e6b436" }, format).sentence).toContain("the colour #e6b436");
});

test("none: says why a charge may have been missed, and what to write", () => {
  const view = presentFocus(compared(paints, []), undefined, format);
  expect(view.sentence).toMatch(/a fact, not a fault\..*stripe of its own paint cannot be found/);
  expect(view.example).toBe('focus: { select: "#charge" }');
});

test("the viewing distance is explained, and called a model", () => {
  expect(describeViewing(found, format)).toMatch(
    /^Measured as seen from 40 flag heights: a flag one metre high, 40 metres away.*1\.2%.*model/,
  );
  const full = { ...found, before: { ...found.before, distance: 0 } };
  expect(describeViewing(full, format)).toMatch(/full drawing/);
});

test("one arcminute at 100 m is 29.089 mm", () => {
  // Source: the definition of the arcminute.
  expect(finestPart(100)).toBeCloseTo(0.029089, 6);
});
