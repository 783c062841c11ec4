import { expect, test } from "vitest";
import { skeletonsOf } from "../../../src/content/folder/lookalike.ts";

const isAlike = (a: string, b: string): boolean => skeletonsOf(a).some((one) => skeletonsOf(b).includes(one));

// Source: UTS 39, section 4 and confusables.txt; each pair has been compared by ICU 72 too (uspoof_areConfusable).
test.each([
  ["modern", "modem"],
  ["Ines Valcourt", "lnes Valcourt"],
  ["Ines Valcourt", "Іnes Vаlсourt"],
  ["ferry-1", "ferry-l"],
  ["f0am", "fOam"],
  ["paypal", "раураl"],
  ["scope", "ѕсоре"],
  ["Tobin", "𝐓𝐨𝐛𝐢𝐧"],
])("%s is easily taken for %s", (a, b) => {
  expect(isAlike(a, b)).toBe(true);
});

test.each([
  ["F0AM", "foam"],
  ["Ines\u200b", "Ines"],
  ["INES VALCOURT", "lnes Valcourt"],
  ["Ines  Valcourt", "Ines\u00a0Valcourt"],
  ["two-colour", "two colour"],
])("case, spaces, hyphens and what is not seen tell nothing apart: %j, %j", (a, b) => {
  expect(isAlike(a, b)).toBe(true);
});

test.each([
  ["Ines Valcourt", "Tobin Arkwell"],
  ["Zoë", "Zoé"],
  ["ferry", "fern"],
  ["flag-2", "flag-3"],
  ["charge", "change"],
  ["שרה", "שדה"],
])("%s and %s are two", (a, b) => {
  expect(isAlike(a, b)).toBe(false);
});
