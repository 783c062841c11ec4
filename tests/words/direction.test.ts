import { expect, test } from "vitest";
import { directionOf, isolate, isolateForeign, tongueOf, withoutMarks } from "../../src/words/direction.ts";

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

test("among words from right to left, a piece from left to right alone is marked, and no address", () => {
  // Unicode Standard Annex 9: U+200F is a letter from right to left that is not seen.
  expect(isolateForeign("Which? 2")).toBe("\u200f\u2068Which? 2\u2069");
  expect(isolateForeign("navy / أسود")).toBe("navy / أسود");
  expect(isolateForeign("57%")).toBe("57%");
  expect(isolateForeign("https://flags.example/")).toBe("https://flags.example/");
  expect(withoutMarks(isolateForeign("Café"))).toBe("Café");
  expect(withoutMarks(isolate("ש. כהן"))).toBe("ש. כהן");
});

test("a text says its language and direction on pages of another alone", () => {
  expect(tongueOf(undefined, "en")).toEqual({});
  expect(tongueOf("en", "en")).toEqual({});
  expect(tongueOf("ar", "en")).toEqual({ lang: "ar", dir: "rtl" });
  expect(tongueOf("de", "ar")).toEqual({ lang: "de", dir: "ltr" });
});
