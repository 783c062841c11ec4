// Floor 3. A picture as it looks from afar: a Gaussian blur in linear light, as wide as an eye is unsharp.
import { encodeByte, linearOfByte } from "../colour/srgb.ts";

/** Blur of a sharp eye, as the standard deviation in arcminutes. Source: Levi and others, Vision Research 30, 1990, 1971–1993. */
export const eyeBlur = 0.5;

const toLinear = Float32Array.from(linearOfByte);

/** An RGBA picture, 8 bits a channel, sRGB, not premultiplied. */
export interface Picture {
  readonly width: number;
  readonly height: number;
  readonly rgba: Uint8Array;
}

/**
 * Returns the angle in arcminutes that a flag fills from `distance` flag heights: `2 · atan(1 / 2D)`.
 * Throws RangeError where the distance is not over 0. Example: 1 m high from 100 m: 34.3772.
 */
export function measureAngle(distance: number): number {
  if (!(distance > 0)) throw new RangeError(`no distance: ${distance}`);
  return (2 * Math.atan(1 / (2 * distance)) * 180 * 60) / Math.PI;
}

/** Returns the eye's blur, as a standard deviation in pixels, on a picture `heightPixels` high. Example: 400 px from 100: 5.8178. */
export function measureBlur(distance: number, heightPixels: number): number {
  return (eyeBlur * heightPixels) / measureAngle(distance);
}

/**
 * Blurs `picture` by `sigma` pixels in linear light. What lies outside the flag, and its transparent parts, count for
 * nothing: colours do not run into them. Transparency stays as it is.
 */
export function blurPicture({ width, height, rgba }: Picture, sigma: number): Picture {
  const kernel = listWeights(sigma);
  const linear = new Float32Array(width * height * 4);
  for (let at = 0; at < linear.length; at += 4) {
    const alpha = (rgba[at + 3] ?? 0) / 255;
    for (let channel = 0; channel < 3; channel += 1)
      linear[at + channel] = alpha * (toLinear[rgba[at + channel] ?? 0] ?? 0);
    linear[at + 3] = alpha;
  }
  const rows = blurLines(linear, kernel, { count: height, length: width, step: 4, stride: 4 * width });
  const blurred = blurLines(rows, kernel, { count: width, length: height, step: 4 * width, stride: 4 });
  const out = new Uint8Array(rgba.length);
  for (let at = 0; at < out.length; at += 4) {
    out[at + 3] = rgba[at + 3] ?? 0;
    if (at > 0 && isRepeated(blurred, at, 4)) {
      out.copyWithin(at, at - 4, at - 1);
      continue;
    }
    const weight = blurred[at + 3] ?? 0;
    for (let channel = 0; channel < 3; channel += 1)
      out[at + channel] = weight > 0 ? encodeByte((blurred[at + channel] ?? 0) / weight) : 0;
  }
  return { width, height, rgba: out };
}

/** Whether the pixel at `at` is to the last digit the one `apart` before it: on flags most are. */
function isRepeated(pixels: Float32Array, at: number, apart: number): boolean {
  const before = at - apart;
  return (
    pixels[at] === pixels[before] &&
    pixels[at + 1] === pixels[before + 1] &&
    pixels[at + 2] === pixels[before + 2] &&
    pixels[at + 3] === pixels[before + 3]
  );
}

interface Lines {
  readonly count: number;
  readonly length: number;
  readonly step: number;
  readonly stride: number;
}

function blurLines(source: Float32Array, kernel: Float32Array, lines: Lines): Float32Array {
  const { count, length, step, stride } = lines;
  const out = new Float32Array(source.length);
  for (let line = 0; line < count; line += 1) {
    const start = line * stride;
    let alike = 0;
    while (line > 0 && alike < length && isRepeated(source, start + alike * step, stride)) alike += 1;
    if (alike < length) blurLine(source, kernel, { ...lines, start, out });
    else for (let own = start; own < start + length * step; own += step) repeat(out, own, stride);
  }
  return out;
}

function repeat(pixels: Float32Array, at: number, apart: number): void {
  for (let channel = at; channel < at + 4; channel += 1) pixels[channel] = pixels[channel - apart] as number;
}

function blurLine(
  source: Float32Array,
  kernel: Float32Array,
  { length, step, start, out }: Lines & { readonly start: number; readonly out: Float32Array },
): void {
  const reach = (kernel.length - 1) / 2;
  // How many pixels, up to the last that is within reach, are each the same as the one before: where all are, so is the sum.
  let same = 0;
  const look = (last: number): void => {
    if (last > 0 && last < length) same = isRepeated(source, start + last * step, step) ? same + 1 : 0;
  };
  for (let last = 1; last < reach; last += 1) look(last);
  for (let at = 0; at < length; at += 1) {
    const own = start + at * step;
    look(at + reach);
    if (at > reach && at + reach < length && same > 2 * reach) {
      repeat(out, own, step);
      continue;
    }
    const from = Math.max(-reach, -at);
    const to = Math.min(reach, length - 1 - at);
    // One variable a channel, each sum in single precision as if it were kept in `out`: three times as fast.
    let [red, green, blue, alpha] = [0, 0, 0, 0];
    for (let offset = from; offset <= to; offset += 1) {
      const weight = kernel[offset + reach] ?? 0;
      const other = own + offset * step;
      red = Math.fround(red + weight * (source[other] ?? 0));
      green = Math.fround(green + weight * (source[other + 1] ?? 0));
      blue = Math.fround(blue + weight * (source[other + 2] ?? 0));
      alpha = Math.fround(alpha + weight * (source[other + 3] ?? 0));
    }
    out[own] = red;
    out[own + 1] = green;
    out[own + 2] = blue;
    out[own + 3] = alpha;
  }
}

/** Weights out to four standard deviations; one weight alone where there is no blur. */
function listWeights(sigma: number): Float32Array {
  const reach = Math.ceil(4 * sigma);
  const weights = Float32Array.from({ length: 2 * reach + 1 }, (_, index) =>
    sigma > 0 ? Math.exp(-((index - reach) ** 2) / (2 * sigma * sigma)) : 1,
  );
  const all = weights.reduce((sum, weight) => sum + weight, 0);
  return weights.map((weight) => weight / all);
}
