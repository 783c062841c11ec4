import sharp from "sharp";
import { expect, test } from "vitest";
import { listDrawn } from "../../../src/publish/pictures/drawingrecipe.ts";
import { collectSources } from "../../../src/publish/pictures/drawnsource.ts";
import type { DrawnFile } from "../../../src/publish/pictures/recipe.ts";
import { listStills, listTakeaways } from "../../../src/publish/pictures/stillrecipe.ts";
import { presentLesson } from "../../../src/views/show/lessonoffer.ts";
import { presentShow } from "../../../src/views/show/showpage.ts";
import { createFormat } from "../../../src/words/format.ts";
import { makeAll } from "../making.ts";
import { gallery, studyResult } from "../sample.ts";

const format = createFormat("en");
const drawn = collectSources([[studyResult, listDrawn(studyResult, gallery)]], undefined);
const size = { width: 960, height: 540 };
const stills = listStills(presentShow(studyResult, gallery, format), drawn, format, size);
const others = listTakeaways(studyResult, gallery, drawn, size);
const named = (files: readonly DrawnFile[], ...names: readonly string[]) =>
  files.filter(({ path }) => names.some((name) => path.includes(name)));

async function pixel(
  bytes: Uint8Array | string | undefined,
  x: number,
  y: number,
  page = 0,
): Promise<readonly number[]> {
  const image = sharp(bytes as Uint8Array, { page });
  const { data, info } = await image.raw().toBuffer({ resolveWithObject: true });
  const at = (Math.round(y) * info.width + Math.round(x)) * info.channels;
  return [...data.subarray(at, at + 3)];
}

// The sample: #12235c behind, a square that is #c8202f before and #f4c430 after, as tests/publish/sample.ts draws it.
const field = [0x12, 0x23, 0x5c];
const before = [0xc8, 0x20, 0x2f];
const after = [0xf4, 0xc4, 0x30];

test("stills have the size asked for, colours to the value, and say in themselves what is on them", async () => {
  const made = await makeAll(named(stills, "the-flag", "-after", "better"));
  for (const [path, bytes] of made) {
    const { width, height, format: kind, exif } = await sharp(bytes).metadata();
    expect({ width, height, kind }, path).toEqual({ width: 960, height: 540, kind: "png" });
    expect(exif?.toString("utf8"), path).toContain("Unofficial study");
  }
  const flag = made.get("01-the-flag.png");
  const redesign = [...made].find(([path]) => path.endsWith("-after.png"))?.[1];
  const still = stills.find(({ path }) => path.endsWith("-after.png"))?.recipe;
  if (still?.kind !== "still") throw new Error("no still");
  const box = still.scene.items.find((item) => item.kind === "flag");
  if (box?.kind !== "flag") throw new Error("no flag");
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  expect(await pixel(flag, x, y)).toEqual(before);
  expect(await pixel(redesign, x, y)).toEqual(after);
  expect(await pixel(redesign, x - 0.3 * box.height, box.y + 0.1 * box.height)).toEqual(field);
  // The mat: L* 50, as on every page.
  expect(await pixel(flag, 5, y)).toEqual([0x77, 0x77, 0x77]);
  const { exif } = await sharp(redesign).metadata();
  expect(exif?.toString("utf8")).toContain("Red becomes yellow. The redesign, an unofficial study.");
});

test("the swap goes on for ever, loses nothing, and shows each flag for two seconds", async () => {
  const made = await makeAll(named(others, "swap.webp"));
  const bytes = made.get("swap.webp");
  const { pages, loop, delay, format: kind, exif } = await sharp(bytes).metadata();
  expect({ pages, loop, delay, kind }).toEqual({ pages: 2, loop: 0, delay: [2000, 2000], kind: "webp" });
  expect(exif?.toString("utf8")).toContain("Unofficial study");
  expect(await pixel(bytes, 480, 270, 0)).toEqual(before);
  expect(await pixel(bytes, 480, 270, 1)).toEqual(after);
});

test("the thumbnail is divided per pale: the original at the left, the redesign at the right", async () => {
  const made = await makeAll(named(others, "thumbnail.png"));
  const bytes = made.get("thumbnail.png");
  const { width, height } = await sharp(bytes).metadata();
  expect([width, height]).toEqual([1280, 720]);
  expect(await pixel(bytes, 640 - 40, 360)).toEqual(before);
  expect(await pixel(bytes, 640 + 40, 360)).toEqual(after);
});

test("both flags are pictures without a mat, and figures are SVG with letters", async () => {
  const made = await makeAll(named(others, "original.png", "redesign.png", ".svg"));
  expect(await pixel(made.get("redesign.png"), 1000, 600)).toEqual(after);
  expect(String(made.get("ruler.svg"))).toMatch(/<title>Contrast ruler: [\s\S]*>weak<\/text>/);
  expect(String(made.get("edge-map.svg"))).toContain("<title>Edge map: ");
});

test("two runs give the same bytes", async () => {
  const some = [...named(stills, "the-weakest-edge"), ...named(others, "swap.webp", "ruler.svg")];
  const [one, two] = [await makeAll(some), await makeAll(some)];
  expect(one.size).toBe(3);
  expect(two).toEqual(one);
});

test("what a page offers is what is drawn for it, and nothing is drawn that is not asked for", () => {
  const offering = { ...studyResult, study: { ...studyResult.study, downloads: true } };
  const paths = listDrawn(offering, gallery).map(({ path }) => path);
  const usual = listDrawn(studyResult, gallery).map(({ path }) => path);
  const more = paths.filter((path) => !usual.includes(path));
  const offered = presentLesson(offering, gallery, format).map(
    ({ address }) => `studies/a-square/${address}`,
  );
  expect(offered.filter((path) => !path.endsWith("script.md"))).toEqual(more);
  expect(more.length).toBeGreaterThan(10);
  expect(presentLesson(studyResult, gallery, format)).toEqual([]);
});
