import { expect, test } from "vitest";
import { createSay } from "../../src/words/say.ts";
import { signIds } from "../../src/words/sheetwords.ts";

const say = createSay("en");

test("edges that have no room are counted in words", () => {
  expect(say("sheet.left", { count: 1 })).toBe("1 more edge is on the page of the study.");
  expect(say("sheet.left", { count: 3 })).toBe("3 more edges are on the page of the study.");
});

test("what comes from no source says so, where the lines are told and where they are named", () => {
  expect(say("sheet.signsSource")).toMatch(/Orange and brown: later convention.*no source/);
  expect([signIds.orange, signIds.brown].every((id) => say(id).endsWith("later"))).toBe(true);
  expect(Object.keys(signIds)).not.toContain("grey");
  expect(Object.keys(signIds)).not.toContain("pink");
});
