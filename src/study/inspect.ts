// Floor 5, the measuring half of the sequence: a drawing → its paints, label map and edge table, with what they look like.
import type { Hex } from "../colour/colour.ts";
import { measureDifference } from "../colour/difference.ts";
import { nameColours } from "../colour/name.ts";
import { hexOf } from "../colour/parse.ts";
import type { PaintLook } from "../measure/figures.ts";
import { findProportions } from "../measure/proportions.ts";
import { type EdgeTable, tabulate } from "../measure/table.ts";
import { measureAreas } from "../regions/area.ts";
import { type LabelMap, readLabels } from "../regions/label.ts";
import { measureSeen, type SeenPaint } from "../regions/mean.ts";
import { measuringSize, type Raster, renderSvg } from "../regions/raster.ts";
import { traceLines } from "../regions/trace.ts";
import type { ResolvedDrawing } from "../svg/instance.ts";
import { codeOf, writeLabels } from "../svg/label.ts";
import { findPaints, type Paint, type Selection } from "../svg/paint.ts";
import type { Drawing } from "../svg/tree.ts";
import { writeSized } from "../svg/write.ts";

/** Everything that is known of a drawing before any change of colour. `paints[i]` belongs to `table.paints[i]`. */
export interface Inspection {
  readonly map: LabelMap;
  readonly table: EdgeTable;
  readonly paints: readonly Paint[];
  readonly looks: readonly PaintLook[];
  readonly proportions: readonly [number, number];
  readonly warnings: readonly string[];
}

/** ΔE00 between the ends of a paint from which it is flagged uneven (our own judgement). */
const unevenFrom = 5;

/** Measures a resolved drawing in full (distance 0). With `selection` the selected part of a paint stands for itself. */
export async function inspectDrawing(resolved: ResolvedDrawing, selection?: Selection): Promise<Inspection> {
  const { viewBox } = resolved.drawing;
  const size = measuringSize(viewBox.width, viewBox.height);
  const shapes = findPaints(resolved, selection);
  const picture = await renderSvg(writeLabels(shapes, size.width, size.height));
  const map = readLabels(
    picture,
    shapes.paints.map((_, index) => codeOf(index)),
  );
  const areas = measureAreas(map, shapes.paints.length);
  const table = tabulate({
    heightPixels: map.height,
    flagPixels: areas.flagPixels,
    pixels: areas.pixels.slice(1),
    touchesBorder: areas.touchesBorder.slice(1),
    lines: traceLines(map).map((line) => ({ a: line.a - 1, b: line.b - 1, length: line.length })),
    part: shapes.paints.map((paint) => (paint.selected ? findWhole(shapes.paints, paint) : undefined)),
  });
  const paints = table.order.map((index) => shapes.paints[index] as Paint);
  const looks = await lookAt(resolved.drawing, map, table, paints);
  return {
    map,
    table,
    paints,
    looks,
    proportions: findProportions(viewBox.width, viewBox.height),
    warnings: listWarnings(map, shapes.faint.length),
  };
}

function findWhole(paints: readonly Paint[], part: Paint): number | undefined {
  const at = paints.findIndex((paint) => !paint.selected && `${paint.key} s` === part.key);
  return at < 0 ? undefined : at;
}

/**
 * Returns what each paint of `table` looks like in `drawing`, whose geometry is that of `map`. Flat paints look as they
 * are declared; the others are looked at in a second rendering.
 */
export async function lookAt(
  drawing: Drawing,
  map: LabelMap,
  table: EdgeTable,
  paints: readonly Paint[],
  declared?: readonly (Hex | null)[],
): Promise<readonly PaintLook[]> {
  const needsPicture = paints.some((paint) => !paint.flat);
  const picture = needsPicture ? await renderSvg(writeSized(drawing, map.width, map.height)) : undefined;
  const seen = paints.map((paint, index) => {
    const hex = declared === undefined ? paint.declared : (declared[index] ?? null);
    return paint.flat && hex !== null
      ? { hex, uneven: null }
      : look(picture, map, (table.order[index] ?? 0) + 1, hex);
  });
  return nameLooks(seen, table);
}

function look(
  picture: Raster | undefined,
  map: LabelMap,
  label: number,
  declared: Hex | null,
): Omit<PaintLook, "name"> {
  const seen: SeenPaint | null = picture === undefined ? null : measureSeen(picture, map, label);
  if (seen === null) return { hex: declared ?? "#000000", uneven: null };
  const isUneven = measureDifference(seen.lightest, seen.darkest) > unevenFrom;
  return {
    hex: hexOf(seen.mean),
    uneven: isUneven ? { lightest: hexOf(seen.lightest), darkest: hexOf(seen.darkest) } : null,
  };
}

/** Names are unique in a flag; the selected part of a paint is called after its paint. */
function nameLooks(seen: readonly Omit<PaintLook, "name">[], table: EdgeTable): readonly PaintLook[] {
  const hexes = [...new Set(seen.map((paint) => paint.hex))];
  const names = new Map(nameColours(hexes).map((name, index) => [hexes[index], name]));
  return seen.map((paint, index) => {
    const name = names.get(paint.hex) ?? paint.hex;
    const id = table.paints[index]?.id ?? "";
    const hasTwin =
      id.endsWith("s") &&
      seen.some((other, at) => other.hex === paint.hex && table.paints[at]?.id === id.slice(0, -1));
    return { ...paint, name: hasTwin ? `${name}, selected part` : name };
  });
}

function listWarnings(map: LabelMap, faintShapes: number): readonly string[] {
  const warnings: string[] = [];
  if (faintShapes > 0)
    warnings.push(
      `${faintShapes === 1 ? "One shape shows" : `${faintShapes} shapes show`} at less than half and ${faintShapes === 1 ? "is" : "are"} left out of the measurement.`,
    );
  if (map.exactShare < 0.98)
    warnings.push(
      `Only ${Math.floor(map.exactShare * 100)} % of the drawing could be told apart exactly; its figures are less certain.`,
    );
  return warnings;
}
