import { expect, test } from "vitest";
import { shapeIds } from "../../src/words/makerwords.ts";
import { createSay } from "../../src/words/say.ts";

const say = createSay("en");

test("parts and what is left out, one and several", () => {
  expect(say("maker.parts", { parts: "180" })).toBe("Whole numbers are parts of which the height has 180.");
  expect(say("maker.untold", { count: 1 })).toMatch(/^1 other shape is left out/);
  expect(say("maker.untold", { count: 8 })).toMatch(/^8 other shapes are left out/);
  expect([1, 2].map((count) => say("maker.others", { count }))).toEqual([
    "1 more colour is on the page of the study.",
    "2 more colours are on the page of the study.",
  ]);
});

test("a round shape is placed by its centre", () => {
  expect([say(shapeIds.circle), say(shapeIds.ring)]).toEqual([
    "Circle, by its centre",
    "Ring, by its centre",
  ]);
});
