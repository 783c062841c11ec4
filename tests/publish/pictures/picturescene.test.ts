import { expect, test } from "vitest";
import { drawBox, fitSource } from "../../../src/publish/pictures/picturescene.ts";

const room = { x: 100, y: 50, width: 600, height: 300 };

test("a flag is as large as its room allows, in the middle, in its own proportions", () => {
  expect(fitSource({ drawing: "", proportions: [1, 1] }, room)).toEqual({
    x: 250,
    y: 50,
    width: 300,
    height: 300,
  });
  expect(fitSource({ drawing: "", proportions: [1, 4] }, room)).toEqual({
    x: 100,
    y: 125,
    width: 600,
    height: 150,
  });
});

test("of a part its own proportions count", () => {
  const crop = { x: 0, y: 0, width: 0.9, height: 0.3 };
  expect(fitSource({ drawing: "", proportions: [1, 1], crop }, room)).toMatchObject({
    width: 600,
    height: 200,
  });
});

test("a box stands on whole pixels", () => {
  expect(drawBox({ x: 0.4, y: 1.6, width: 10.2, height: 3.5 }, "#777777")).toEqual({
    kind: "shape",
    svg: '<rect x="0" y="2" width="10" height="4" fill="#777777"/>',
  });
});
