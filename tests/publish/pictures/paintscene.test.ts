import { expect, test } from "vitest";
import { unpackFonts } from "../../../src/publish/pictures/linkimage.ts";
import { layScene, writeScene } from "../../../src/publish/pictures/paintscene.ts";
import type { PictureScene, SceneItem } from "../../../src/publish/pictures/picturescene.ts";
import { Easel, RefusedError } from "../../../src/publish/pictures/renderdrawing.ts";
import { studyResult } from "../sample.ts";

const source = { drawing: studyResult.drawings.original, proportions: [2, 3] as const };
const scene = (...items: readonly SceneItem[]): PictureScene => ({
  width: 600,
  height: 400,
  direction: "ltr",
  items,
});
const lay = async (...items: readonly SceneItem[]) =>
  layScene(scene(...items), await unpackFonts(), new Easel());
const line = (text: string, more: Partial<Extract<SceneItem, { kind: "text" }>> = {}): SceneItem => ({
  kind: "text",
  text,
  x: 300,
  y: 40,
  pixels: 30,
  family: "sans",
  anchor: "start",
  width: 280,
  most: 45,
  ...more,
});

test("text is anchored where it is said, level whatever its letters, and never too wide or too high", async () => {
  const { laid } = await lay(
    line("one"),
    line("gpq|", { anchor: "end" }),
    line("one", { anchor: "middle" }),
    line("What a long sentence for a short line, and then some more of it", { width: 140 }),
  );
  const [start, end, middle, long] = laid;
  expect(start?.x).toBe(300);
  expect((end?.x ?? 0) + (end?.picture.width ?? 0)).toBe(300);
  expect(Math.abs((middle?.x ?? 0) + (middle?.picture.width ?? 0) / 2 - 300)).toBeLessThanOrEqual(1);
  expect(start?.picture.height).toBe(end?.picture.height);
  expect(long?.picture.width).toBeLessThanOrEqual(140);
  expect(long?.picture.height).toBeLessThanOrEqual(45);
});

test("flags keep their colours to the value, and shapes lie where they come in the order", async () => {
  const room = { x: 0, y: 0, width: 300, height: 200 };
  const { laid } = await lay(
    { kind: "shape", svg: '<rect width="9" height="9" fill="#777777"/>' },
    { kind: "flag", source, ...room },
    { kind: "shape", svg: '<rect x="1" width="9" height="9" fill="#777777"/>' },
    { kind: "shape", svg: '<rect y="1" width="9" height="9" fill="#777777"/>' },
  );
  expect(laid.map(({ picture }) => [picture.width, picture.height])).toEqual([
    [600, 400],
    [300, 200],
    [600, 400],
  ]);
  const { rgba } = laid[1]?.picture ?? { rgba: new Uint8Array() };
  // The corner is the field, the middle the square.
  expect([...rgba.subarray(0, 4)]).toEqual([0x12, 0x23, 0x5c, 255]);
  const middle = 4 * (100 * 300 + 150);
  expect([...rgba.subarray(middle, middle + 4)]).toEqual([0xc8, 0x20, 0x2f, 255]);
});

test("a pale flag is less opaque and nothing else", async () => {
  const { laid } = await lay({ kind: "flag", source, x: 0, y: 0, width: 30, height: 20, opacity: 0.2 });
  expect([...(laid[0]?.picture.rgba.subarray(0, 4) ?? [])]).toEqual([0x12, 0x23, 0x5c, 51]);
});

test("as an SVG file letters stay letters, and what was typed stays text", () => {
  const svg = writeScene(
    scene({ kind: "flag", source, x: 10, y: 20, width: 300, height: 200 }, line("a < b & c")),
    "Ruler: A <square>",
    "Unofficial study.",
    new Easel(),
  );
  expect(svg).toContain("<title>Ruler: A &lt;square&gt;</title><desc>Unofficial study.</desc>");
  expect(svg).toContain(">a &lt; b &amp; c</text>");
  expect(svg).toContain('<svg x="10" y="20" width="300" height="200" preserveAspectRatio="none" xmlns=');
});

test("a drawing that may not be published is refused", async () => {
  const bad = { ...source, drawing: "<svg" };
  await expect(lay({ kind: "flag", source: bad, x: 0, y: 0, width: 3, height: 2 })).rejects.toThrow(
    RefusedError,
  );
});
