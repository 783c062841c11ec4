import sharp from "sharp";
import { expect, test } from "vitest";
import type { StudyResult } from "../../../src/analysis/result.ts";
import { listDrawn } from "../../../src/publish/pictures/drawingrecipe.ts";
import {
  encodeLayout,
  encodePicture,
  joinFrames,
  layOut,
} from "../../../src/publish/pictures/pixelpicture.ts";
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
    expect({ format, width, height }, file).toEqual({ format: "webp", width: 240, height: 160 });
    expect(bytes.byteLength, file).toBeLessThan(40_000);
    // Every picture of a redesign says so in itself.
    expect(bytes.includes("Unofficial study"), file).toBe(file.includes("redesign"));
  }
  // The middle of the field, far from any edge, keeps its colour at the step in the middle.
  const { data, info } = await sharp(made.get("studies/a-square/from-80-original.webp"))
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

/** Pixels of every kind: many colours, few, and with `least` the least opaque; the same each time. */
function scatter(width: number, height: number, least: number) {
  const rgba = new Uint8Array(4 * width * height);
  for (let at = 0; at < rgba.length; at += 4) {
    const noise = Math.imul(at + 1, 2_654_435_761) >>> 0;
    rgba.set([noise >>> 24, at < rgba.length / 2 ? 32 : (noise >>> 16) & 255, (noise >>> 8) & 255], at);
    rgba[at + 3] = Math.max(least, noise & 255);
  }
  return { width, height, rgba };
}

const readAll = (bytes: Buffer) => sharp(bytes, { animated: true }).ensureAlpha().raw().toBuffer();

test.each([
  ["png", 255],
  ["png", 0],
  ["webp", 255],
  ["webp", 0],
] as const)("what is written as %s has every pixel to the value, opaque from %i", async (format, least) => {
  const picture = scatter(301, 97, least);
  const bytes = await encodePicture(picture, format, "Of a redesign");
  const { format: kind, hasAlpha, exif } = await sharp(bytes).metadata();
  expect([kind, hasAlpha]).toEqual([format, least < 255]);
  expect(exif?.toString("latin1")).toContain("Of a redesign");
  expect((await readAll(bytes)).equals(picture.rgba)).toBe(true);
});

test("what is laid together, and what moves, has every pixel to the value", async () => {
  const ground =
    '<svg xmlns="http://www.w3.org/2000/svg" width="320" height="120"><path fill="#15244a" d="M0 0h320v120H0z"/></svg>';
  const laid = [{ picture: scatter(301, 97, 255), x: 7, y: 11 }];
  const whole = await layOut({ ground, laid });
  expect([...whole.rgba.subarray(0, 4)]).toEqual([0x15, 0x24, 0x4a, 255]);
  const at = 4 * (11 * 320 + 7);
  expect(whole.rgba.subarray(at, at + 4 * 301)).toEqual(
    Buffer.from(laid[0]?.picture.rgba.subarray(0, 4 * 301) ?? []),
  );
  expect((await readAll(await encodeLayout({ ground, laid }, "note"))).equals(whole.rgba)).toBe(true);
  const frames = [whole, scatter(320, 120, 255)];
  const moving = await readAll(await joinFrames(frames, 500, "note"));
  expect(moving.equals(Buffer.concat(frames.map(({ rgba }) => rgba)))).toBe(true);
});

test("the matrix of a study is one picture without loss, which says that it is unofficial", async () => {
  const made = await makeAll(listKind(ranked({ matrix }), "matrix"));
  expect([...made.keys()]).toEqual(["studies/a-square/matrix.webp"]);
  const bytes = made.get("studies/a-square/matrix.webp");
  expect(bytes?.includes("Unofficial study")).toBe(true);
  const [was, is] = await Promise.all(
    [Buffer.from(matrix.picture, "base64"), bytes].map((picture) =>
      sharp(picture).ensureAlpha().raw().toBuffer(),
    ),
  );
  expect(is).toEqual(was);
  expect(listKind(ranked({}), "matrix")).toEqual([]);
});
