import { describe, expect, test } from "vitest";
import { findLikeness, gridOf, type IndexedFlag } from "../../../src/analysis/likeness/likenessreport.ts";
import { likenessWarning } from "../../../src/measure/nearestflag.ts";
import { bytesOf, disc, drawing, field, stripes } from "../drawing.ts";

const cloth = { black: 5, white: 85 };

async function gridOfDrawing(bytes: Uint8Array) {
  const { value } = await gridOf("a.svg", bytes, cloth);
  if (value === undefined) throw new Error("no grid");
  return value;
}
const indexOf = (flags: Readonly<Record<string, string>>): Promise<readonly IndexedFlag[]> =>
  Promise.all(
    Object.entries(flags).map(async ([file, inside]) => ({
      file,
      grid: await gridOfDrawing(drawing(inside)),
    })),
  );

describe("gridOf", () => {
  test("flags of other proportions are stretched to the same", async () => {
    const wide = bytesOf(
      '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 40 20"><rect width="20" height="20" fill="#c8202f"/><rect x="20" width="20" height="20" fill="#ffffff"/></svg>',
    );
    const { nearest } = findLikeness(
      await gridOfDrawing(wide),
      await gridOfDrawing(drawing(field("#000000"))),
      await indexOf({ "halves.svg": stripes("#c8202f", "#ffffff") }),
    );
    expect(nearest).toEqual([
      { file: "halves.svg", deltaE00: expect.closeTo(0, 1), orientation: "as it is" },
    ]);
  });

  test("a drawing that shows nothing, or is none, is a problem", async () => {
    expect((await gridOf("a.svg", drawing(""), cloth)).problems.map(({ rule }) => rule)).toEqual([
      "study/nothing-drawn",
    ]);
    expect((await gridOf("a.svg", bytesOf("none"), cloth)).value).toBeUndefined();
  });

  test("a gradient counts with the colour it has on the whole", async () => {
    const gradient =
      '<defs><linearGradient id="g"><stop stop-color="#c8202f"/><stop offset="1" stop-color="#ffffff"/></linearGradient></defs>';
    expect((await gridOfDrawing(drawing(`${gradient}${field("url(#g)")}`))).labs).toHaveLength(1);
  });
});

describe("findLikeness", () => {
  const original = stripes("#12235c", "#fcd20f", "#0b7a3b");
  const redesign = stripes("#c8202f", "#fcd20f", "#0b7a3b");
  const likenessOf = async (flags: Readonly<Record<string, string>>) =>
    findLikeness(
      await gridOfDrawing(drawing(redesign)),
      await gridOfDrawing(drawing(original)),
      await indexOf(flags),
    );

  test("finds near a flag of the same fields in nearly the same colours", async () => {
    const { nearest } = await likenessOf({
      "other.svg": stripes("#ce1126", "#f7c81e", "#12803f"),
      "far.svg": stripes("#000000", "#ffffff"),
    });
    expect(nearest.map(({ file }) => file)).toEqual(["other.svg", "far.svg"]);
    expect(nearest.map(({ deltaE00 }) => deltaE00 < likenessWarning)).toEqual([true, false]);
  });

  test("finds near its mirror image", async () => {
    const { nearest } = await likenessOf({ "mirror.svg": stripes("#0b7a3b", "#fcd20f", "#c8202f") });
    expect(nearest).toMatchObject([{ file: "mirror.svg", orientation: "mirrored" }]);
    expect(nearest[0]?.deltaE00).toBeLessThan(likenessWarning);
  });

  test("other fields in the same colours are another flag", async () => {
    const { nearest } = await likenessOf({
      "charge.svg": field("#c8202f") + disc("#fcd20f"),
      "rows.svg": stripes("#fcd20f", "#c8202f", "#0b7a3b"),
    });
    for (const { deltaE00 } of nearest) expect(deltaE00).toBeGreaterThan(likenessWarning);
  });

  test("its own original is no other flag, whatever its file is called", async () => {
    const almost = stripes("#12235c", "#fcd20f", "#0c7b3c");
    const { nearest } = await likenessOf({
      "original.svg": original,
      "copy.svg": almost,
      "other.svg": stripes("#000000", "#ffffff"),
    });
    expect(nearest.map(({ file }) => file)).toEqual(["other.svg"]);
  });

  test("three at most, and none where there is nothing to compare with", async () => {
    const flags = Object.fromEntries(
      ["#000000", "#333333", "#666666", "#999999"].map((hex, index) => [`${index}.svg`, field(hex)]),
    );
    expect((await likenessOf(flags)).nearest).toHaveLength(3);
    expect(await likenessOf({})).toEqual({ nearest: [], compared: 0 });
  });
});
