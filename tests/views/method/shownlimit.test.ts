import { expect, test } from "vitest";
import { presentLimits } from "../../../src/views/method/shownlimit.ts";
import { createFormat } from "../../../src/words/format.ts";

// Typed from the definitions of the words and from the steps of the options; all but 45, 60, 5 arcminutes and ΔE*ab 10 are
// our own judgement.
test("the limits are those of the definitions", () => {
  expect(presentLimits(createFormat("en-GB"))).toEqual({
    clear: "45%",
    strong: "60%",
    edge: "1%",
    same: "5",
    contrastStep: "3",
    leastMove: "1",
    largeMove: "5",
    left: "50%",
    span: "5",
    departure: "10",
    keptHue: "50%",
    leastGain: "5",
    firstWithin: "3",
    mostFirst: "3",
    wholeClear: "90%",
    points: { contrastStep: 3, leastMove: 1, largeMove: 5 },
  });
});
