import { expect, test } from "vitest";
import { listLosses, nameNeighbours } from "../../../src/cli/text/losstext.ts";

const white = { a: "p1", b: "p2", names: ["white", "red"] } as const;
const green = { a: "p2", b: "p3", names: ["red", "green"] } as const;
const noLoss = { id: "p2", lost: [], worse: [], merged: [], mergedOutline: 0 } as const;

test("the neighbour is named, on whichever side of the pair it stands", () => {
  expect(nameNeighbours("p2", [white, green])).toBe("white, green");
});

test("lost, worse and merged, in that order; what merges of a charge's outline in percent", () => {
  expect(listLosses(noLoss)).toBe("");
  expect(listLosses({ ...noLoss, lost: [white], worse: [green], merged: [white] })).toBe(
    "lost beside white; worse beside green; merges with white",
  );
  expect(listLosses({ ...noLoss, merged: [green], mergedOutline: 0.081 })).toBe(
    "merges with green (8 % of the outline merges)",
  );
});
