// Floor 6. Pictures in pixels, for what a drawing cannot show. The door to sharp for publishing; always without loss.
import { mkdir, writeFile } from "node:fs/promises";
import path from "node:path";
import sharp from "sharp";
import { distanceSteps } from "../measure/reads.ts";
import type { StudyResult } from "../study/result.ts";
import { readDrawing } from "../svg/gate.ts";
import { writeSized } from "../svg/write.ts";
import { blurPicture, measureBlur, type Picture } from "./blur.ts";
import { formatStudyPath } from "./present/status.ts";
import { formatStripFile, stripSize } from "./present/strip.ts";

/** What every picture of a redesign says of itself. */
const unofficial = "Unofficial study: a proposal for discussion, not a flag in use.";

/** Writes the distance strip of a study into its folder: both flags as they look from every distance step. */
export async function writeStrip(result: StudyResult, outDir: string): Promise<void> {
  const folder = path.join(outDir, formatStudyPath(result.study.slug));
  await mkdir(folder, { recursive: true });
  const size = stripSize(result.comparison.before.proportions);
  for (const name of ["original", "redesign"] as const) {
    const picture = await renderDrawing(result.drawings[name], size);
    for (const distance of distanceSteps) {
      const seen = blurPicture(picture, measureBlur(distance, picture.height));
      await writeFile(
        path.join(folder, formatStripFile(distance, name)),
        await encodePng(seen, name === "redesign"),
      );
    }
  }
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

/** Encodes a picture as PNG; transparency only where there is any. */
export async function encodePng({ width, height, rgba }: Picture, isRedesign: boolean): Promise<Buffer> {
  const raw = sharp(rgba, { raw: { width, height, channels: 4 } });
  const isOpaque = rgba.every((value, index) => index % 4 !== 3 || value === 255);
  const image = isOpaque ? raw.removeAlpha() : raw;
  const said = isRedesign ? image.withExif({ IFD0: { ImageDescription: unofficial } }) : image;
  return said.png({ compressionLevel: 9, adaptiveFiltering: true, palette: false }).toBuffer();
}
