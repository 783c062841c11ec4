import { expect, test } from "vitest";
import { countLeft, sheetWords, signNames } from "../../src/words/sheetwords.ts";

test("edges that have no room are counted in words", () => {
  expect(countLeft(1, "1")).toBe("1 more edge is on the page of the study.");
  expect(countLeft(3, "3")).toBe("3 more edges are on the page of the study.");
});

test("what comes from no source says so, where the lines are told and where they are named", () => {
  expect(sheetWords.signs).toMatch(/Orange and brown: later convention.*no source/);
  expect([signNames.orange, signNames.brown].every((name) => name?.endsWith("later"))).toBe(true);
  expect(signNames.grey ?? signNames.pink).toBeUndefined();
});
