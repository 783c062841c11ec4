// A drawing 1.5 flag heights wide, in a viewBox of 300 × 200, measured as seen from a distance.
//
// Figures by hand: reflectance white 85, yellow 79.224, red 22.008, blue 10.776, black 5 percent on the usual cloth;
// contrast 125 · difference / (sum + 25): white on red 59.648 (clear), white on blue 76.820 and yellow on blue 74.400
// (strong), yellow on red 56.658 (clear), red on blue 24.297 and yellow on white 3.816 (weak).

import { compareDrawing, measureDrawing } from "../../src/analysis/analyse.ts";
import { inspectDrawing } from "../../src/analysis/drawing/inspect.ts";
import type { AnalyseOptions } from "../../src/analysis/drawing/opendrawing.ts";
import type { Viewing } from "../../src/analysis/drawing/viewing.ts";
import { defaultCloth } from "../../src/colour/cloth.ts";
import type { Change } from "../../src/content/study/study.ts";
import type { Measure, MeasuredEdge } from "../../src/measure/measurement.ts";
import { readDrawing } from "../../src/svg/gate/sanitise.ts";
import { type ResolvedDrawing, resolveDrawing } from "../../src/svg/instance.ts";
import { nth } from "../numbered.ts";

export const white = "#ffffff";
export const red = "#ff0000";
export const blue = "#0000ff";
export const yellow = "#ffff00";
export const black = "#000000";

export const contrasts = { whiteRed: 59.6479, whiteBlue: 76.8199, yellowBlue: 74.4, redBlue: 24.2974 };

/** tan 1′, from tables: sin and tan of one arcminute agree to eight places. */
export const oneArcminute = 0.000290888;

export type Look = Partial<Pick<AnalyseOptions, "distance" | "focus">>;

/** A drawing as a file. Units of the viewBox are 1/200 of the flag's height. */
export function draw(body: string, viewBox = "0 0 300 200"): Uint8Array {
  return new TextEncoder().encode(
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="${viewBox}">${body}</svg>`,
  );
}

export const field = (fill: string): string => `<rect width="300" height="200" fill="${fill}"/>`;
export const stripe = (y: number, height: number, fill: string): string =>
  `<rect y="${y}" width="300" height="${height}" fill="${fill}"/>`;
export const box = (x: number, y: number, width: number, height: number, fill: string, id = "b"): string =>
  `<rect id="${id}" x="${x}" y="${y}" width="${width}" height="${height}" fill="${fill}"/>`;
export const disc = (x: number, y: number, radius: number, fill: string, id = "d"): string =>
  `<circle id="${id}" cx="${x}" cy="${y}" r="${radius}" fill="${fill}"/>`;

const optionsOf = (look: Look) => ({
  cloth: defaultCloth,
  distance: 40,
  palette: new Map<string, string>(),
  ...look,
});

export async function see(body: string | Uint8Array, look: Look = {}): Promise<Measure> {
  const bytes = typeof body === "string" ? draw(body) : body;
  const { value, problems } = await measureDrawing("a.svg", bytes, optionsOf(look));
  if (value === undefined) throw new Error(problems.map(({ reason }) => reason).join(" "));
  return value;
}

export async function change(body: string, what: Change, look: Look = {}) {
  const { value, problems } = await compareDrawing("a.svg", draw(body), what, optionsOf(look));
  if (value === undefined) throw new Error(problems.map(({ reason }) => reason).join(" "));
  return value.comparison;
}

export function resolve(body: string, viewBox?: string): ResolvedDrawing {
  const { value, problems } = readDrawing("a.svg", draw(body, viewBox));
  if (value === undefined) throw new Error(problems.map(({ reason }) => reason).join(" "));
  return resolveDrawing(value);
}

/** The distance view itself: which colour shows at a place (in units of the viewBox), and how much of each there is. */
export async function lookFrom(body: string, viewing: Viewing = { distance: 40 }) {
  const inspection = await inspectDrawing(resolve(body), viewing);
  const { view, map, looks, table } = inspection;
  const hexOf = (label: number): string | null => {
    const rank = [...table.order].indexOf(nth(label - 1));
    return [...looks][rank]?.hex ?? null;
  };
  const scale = view.height / 200;
  const shareOf = (hex: string): number =>
    view.labels.filter((label) => label !== 0 && hexOf(label) === hex).length / view.labels.length;
  return {
    ...inspection,
    isFull: view === map,
    shareOf,
    colourAt: (x: number, y: number): string | null =>
      hexOf(view.labels[Math.floor(y * scale) * view.width + Math.floor(x * scale)] ?? 0),
  };
}

/** The edge between two colours, whichever comes first; undefined where they do not meet. */
export function edgeOf(measure: Measure, one: string, other: string): MeasuredEdge | undefined {
  const idOf = (hex: string): string | undefined => measure.colours.find((colour) => colour.hex === hex)?.id;
  const ids = [idOf(one), idOf(other)];
  return measure.edges.find((edge) => ids.includes(edge.a) && ids.includes(edge.b));
}

export function lengthOf(measure: Measure, one: string, other: string): number {
  return edgeOf(measure, one, other)?.length ?? 0;
}

/** Pairs that meet, as `hex/hex` in the order of their ids. */
export function pairsOf(measure: Measure): readonly string[] {
  const hexOf = (id: string): string => measure.colours.find((colour) => colour.id === id)?.hex ?? id;
  return measure.edges.map(({ a, b }) => `${hexOf(a)}/${hexOf(b)}`).sort();
}

export const vanishedOf = (measure: Measure): readonly string[] =>
  measure.colours.filter(({ vanishes }) => vanishes).map(({ hex }) => hex);
