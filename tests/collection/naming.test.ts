// Names on real drawings: what options and measures print is read again, and says what it means. Nothing is said of any
// one of them.
import { readFile } from "node:fs/promises";
import { beforeAll, describe, expect, test } from "vitest";
import { openDrawing } from "../../src/analysis/drawing/opendrawing.ts";
import { rankOpened } from "../../src/analysis/options/rankoptions.ts";
import { listColours, planChange } from "../../src/analysis/planchange.ts";
import { defaultCloth } from "../../src/colour/cloth.ts";
import { nameReplacement } from "../../src/colour/colourname.ts";
import { defaultPalette } from "../../src/content/gallery/palette.ts";
import { listCollection } from "./files.ts";

/** Every thirteenth flag of one collection, twenty of them, whatever they show. */
const files = listCollection()
  .filter(({ name }) => name.startsWith("svg-country-flags/"))
  .filter((_, index) => index % 13 === 0)
  .slice(0, 20);

const options = { distance: 40, cloth: defaultCloth, palette: defaultPalette };
const opened: {
  readonly name: string;
  readonly drawing: Awaited<ReturnType<typeof openDrawing>>["value"];
}[] = [];

beforeAll(async () => {
  for (const { name, path } of files)
    opened.push({ name, drawing: (await openDrawing(name, await readFile(path), options)).value });
}, 120_000);

describe("twenty real flags", () => {
  test("are opened, all but a few", () => {
    expect(opened.filter(({ drawing }) => drawing !== undefined).length).toBeGreaterThanOrEqual(17);
  });

  test("every name that an option is printed with stands for its hex, in the place of its colour", () => {
    let read = 0;
    for (const { name: file, drawing } of opened) {
      if (drawing === undefined) continue;
      const colours = listColours(drawing.resolved, drawing.inspection);
      const report = rankOpened(drawing, options);
      const all = [...report.options, ...report.vanishing];
      const offer = (replace: string) =>
        all.flatMap((option) =>
          option.replace === replace ? [{ hex: option.with, name: option.name }] : [],
        );
      for (const { replace, with: next, name } of all) {
        const words = { palette: defaultPalette, offer };
        const { value } = planChange(drawing.resolved, colours, { replace, with: name }, words);
        expect([file, replace, name, value?.with]).toEqual([file, replace, name, next]);
        read += 1;
      }
    }
    expect(read).toBeGreaterThan(400);
  });

  test("every name of a flat colour stands for it where it is to be replaced", () => {
    for (const { name: file, drawing } of opened) {
      if (drawing === undefined) continue;
      const { paints, looks } = drawing.inspection;
      const colours = listColours(drawing.resolved, drawing.inspection);
      for (const [index, { hex, name }] of looks.entries()) {
        if (paints[index]?.flat !== true) continue;
        const change = { replace: name, with: "#123457" };
        const { value } = planChange(drawing.resolved, colours, change, { palette: defaultPalette });
        expect([file, name, value?.replace]).toEqual([file, name, hex]);
      }
    }
  });

  test("one name, one colour; no option has the words of what it replaces, nor of another colour", () => {
    for (const { name: file, drawing } of opened) {
      if (drawing === undefined) continue;
      const { looks, table } = drawing.inspection;
      expect([file, new Set(looks.map(({ name }) => name)).size]).toEqual([
        file,
        new Set(looks.map(({ hex }) => hex)).size,
      ]);
      for (const [index, { name }] of looks.entries())
        if ((table.paints[index]?.share ?? 0) > 0.01) expect(`${file}: ${name}`).not.toMatch(/\d$/);
      for (const option of rankOpened(drawing, options).options) {
        const same = looks.filter(({ name }) => name === option.name);
        expect([file, option.name, same.every(({ hex }) => hex === option.with)]).toEqual([
          file,
          option.name,
          true,
        ]);
      }
    }
  });
});

test("a name is refused that another colour has", () => {
  const red = { hex: "#c8102e", name: "red" } as const;
  expect(nameReplacement("#c8202f", red, [], "red")).not.toBe("red");
});
