import { expect, test } from "vitest";
import { countUntold, describeParts } from "../../src/words/makerwords.ts";

test("parts and what is left out, one and several", () => {
  expect(describeParts("180")).toBe("Whole numbers are parts of which the height has 180.");
  expect(countUntold(1, "1")).toMatch(/^1 other shape is left out/);
  expect(countUntold(8, "8")).toMatch(/^8 other shapes are left out/);
});
