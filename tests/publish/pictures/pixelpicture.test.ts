import sharp from "sharp";
import { expect, test } from "vitest";
import type { StudyResult } from "../../../src/analysis/result.ts";
import { listDrawn } from "../../../src/publish/pictures/drawingrecipe.ts";
import { encodePng } from "../../../src/publish/pictures/pixelpicture.ts";
import { Easel } from "../../../src/publish/pictures/renderdrawing.ts";
import { makeAll } from "../making.ts";
import { matrix, ranked } from "../ranked.ts";
import { gallery, studyResult } from "../sample.ts";

const listKind = (result: StudyResult, kind: string) =>
  listDrawn(result, gallery).filter(({ recipe }) => recipe.kind === kind);

test("both flags from three distances, small and without loss", async () => {
  const made = await makeAll(listKind(studyResult, "distance"));
  expect(made.size).toBe(6);
  for (const [file, bytes] of made) {
    const { format, width, height } = await sharp(bytes).metadata();
    expect({ format, width, height }, file).toEqual({ format: "png", width: 240, height: 160 });
    expect(bytes.byteLength, file).toBeLessThan(40_000);
    // Every picture of a redesign says so in itself.
    expect(bytes.includes("Unofficial study"), file).toBe(file.includes("redesign"));
  }
  // The middle of the field, far from any edge, keeps its colour at the step in the middle.
  const { data, info } = await sharp(made.get("studies/a-square/from-80-original.png"))
    .raw()
    .toBuffer({ resolveWithObject: true });
  const at = (20 * info.width + 20) * info.channels;
  expect([...data.subarray(at, at + 3)]).toEqual([0x12, 0x23, 0x5c]);
});

test("a drawing is rendered at the size asked for, whatever its viewBox", async () => {
  const svg =
    '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 30000 20000"><path fill="#c8202f" d="M0 0h30000v20000H0z"/></svg>';
  const picture = await new Easel().render(svg, { width: 30, height: 20 });
  expect([picture.width, picture.height, picture.rgba.length]).toEqual([30, 20, 2400]);
  expect([...picture.rgba.subarray(0, 4)]).toEqual([0xc8, 0x20, 0x2f, 255]);
});

test("transparency is kept where there is any", async () => {
  const rgba = Uint8Array.from([200, 30, 47, 255, 0, 0, 0, 0]);
  const png = await encodePng({ width: 2, height: 1, rgba }, false);
  expect([...(await sharp(png).raw().toBuffer())]).toEqual([...rgba]);
});

test("the matrix of a study is one picture without loss, which says that it is unofficial", async () => {
  const made = await makeAll(listKind(ranked({ matrix }), "matrix"));
  expect([...made.keys()]).toEqual(["studies/a-square/matrix.png"]);
  const bytes = made.get("studies/a-square/matrix.png");
  expect(bytes?.includes("Unofficial study")).toBe(true);
  const [was, is] = await Promise.all(
    [Buffer.from(matrix.picture, "base64"), bytes].map((picture) =>
      sharp(picture).ensureAlpha().raw().toBuffer(),
    ),
  );
  expect(is).toEqual(was);
  expect(listKind(ranked({}), "matrix")).toEqual([]);
});
