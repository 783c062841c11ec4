import fc from "fast-check";
import { expect, test } from "vitest";
import { quoteText, showText } from "../../src/problem/quote.ts";

test.each([
  ["plain", "“plain”"],
  ["two\nlines\tand a tab", "“two\\nlines and a tab”"],
  ["a\u202eb\u2066c\u200fd", "“a\\u202eb\\u2066c\\u200fd”"],
  ["\u001b[31mred", "“\\u001b[31mred”"],
  ["half a pair \ud83d", "“half a pair \\ud83d”"],
  ["旗 🏴", "“旗 🏴”"],
])("%j is shown as %s", (text, shown) => {
  expect(quoteText(text)).toBe(shown);
});

test("60 characters stay, of 61 the last two become one sign", () => {
  expect(quoteText("x".repeat(60))).toBe(`“${"x".repeat(60)}”`);
  expect(quoteText("x".repeat(61))).toBe(`“${"x".repeat(59)}…”`);
});

test("in JSON the text says what it said", () => {
  fc.assert(
    fc.property(fc.string({ unit: "binary" }), (text) => {
      expect(JSON.parse(showText(JSON.stringify(text)))).toBe(text);
    }),
  );
});

test("nothing that steers a terminal is left, whatever comes in", () => {
  fc.assert(
    fc.property(fc.string({ unit: "binary" }), (text) => {
      expect(showText(text)).not.toMatch(/[\p{Cc}\u2028\u2029\u202a-\u202e\u2066-\u2069]/u);
    }),
  );
});
