import { expect, test } from "vitest";
import { areaLimits, colourLimits, edgeLimits, flagLimits } from "../../src/measure/limit.ts";

// Written here a second time: whoever moves one of them moves figures, and has to say so under Changes.
test("the limits that are our own judgement", () => {
  expect(colourLimits).toEqual({ same: 5, confusable: 10, hue: 20, noChange: 10 });
  expect(edgeLimits).toEqual({ step: 3, deciding: 0.01, inHand: 5, merged: 1 / 3 });
  expect(flagLimits).toEqual({
    move: 1,
    largeMove: 5,
    gain: 5,
    firstWithin: 3,
    mostFirst: 3,
    clear: 90,
  });
  expect(areaLimits).toEqual({ counts: 0.004, detail: 0.03 });
});
