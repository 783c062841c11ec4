// Floor 6. A logo: shown and never measured, so that it may have colours that a flag may not.
import type { Logo } from "../../content/study/study.ts";
import type { Outcome } from "../../problem/problem.ts";
import { measuringSize, renderSvg, wordsOf } from "../../regions/raster.ts";
import { writeDrawing, writeSized } from "../../svg/writesvg.ts";
import { notDrawable, nothingDrawn } from "./norendering.ts";
import { readShown } from "./opendrawing.ts";

/** Pixels: what is looked for is whether anything shows. */
const height = 120;

/** Reads a logo and draws it once. Problems: those of readShown; study/nothing-drawn, study/not-drawable. */
export async function openLogo(file: string, bytes: Uint8Array): Promise<Outcome<Logo>> {
  const { value: drawing, problems } = await readShown(file, bytes);
  if (drawing === undefined) return { value: undefined, problems };
  const { viewBox } = drawing;
  const size = measuringSize(viewBox.width, viewBox.height, height);
  try {
    const picture = wordsOf(await renderSvg(writeSized(drawing, size.width, size.height)));
    if (picture.every((pixel) => pixel >>> 24 === 0))
      return { value: undefined, problems: [...problems, nothingDrawn(file)] };
  } catch (error) {
    return { value: undefined, problems: [...problems, notDrawable(file, error, "rendered")] };
  }
  const value = { drawing: writeDrawing(drawing), width: viewBox.width, height: viewBox.height };
  return { value, problems };
}
