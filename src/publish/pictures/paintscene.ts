// Floor 9. A scene → what lies on a picture of pixels, or an SVG file. Flags keep their colours to the value.
import { blurPicture, measureBlur, type Picture } from "../../regions/eyeblur.ts";
import type { Fonts } from "./linkimage.ts";
import { ink } from "./paper.ts";
import {
  type Box,
  fitSource,
  type PictureScene,
  type SceneItem,
  type SceneText,
  type Source,
} from "./picturescene.ts";
import { type Laid, type Layout, type Lettering, renderShapes, setText } from "./pixelpicture.ts";
import { cropDrawing, type Easel } from "./renderdrawing.ts";
import { joinHalves } from "./splitimage.ts";

/** Sizes that are tried for a text, each so much of the one before, until it fits. */
const smaller = 0.9;
const leastPixels = 8;

/** Paints a scene. Throws RefusedError where a drawing cannot be read or rendered. */
export async function layScene(scene: PictureScene, fonts: Fonts, easel: Easel): Promise<Layout> {
  const laid: Laid[] = [];
  for (const items of joinShapes(scene.items)) {
    const [first] = items;
    if (first.kind === "shape") {
      const shapes = items.map((item) => (item.kind === "shape" ? item.svg : "")).join("");
      laid.push({ picture: await renderShapes(wrap(scene, shapes)), x: 0, y: 0 });
    } else if (first.kind === "text") laid.push(await layText(first, fonts));
    else laid.push(await layFlag(first, scene, easel));
  }
  return { ground: wrap(scene, `<rect width="100%" height="100%" fill="${ink.paper}"/>`), laid };
}

/** The scene as an SVG file with `title`, its letters as letters. Throws as {@link layScene}; without distances and divisions. */
export function writeScene(scene: PictureScene, title: string, note: string, easel: Easel): string {
  const parts = scene.items.map((item) => {
    if (item.kind === "shape") return item.svg;
    if (item.kind === "text") return writeText(item);
    if (item.kind === "split") return "";
    const { x, y, width, height } = fitSource(item.source, item);
    const opacity = item.opacity === undefined ? "" : ` opacity="${item.opacity}"`;
    const drawing = textOf(item.source, easel).replace(
      "<svg",
      `<svg x="${x}" y="${y}" width="${width}" height="${height}" preserveAspectRatio="none"`,
    );
    return `<g${opacity}>${drawing}</g>`;
  });
  const told = `<title>${escapeText(title)}</title><desc>${escapeText(note)}</desc>`;
  const paper = `<rect width="${scene.width}" height="${scene.height}" fill="${ink.paper}"/>`;
  return `${wrap(scene, `${told}${paper}${parts.join("")}`)}\n`;
}

/** Shapes that follow each other are drawn in one go. */
function joinShapes(items: readonly SceneItem[]): readonly (readonly [SceneItem, ...SceneItem[]])[] {
  const runs: [SceneItem, ...SceneItem[]][] = [];
  for (const item of items) {
    const last = runs.at(-1);
    if (item.kind === "shape" && last?.[0].kind === "shape") last.push(item);
    else runs.push([item]);
  }
  return runs;
}

async function layText(item: SceneText, fonts: Fonts): Promise<Laid> {
  const { text, family, width, most, anchor, y } = item;
  const style: Omit<Lettering, "pixels"> = {
    text,
    ...(family === "serif"
      ? { font: "Source Serif 4", fontFile: fonts.serif }
      : { font: "Source Sans 3", fontFile: fonts.sans }),
    hex: item.isQuiet ? ink.quiet : ink.text,
    width: Math.round(width),
    isLevel: most < 2 * item.pixels,
  };
  let pixels = item.pixels;
  let picture = await setText({ ...style, pixels: Math.round(pixels) });
  while ((picture.height > most || picture.width > width) && pixels > leastPixels) {
    pixels *= smaller;
    picture = await setText({ ...style, pixels: Math.round(pixels) });
  }
  const share = { start: 0, middle: 0.5, end: 1 }[anchor];
  return { picture, x: Math.round(item.x - share * picture.width), y: Math.round(y) };
}

async function layFlag(
  item: Extract<SceneItem, { readonly kind: "flag" | "split" }>,
  { direction }: PictureScene,
  easel: Easel,
): Promise<Laid> {
  if (item.kind === "split") {
    const box = fitSource(item.sources[0], item);
    const [original, redesign] = item.sources;
    const halves = [
      await renderSource(original, box, easel),
      await renderSource(redesign, box, easel),
    ] as const;
    return { picture: joinHalves(halves, { split: "per pale", direction }), x: box.x, y: box.y };
  }
  const box = fitSource(item.source, item);
  const picture = await renderSource(item.source, box, easel);
  return { picture: fade(picture, item.opacity ?? 1), x: box.x, y: box.y };
}

async function renderSource(source: Source, { width, height }: Box, easel: Easel): Promise<Picture> {
  const picture = await easel.render(textOf(source, easel), { width, height });
  const { distance } = source;
  return distance === undefined ? picture : blurPicture(picture, measureBlur(distance, height));
}

function textOf({ drawing, crop }: Source, easel: Easel): string {
  const read = easel.read(drawing);
  return crop === undefined ? drawing : cropDrawing(read, crop);
}

function fade({ width, height, rgba }: Picture, opacity: number): Picture {
  if (opacity === 1) return { width, height, rgba };
  return {
    width,
    height,
    rgba: rgba.map((value, at) => (at % 4 === 3 ? Math.round(value * opacity) : value)),
  };
}

function writeText({ text, x, y, pixels, family, isQuiet, anchor }: SceneText): string {
  const font =
    family === "serif" ? "Source Serif 4, Georgia, serif" : "Source Sans 3, Segoe UI, Arial, sans-serif";
  // Capitals of both fonts are about two thirds of their size high.
  const base = Math.round(y + 0.72 * pixels);
  return `<text x="${x}" y="${base}" font-family="${font}" font-size="${pixels}" fill="${isQuiet ? ink.quiet : ink.text}" text-anchor="${anchor}">${escapeText(text)}</text>`;
}

function wrap({ width, height }: PictureScene, inner: string): string {
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="0 0 ${width} ${height}">${inner}</svg>`;
}

function escapeText(text: string): string {
  return text.replace(/&/g, "&amp;").replace(/</g, "&lt;").replace(/>/g, "&gt;");
}
