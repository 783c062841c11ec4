import { expect, test } from "vitest";
import { accountFor } from "../../../src/site/present/account.ts";
import { createFormat } from "../../../src/site/present/format.ts";
import { describeRest } from "../../../src/site/present/rest.ts";
import { compared, type Edge } from "../compared.ts";

const paints = ["white", "red", "blue", "green", "black", "grey"].map((name) => ({
  name,
  hex: "#808080" as const,
}));
const same = (b: string, contrast: readonly [number, number]): Edge => ({
  between: ["p1", b],
  length: 2,
  contrast,
  outcome: "same",
});
const say = (edges: readonly Edge[]) =>
  describeRest(accountFor(compared(paints, edges)), createFormat("en-GB"));

test("one sentence for each grade, three edges by name and the others by number", () => {
  expect(
    say([
      same("p2", [70, 70]),
      same("p3", [20, 21]),
      same("p4", [71, 71]),
      same("p5", [72, 72]),
      same("p6", [73, 73]),
    ]),
  ).toEqual([
    "No edge becomes easier or harder to see.",
    "White against blue (21) stays weak.",
    "White against red (70), white against green (71), white against black (72) and 1 more stay strong.",
  ]);
});

test("a small move that crosses a grade is not said to stay", () => {
  expect(say([same("p2", [29, 31])])).toEqual([
    "No edge becomes easier or harder to see.",
    "White against red hardly moves: from 29, weak, to 31, soft.",
  ]);
});
