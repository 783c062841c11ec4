// What shows in one colour and would be measured in another is found by the pixel, and the drawing is refused.
import { describe, expect, test } from "vitest";
import { openDrawing } from "../../../src/analysis/drawing/opendrawing.ts";
import { renderScene } from "../../../src/analysis/drawing/scene.ts";
import { findLost, tellLost } from "../../../src/analysis/drawing/unmeasured.ts";
import { listed } from "../../../src/svg/paintnumber.ts";
import type { SvgElement } from "../../../src/svg/tree.ts";
import { drawMap, drawPicture } from "../../regions/picture.ts";
import { bytesOf } from "../../svg/drawing.ts";
import { resolve } from "../sight.ts";

const white = { key: "#ffffff", declared: "#ffffff", flat: true, selected: false } as const;
const red = { key: "#ff0000", declared: "#ff0000", flat: true, selected: false } as const;

describe("findLost", () => {
  // A picture of 100 by 10 that is white, with `count` red pixels from the first.
  const picture = (count: number) =>
    drawPicture(100, 10, (x, y) => (y * 100 + x < count ? "#ff0000" : "#ffffff"));
  const allWhite = drawMap(100, 10, () => 1);

  test("a thousandth of the flag is rounding, and two are not", () => {
    expect(findLost(picture(1), allWhite, { paints: listed([white, red]), faint: [] }, 1000)).toEqual([]);
    expect(findLost(picture(2), allWhite, { paints: listed([white, red]), faint: [] }, 1000)).toEqual([
      { hex: "#ff0000", share: 0.002 },
    ]);
  });

  test("what is transparent in the map is no less lost", () => {
    const open = drawMap(100, 10, (x, y) => (y * 100 + x < 50 ? 0 : 1));
    expect(findLost(picture(50), open, { paints: listed([white, red]), faint: [] }, 950)).toEqual([
      { hex: "#ff0000", share: 50 / 950 },
    ]);
  });

  test("nothing is said of what a gradient covers where it does not jump", () => {
    const gradient = { key: "url(#g)", declared: null, flat: false, selected: false };
    const map = drawMap(100, 10, () => 2);
    expect(findLost(picture(1000), map, { paints: listed([red, gradient]), faint: [] }, 1000)).toEqual([]);
  });

  test("a colour that no paint has is lost inside an area: 96 columns of 3 rows lie there", () => {
    expect(findLost(picture(500), allWhite, { paints: listed([white]), faint: [] }, 1000)).toEqual([
      { hex: "#ff0000", share: (96 * 3) / 1000 },
    ]);
  });
});

test("the problem says how much and which colour", () => {
  expect(tellLost("ferry.svg", { hex: "#ff0000", share: 0.0138 })).toMatchObject({
    rule: "study/colour-lost",
    severity: "error",
    file: "ferry.svg",
    reason: "1.4 % of the flag looks #ff0000 and would be measured as another colour.",
  });
});

test("shades up to ΔE00 5 are rounding, up to 10 where something is faint, which is told, and on a fiftieth up to 20", () => {
  // #ffffff to #eeeeee is ΔE00 3.5, to #d6d6d6 8.9, to #cccccc 11.1, to #999999 27.
  const lostOf = (colour: string, faint: readonly SvgElement[], rows = 20) =>
    findLost(
      drawPicture(40, 100, (_, y) => (y < rows ? colour : "#ffffff")),
      drawMap(40, 100, () => 1),
      { paints: listed([white]), faint },
      4000,
    ).length;
  expect([lostOf("#eeeeee", []), lostOf("#d6d6d6", [])]).toEqual([0, 1]);
  const faint = resolve('<rect width="300" height="200"/>').instances.map(({ element }) => element);
  expect([lostOf("#d6d6d6", faint), lostOf("#cccccc", faint), lostOf("#cccccc", faint, 3)]).toEqual([
    0, 1, 0,
  ]);
  expect(lostOf("#999999", faint, 3)).toBe(1);
});

test("a flag of thin lines is refused by their share", () => {
  const lines = drawMap(40, 720, (_, y) => (y < 80 ? 1 + (Math.floor(y / 4) % 2) : 1));
  expect(
    findLost(
      drawPicture(40, 720, () => "#ffffff"),
      lines,
      { paints: listed([white, white]), faint: [] },
      28800,
    ),
  ).toEqual([]);
  const more = drawMap(40, 720, (_, y) => (y < 120 ? 1 + (Math.floor(y / 4) % 2) : 1));
  const lost = findLost(
    drawPicture(40, 720, () => "#ffffff"),
    more,
    { paints: listed([white, white]), faint: [] },
    28800,
  );
  expect(lost).toEqual([{ thin: 1 / 6 }]);
  expect(tellLost("a.svg", { thin: 1 / 6 })).toMatchObject({
    rule: "study/colour-lost",
    reason: expect.stringContaining("16.7 % of the flag is lines or dots thinner than a 180th of its height"),
  });
});

test("colours beyond those that are measured are refused where they are a colour of their own", () => {
  const joined = { key: "other", declared: null, flat: false, selected: false };
  const lostOf = (rows: number) =>
    findLost(
      drawPicture(10, 100, () => "#ffffff"),
      drawMap(10, 100, (_, y) => (y < rows ? 2 : 1)),
      { paints: listed([white, joined]), faint: [] },
      1000,
    );
  expect(lostOf(5)).toEqual([]);
  expect(lostOf(6)).toEqual([{ joined: 0.06 }]);
  expect(tellLost("a.svg", { joined: 0.06 }).reason).toContain("6.0 % of the flag is colours beyond the 48");
});

test("the problem says along which length colours meet, and in what", () => {
  const tell = (paint: string) => tellLost("ferry.svg", { paint, length: 0.55, others: 0 });
  expect(tell("url(#wave) s")).toMatchObject({
    rule: "study/edge-lost",
    severity: "error",
    reason:
      "Inside the gradient or pattern url(#wave) colours meet along 0.6 flag heights, which would not be measured.",
  });
  expect(tellLost("ferry.svg", { paint: "url(#wave)", length: 1, others: 8 }).reason).toContain(
    "Inside the gradient or pattern url(#wave) and 8 others like it colours meet along 1.0 flag heights",
  );
  expect(tell("#ff0000/0.60").reason).toContain("Inside the translucent #ff0000 colours meet");
  expect(tellLost("ferry.svg", { hex: null, share: 0.5 }).reason).toBe(
    "50.0 % of the flag shows nothing and would be measured as a colour.",
  );
});

// 0.6 · 255 = 153 = 0x99: the veil looks as the stripe does and is no part of the labels.
const veiled = (opacity: number): string =>
  `<rect width="300" height="200" fill="#ffffff"/><rect width="300" height="20" fill="#999999"/><rect y="100" width="300" height="20" opacity="${opacity}"/>`;

test("a veil that looks like a paint is a tenth of the flag", async () => {
  const { lost } = await renderScene(resolve(veiled(0.4)), { distance: 0 });
  expect(lost).toEqual([{ hex: "#999999", share: 0.1 }]);
  expect((await renderScene(resolve(veiled(0.15)), { distance: 0 })).lost).toEqual([]);
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
  expect((await open(0.15)).value).toBeDefined();
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
      ["study/edge-lost"],
    ],
    [
      "a gradient of nearly hard halves",
      over("url(#g)", stops([0.49, "#ff0000"], [0.51, "#0000ff"])),
      ["study/edge-lost"],
    ],
    [
      "a gradient of halves that are soft towards each other",
      over("url(#g)", stops([0.45, "#ff0000"], [0.55, "#0000ff"])),
      ["study/edge-lost"],
    ],
    ["a gradient that is one", over("url(#g)", stops([0, "#ff0000"], [1, "#0000ff"])), []],
    ["hard halves that nobody tells apart", over("url(#g)", stops([0.5, "#ff0000"], [0.5, "#ee0000"])), []],
    [
      "hard halves in ten gradients, one below the other",
      Array.from(
        { length: 10 },
        (_, y) =>
          `${stops([0.5, "#ff0000"], [0.5, "#0000ff"]).replace('"g"', `"g${y}"`)}<rect y="${20 * y}" width="300" height="20" fill="url(#g${y})"/>`,
      ).join(""),
      ["study/edge-lost"],
    ],
    [
      "a pattern of stripes",
      over("url(#g)", pattern('width="60" height="60"', '<path d="M0 0h30v60H0z" fill="#0000ff"/>')),
      ["study/edge-lost"],
    ],
    [
      "a pattern of one colour",
      over("url(#g)", pattern('width="60" height="60"', '<path d="M-9 -9h90v90h-90z" fill="#0000ff"/>')),
      [],
    ],
    [
      "a veil over two colours",
      `${ground}<rect width="150" height="200" fill="#ff0000"/><rect y="50" width="300" height="100" fill="#ffff00" opacity=".6"/>`,
      ["study/edge-lost"],
    ],
    // Hard: the ΔE00 of #c01020 and #a05020 is 15.5, that of #343434 and #606060 14.9.
    [
      "a gradient of near halves",
      over("url(#g)", stops([0.5, "#343434"], [0.5, "#606060"])),
      ["study/edge-lost"],
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
      ["study/edge-lost"],
    ],
    [
      "fill and stroke of one translucent colour, which lie over each other",
      `${ground}<circle cx="150" cy="100" r="60" fill="#c01020" fill-opacity=".6" stroke="#c01020" stroke-opacity=".6" stroke-width="20"/>`,
      ["study/edge-lost"],
    ],
    ["a veil over one", `${ground}<rect y="50" width="300" height="100" fill="#ffff00" opacity=".6"/>`, []],
    ["one layer at less than half, black", layers(1), ["study/colour-lost"]],
    ["many of them, which cover", layers(8), ["study/colour-lost"]],
    [
      "a shade that is hardly seen",
      `${ground}<circle cx="150" cy="100" r="60" fill="#000000" opacity=".1"/>`,
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
