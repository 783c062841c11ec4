import { expect, test } from "vitest";
import { readConstruction } from "../../src/svg/construction.ts";
import { resolve } from "./drawing.ts";

const build = (body: string, attributes = 'viewBox="0 0 300 200"') =>
  readConstruction(resolve(`<svg xmlns="http://www.w3.org/2000/svg" ${attributes}>${body}</svg>`));
/** Kind, colour, and sizes in hundredths of the height, of each shape. */
const list = (body: string, attributes?: string) =>
  build(body, attributes).shapes.map(({ kind, hex, sizes }) =>
    [kind, hex, ...sizes.map((size) => Math.round(size * 1e8) / 1e6)].join(" "),
  );

test("a flag of plain geometry is read in hundredths of its height", () => {
  const flag = build(
    '<rect width="300" height="200" fill="#12235c"/><path d="M0 90h300v20H0z" fill="#ffffff"/><circle cx="150" cy="100" r="50" fill="#f4c430"/>',
  );
  expect(flag).toEqual({
    width: 1.5,
    left: 0,
    shapes: [
      { kind: "rectangle", hex: "#12235c", sizes: [0, 0, 1.5, 1] },
      { kind: "rectangle", hex: "#ffffff", sizes: [0, 0.45, 1.5, expect.closeTo(0.1, 9)] },
      { kind: "circle", hex: "#f4c430", sizes: [0.75, 0.5, 0.5, 0] },
    ],
  });
});

test.each([
  [
    "moved and scaled",
    '<g transform="translate(100 50) scale(2)"><rect width="25" height="10"/></g>',
    "rectangle #000000 50 25 25 10",
  ],
  [
    "turned by a right angle",
    '<rect width="20" height="60" transform="translate(100 0) rotate(90)"/>',
    "rectangle #000000 20 0 30 10",
  ],
  [
    "shown by use",
    '<defs><circle id="c" r="10"/></defs><use href="#c" x="20" y="40" fill="#c8202f"/>',
    "circle #c8202f 10 20 10 0",
  ],
  ["a path from the lower corner", '<path d="M20 60V20H80V60Z"/>', "rectangle #000000 10 10 30 20"],
  ["a polygon", '<polygon points="20 20 80 20 80 60 20 60"/>', "rectangle #000000 10 10 30 20"],
  ["beyond the sides", '<rect x="-100" y="-100" width="150" height="150"/>', "rectangle #000000 0 0 25 25"],
  [
    "a stroke that is level",
    '<path d="M0 100h300" stroke="#ffffff" stroke-width="20"/>',
    "line #ffffff 0 45 150 10",
  ],
  [
    "a stroke that is upright",
    '<g stroke="#ffffff" stroke-width="10"><line x1="100" y1="200" x2="100" y2="0"/></g>',
    "line #ffffff 47.5 0 5 100",
  ],
  [
    "a ring",
    '<circle cx="150" cy="100" r="40" fill="none" stroke="#c8202f" stroke-width="20"/>',
    "ring #c8202f 75 50 50 30",
  ],
  [
    "a circle that is turned",
    '<circle cx="50" cy="0" r="10" transform="translate(100 50) rotate(90)"/>',
    "circle #000000 50 50 10 0",
  ],
])("%s", (_, body, shape) => {
  expect(list(body)).toEqual([shape]);
  expect(build(body).left).toBe(0);
});

test("the viewBox may begin anywhere", () => {
  expect(list('<rect x="-5" y="5" width="10" height="5"/>', 'viewBox="-15 -10 30 20"')).toEqual([
    "rectangle #000000 50 75 50 25",
  ]);
});

test.each([
  ["turned", '<rect width="50" height="50" transform="rotate(45)"/>'],
  ["skewed", '<rect width="50" height="50" transform="skewX(10)"/>'],
  ["rounded", '<rect width="50" height="50" rx="5"/>'],
  ["outlined", '<rect width="50" height="50" stroke="#ffffff"/>'],
  ["slanted", '<path d="M0 0L300 200" stroke="#ffffff"/>'],
  ["dashed", '<path d="M0 100H300" stroke="#ffffff" stroke-dasharray="20"/>'],
  [
    "with ends of its own",
    '<path d="M50 100H250" stroke="#ffffff" stroke-width="20" stroke-linecap="square"/>',
  ],
  ["of another form", '<path d="M0 0L300 100L0 200Z"/>'],
  ["curved", '<path d="M0 0C100 0 100 200 0 200Z"/>'],
  ["of two parts", '<path d="M0 0H50V50H0ZM100 100H150V150H100Z"/>'],
  ["stretched", '<circle r="40" transform="scale(2 1)"/>'],
  ["oval", '<ellipse cx="100" cy="100" rx="40" ry="30"/>'],
  ["translucent", '<rect width="50" height="50" opacity="0.7"/>'],
  [
    "clipped",
    '<defs><clipPath id="p"><rect width="20" height="20"/></clipPath></defs><rect width="50" height="50" clip-path="url(#p)"/>',
  ],
  ["in a percentage", '<rect width="50%" height="50"/>'],
])("left out: what is %s", (_, body) => {
  const { shapes, left } = build(body);
  expect([shapes, left]).toEqual([[], 1]);
});

test("nothing that is not painted is told or counted, and no more than ten are told", () => {
  expect(
    build('<rect width="50" height="50" fill="none"/><defs><rect id="d" width="9" height="9"/></defs>'),
  ).toEqual({
    width: 1.5,
    shapes: [],
    left: 0,
  });
  const many = build(
    Array.from({ length: 15 }, (__, at) => `<rect x="${20 * at}" width="10" height="9"/>`).join(""),
  );
  expect([many.shapes.length, many.left]).toEqual([10, 5]);
});
