// Small drawings for the tests of this floor, and what two independent renderers make of them.
import { Resvg } from "@resvg/resvg-js";
import type { Hex } from "../../src/colour/colour.ts";
import { type Raster, renderSvg } from "../../src/regions/raster.ts";
import { readDrawing } from "../../src/svg/gate/sanitise.ts";
import { type ResolvedDrawing, resolveDrawing } from "../../src/svg/instance.ts";
import { selectInstances } from "../../src/svg/limitedchange.ts";
import { findPaints } from "../../src/svg/paint.ts";
import { recolour } from "../../src/svg/recolour.ts";
import type { Drawing, SvgElement } from "../../src/svg/tree.ts";
import { writeDrawing, writeSized } from "../../src/svg/writesvg.ts";

/** A drawing of 30 by 20 units, without blended pixels. */
export const draw = (body: string, attributes = 'viewBox="0 0 30 20"'): string =>
  `<svg xmlns="http://www.w3.org/2000/svg" ${attributes} shape-rendering="crispEdges">${body}</svg>`;

export const bytesOf = (text: string): Uint8Array => new TextEncoder().encode(text);

/** Reads a drawing that must pass the gate. */
export function read(text: string): Drawing {
  const { value, problems } = readDrawing("test.svg", bytesOf(text));
  if (value === undefined)
    throw new Error(problems.map(({ rule, reason }) => `${rule}: ${reason}`).join("\n"));
  return value;
}

export const resolve = (text: string): ResolvedDrawing => resolveDrawing(read(text));

/** Rules of the problems of a drawing, errors as they are, warnings in brackets. */
export function rulesOf(text: string): readonly string[] {
  const { problems } = readDrawing("test.svg", bytesOf(text));
  return problems.map(({ rule, severity }) => (severity === "error" ? rule : `(${rule})`));
}

/** `id property key` of everything that is painted, in the order of the drawing. */
export function listUses(text: string): readonly string[] {
  return findPaints(resolve(text)).uses.map(({ instance, property, key }) => {
    const { name, attributes } = instance.element;
    return `${attributes["id"] ?? name} ${property} ${key}`;
  });
}

/** Fill and stroke of the element with the id `x`, as keys of paints; all showings of it. */
export const paintsOfX = (text: string): readonly string[] =>
  listUses(text)
    .filter((use) => use.startsWith("x "))
    .map((use) => use.slice(2));

/** The drawing after one change, as text. */
export function changed(text: string, replace: Hex, next: Hex, only?: string): string {
  const resolved = resolve(text);
  const instances = only === undefined ? undefined : selectInstances(resolved, only);
  if (typeof instances === "string") throw new Error(instances);
  return writeDrawing(
    recolour(resolved, {
      replace,
      with: next,
      ...(instances === undefined ? {} : { only: instances }),
    }),
  );
}

/** The drawing as this project reads and writes it. */
export const written = (text: string): string => writeDrawing(read(text));

/** Rendered by librsvg from what this project writes, without blended pixels. */
export function render(drawing: Drawing, width = 30, height = 20): Promise<Raster> {
  return renderSvg(writeSized(drawing, width, height, { "shape-rendering": "crispEdges" }));
}

/** Rendered by resvg from the text as it stands: a second opinion that shares no code with the first. */
export function renderOther(text: string, width = 30): Raster {
  const picture = new Resvg(text, {
    fitTo: { mode: "width", value: width },
    font: { loadSystemFonts: false },
  }).render();
  return {
    width: picture.width,
    height: picture.height,
    rgba: Uint8Array.from(picture.pixels),
  };
}

/** `#rrggbb` of one pixel, `none` where it is transparent. */
export function pixelAt({ width, rgba }: Raster, x: number, y: number): string {
  const at = 4 * (y * width + x);
  if (rgba[at + 3] === 0) return "none";
  return `#${Buffer.from(rgba.subarray(at, at + 3)).toString("hex")}`;
}

/** All pixels, row by row. */
export const pixelsOf = (raster: Raster): readonly string[] =>
  Array.from({ length: raster.width * raster.height }, (_, at) =>
    pixelAt(raster, at % raster.width, Math.floor(at / raster.width)),
  );

/** The element with this id. */
export function elementOf(drawing: Drawing, id: string): SvgElement {
  const found = resolveDrawing(drawing).ids.get(id);
  if (found === undefined) throw new Error(`no element has the id ${id}`);
  return found;
}
