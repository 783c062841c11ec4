import { expect, test } from "vitest";
import { isEffectAttribute, readEffect, unknownValue } from "../../../src/svg/style/effectproperty.ts";

test.each([
  ["filter", "none", "none"],
  ["filter", "Initial", "none"],
  ["filter", "url('#a b')", "url(#a b)"],
  ["filter", "url(#a) url(#b)", undefined],
  ["filter", "url(#a) blur(2px)", undefined],
  ["filter", "blur(2px)", undefined],
  ["filter", "url(a.svg#a)", undefined],
  ["filter", "url(#a%20b)", undefined],
  ["filter", "inherit", undefined],
  ["mix-blend-mode", "Screen", "screen"],
  ["mix-blend-mode", "unset", "normal"],
  ["mix-blend-mode", "plus-lighter", undefined],
  ["isolation", "isolate", "isolate"],
  ["isolation", "nonsense", "auto"],
  ["flood-color", "rgb(0,0,0)", "#000000"],
  ["flood-color", "var(--a)", unknownValue],
  ["flood-opacity", "50%", "0.5"],
  ["flood-opacity", "much", unknownValue],
  ["color-interpolation-filters", "sRGB", "sRGB"],
  ["color-interpolation-filters", "LinearRGB", "linearRGB"],
  ["color-interpolation-filters", "auto", unknownValue],
])("%s: %s", (name, value, read) => {
  expect(readEffect(name, value)).toBe(read);
});

test("blending is no attribute", () => {
  expect(["filter", "flood-color", "mix-blend-mode", "isolation", "fill"].map(isEffectAttribute)).toEqual([
    true,
    true,
    false,
    false,
    false,
  ]);
});
