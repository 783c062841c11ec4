import { expect, test } from "vitest";
import { describePrice, nameNeighbours } from "../../../src/measure/options/price.ts";

const pair = (a: string, b: string, names: readonly [string, string]) => ({ a, b, names });
const white = pair("p1", "p2", ["white", "red"]);
const green = pair("p2", "p3", ["red", "green"]);
const none = { id: "p2", lost: [], worse: [], merged: [], mergedOutline: 0 } as const;

test("the neighbour is named, on whichever side of the pair it stands", () => {
  expect(nameNeighbours("p2", [white, green])).toBe("white, green");
});

test("lost, worse and merged, in that order; what merges of a charge's outline in percent", () => {
  expect(describePrice(none)).toBe("");
  expect(describePrice({ ...none, lost: [white], worse: [green], merged: [white] })).toBe(
    "lost beside white; worse beside green; merges with white",
  );
  expect(describePrice({ ...none, merged: [green], mergedOutline: 0.081 })).toBe(
    "merges with green (8 % of the outline merges)",
  );
});
