import { expect, test } from "vitest";
import { countOthers, countUntold, describeParts } from "../../src/words/makerwords.ts";

test("parts and what is left out, one and several", () => {
  expect(describeParts("180")).toBe("Whole numbers are parts of which the height has 180.");
  expect(countUntold(1, "1")).toMatch(/^1 other shape is left out/);
  expect(countUntold(8, "8")).toMatch(/^8 other shapes are left out/);
  expect([1, 2].map((count) => countOthers(count, `${count}`))).toEqual([
    "1 more colour is on the page of the study.",
    "2 more colours are on the page of the study.",
  ]);
});
