// Two independent renderers behind one face: librsvg (through sharp) and resvg. Pixels as RGBA bytes.
import { Resvg } from "@resvg/resvg-js";
import sharp from "sharp";

export type Renderer = "librsvg" | "resvg";
export const renderers: readonly Renderer[] = ["librsvg", "resvg"];

export interface Picture {
  readonly width: number;
  readonly height: number;
  readonly rgba: Uint8Array;
}

/** Renders `svg`, which carries its size in pixels on its root. No fonts: letters are no part of a drawing here. */
export async function draw(renderer: Renderer, svg: string): Promise<Picture> {
  if (renderer === "resvg") {
    const image = new Resvg(svg, {
      font: { loadSystemFonts: false },
      logLevel: "off",
    }).render();
    return {
      width: image.width,
      height: image.height,
      rgba: unpremultiply(image.pixels),
    };
  }
  const { data, info } = await sharp(Buffer.from(svg))
    .ensureAlpha()
    .raw()
    .toBuffer({ resolveWithObject: true });
  return { width: info.width, height: info.height, rgba: data };
}

/** resvg hands out premultiplied bytes; librsvg through sharp does not. */
function unpremultiply(pixels: Uint8Array): Uint8Array {
  const plain = Uint8Array.from(pixels);
  for (let at = 0; at < plain.length; at += 4) {
    const alpha = plain[at + 3] as number;
    if (alpha === 255 || alpha === 0) continue;
    for (let channel = 0; channel < 3; channel += 1)
      plain[at + channel] = Math.min(255, Math.round(((plain[at + channel] as number) * 255) / alpha));
  }
  return plain;
}

/** Largest difference of the four channels at one pixel, with transparent pixels all alike. */
export function differenceAt(a: Picture, b: Picture, pixel: number): number {
  const at = 4 * pixel;
  if (a.rgba[at + 3] === 0 && b.rgba[at + 3] === 0) return 0;
  let most = 0;
  for (let channel = 0; channel < 4; channel += 1)
    most = Math.max(most, Math.abs((a.rgba[at + channel] as number) - (b.rgba[at + channel] as number)));
  return most;
}

/**
 * Writes width and height in pixels on the root of any SVG text, ours or anyone's, by text alone. A root without a
 * viewBox gets one from its size.
 */
export function sizeText(svg: string, widthPixels: number, heightPixels: number): string {
  return svg.replace(
    /<((?:svg:)?svg)\b((?:[^>"']|"[^"]*"|'[^']*')*?)(\/?)>/,
    (_, name: string, attributes: string, end: string) => {
      const size = {
        width: read(attributes, "width"),
        height: read(attributes, "height"),
      };
      const kept = attributes.replace(/\s(?:width|height)\s*=\s*(?:"[^"]*"|'[^']*')/g, "");
      const box = /\sviewBox\s*=/.test(kept) ? "" : ` viewBox="0 0 ${size.width} ${size.height}"`;
      return `<${name}${kept}${box} width="${widthPixels}" height="${heightPixels}"${end}>`;
    },
  );
}

function read(attributes: string, name: string): number {
  const value = new RegExp(`\\s${name}\\s*=\\s*["']([^"']*)`).exec(attributes)?.[1];
  return Number.parseFloat(value ?? "0");
}
