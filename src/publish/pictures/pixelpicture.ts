// Floor 9. Pictures in pixels, for what a drawing cannot show: sharp renders and lays them together, eleventy-img writes the
// bytes, always without loss.
import sharp, { type CreateRaw, type OverlayOptions, type Sharp } from "sharp";
import type { Picture } from "../../regions/eyeblur.ts";
import type { Drawing } from "../../svg/tree.ts";
import { writeSized } from "../../svg/writesvg.ts";
import type { Size } from "./paper.ts";

/** Renders a drawing, `width` × `height` pixels. */
export function renderDrawing(drawing: Drawing, { width, height }: Size): Promise<Picture> {
  return readPixels(sharp(Buffer.from(writeSized(drawing, width, height), "utf8")));
}

/** What is written: in which format, what it says of itself in its metadata, and what is done to the source before. */
interface Encoding {
  readonly format: "png" | "webp";
  readonly note: string | undefined;
  readonly raw?: CreateRaw;
  readonly delay?: readonly number[];
  readonly change?: (image: Sharp) => void;
}

/** Encodes pixels without loss, `note` in the metadata; transparency only where there is any. */
export function encodePicture(picture: Picture, format: "png" | "webp", note?: string): Promise<Buffer> {
  const { rgba, raw } = rawOf(picture);
  const change = (image: Sharp) => (isOpaque(rgba) ? image.removeAlpha() : image);
  return encode(rgba, { format, note, raw, change });
}

/** Joins opaque pictures of one size into an animated WebP without loss that goes on for ever, each shown for so many milliseconds. */
export function joinFrames(frames: readonly Picture[], milliseconds: number, note: string): Promise<Buffer> {
  const { width = 0, height = 0 } = frames[0] ?? {};
  return encode(Buffer.concat(frames.map(({ rgba }) => rgba)), {
    format: "webp",
    note,
    raw: { width, height: height * frames.length, channels: 4, pageHeight: height },
    delay: frames.map(() => milliseconds),
  });
}

/** Lays pictures on their ground, and encodes the whole as PNG without loss, `note` in its metadata. */
export function encodeLayout({ ground, laid }: Layout, note: string): Promise<Buffer> {
  // Laid together as they are written: the pixels of many stills between would be too much for the memory of a child.
  const change = (image: Sharp) => image.composite(overlaysOf(laid)).removeAlpha();
  return encode(Buffer.from(ground, "utf8"), { format: "png", note, change });
}

/** By eleventy-img, which renders an SVG or takes pixels as `raw` says. */
async function encode(source: Buffer, { format, note, raw, delay, change }: Encoding): Promise<Buffer> {
  // Loaded when the first is made: not every child makes one, and it takes a third of the time until one has started.
  const { default: eleventyImage } = await import("@11ty/eleventy-img");
  const made = await eleventyImage(source, {
    formats: [format],
    widths: ["auto"],
    // Returns the bytes and writes nothing: writing is for `publishgallery.ts` alone.
    dryRun: true,
    useCache: false,
    // No name, for which it would read all pixels as text, digest them, and keep them for as long as it runs: six times the
    // work of encoding a large flag. A buffer is encoded all the same.
    statsOnly: true,
    urlFormat: () => "",
    sharpOptions: raw ? { raw } : {},
    sharpPngOptions: { compressionLevel: 7, palette: false },
    sharpWebpOptions: {
      lossless: true,
      exact: true,
      effort: 2,
      ...(delay && { loop: 0, delay: [...delay] }),
    },
    transform: (image) => {
      change?.(image);
      if (note !== undefined) image.withExif({ IFD0: { ImageDescription: note } });
    },
  });
  const [only] = made[format] ?? [];
  if (only === undefined) throw new Error("a picture was not encoded");
  return only.buffer;
}

function rawOf({ rgba, width, height }: Picture): { readonly rgba: Buffer; readonly raw: CreateRaw } {
  return {
    rgba: Buffer.from(rgba.buffer, rgba.byteOffset, rgba.byteLength),
    raw: { width, height, channels: 4 },
  };
}

function isOpaque(rgba: Uint8Array): boolean {
  let at = 3;
  while (at < rgba.length && rgba[at] === 255) at += 4;
  return at >= rgba.length;
}

/** Reads the matrix of a study, a PNG in base64 that the measuring floors made. */
export function readMatrix(picture: string): Promise<Picture> {
  return readPixels(sharp(Buffer.from(picture, "base64")));
}

/** A line or more of text in one of the bundled fonts. Pixels; `width` is where it breaks. */
export interface Lettering {
  readonly text: string;
  readonly font: "Source Serif 4" | "Source Sans 3";
  /** The font file, where the renderer has not read it yet. */
  readonly fontFile: string;
  readonly pixels: number;
  readonly hex: string;
  readonly width: number;
  /** Whether it is a line whose height does not depend on its letters, so that lines beside it stand level; not for what wraps. */
  readonly isLevel?: boolean;
}

/** A picture laid on another, its upper left corner at x, y. */
export interface Laid {
  readonly picture: Picture;
  readonly x: number;
  readonly y: number;
}

/** Pictures and the ground that they are laid on, as SVG text of our own. */
export interface Layout {
  readonly ground: string;
  readonly laid: readonly Laid[];
}

/** Sets text; the picture is as large as its ink. `text` is shown as it is: no markup. */
export async function setText(lettering: Lettering): Promise<Picture> {
  const { text, font, fontFile, pixels, hex, width, isLevel = false } = lettering;
  // The bar reaches as far up and down as any letter, and is not seen.
  const level = isLevel ? '<span alpha="1">|</span>' : "";
  const escaped = text.replace(/&/g, "&amp;").replace(/</g, "&lt;").replace(/>/g, "&gt;");
  const { data, info } = await sharp({
    text: {
      text: `<span foreground="${hex}">${escaped}</span>${level}`,
      font: `${font} ${pixels}`,
      fontfile: fontFile,
      width,
      // At 72 dots an inch a point is a pixel.
      dpi: 72,
      rgba: true,
      wrap: "word-char",
    },
  })
    .raw()
    .toBuffer({ resolveWithObject: true });
  return { width: info.width, height: info.height, rgba: data };
}

/** Renders SVG text of our own, as large as it says it is. */
export function renderShapes(svg: string): Promise<Picture> {
  return readPixels(sharp(Buffer.from(svg, "utf8")));
}

/** Lays pictures on the ground that they came with. */
export function layOut({ ground, laid }: Layout): Promise<Picture> {
  return readPixels(sharp(Buffer.from(ground, "utf8")).composite(overlaysOf(laid)).removeAlpha());
}

function overlaysOf(laid: readonly Laid[]): OverlayOptions[] {
  return laid.map(({ picture, x, y }) => {
    const { rgba, raw } = rawOf(picture);
    return { input: rgba, raw, left: Math.round(x), top: Math.round(y) };
  });
}

async function readPixels(image: Sharp): Promise<Picture> {
  const { data, info } = await image.ensureAlpha().raw().toBuffer({ resolveWithObject: true });
  return { width: info.width, height: info.height, rgba: data };
}
