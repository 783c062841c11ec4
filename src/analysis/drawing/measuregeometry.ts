// Floor 6. A drawing's shapes → its label map, and the traced lines back in terms of its paints.
import type { SeenLine } from "../../measure/edgetable.ts";
import { type LabelMap, readLabels } from "../../regions/labelmap.ts";
import { type Raster, renderSvg } from "../../regions/raster.ts";
import type { Line } from "../../regions/traceline.ts";
import { codeOf, writeLabels } from "../../svg/labeldrawing.ts";
import type { PaintedShapes } from "../../svg/paint.ts";
import { type Label, type List, labelOf, type PaintIndex, paintOf } from "../../svg/paintnumber.ts";

/** Renders the label drawing and reads it back. */
export async function renderMap(
  shapes: PaintedShapes,
  size: { readonly width: number; readonly height: number },
  render: (svg: string) => Promise<Raster> = renderSvg,
): Promise<LabelMap> {
  const picture = await render(writeLabels(shapes, size.width, size.height));
  return readLabels(
    picture,
    shapes.paints.map((_, paint) => codeOf(paint)),
  );
}

/** Lines between labels → lines between paints. */
export function toSeenLines(lines: readonly Line[]): readonly SeenLine[] {
  return lines.map(({ a, b, points: _points, ...line }) => ({ ...line, a: paintOf(a), b: paintOf(b) }));
}

/** Returns the labels of all paints. */
export function labelsOf({ paints }: Pick<PaintedShapes, "paints">): List<PaintIndex, Label> {
  return paints.map((_, paint) => labelOf(paint));
}
