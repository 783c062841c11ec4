import { expect, test } from "vitest";
import { checkDecision } from "../../../src/content/study/decisionrule.ts";

const rulesOf = (raw: Readonly<Record<string, unknown>>) => checkDecision(raw).map(({ rule }) => rule);

test.each([
  ["adopted", 11, 2, []],
  ["adopted", 2, 11, ["study/votes-against-status"]],
  ["adopted", 5, 5, []],
  ["declined", 3, 8, []],
  ["declined", 8, 3, ["study/votes-against-status"]],
  ["declined", 5, 5, []],
])("%s with %i for and %i against", (status, ayes, noes, rules) => {
  const decided = { date: "2026-05-02", for: ayes, against: noes, why: "It reads." };
  expect(rulesOf({ status, decided })).toEqual(rules);
});

test("votes that are told in part, or are no numbers, say nothing of the status", () => {
  for (const decided of [null, "so", { for: 2 }, { against: 11 }, { for: "two", against: 11 }])
    expect(rulesOf({ status: "adopted", decided })).toEqual([]);
});

test("a decision stands once, and with a status that is decided", () => {
  expect(rulesOf({ status: "adopted" })).toEqual(["study/decision-missing"]);
  expect(rulesOf({ status: "adopted", descision: "It reads." })).toEqual([]);
  expect(rulesOf({ status: "adopted", decision: "So.", decided: {} })).toEqual(["study/decision-twice"]);
  expect(rulesOf({ status: "open", decided: {} })).toEqual(["study/decision-open"]);
  expect(rulesOf({ status: "open" })).toEqual([]);
});
