// Floor 3, step 1. SVG text that we wrote → pixels. Imports sharp (librsvg) for measuring. Buffers only.
import sharp from "sharp";

sharp.cache(false);

/** An RGBA picture, 8 bits a channel, not premultiplied; row by row from the upper hoist. */
export interface Raster {
  readonly width: number;
  readonly height: number;
  readonly rgba: Uint8Array;
}

/**
 * Height of the measuring picture, and the most that its longer side may have, in pixels. Without anti-aliasing every
 * line falls on a whole pixel, and 720 has most of the divisors that flag laws use (8, 9, 10, 12, 16, 18).
 */
export const measuringHeight = 720;
export const measuringLongSide = 1440;

const pixelLimit = 8e6;

/** Sets how many threads one rendering may use (benchmarks use 1). */
export function limitThreads(threads: number): void {
  sharp.concurrency(threads);
}

/** Returns the size in pixels at which a drawing of `width` × `height` user units is measured. */
export function measuringSize(
  width: number,
  height: number,
  targetHeight = measuringHeight,
): { readonly width: number; readonly height: number } {
  const longSide = (measuringLongSide * targetHeight) / measuringHeight;
  const scale = Math.min(targetHeight / height, longSide / Math.max(width, height));
  return { width: Math.max(1, Math.round(width * scale)), height: Math.max(1, Math.round(height * scale)) };
}

/** Renders `svg`, which must carry its size in pixels. Rejects where librsvg refuses the drawing. */
export async function renderSvg(svg: string): Promise<Raster> {
  const { data, info } = await sharp(Buffer.from(svg, "utf8"), { limitInputPixels: pixelLimit })
    .ensureAlpha()
    .raw()
    .toBuffer({ resolveWithObject: true });
  return { width: info.width, height: info.height, rgba: data };
}

/** Returns a picture as PNG. */
export async function encodePng({ rgba, width, height }: Raster): Promise<Buffer> {
  return await sharp(rgba, { raw: { width, height, channels: 4 } })
    .png({ compressionLevel: 9 })
    .toBuffer();
}

/** Returns a picture as one 32-bit number a pixel, 0xaabbggrr. */
export function wordsOf({ rgba }: Raster): Uint32Array {
  const bytes = rgba.byteOffset % 4 === 0 ? rgba : rgba.slice();
  return new Uint32Array(bytes.buffer, bytes.byteOffset, bytes.length >> 2);
}

/** Returns the colour, 0xrrggbb, that a pixel of {@link wordsOf} has over a grey ground, 0 to 255. */
export function colourOver(word: number, ground: number): number {
  const alpha = word >>> 24;
  if (alpha === 255) return ((word & 0xff) << 16) | (word & 0xff00) | ((word >>> 16) & 0xff);
  const mix = (shift: number): number =>
    Math.round(ground + ((((word >>> shift) & 0xff) - ground) * alpha) / 255);
  return (mix(0) << 16) | (mix(8) << 8) | mix(16);
}

/** Returns the number that {@link wordsOf} gives for an opaque pixel of the colour `code`, 0xrrggbb. */
export function wordOf(code: number): number {
  return (0xff000000 | ((code & 0xff) << 16) | (code & 0xff00) | (code >> 16)) >>> 0;
}
