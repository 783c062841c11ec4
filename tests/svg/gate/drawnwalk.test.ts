import { expect, test } from "vitest";
import { walkDrawn } from "../../../src/svg/gate/drawnwalk.ts";
import { idsOf } from "../../../src/svg/gate/reference.ts";
import { draw, read } from "../drawing.ts";

/** Of each showing of the element with the id x: its matrix, and some of what it has. */
const showingsOf = (body: string, ...names: readonly string[]) => {
  const { root, viewBox } = read(draw(body));
  return [...walkDrawn(root, viewBox, idsOf(root))]
    .filter(({ element }) => element.attributes["id"] === "x")
    .map(({ matrix, all }) => [
      matrix.map((value) => Number(value.toFixed(6))),
      ...names.map((name) => all[name]),
    ]);
};
const x = '<path id="x" d="M0 0h9v9z"/>';

// Matrices are worked out by hand; those of a viewBox by SVG 2, section 8.2.
test.each([
  ["where it stands", `<g transform="translate(1 2)">${x}</g>`, [[1, 0, 0, 1, 1, 2]]],
  ["what shows nothing", `<defs>${x}</defs>`, []],
  [
    "each use",
    `<defs>${x}</defs><use href="#x" x="3"/><use href="#x" transform="scale(2)" y="1"/>`,
    [
      [1, 0, 0, 1, 3, 0],
      [2, 0, 0, 2, 0, 2],
    ],
  ],
  [
    "a viewBox inside",
    `<svg x="2" width="20" height="10" viewBox="1 0 4 5">${x}</svg>`,
    [[2, 0, 0, 2, 0, 0]],
  ],
  [
    "one that is stretched",
    `<svg width="20" height="10" viewBox="0 0 4 5" preserveAspectRatio="none">${x}</svg>`,
    [[5, 0, 0, 2, 0, 0]],
  ],
  [
    "a symbol by its use",
    `<symbol id="s" viewBox="0 0 4 4">${x}</symbol><use href="#s" width="8" height="12"/>`,
    [[2, 0, 0, 2, 0, 0]],
  ],
  [
    "a marker by its stroke",
    `<marker id="m" markerWidth="4" markerHeight="4" viewBox="0 0 2 2">${x}</marker><path d="M0 0h9" stroke-width="3" marker-end="url(#m)"/>`,
    [[6, 0, 0, 6, 0, 0]],
  ],
  [
    "a gradient by the box of a shape",
    '<linearGradient id="x" gradientTransform="scale(2)"/><rect x="5" width="6" height="3" fill="url(#x)"/>',
    [[12, 0, 0, 6, 5, 0]],
  ],
  [
    "a clip path",
    `<clipPath id="c">${x}</clipPath><g transform="scale(3)" clip-path="url(#c)"/>`,
    [[3, 0, 0, 3, 0, 0]],
  ],
])("%s", (_, body, matrices) => {
  expect(showingsOf(body).map(([matrix]) => matrix)).toEqual(matrices);
});

test("what a use gives is inherited, and what points at a clip path gives it nothing", () => {
  const stroke = 'stroke-width="7"';
  expect(showingsOf(`<defs>${x}</defs><use href="#x" ${stroke}/>`, "stroke-width")).toEqual([
    [[1, 0, 0, 1, 0, 0], "7"],
  ]);
  const clip = `<g stroke-width="5"><clipPath id="c">${x}</clipPath></g><g clip-path="url(#c)" ${stroke}/>`;
  expect(showingsOf(clip, "stroke-width")).toEqual([[[1, 0, 0, 1, 0, 0], "5"]]);
});
