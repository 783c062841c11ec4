// What shows in one colour and would be measured in another is found by the pixel, and the drawing is refused.
import { describe, expect, test } from "vitest";
import { findLost, tellLost } from "../../src/study/lost.ts";
import { openDrawing } from "../../src/study/open.ts";
import { renderScene } from "../../src/study/scene.ts";
import { drawMap, drawPicture } from "../regions/picture.ts";
import { bytesOf } from "../svg/drawing.ts";
import { resolve } from "./sight.ts";

const white = { key: "#ffffff", declared: "#ffffff", flat: true, selected: false } as const;
const red = { key: "#ff0000", declared: "#ff0000", flat: true, selected: false } as const;

describe("findLost", () => {
  // A picture of 100 by 10 that is white, with `count` red pixels from the first.
  const picture = (count: number) =>
    drawPicture(100, 10, (x, y) => (y * 100 + x < count ? "#ff0000" : "#ffffff"));
  const allWhite = drawMap(100, 10, () => 1);

  test("up to a thousandth of the flag is rounding", () => {
    expect(findLost(picture(1), allWhite, [white, red], 1000)).toEqual([]);
    expect(findLost(picture(2), allWhite, [white, red], 1000)).toEqual([{ hex: "#ff0000", share: 0.002 }]);
  });

  test("what is transparent in the map is no less lost", () => {
    const open = drawMap(100, 10, (x, y) => (y * 100 + x < 50 ? 0 : 1));
    expect(findLost(picture(50), open, [white, red], 950)).toEqual([{ hex: "#ff0000", share: 50 / 950 }]);
  });

  test("nothing is said of what a gradient covers, nor of a colour that no paint has", () => {
    const gradient = { key: "url(#g)", declared: null, flat: false, selected: false };
    expect(
      findLost(
        picture(500),
        drawMap(100, 10, () => 2),
        [red, gradient],
        1000,
      ),
    ).toEqual([]);
    expect(findLost(picture(500), allWhite, [white], 1000)).toEqual([]);
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

// 0.6 · 255 = 153 = 0x99: the veil looks as the stripe does and is no part of the labels.
const veiled = (opacity: number): string =>
  `<rect width="300" height="200" fill="#ffffff"/><rect width="300" height="20" fill="#999999"/><rect y="100" width="300" height="20" opacity="${opacity}"/>`;

test("a veil that looks like a paint is a tenth of the flag", async () => {
  const { lost } = await renderScene(resolve(veiled(0.4)), { distance: 0 });
  expect(lost).toEqual([{ hex: "#999999", share: 0.1 }]);
  expect((await renderScene(resolve(veiled(0.3)), { distance: 0 })).lost).toEqual([]);
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
  expect((await open(0.3)).value).toBeDefined();
});
