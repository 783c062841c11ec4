// Test support. What a browser and the measuring renderer make of a drawing, and how far two pictures are alike.
import type { Browser, Page } from "playwright-core";
import sharp from "sharp";
import type { Hex } from "../../src/colour/colour.ts";
import { linearOf } from "../../src/colour/colourtext.ts";
import { measureDifference } from "../../src/colour/difference.ts";

/** RGB bytes, on white. */
export interface Picture {
  readonly width: number;
  readonly height: number;
  readonly rgb: Uint8Array;
}

export interface Size {
  readonly width: number;
  readonly height: number;
}

/** Colours nearer than this are alike (the step of the project for two colours that are one). */
const alike = 5;

/** A text of SVG with the size at which it is drawn, in pixels. */
export interface Shown extends Size {
  readonly text: string;
}

/** A page of the browser with room for `columns` by `rows` pictures of a size. */
export interface Ground {
  readonly page: Page;
  readonly cell: Size;
  readonly columns: number;
  readonly rows: number;
}

/** Opens a page that shows nothing but pictures. */
export async function openGround(
  browser: Browser,
  cell: Size,
  columns: number,
  rows: number,
): Promise<Ground> {
  const viewport = { width: columns * cell.width, height: rows * cell.height };
  const page = await browser.newPage({ viewport, deviceScaleFactor: 1, colorScheme: "light" });
  await page.setContent("<!doctype html><style>body{margin:0;background:#fff}img{position:absolute}</style>");
  return { page, cell, columns, rows };
}

/** Draws each text as an image of the page, as many as the page has room for in one picture of it. */
export async function drawInBrowser(ground: Ground, drawings: readonly Shown[]): Promise<readonly Picture[]> {
  const pictures: Picture[] = [];
  const room = ground.columns * ground.rows;
  for (let from = 0; from < drawings.length; from += room)
    pictures.push(...(await drawPage(ground, drawings.slice(from, from + room))));
  return pictures;
}

async function drawPage({ page, cell, columns }: Ground, drawings: readonly Shown[]): Promise<Picture[]> {
  const images = drawings.map(({ text, width, height }, index) => ({
    address: `data:image/svg+xml;base64,${Buffer.from(text).toString("base64")}`,
    style: {
      width: `${width}px`,
      height: `${height}px`,
      left: `${(index % columns) * cell.width}px`,
      top: `${Math.floor(index / columns) * cell.height}px`,
    },
  }));
  await page.evaluate(async (all) => {
    const shown = all.map(({ address, style }) => {
      const image = new Image();
      Object.assign(image.style, style);
      image.src = address;
      return image;
    });
    document.body.replaceChildren(...shown);
    await Promise.all(shown.map((image) => image.decode().catch(() => undefined)));
  }, images);
  const { data, info } = await sharp(await page.screenshot())
    .removeAlpha()
    .raw()
    .toBuffer({ resolveWithObject: true });
  return drawings.map(({ width, height }, index) => {
    const left = (index % columns) * cell.width;
    const top = Math.floor(index / columns) * cell.height;
    const rgb = new Uint8Array(3 * width * height);
    for (let y = 0; y < height; y += 1) {
      const start = 3 * ((top + y) * info.width + left);
      rgb.set(data.subarray(start, start + 3 * width), 3 * y * width);
    }
    return { width, height, rgb };
  });
}

/** Draws a text, which says its size in pixels, as the measuring renderer does. */
export async function drawMeasured(text: string): Promise<Picture> {
  const { data, info } = await sharp(Buffer.from(text))
    .flatten({ background: "#ffffff" })
    .removeAlpha()
    .raw()
    .toBuffer({ resolveWithObject: true });
  return { width: info.width, height: info.height, rgb: data };
}

/**
 * Returns the share of the picture that the largest connected area takes in which the two differ by ΔE00 5 or more. An area
 * is of 2 by 2 pixels at least: a line one pixel wide is how a border was smoothed.
 */
export function findDifference(a: Picture, b: Picture): number {
  const { width, height } = a;
  if (width !== b.width || height !== b.height) return 1;
  const differs = new Uint8Array(width * height);
  for (let at = 0; at < differs.length; at += 1) if (isOther(a.rgb, b.rgb, 3 * at)) differs[at] = 1;
  if (!differs.includes(1)) return 0;
  return largestArea(squares(differs, width, height), width) / differs.length;
}

const known = new Map<number, number>();

/** Whether the pixels whose bytes begin at `at` are of two colours. */
export function isOther(a: Uint8Array, b: Uint8Array, at: number): boolean {
  const one = codeAt(a, at);
  const other = codeAt(b, at);
  if (one === other) return false;
  const key = one * 2 ** 24 + other;
  let found = known.get(key);
  if (found === undefined) {
    if (known.size > 2_000_000) known.clear();
    found = measureDifference(linearOf(hexOf(one)), linearOf(hexOf(other)));
    known.set(key, found);
  }
  return found >= alike;
}

const codeAt = (rgb: Uint8Array, at: number): number =>
  ((rgb[at] ?? 0) << 16) | ((rgb[at + 1] ?? 0) << 8) | (rgb[at + 2] ?? 0);

const hexOf = (code: number): Hex => `#${code.toString(16).padStart(6, "0")}`;

/** Keeps the pixels that lie in some square of 2 by 2 that is set. */
function squares(set: Uint8Array, width: number, height: number): Uint8Array {
  const kept = new Uint8Array(set.length);
  for (let y = 0; y + 1 < height; y += 1) {
    for (let x = 0; x + 1 < width; x += 1) {
      const first = y * width + x;
      if (set[first] !== 1) continue;
      const corners = [first, first + 1, first + width, first + width + 1];
      if (corners.every((at) => set[at] === 1)) for (const at of corners) kept[at] = 1;
    }
  }
  return kept;
}

function largestArea(set: Uint8Array, width: number): number {
  let largest = 0;
  const stack: number[] = [];
  for (let start = 0; start < set.length; start += 1) {
    if (set[start] !== 1) continue;
    let area = 0;
    set[start] = 2;
    stack.push(start);
    for (let at = stack.pop(); at !== undefined; at = stack.pop()) {
      area += 1;
      const x = at % width;
      for (const next of [x > 0 ? at - 1 : -1, x < width - 1 ? at + 1 : -1, at - width, at + width]) {
        if (set[next] !== 1) continue;
        set[next] = 2;
        stack.push(next);
      }
    }
    largest = Math.max(largest, area);
  }
  return largest;
}
