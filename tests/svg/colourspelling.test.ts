import { expect, test } from "vitest";
import { formatColour } from "../../src/svg/colourspelling.ts";

test("a full colour is written in six digits, a translucent one as rgba()", () => {
  expect(formatColour("#102030", 1)).toBe("#102030");
  expect(formatColour("#102030", 0.5)).toBe("rgba(16, 32, 48, 0.5)");
  expect(formatColour("#ffffff", 0)).toBe("rgba(255, 255, 255, 0)");
});
