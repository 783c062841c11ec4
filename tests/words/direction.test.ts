import { expect, test } from "vitest";
import { directionOf, isolate, tongueOf } from "../../src/words/direction.ts";

test.each([
  ["en-GB", "ltr"],
  ["ar", "rtl"],
  ["he", "rtl"],
  ["dv", "rtl"],
  ["az-Arab", "rtl"],
  ["az", "ltr"],
  ["ur-Aran", "rtl"],
] as const)("pages in %s run %s", (language, direction) => {
  expect(directionOf(language)).toBe(direction);
});

test("text that is no language throws", () => {
  expect(() => directionOf("not a language")).toThrow(RangeError);
});

test("a piece with letters from right to left is marked, any other is as it was", () => {
  // Unicode Standard Annex 9: U+2068 opens a piece whose first strong letter gives its direction, U+2069 ends it.
  expect(isolate("ש. כהן")).toBe("\u2068ש. כהן\u2069");
  expect(isolate("٣ يونيو")).toBe("\u2068٣ يونيو\u2069");
  expect(isolate("Café, 2 April")).toBe("Café, 2 April");
});

test("a text says its language and direction on pages of another alone", () => {
  expect(tongueOf(undefined, "en")).toEqual({});
  expect(tongueOf("en", "en")).toEqual({});
  expect(tongueOf("ar", "en")).toEqual({ lang: "ar", dir: "rtl" });
  expect(tongueOf("de", "ar")).toEqual({ lang: "de", dir: "ltr" });
});
