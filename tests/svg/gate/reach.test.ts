import { expect, test } from "vitest";
import { draw, rulesOf } from "../drawing.ts";

const rect = '<rect x="5" y="5" width="9" height="9"/>';
const group = (transform: string, body: string): string => `<g transform="${transform}">${body}</g>`;

const clipped = (transform: string): string => `<g clip-path="url(#c)" transform="${transform}">${rect}</g>`;

// The viewBox is 30 by 20: 50 sides are 1,500 units, 1,000 are 30,000. What a browser shows of such is tried by the probes.
test.each([
  ["a shape up to 50 sides away", '<rect width="1500" height="9"/>', []],
  ["a shape beyond that", '<rect width="1501" height="9"/>', ["svg/too-far"]],
  ["to the left", '<rect x="-1501" width="1510" height="9"/>', ["svg/too-far"]],
  ["brought in by a transform", group("translate(-9000)", '<rect x="9001" width="9" height="9"/>'), []],
  ["carried out by a transform", group("translate(1500)", rect), ["svg/too-far"]],
  ["carried out and made large", group("scale(200)", rect), ["svg/too-far"]],
  ["made large about another point", group("translate(0 0) scale(100) translate(-4 -4)", rect), []],
  ["a detour", group("translate(14000)", group("translate(-14000)", rect)), []],
  ["too long a detour", group("translate(16000)", group("translate(-16000)", rect)), ["svg/too-far"]],
  ["too far a centre of a turn", group("rotate(0 16000 0)", rect), ["svg/too-far"]],
  ["a wide stroke", '<path d="M0 0h9" stroke="#000" stroke-width="1501"/>', ["svg/too-far"]],
  ["numbers that shrink", group("scale(1e-6)", '<rect width="2e7" height="9e6"/>'), []],
  ["numbers that shrink by much", group("scale(1e-7)", '<rect width="2e8" height="9e7"/>'), ["svg/too-far"]],
  ["a speck that shrinks", group("scale(1e-9)", rect), []],
  ["numbers that grow", group("scale(1e4)", '<rect width="2e-3" height="9e-4"/>'), []],
  ["numbers that grow by much", group("scale(1e6)", '<rect width="2e-5" height="9e-6"/>'), ["svg/too-far"]],
  [
    "a use that is far",
    `<defs>${rect.replace("rect", 'rect id="r"')}</defs><use href="#r" x="1500"/>`,
    ["svg/too-far"],
  ],
  ["what a use is not asked for", '<defs><rect id="r" x="2000" width="9" height="9"/></defs>', []],
  [
    "an svg inside, far",
    '<svg x="1500" width="9" height="9"><rect width="9" height="9"/></svg>',
    ["svg/too-far"],
  ],
  [
    "an svg inside that stretches",
    '<svg viewBox="0 0 .01 .01" width="30" height="20"><rect width="9" height="9"/></svg>',
    ["svg/too-far"],
  ],
  [
    "a clip path",
    `<clipPath id="c"><rect width="1501" height="9"/></clipPath>${clipped("")}`,
    ["svg/too-far"],
  ],
  ["a transform that leaves a line", group("scale(1 0)", rect), ["svg/too-far"]],
  ["one that nearly does", group("matrix(1 1 1 1.01 0 0)", rect), ["svg/too-far"]],
  ["one that stretches 100 times as far one way", group("scale(1 .01)", rect), []],
  [
    "a viewBox that is tiny",
    '<svg viewBox="0 0 .003 .003" width="9" height="9"><rect width=".003" height=".003"/></svg>',
    ["svg/too-far"],
  ],
  [
    "a use that makes a symbol tiny",
    '<symbol id="s" viewBox="0 0 9 9"><path d="M0 0h9"/></symbol><use href="#s" width=".003" height="9"/>',
    ["svg/too-far"],
  ],
  [
    "a marker that is tiny by the stroke it stands on",
    '<marker id="m" viewBox="0 0 9 9"><path d="M0 0h9"/></marker><path d="M0 0h9" stroke-width=".003" marker-end="url(#m)"/>',
    ["svg/too-far"],
  ],
  [
    "tiles that are too small to be seen",
    '<pattern id="p" width=".05" height="9" patternUnits="userSpaceOnUse"><path d="M0 0h9"/></pattern><path d="M0 0h9v9z" fill="url(#p)"/>',
    ["svg/too-far"],
  ],
  [
    "a gradient by the box of a line",
    '<linearGradient id="l"><stop/></linearGradient><path d="M0 0h9" stroke="url(#l)"/>',
    ["svg/too-far"],
  ],
  [
    "a gradient",
    '<linearGradient id="l" x2="170"><stop/></linearGradient><path d="M0 0h9v9z" fill="url(#l)"/>',
    ["svg/too-far"],
  ],
  [
    "a gradient that is moved",
    '<linearGradient id="l" gradientUnits="userSpaceOnUse" gradientTransform="translate(1e9)"><stop/></linearGradient><path d="M0 0h9v9z" fill="url(#l)"/>',
    ["svg/too-far"],
  ],
  ["an arc that is nearly straight", '<path d="M0 0A1e6 1e6 0 0 1 9 9L0 9z"/>', []],
  ["the rest of its circle", '<path d="M0 0A1e6 1e6 0 1 1 9 9L0 9z"/>', ["svg/too-far"]],
])("%s", (_, body, rules) => {
  expect(rulesOf(draw(body))).toEqual(rules);
});

test("a viewBox may be off the origin by 1,000 sides", () => {
  const at = (x: number): readonly string[] =>
    rulesOf(draw(`<rect x="${x}" width="9" height="9"/>`, `viewBox="${x} 0 30 20"`));
  expect(at(29_900)).toEqual([]);
  expect(at(30_100)).toEqual(["svg/too-far"]);
});
