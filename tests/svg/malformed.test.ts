import { expect, test } from "vitest";
import { evenLines, findStrayAmpersand, hintFor } from "../../src/svg/malformed.ts";

// References as in XML 1.0, productions 66 to 68.
test.each([
  ["<a>&amp;&#38;&#x26;&ns_svg;</a>", undefined],
  ["<a b='x & y'/>", { line: 1, column: 9 }],
  ["<a>\n  &;</a>", { line: 2, column: 3 }],
  ["<a>&1;</a>", { line: 1, column: 4 }],
  ["<!-- a & b --><![CDATA[ & ]]><?a & ?><a/>", undefined],
  ["<!-- & --><a>&</a>", { line: 1, column: 14 }],
])("findStrayAmpersand %j", (text, place) => {
  expect(findStrayAmpersand(text)).toEqual(place);
});

test.each([
  ['unbound namespace prefix: "xlink"', /xmlns:xlink/],
  ["undefined entity", /&amp;/],
  ["unclosed tag: svg", /closed/],
  ["duplicate attribute: fill", /one of the two/],
  ["unquoted attribute value", /name="value"/],
  ["something else", /Export/],
])("hintFor %j", (cause, hint) => {
  expect(hintFor(cause)).toMatch(hint);
});

test("evenLines", () => {
  expect(evenLines("a\rb\r\nc\n")).toBe("a\nb\nc\n");
});
