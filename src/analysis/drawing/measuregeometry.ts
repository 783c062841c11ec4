// Floor 6. A drawing's shapes → its label map, and the traced lines back in terms of its paints.
import type { SeenLine } from "../../measure/edgetable.ts";
import { type LabelMap, readLabels } from "../../regions/labelmap.ts";
import { type Raster, renderSvg } from "../../regions/raster.ts";
import type { Line } from "../../regions/traceline.ts";
import { codeOf, writeLabels } from "../../svg/labeldrawing.ts";
import type { PaintedShapes } from "../../svg/paint.ts";

/** Renders the label drawing and reads it back. */
export async function renderMap(
  shapes: PaintedShapes,
  size: { readonly width: number; readonly height: number },
  render: (svg: string) => Promise<Raster> = renderSvg,
): Promise<LabelMap> {
  const picture = await render(writeLabels(shapes, size.width, size.height));
  return readLabels(
    picture,
    shapes.paints.map((_, index) => codeOf(index)),
  );
}

/** Labels → paint indexes. */
export function toSeenLines(lines: readonly Line[]): readonly SeenLine[] {
  return lines.map(({ a, b, points: _points, ...line }) => ({ ...line, a: a - 1, b: b - 1 }));
}

/** Paint indexes → labels, with 0 for transparent. */
export function labelsOf(groups: readonly number[]): readonly number[] {
  return [0, ...groups.map((group) => group + 1)];
}
