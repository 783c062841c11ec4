// Floor 9. Pictures in pixels, for what a drawing cannot show. Imports sharp and eleventy-img for publishing; always
// without loss.
import sharp, { type OverlayOptions } from "sharp";
import type { Picture } from "../../regions/eyeblur.ts";
import type { Drawing } from "../../svg/tree.ts";
import { writeSized } from "../../svg/writesvg.ts";
import type { Size } from "./paper.ts";
import { unofficial } from "./unofficial.ts";

/** Renders a drawing, `width` × `height` pixels. */
export async function renderDrawing(drawing: Drawing, { width, height }: Size): Promise<Picture> {
  const { data, info } = await sharp(Buffer.from(writeSized(drawing, width, height), "utf8"))
    .ensureAlpha()
    .raw()
    .toBuffer({ resolveWithObject: true });
  return { width: info.width, height: info.height, rgba: data };
}

/** Renders a drawing, and returns what encodes it as PNG without loss, `note` in its metadata. */
export async function encodeDrawing(
  drawing: Drawing,
  size: Size,
  note?: string,
): Promise<() => Promise<Buffer>> {
  const { width, height, rgba } = await renderDrawing(drawing, size);
  return () => {
    const image = sharp(rgba, { raw: { width, height, channels: 4 } });
    const said = note === undefined ? image : image.withExif({ IFD0: { ImageDescription: note } });
    return said.png({ compressionLevel: 7, palette: false }).toBuffer();
  };
}

/** Encodes the matrix of a study, a PNG in base64 that the measuring floors made. */
export function encodeMatrix(picture: string): Promise<Buffer> {
  return sharp(Buffer.from(picture, "base64"))
    .withExif({ IFD0: { ImageDescription: unofficial } })
    .png({ compressionLevel: 9, adaptiveFiltering: true, palette: false })
    .toBuffer();
}

/** Encodes a picture as PNG; transparency only where there is any. */
export async function encodePng({ width, height, rgba }: Picture, isRedesign: boolean): Promise<Buffer> {
  const raw = sharp(rgba, { raw: { width, height, channels: 4 } });
  let at = 3;
  while (at < rgba.length && rgba[at] === 255) at += 4;
  const image = at < rgba.length ? raw : raw.removeAlpha();
  const said = isRedesign ? image.withExif({ IFD0: { ImageDescription: unofficial } }) : image;
  return said.png({ compressionLevel: 9, adaptiveFiltering: true, palette: false }).toBuffer();
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
export async function renderShapes(svg: string): Promise<Picture> {
  const image = sharp(Buffer.from(svg, "utf8")).ensureAlpha().raw();
  const { data, info } = await image.toBuffer({ resolveWithObject: true });
  return { width: info.width, height: info.height, rgba: data };
}

/** Joins pictures of one size into an animated WebP without loss that goes on for ever, each shown for so many milliseconds. */
export function joinFrames(frames: readonly Buffer[], milliseconds: number, note: string): Promise<Buffer> {
  return sharp([...frames], { join: { animated: true } })
    .withExif({ IFD0: { ImageDescription: note } })
    .webp({ lossless: true, loop: 0, delay: frames.map(() => milliseconds) })
    .toBuffer();
}

/**
 * Lays pictures on the ground that `svg` draws, and encodes the whole as PNG without loss, as large as the ground, `note` in
 * its metadata.
 */
export async function layOut(svg: string, laid: readonly Laid[], note = unofficial): Promise<Buffer> {
  const overlays = laid.map(
    ({ picture: { rgba, width, height }, x, y }): OverlayOptions => ({
      input: Buffer.from(rgba.buffer, rgba.byteOffset, rgba.byteLength),
      raw: { width, height, channels: 4 },
      left: Math.round(x),
      top: Math.round(y),
    }),
  );
  // Loaded when the first is made: most children make none, and it takes a third of the time until one has started.
  const { default: eleventyImage } = await import("@11ty/eleventy-img");
  const { png } = await eleventyImage(Buffer.from(svg, "utf8"), {
    formats: ["png"],
    widths: ["auto"],
    // Returns the bytes and writes nothing: writing is for `publishgallery.ts` alone.
    dryRun: true,
    useCache: false,
    sharpPngOptions: { compressionLevel: 7, palette: false },
    transform: (image) =>
      image
        .composite(overlays)
        .removeAlpha()
        .withExif({ IFD0: { ImageDescription: note } }),
  });
  const [made] = png;
  if (made === undefined) throw new Error("a link picture was not made");
  return made.buffer;
}
