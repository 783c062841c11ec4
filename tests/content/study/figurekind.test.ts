import { expect, test } from "vitest";
import {
  canShow,
  figureKinds,
  findKind,
  readDrawingLine,
  readFigure,
  readKind,
} from "../../../src/content/study/figurekind.ts";

test("an edge is asked for by its colours, everything else by its kind", () => {
  expect(readFigure('::figure{edge="white / red"}')).toEqual({ kind: "edge", edge: "white / red" });
  for (const kind of figureKinds) expect(readFigure(`::figure{kind="${kind}"}`)).toEqual({ kind });
  expect(readFigure('::figure{kind="Edge map"}')).toEqual({ kind: "edge map" });
});

test("a name of old is still read", () => {
  expect(readFigure('::figure{kind="Reflectance scale"}')).toEqual({ kind: "contrast ruler" });
});

test.each([
  "::figure",
  "::figure{}",
  '::figure{edge=""}',
  '::figure{edge="a"} b',
  '::figure{edges="a"}',
  '::figure{kind="edge"}',
  '::figure{kind="reads to"}',
  '::figure{kind="toString"}',
  '::figure{kind="edge map" edge="a / b"}',
])("%s is no figure", (line) => {
  expect(readFigure(line)).toBeUndefined();
});

test.each([
  ["edgemap", "edge map"],
  ["reflectance", "contrast ruler"],
  ["ruler", "contrast ruler"],
  ["contrast rulr", "contrast ruler"],
  ["distance", "distance strip"],
  ["seen-otherwise", "seen otherwise"],
  ["redesing", "redesign"],
  ["Scale", "contrast ruler"],
  ["reads", "lasts to"],
  ["reads to", "lasts to"],
  ["last to", "lasts to"],
  ["pie chart", undefined],
  ["to", undefined],
])("%s most likely stands for %s", (written, kind) => {
  expect(findKind(written)).toBe(kind);
});

test("a kind is read as it is written, known or not", () => {
  expect(readKind('::figure{kind="pie chart"}')).toBe("pie chart");
  expect(readKind('::figure{edge="pie chart"}')).toBeUndefined();
});

test("without edges there are no lines to draw, without a focus nothing lasts", () => {
  const shown = (edges: boolean, focus: boolean) =>
    figureKinds.filter((kind) => canShow(kind, { edges, focus }));
  expect(shown(true, true)).toEqual(figureKinds);
  expect(shown(true, false)).toEqual(figureKinds.filter((kind) => kind !== "lasts to"));
  expect(shown(false, true)).toEqual(["original", "redesign", "true size", "seen otherwise"]);
});

test("a drawing is asked for by its file, with words below it or without", () => {
  const drawing = "/flags/harbour.svg";
  expect(readDrawingLine(`::figure{drawing="${drawing}"}`)).toEqual({ drawing });
  expect(readDrawingLine(`::figure{drawing="${drawing}" caption="As it was {1920}"}`)).toEqual({
    drawing,
    caption: "As it was {1920}",
  });
  for (const wrong of ['drawing=""', "drawing=a.svg", 'drawing="a.svg", caption="b"', 'caption="b"'])
    expect(readDrawingLine(`::figure{${wrong}}`)).toBeUndefined();
});
