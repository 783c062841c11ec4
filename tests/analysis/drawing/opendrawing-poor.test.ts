// Drawings that are written poorly are measured as what they show: a white stripe and a disc on a field, by their geometry.
import { expect, test } from "vitest";
import { openDrawing } from "../../../src/analysis/drawing/opendrawing.ts";
import type { Rank } from "../../../src/svg/paintnumber.ts";
import { bytesOf } from "../../svg/drawing.ts";

const svg = (body: string, root = 'viewBox="0 0 300 200"'): string =>
  `<svg xmlns="http://www.w3.org/2000/svg" ${root}>${body}</svg>`;
const field = '<rect width="300" height="200" fill="#1b2a5c"/>';
const stripe = '<rect width="300" height="20" fill="#fff"/>';
const disc = '<circle cx="150" cy="120" r="60" fill="#f4c430"/>';

/** A circle of ten thousand points, in and out by a hundredth of a unit. */
const points = Array.from({ length: 10_000 }, (_, index) => {
  const [angle, radius] = [(2 * Math.PI * index) / 10_000, 60 + (index % 2 === 0 ? 0.01 : -0.01)];
  return `${(150 + radius * Math.cos(angle)).toFixed(4)} ${(120 + radius * Math.sin(angle)).toFixed(4)}`;
}).join("L");

/** 990 shades within 3 of 255 of the field, in small tiles all over it, under all else. */
const shades = Array.from({ length: 990 }, (_, index) => {
  const at = [index % 7, Math.floor(index / 7) % 7, Math.floor(index / 49) % 7, Math.floor(index / 343)];
  const hex = [27 + at[0]! - 3, 42 + at[1]! - 3, 92 + at[2]! - 3].map((value) =>
    value.toString(16).padStart(2, "0"),
  );
  return `<rect x="${(index % 33) * 9}" y="${Math.floor(index / 33) * 6.6}" width="8" height="6" fill="#${hex.join("")}"/>`;
}).join("");

const quarters = [
  "#f4c430",
  "#F4C430",
  "rgb(244,196,48)",
  "hsl(45.3,89.9%,57.25%)",
  "rgb(95.686%,76.863%,18.824%)",
];

test.each([
  ["plainly", svg(field + stripe + disc)],
  [
    "with one colour in five spellings",
    svg(
      field +
        stripe +
        quarters
          .map(
            (fill, index) =>
              `<path d="M150 120L${[index, index + 1].map((at) => `${150 + 60 * Math.cos(1.2566371 * at)} ${120 + 60 * Math.sin(1.2566371 * at)}`).join("A60 60 0 0 1 ")}z" fill="${fill}" stroke="none"/>`,
          )
          .join(""),
    ),
  ],
  [
    "with transforms in transforms",
    svg(
      `<g transform="scale(2)"><g transform="translate(75 60) rotate(90)"><g transform="matrix(.25 0 0 .25 0 0)"><g transform="rotate(-90) translate(-300 -240) scale(2)">${field}${stripe}${disc}</g></g></g></g>`,
    ),
  ],
  [
    "with its corner elsewhere",
    svg(`<g transform="translate(-450 1000)">${field}${stripe}${disc}</g>`, 'viewBox="-450 1000 300 200"'),
  ],
  ["in millimetres", svg(field + stripe + disc, 'width="300mm" height="200mm" viewBox="0 0 300 200"')],
  ["in inches and points", svg(field + stripe + disc, 'width="1.5in" height="72pt" viewBox="0 0 300 200"')],
  ["with ten thousand points", svg(`${field}${stripe}<path d="M${points}z" fill="#f4c430"/>`)],
  ["with 990 shades of one colour", svg(field + shades + stripe + disc)],
])("a flag that is written %s", { timeout: 60_000 }, async (_, text) => {
  const { value, problems } = await openDrawing("a.svg", bytesOf(text), { distance: 40 });
  expect(problems).toEqual([]);
  const { table, paints, warnings } = value?.inspection ?? { table: undefined, paints: [], warnings: [] };
  const shares = new Map(
    paints.map(({ declared }, rank) => [declared, table?.paints[rank as Rank]?.share ?? 0]),
  );
  const sum = [...shares.values()].reduce((all, share) => all + share, 0);
  expect(shares.get("#ffffff")).toBeCloseTo(0.1, 3);
  expect(shares.get("#f4c430")).toBeCloseTo((Math.PI * 60 ** 2) / 60_000, 2);
  expect(sum).toBeCloseTo(1, 3);
  const lengths = (table?.edges ?? []).map(({ length }) => length).sort((a, b) => b - a);
  expect(lengths[0]).toBeCloseTo((2 * Math.PI * 60) / 200, 1);
  expect(lengths[1]).toBeCloseTo(300 / 200, 1);
  expect(lengths).toHaveLength(2);
  expect(warnings.map(({ about }) => about)).toEqual(text.includes(shades) ? ["joined"] : []);
});
