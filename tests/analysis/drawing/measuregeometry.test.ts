import { describe, expect, test } from "vitest";
import { labelsOf, renderMap, toSeenLines } from "../../../src/analysis/drawing/measuregeometry.ts";
import { findPaints } from "../../../src/svg/paint.ts";
import { listed } from "../../../src/svg/paintnumber.ts";
import { nth } from "../../numbered.ts";
import { blue, box, disc, field, red, resolve, white } from "../sight.ts";

/** The map of a drawing with how many pixels each of its colours has; null is transparent. */
async function countOf(body: string, width: number, height: number) {
  const shapes = findPaints(resolve(body));
  const map = await renderMap(shapes, { width, height });
  const counts = new Map<string | null, number>();
  for (const label of map.labels) {
    const hex = label === 0 ? null : ([...shapes.paints][label - 1]?.declared ?? "?");
    counts.set(hex, (counts.get(hex) ?? 0) + 1);
  }
  return { map, counts };
}

describe("renderMap", () => {
  test("each paint has the pixels that its shape covers, on whole pixels exactly", async () => {
    const { map, counts } = await countOf(
      field(white) + box(0, 0, 150, 200, blue) + box(200, 100, 50, 50, red, "r"),
      150,
      100,
    );
    expect(map).toMatchObject({ width: 150, height: 100, exactShare: 1 });
    expect(counts).toEqual(
      new Map([
        [blue, 7500],
        [white, 7500 - 625],
        [red, 625],
      ]),
    );
  });

  test("where nothing is painted the label is 0", async () => {
    const { counts } = await countOf(box(0, 0, 150, 200, blue), 150, 100);
    expect(counts).toEqual(
      new Map<string | null, number>([
        [blue, 7500],
        [null, 7500],
      ]),
    );
  });

  test("a disc has π r² pixels, within half of one percent", async () => {
    const { counts } = await countOf(field(white) + disc(150, 100, 50, red), 900, 600);
    expect(Math.abs((counts.get(red) ?? 0) / (Math.PI * 150 ** 2) - 1)).toBeLessThan(0.005);
  });

  test("two paints of one colour through different shapes are one label", async () => {
    const { counts } = await countOf(
      field(white) + box(0, 0, 30, 200, red) + box(100, 0, 30, 200, "#f00", "c"),
      150,
      100,
    );
    expect(counts.get(red)).toBe(3000);
  });
});

test("labels begin at 1, paints at 0", () => {
  const paint = { key: "", declared: null, flat: true, selected: false };
  expect(labelsOf({ paints: listed([paint, paint]) })).toEqual([1, 2]);
  expect(
    toSeenLines([
      { a: nth(1), b: nth(3), points: [0, 0, 4, 0], length: 4, focusShare: 0.5, outlineShares: [1] },
    ]),
  ).toEqual([{ a: 0, b: 2, length: 4, focusShare: 0.5, outlineShares: [1] }]);
});
