import { expect, test } from "vitest";
import type { ReportedOption } from "../../src/study/options.ts";
import { pickSheet, withoutDrawing } from "../../src/study/sheet.ts";
import { makeOption } from "../measure/ranked.ts";

const option = (
  place: number,
  id: string,
  name: string,
  drawing: string | undefined = `<svg>${name}</svg>`,
): ReportedOption =>
  makeOption({
    place,
    id,
    name,
    replace: "#000000",
    with: "#ffffff",
    clarity: 100 - place,
    deltaE00: place,
    ...(drawing === undefined ? {} : { drawing }),
  });

test("options of one paint that share a place are one group, the first of them its head", () => {
  const sheet = pickSheet([
    option(1, "p1", "navy"),
    option(1, "p1", "black"),
    option(1, "p2", "white"),
    option(4, "p1", "red"),
  ]);
  expect(sheet.map(({ head, others }) => [head.name, others.map(({ name }) => name)])).toEqual([
    ["navy", ["black"]],
    ["white", []],
    ["red", []],
  ]);
});

test("the others come without their drawings; a group whose head was not drawn is left out", () => {
  const undrawn = withoutDrawing(option(2, "p1", "plum"));
  const sheet = pickSheet([option(1, "p1", "navy"), option(1, "p1", "black"), undrawn]);
  expect(sheet).toHaveLength(1);
  expect(sheet[0]?.others.every((other) => !("drawing" in other))).toBe(true);
});

test("a sheet has eight drawings at the most", () => {
  const many = Array.from({ length: 20 }, (_, index) => option(index + 1, "p1", `shade ${index}`));
  expect(pickSheet(many).map(({ head }) => head.place)).toEqual([1, 2, 3, 4, 5, 6, 7, 8]);
});

test("no options, no sheet", () => {
  expect(pickSheet([])).toEqual([]);
});
