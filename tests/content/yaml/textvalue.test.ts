import { expect, test } from "vitest";
import { line, prose } from "../../../src/content/yaml/textvalue.ts";

test.each([
  ["A gold anchor", "A gold anchor"],
  ["A gold\nanchor", "A gold anchor"],
  ["A gold  \r\n\r\n  anchor\n", "A gold anchor"],
  ["two  spaces", "two  spaces"],
])("%j is one line", (written, read) => {
  expect(line(20).parse(written)).toBe(read);
});

test("nothing but breaks is no text, and the length is that of the line", () => {
  expect(line(20).safeParse("\n\n").success).toBe(false);
  expect(line(5).safeParse("a\n\n\n\nb").success).toBe(true);
  expect(line(5).safeParse("abcdef").success).toBe(false);
});

test("prose keeps its lines", () => {
  expect(prose(20).parse("one\n\ntwo")).toBe("one\n\ntwo");
});
