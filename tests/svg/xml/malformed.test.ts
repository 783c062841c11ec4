import { expect, test } from "vitest";
import { evenLines, findStrayAmpersand, hintFor } from "../../../src/svg/xml/malformed.ts";
import { readXml } from "../../../src/svg/xml/readxml.ts";

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

/** What an author is told of `text`: place, reason, hint. */
function told(text: string) {
  const [problem] = readXml("a.svg", new TextEncoder().encode(text)).reporter.problems;
  return [`${problem?.place?.line}:${problem?.place?.column}`, problem?.reason, problem?.hint];
}

test.each<[string, string, string, string, string]>([
  [
    "an element that is not closed before its parent",
    '<svg>\n  <g id="a">\n    <rect/>\n</svg>\n',
    "4:1",
    "</svg> closes while <g> of line 2 is still open.",
    "Put </g> where that element ends, before </svg>.",
  ],
  [
    "the innermost is named first, with its prefix",
    '<svg xmlns:i="urn:i"><g>\n<i:x></g></svg>',
    "2:6",
    "</g> closes while <i:x> of line 2 is still open.",
    "Put </i:x> where that element ends, before </g>.",
  ],
  [
    "a file that is cut off",
    "<svg>\n  <g>\n<path",
    "2:3",
    "The file ends while <g> of line 2 is still open.",
    "It may be cut off: export it again, or close it with </g>.",
  ],
  [
    "a file that ends between two elements",
    "<svg>\n  <g>\n<path/>\n",
    "2:3",
    "The file ends while <g> of line 2 is still open.",
    "It may be cut off: export it again, or close it with </g>.",
  ],
  [
    "words behind the drawing",
    "<svg/>\nThe end.\n",
    "2:1",
    "Something stands behind the end of the drawing.",
    "Delete what follows the last closing tag, </svg>.",
  ],
  [
    "a text",
    "This is my flag, which I drew in the summer.\n",
    "1:1",
    "The file is not an SVG drawing: it begins with “This is my flag, which I drew…”.",
    "Put the drawing itself here; an SVG file begins with <svg, perhaps with an <?xml line before it.",
  ],
  [
    "nothing but a comment",
    "\n  <!-- later -->\n",
    "2:3",
    "The file is not an SVG drawing: it begins with “<!-- later -->”.",
    "Put the drawing itself here; an SVG file begins with <svg, perhaps with an <?xml line before it.",
  ],
])("%s", (_, text, place, reason, hint) => {
  expect(told(text)).toEqual([place, reason, hint]);
});

test("a closing tag over two lines is told as the parser says it", () => {
  expect(told("<svg><g></svg\n></svg>")[1]).toMatch(/^The file is not well-formed XML/);
});
