import { expect, test } from "vitest";
import { describeDistance, formatLastsTo } from "../../../src/cli/text/distancetext.ts";

test("from where a drawing is seen", () => {
  expect(describeDistance(0)).toBe("the full drawing");
  expect(describeDistance(40)).toBe("seen from 40 flag heights away (a model of sight)");
});

// The steps of the design: 10, 20, 40, 80, 160, 320; the last stands for all beyond, null for none of them.
test("to where a focus lasts", () => {
  expect([null, 10, 160, 320].map(formatLastsTo)).toEqual(["under 10", "10", "160", "320 or more"]);
});
