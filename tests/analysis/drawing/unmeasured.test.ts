// What shows in one colour and would be measured in another is found by the pixel, and the drawing is refused.
import { describe, expect, test } from "vitest";
import { openDrawing } from "../../../src/analysis/drawing/opendrawing.ts";
import { renderScene } from "../../../src/analysis/drawing/scene.ts";
import { findLost, tellLost } from "../../../src/analysis/drawing/unmeasured.ts";
import type { Hex } from "../../../src/colour/colour.ts";
import type { Paint } from "../../../src/svg/paint.ts";
import { listed, type PaintIndex } from "../../../src/svg/paintnumber.ts";
import { drawMap, drawPicture } from "../../regions/picture.ts";
import { bytesOf } from "../../svg/drawing.ts";
import { resolve } from "../sight.ts";

const white = { key: "#ffffff", declared: "#ffffff", flat: true, selected: false } as const;
const red = { key: "#ff0000", declared: "#ff0000", flat: true, selected: false } as const;
const gradient = { key: "url(#g)", declared: null, flat: false, selected: false } as const;

/** What is lost of a picture of 100 by 100 whose first `rows` have `colour` and whose others are white. */
const lostOf = (
  rows: number,
  colour: string,
  map = drawMap(100, 100, () => 1),
  paints: Paints = [white, red],
) =>
  findLost(
    drawPicture(100, 100, (_, y) => (y < rows ? colour : "#ffffff")),
    map,
    listed<PaintIndex, Paint>(paints),
    listed<PaintIndex, Hex>(paints.map(({ declared }) => declared ?? "#ffffff")),
    10_000,
  );
type Paints = readonly Paint[];

describe("findLost", () => {
  test("a hundredth of the flag may look otherwise, and more may not", () => {
    expect(lostOf(1, "#ff0000")).toEqual([]);
    expect(lostOf(2, "#ff0000")).toEqual([{ hex: "#ff0000", share: 0.02 }]);
  });

  test("what is transparent in the map is no less lost", () => {
    const open = drawMap(100, 100, (_, y) => (y < 5 ? 0 : 1));
    expect(lostOf(5, "#ff0000", open)).toEqual([{ hex: "#ff0000", share: 0.05 }]);
  });

  test("a colour that no paint has is lost inside an area: 96 columns of 3 rows lie there", () => {
    expect(lostOf(5, "#ff0000", undefined, [white])).toEqual([{ hex: "#ff0000", share: (96 * 3) / 10_000 }]);
  });

  // Of white: ΔE00 of #fafafa 1.1, of #eeeeee 3.5, of #d6d6d6 8.9.
  test.each([
    ["#fafafa", 0],
    ["#eeeeee", 0],
    ["#d6d6d6", 1],
  ])("%s is told from white, plain or the mean of a gradient, %i times", (colour, times) => {
    expect(lostOf(30, colour)).toHaveLength(times);
    expect(lostOf(30, colour, undefined, [gradient])).toHaveLength(times);
  });

  test("the paint that has most of it is named", () => {
    const map = drawMap(100, 100, (_, y) => (y < 10 ? 1 : 2));
    expect(lostOf(30, "#ff0000", map, [white, gradient])).toMatchObject([{ paint: "url(#g)" }]);
    expect(lostOf(12, "#ff0000", map, [white, gradient])).toMatchObject([{ hex: "#ff0000" }]);
  });

  test("a flag of thin lines is refused by their share", () => {
    const lines = (rows: number) => drawMap(40, 720, (_, y) => (y < rows ? 1 + (Math.floor(y / 4) % 2) : 1));
    const paints = listed<PaintIndex, Paint>([white, white]);
    const lostOfLines = (rows: number) =>
      findLost(
        drawPicture(40, 720, () => "#ffffff"),
        lines(rows),
        paints,
        listed<PaintIndex, Hex>(["#ffffff", "#ffffff"]),
        28_800,
      );
    expect(lostOfLines(80)).toEqual([]);
    expect(lostOfLines(120)).toEqual([{ thin: 1 / 6 }]);
  });
});

describe("the problem says how much of the flag and what it looks like", () => {
  test.each([
    [
      { hex: "#ff0000", share: 0.0138 },
      "1.4 % of the flag looks otherwise than it would be measured: most of that looks #ff0000.",
    ],
    [
      { hex: null, share: 0.5 },
      "50.0 % of the flag looks otherwise than it would be measured: most of that shows nothing.",
    ],
    [
      { paint: "url(#wave) s", share: 0.25 },
      "25.0 % of the flag looks otherwise than it would be measured: most of that is in the gradient or pattern url(#wave), which would be measured as one colour.",
    ],
    [
      { paint: "#ff0000/0.60", share: 0.25 },
      "25.0 % of the flag looks otherwise than it would be measured: most of that is in the translucent #ff0000, which would be measured as one colour.",
    ],
    [
      { paint: "other", share: 0.25 },
      "25.0 % of the flag looks otherwise than it would be measured: most of that is in the colours beyond the 48 that show most, which would be measured as one colour.",
    ],
    [
      { edges: 0.5 },
      "50.0 % of the length of all edges lies beside a gradient, a pattern or a translucent shape that changes along it, and would be measured with one contrast.",
    ],
    [
      { thin: 1 / 6 },
      "16.7 % of the flag is lines or dots thinner than a 180th of its height, which look as a mixture of their colours and would be measured as each.",
    ],
  ] as const)("%o", (lost, reason) => {
    expect(tellLost("ferry.svg", lost)).toMatchObject({
      rule: "study/colour-lost",
      severity: "error",
      file: "ferry.svg",
      reason,
    });
    expect(tellLost("ferry.svg", lost, true).reason).toBe(`After the change, ${reason}`);
  });
});

// 0.6 · 255 = 153 = 0x99: the veil looks as the stripe does and is no part of the labels.
const veiled = (opacity: number): string =>
  `<rect width="300" height="200" fill="#ffffff"/><rect width="300" height="20" fill="#999999"/><rect y="100" width="300" height="20" opacity="${opacity}"/>`;

test("a veil that looks like a paint is a tenth of the flag", async () => {
  const { lost } = await renderScene(resolve(veiled(0.4)), { distance: 0 });
  expect(lost).toEqual([{ hex: "#999999", share: 0.1 }]);
  expect((await renderScene(resolve(veiled(0.05)), { distance: 0 })).lost).toEqual([]);
});

test("such a drawing is not opened", async () => {
  const open = (opacity: number) =>
    openDrawing(
      "veil.svg",
      bytesOf(`<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 300 200">${veiled(opacity)}</svg>`),
      { distance: 40 },
    );
  const { value, problems } = await open(0.4);
  expect(value).toBeUndefined();
  expect(problems.map(({ rule }) => rule)).toEqual(["study/colour-lost"]);
  expect((await open(0.05)).value).toBeDefined();
});

const ground = '<rect width="300" height="200" fill="#ffffff"/>';
const over = (fill: string, defs: string): string =>
  `${defs}${ground}<rect x="50" y="40" width="200" height="120" fill="${fill}"/>`;
const stops = (...all: readonly (readonly [number, string])[]): string =>
  `<linearGradient id="g">${all.map(([offset, colour]) => `<stop offset="${offset}" stop-color="${colour}"/>`).join("")}</linearGradient>`;
const pattern = (more: string, body: string): string =>
  `<pattern id="g" patternUnits="userSpaceOnUse" ${more}>${body}</pattern>`;
const layers = (count: number): string =>
  `${ground}${'<circle cx="150" cy="100" r="60" fill="#000000" opacity=".49"/>'.repeat(count)}`;

// Rules by which a drawing is refused; nothing where all that shows is measured.
describe("what shows has to be measured", () => {
  test.each([
    [
      "a gradient with hard halves",
      over("url(#g)", stops([0.5, "#ff0000"], [0.5, "#0000ff"])),
      ["study/colour-lost"],
    ],
    [
      "a gradient of nearly hard halves",
      over("url(#g)", stops([0.49, "#ff0000"], [0.51, "#0000ff"])),
      ["study/colour-lost"],
    ],
    [
      "a gradient of halves that are soft towards each other",
      over("url(#g)", stops([0.45, "#ff0000"], [0.55, "#0000ff"])),
      ["study/colour-lost"],
    ],
    [
      "a gradient that is soft all over",
      over("url(#g)", stops([0, "#ff0000"], [1, "#0000ff"])),
      ["study/colour-lost"],
    ],
    [
      "a gradient that nobody tells from one colour",
      over("url(#g)", stops([0, "#ff0000"], [1, "#f00808"])),
      [],
    ],
    ["hard halves that nobody tells apart", over("url(#g)", stops([0.5, "#ff0000"], [0.5, "#ee0000"])), []],
    [
      "hard halves in ten gradients, one below the other",
      Array.from(
        { length: 10 },
        (_, y) =>
          `${stops([0.5, "#ff0000"], [0.5, "#0000ff"]).replace('"g"', `"g${y}"`)}<rect y="${20 * y}" width="300" height="20" fill="url(#g${y})"/>`,
      ).join(""),
      ["study/colour-lost"],
    ],
    [
      "a pattern of stripes",
      over("url(#g)", pattern('width="60" height="60"', '<path d="M0 0h30v60H0z" fill="#0000ff"/>')),
      ["study/colour-lost"],
    ],
    [
      "a pattern of one colour",
      over("url(#g)", pattern('width="60" height="60"', '<path d="M-9 -9h90v90h-90z" fill="#0000ff"/>')),
      [],
    ],
    [
      "a veil over two colours",
      `${ground}<rect width="150" height="200" fill="#ff0000"/><rect y="50" width="300" height="100" fill="#ffff00" opacity=".6"/>`,
      ["study/colour-lost"],
    ],
    // Hard: the ΔE00 of #c01020 and #a05020 is 15.5, that of #343434 and #606060 14.9.
    [
      "a gradient of near halves",
      over("url(#g)", stops([0.5, "#343434"], [0.5, "#606060"])),
      ["study/colour-lost"],
    ],
    [
      "a cross in a pattern",
      over(
        "url(#g)",
        pattern(
          'width="300" height="200"',
          '<path d="M0 0h300v200H0z" fill="#c01020"/><path d="M0 80h300v40H0z" fill="#a05020"/>',
        ),
      ),
      ["study/colour-lost"],
    ],
    [
      "fill and stroke of one translucent colour, which lie over each other",
      `${ground}<circle cx="150" cy="100" r="60" fill="#c01020" fill-opacity=".6" stroke="#c01020" stroke-opacity=".6" stroke-width="20"/>`,
      ["study/colour-lost"],
    ],
    ["a veil over one", `${ground}<rect y="50" width="300" height="100" fill="#ffff00" opacity=".6"/>`, []],
    ["one layer at less than half, black", layers(1), ["study/colour-lost"]],
    ["many of them, which cover", layers(8), ["study/colour-lost"]],
    [
      "a shade that is hardly seen",
      `${ground}<circle cx="150" cy="100" r="60" fill="#000000" opacity=".05"/>`,
      [],
    ],
    [
      "a mask that lets a third through",
      `<mask id="m" maskUnits="userSpaceOnUse" x="0" y="0" width="300" height="200"><path d="M0 0h300v200H0z" fill="#999999"/></mask>${ground}<rect width="150" height="200" fill="#000000" mask="url(#m)"/>`,
      ["study/colour-lost"],
    ],
    [
      "a paint over nothing that shows nothing",
      over("url(#g)", stops([0, "rgba(0,0,0,0)"], [1, "#000000"])).replace(ground, ""),
      ["study/colour-lost"],
    ],
  ])("%s", async (_, body, rules) => {
    const { lost } = await renderScene(resolve(body), { distance: 40 });
    expect(lost.map((each) => tellLost("a.svg", each).rule)).toEqual(rules);
  });
});
