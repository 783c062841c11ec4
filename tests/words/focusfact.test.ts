import { expect, test } from "vitest";
import { describeViewing, finestPart, presentFocus } from "../../src/words/focusfact.ts";
import { createFormat } from "../../src/words/format.ts";
import { compared } from "../publish/compared.ts";

const format = createFormat("en-GB");
const paints = [{ name: "white", hex: "#ffffff" } as const];
const found = compared(paints, [], { lastsTo: 40, clarity: [50, 90] });

test("where there is a focus the edge map says so, and nothing is to be said here", () => {
  expect(presentFocus(found, format)).toBeUndefined();
});

test("none is a fact; a charge that was not guessed is said, and what to type", () => {
  const none = compared(paints, []);
  expect(presentFocus(none, format)).toEqual({
    sentence:
      "No emblem found: nothing has to be seen before the rest, and no edge counts twice. A fact, not a fault.",
    example: undefined,
  });
  const hidden = presentFocus(none, format, 'focus: { select: "#tower" }');
  expect(hidden?.sentence).toMatch(/runs into an area of its own colour\. It was not guessed/);
  expect(hidden?.example).toBe('focus: { select: "#tower" }');
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
