// Floor 1. The curve between a byte of sRGB and linear light, once for colours and pictures alike.
import culori from "culori/require";

const { convertRgbToLrgb } = culori;

/** Linear light, 0 to 1, of each byte. Source: IEC 61966-2-1; WCAG 2.2, definition of relative luminance. */
export const linearOfByte = Float64Array.from(
  { length: 256 },
  (_, byte) => convertRgbToLrgb({ r: byte / 255, g: 0, b: 0 }).r,
);

/** The nearest byte of linear light 0 to 1. Source: IEC 61966-2-1. */
export function encodeByte(linear: number): number {
  return Math.round(255 * (linear <= 0.0031308 ? 12.92 * linear : 1.055 * linear ** (1 / 2.4) - 0.055));
}
