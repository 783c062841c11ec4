// Floor 6. Pictures in pixels, for what a drawing cannot show. The door to sharp and eleventy-img for publishing; always
// without loss.
import eleventyImage from "@11ty/eleventy-img";
import sharp, { type OverlayOptions } from "sharp";
import { distanceSteps } from "../measure/focus.ts";
import type { StudyResult } from "../study/result.ts";
import { readDrawing } from "../svg/gate.ts";
import { writeSized } from "../svg/write.ts";
import { blurPicture, measureBlur, type Picture } from "./blur.ts";
import { once, type SiteFile } from "./file.ts";
import { pictureOf } from "./kept.ts";
import { matrixFile } from "./present/matrix.ts";
import { formatStudyPath } from "./present/status.ts";
import { formatStripFile, stripSize } from "./present/strip.ts";
import { unofficial } from "./unofficial.ts";

/** The distance strip of a study: both flags as they look from every distance step. */
export function listStrip(result: StudyResult): readonly SiteFile[] {
  const folder = formatStudyPath(result.study.slug);
  const size = stripSize(result.comparison.before.proportions);
  return (["original", "redesign"] as const).flatMap((name) => {
    const drawing = result.drawings[name];
    const isRedesign = name === "redesign";
    const render = once(() => renderDrawing(drawing, size));
    return distanceSteps.map((distance) =>
      pictureOf(
        `${folder}${formatStripFile(distance, name)}`,
        { drawing, size, distance, isRedesign },
        async () => {
          const picture = await render();
          const seen = blurPicture(picture, measureBlur(distance, picture.height));
          return encodePng(seen, isRedesign);
        },
      ),
    );
  });
}

/** Every single change of a study as small flags, in one picture; none where there is no change. */
export function listMatrixPicture({ study, ranking }: StudyResult): readonly SiteFile[] {
  const picture = ranking?.matrix?.picture;
  if (picture === undefined) return [];
  const make = () =>
    sharp(Buffer.from(picture, "base64"))
      .withExif({ IFD0: { ImageDescription: unofficial } })
      .png({ compressionLevel: 9, adaptiveFiltering: true, palette: false })
      .toBuffer();
  return [pictureOf(`${formatStudyPath(study.slug)}${matrixFile}`, { matrix: picture }, make)];
}

/** Renders a drawing that we wrote, `width` × `height` pixels. Throws where it is none. */
export async function renderDrawing(
  svg: string,
  { width, height }: { readonly width: number; readonly height: number },
): Promise<Picture> {
  const { value } = readDrawing("drawing.svg", Buffer.from(svg, "utf8"));
  if (value === undefined) throw new Error("a published drawing cannot be read");
  const { data, info } = await sharp(Buffer.from(writeSized(value, width, height), "utf8"))
    .ensureAlpha()
    .raw()
    .toBuffer({ resolveWithObject: true });
  return { width: info.width, height: info.height, rgba: data };
}

/** The file of a drawing that we wrote, as PNG without loss, `note` in its metadata. */
export function pngOf(
  sitePath: string,
  drawing: string,
  size: { readonly width: number; readonly height: number },
  note?: string,
): SiteFile {
  return pictureOf(sitePath, { drawing, size, note }, () => encodeDrawing(drawing, size, note));
}

/** A drawing that we wrote as PNG without loss, `note` in its metadata. Throws where it is none. */
export async function encodeDrawing(
  svg: string,
  { width, height }: { readonly width: number; readonly height: number },
  note?: string,
): Promise<Buffer> {
  const { value } = readDrawing("drawing.svg", Buffer.from(svg, "utf8"));
  if (value === undefined) throw new Error("a published drawing cannot be read");
  const image = sharp(Buffer.from(writeSized(value, width, height), "utf8"));
  const said = note === undefined ? image : image.withExif({ IFD0: { ImageDescription: note } });
  return said.png({ compressionLevel: 7, palette: false }).toBuffer();
}

/** Encodes a picture as PNG; transparency only where there is any. */
export async function encodePng({ width, height, rgba }: Picture, isRedesign: boolean): Promise<Buffer> {
  const raw = sharp(rgba, { raw: { width, height, channels: 4 } });
  const isOpaque = rgba.every((value, index) => index % 4 !== 3 || value === 255);
  const image = isOpaque ? raw.removeAlpha() : raw;
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
}

/** A picture laid on another, its upper left corner at x, y. */
export interface Laid {
  readonly picture: Picture;
  readonly x: number;
  readonly y: number;
}

/** Sets text; the picture is as large as its ink. `text` is shown as it is: no markup. */
export async function setText({ text, font, fontFile, pixels, hex, width }: Lettering): Promise<Picture> {
  const escaped = text.replace(/&/g, "&amp;").replace(/</g, "&lt;").replace(/>/g, "&gt;");
  const { data, info } = await sharp({
    text: {
      text: `<span foreground="${hex}">${escaped}</span>`,
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

/** Lays pictures on the ground that `svg` draws, and encodes the whole as PNG without loss, as large as the ground. */
export async function layOut(svg: string, laid: readonly Laid[]): Promise<Buffer> {
  const overlays = laid.map(
    ({ picture: { rgba, width, height }, x, y }): OverlayOptions => ({
      input: Buffer.from(rgba),
      raw: { width, height, channels: 4 },
      left: Math.round(x),
      top: Math.round(y),
    }),
  );
  const { png } = await eleventyImage(Buffer.from(svg, "utf8"), {
    formats: ["png"],
    widths: ["auto"],
    // Returns the bytes and writes nothing: writing is for `publish.ts` alone.
    dryRun: true,
    useCache: false,
    sharpPngOptions: { compressionLevel: 7, palette: false },
    transform: (image) =>
      image
        .composite(overlays)
        .removeAlpha()
        .withExif({ IFD0: { ImageDescription: unofficial } }),
  });
  const [made] = png;
  if (made === undefined) throw new Error("a link picture was not made");
  return made.buffer;
}
