// Floor 1. The curve between a byte of sRGB and linear light, once for colours and pictures alike. No library: a page of the
// site loads it too.
import type { LinearRgb } from "./colour.ts";

/** Linear light, 0 to 1, of each byte. Source: IEC 61966-2-1; WCAG 2.2, definition of relative luminance. */
export const linearOfByte = Float64Array.from({ length: 256 }, (_, byte) => {
  const encoded = byte / 255;
  return encoded <= 0.04045 ? encoded / 12.92 : ((encoded + 0.055) / 1.055) ** 2.4;
});

/** Linear-light sRGB, each component 0 to 1, of a colour as one number, 0xrrggbb. */
export function linearOfCode(code: number): LinearRgb {
  const [linearR, linearG, linearB] = [16, 8, 0].map((shift) => linearOfByte[(code >> shift) & 0xff]) as [
    number,
    number,
    number,
  ];
  return { linearR, linearG, linearB };
}

/** The nearest byte of linear light 0 to 1. Source: IEC 61966-2-1. */
export function encodeByte(linear: number): number {
  return Math.round(255 * (linear <= 0.0031308 ? 12.92 * linear : 1.055 * linear ** (1 / 2.4) - 0.055));
}
