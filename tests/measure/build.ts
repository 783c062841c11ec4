// Edge tables and looks written out by hand, for drawings that nobody has to render.
import type { Hex } from "../../src/colour/colour.ts";
import { SwatchBook } from "../../src/measure/colourcache.ts";
import { contrastOf, type PaintLook } from "../../src/measure/edgefigure.ts";
import { measureMetrics } from "../../src/measure/edgemetric.ts";
import type {
  EdgeTable,
  FocusStep,
  SeenGeometry,
  TableEdge,
  TableFocus,
} from "../../src/measure/edgetable.ts";
import { distanceSteps } from "../../src/measure/focusclarity.ts";
import { type List, listed, type Rank } from "../../src/svg/paintnumber.ts";
import { nth } from "../numbered.ts";

/**
 * A table of paints and of edges `[a, b, length, focusLength?]` between them by index. Paints of one `group` are one
 * paint in the original.
 */
export function tableOf(
  paints: readonly (readonly [id: string, group?: number | undefined])[],
  edges: readonly (readonly [a: number, b: number, length: number, focusLength?: number])[],
): EdgeTable {
  return {
    paints: listed(
      paints.map(([id, group], index) => ({
        id,
        share: 1 / paints.length,
        touchesBorder: true,
        vanishes: false,
        group: nth(group ?? index),
      })),
    ),
    edges: edges.map(([a, b, length, focusLength = 0]) => edgeOf(a, b, length, focusLength)),
    order: listed(paints.map((_, index) => nth(index))),
    focus: noFocus,
  };
}

/** An edge between two paints, by rank. */
export const edgeOf = (a: number, b: number, length: number, focusLength = 0): TableEdge => ({
  a: nth(a),
  b: nth(b),
  length,
  focusLength,
});

export const noFocus: TableFocus = { source: "none", share: 0, charges: [], steps: [] };

/** A focus that is found, with these charges, each `[a, b, length]` along its outline, and these steps. */
export const focusOf = (
  steps: readonly FocusStep[],
  charges: readonly (readonly (readonly [a: number, b: number, length: number])[])[] = [],
): TableFocus => ({
  source: "found",
  share: 0.1,
  charges: charges.map((outline) => outline.map(([a, b, length]) => ({ a: nth(a), b: nth(b), length }))),
  steps,
});

/** Every step with all of the focus left, ten flag heights long, and these edges. */
export const allSteps = (edges: FocusStep["edges"]): readonly FocusStep[] =>
  distanceSteps.map((distance) => ({ distance, left: 1, span: 10, edges }));

/** Flat looks of these colours. A name is the colour itself, so that a test reads what it says. */
export const looksOf = (...hexes: readonly Hex[]): List<Rank, PaintLook> =>
  listed(hexes.map((hex) => ({ hex, name: hex, uneven: null })));

/** What every metric says of black beside white: for edges that are typed by hand, before what matters of them. */
export const anyFigures = (() => {
  const book = new SwatchBook({ black: 5, white: 85 });
  const [one, other] = [...looksOf("#000000", "#ffffff")] as [PaintLook, PaintLook];
  const { contrast, pair: worst } = contrastOf(one, other, book);
  const wholes = [one.hex, other.hex] as const;
  return measureMetrics({
    looks: [one, other],
    wholes,
    contrast,
    worst,
    deltaE00: 100,
    book,
    cloth: book.cloth,
  });
})();

export const frame = {
  file: "a.svg",
  proportions: [2, 3],
  distance: 0,
  warnings: [],
} as const;

/** What the raster saw of paints with these pixels: no focus, nothing vanished, nothing joined. */
export function seenOf(given: {
  readonly pixels: readonly number[];
  readonly lines?: readonly {
    readonly a: number;
    readonly b: number;
    readonly length: number;
    readonly focusShare?: number;
    readonly outlineShares?: readonly number[];
  }[];
  readonly part?: readonly (number | undefined)[];
  readonly heightPixels?: number;
  readonly flagPixels?: number;
}): SeenGeometry {
  const { pixels, lines = [], part = [], heightPixels = 100 } = given;
  return {
    heightPixels,
    flagPixels: given.flagPixels ?? pixels.reduce((sum, count) => sum + count, 0),
    pixels: listed(pixels),
    touchesBorder: listed(pixels.map(() => true)),
    remains: listed(pixels.map(() => true)),
    group: listed(pixels.map((_, index) => nth(part[index] ?? index))),
    lines: lines.map((line) => ({
      focusShare: 0,
      outlineShares: [],
      ...line,
      a: nth(line.a),
      b: nth(line.b),
    })),
    focus: { source: "none", pixels: 0, chargeCount: 0, steps: [] },
    part: listed(pixels.map((_, index) => (part[index] === undefined ? undefined : nth(part[index])))),
  };
}
