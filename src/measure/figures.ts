// Floor 4, step 2. An edge table with colours on it → contrasts, grades, and the figures of the whole drawing.
import { type Cloth, defaultCloth, measureReflectance } from "../colour/cloth.ts";
import type { Hex, LinearRgb } from "../colour/colour.ts";
import { gradeOf, isClear, measureContrast, measureContrastRatio } from "../colour/contrast.ts";
import { measureDifference } from "../colour/difference.ts";
import { linearOf } from "../colour/parse.ts";
import { tinctureOf } from "../colour/tincture.ts";
import { simulate } from "../colour/vision.ts";
import type { Measure, MeasuredColour, MeasuredEdge, VisionFigures } from "./measure.ts";
import { measureReadsTo } from "./reads.ts";
import type { EdgeTable, TableEdge, TableFocus } from "./table.ts";

/** A colour, and the ends it runs between where it is uneven. */
export interface Ends {
  readonly hex: Hex;
  readonly uneven: { readonly lightest: Hex; readonly darkest: Hex } | null;
}

/**
 * What a paint looks like as a whole; `beside` what it looks like along its edge with another paint, by the index of that
 * paint, where that may be something else.
 */
export interface PaintLook extends Ends {
  readonly name: string;
  readonly beside?: ReadonlyMap<number, Ends>;
}

/** Returns what the two paints of an edge look like along it. */
export function seenAlong(
  looks: readonly PaintLook[],
  { a, b }: Pick<TableEdge, "a" | "b">,
): readonly [PaintLook, PaintLook] {
  const along = (look: PaintLook, other: number): PaintLook => ({ ...look, ...look.beside?.get(other) });
  return [along(looks[a] as PaintLook, b), along(looks[b] as PaintLook, a)];
}

/** Edges shorter than this share of all edge length are listed but decide nothing (our own judgement). */
export const deciding = 0.01;
/** ΔE00 from which a pair of low contrast counts as told apart by hue (our own judgement). */
const hueDifference = 20;
/** Contrast from which an edge counts fully in clarity: where *clear* starts. */
const fullContrast = 45;

/** Figures of one edge with contrast and lengths, as clarity and clear-edge share need them. */
export interface WeighedEdge {
  readonly length: number;
  readonly focusLength: number;
  readonly contrast: number;
}

/** Returns the share of edge length that is clear or strong, 0 to 1, or null where there is no edge. */
export function measureClearShare(edges: readonly WeighedEdge[]): number | null {
  const total = edges.reduce((sum, edge) => sum + edge.length, 0);
  if (total === 0) return null;
  return edges.reduce((sum, edge) => sum + (isClear(gradeOf(edge.contrast)) ? edge.length : 0), 0) / total;
}

/**
 * Returns clarity in percent: Σ (length + focusLength) · min(1, contrast / 45) ÷ Σ (length + focusLength), or null
 * where there is no edge.
 *
 * Example: an edge of contrast 22.5 with the focus beside it and one of 90 without, equally long:
 * (2 · 0.5 + 1) / 3 = 66.7 %.
 */
export function measureClarity(edges: readonly WeighedEdge[]): number | null {
  return weigh(edges, (edge) => edge.length + edge.focusLength);
}

/** Returns the clarity of the focus edges alone, in percent, or null where there is none. */
export function measureFocusClarity(edges: readonly WeighedEdge[]): number | null {
  return weigh(edges, (edge) => edge.focusLength);
}

function weigh(edges: readonly WeighedEdge[], weightOf: (edge: WeighedEdge) => number): number | null {
  const total = edges.reduce((sum, edge) => sum + weightOf(edge), 0);
  if (total === 0) return null;
  return (
    100 *
    (edges.reduce((sum, edge) => sum + weightOf(edge) * Math.min(1, edge.contrast / fullContrast), 0) / total)
  );
}

/** Returns the edge of lowest contrast among those that decide, or undefined. */
export function findWeakest<E extends WeighedEdge>(edges: readonly E[]): E | undefined {
  const total = edges.reduce((sum, edge) => sum + edge.length, 0);
  const eligible = edges.filter((edge) => edge.length >= deciding * total);
  return eligible.reduce<E | undefined>(
    (weakest, edge) => (weakest === undefined || edge.contrast < weakest.contrast ? edge : weakest),
    undefined,
  );
}

/**
 * Measures one edge between two looks, as they are along it. An uneven paint counts with whichever of its ends is nearer to
 * the other.
 */
export function measureEdge(
  table: EdgeTable,
  edge: TableEdge,
  looks: readonly PaintLook[],
  cloth: Cloth = defaultCloth,
): MeasuredEdge {
  const [one, other] = seenAlong(looks, edge);
  const contrast = worstContrast(one, other, (linear) => linear, cloth);
  const deltaE00 = measureDifference(linearOf(one.hex), linearOf(other.hex));
  const grade = gradeOf(contrast);
  return {
    a: table.paints[edge.a]?.id ?? "",
    b: table.paints[edge.b]?.id ?? "",
    names: [one.name, other.name],
    length: edge.length,
    focusLength: edge.focusLength,
    contrast,
    grade,
    contrastRatio: measureContrastRatio(linearOf(one.hex), linearOf(other.hex)),
    deltaE00,
    hueOnly: grade === "weak" && deltaE00 >= hueDifference,
    tincture: findTincture(looks[edge.a]?.hex ?? one.hex, looks[edge.b]?.hex ?? other.hex),
    vision: {
      protan: seenBy("protan", one, other, cloth),
      deutan: seenBy("deutan", one, other, cloth),
      tritan: seenBy("tritan", one, other, cloth),
      grey: {
        deltaE00: measureDifference(
          simulate(linearOf(one.hex), "grey"),
          simulate(linearOf(other.hex), "grey"),
        ),
      },
    },
  };
}

/** Returns the contrast of one edge, in percent, as {@link measureEdge} does. */
export function measureContrastOf(edge: TableEdge, looks: readonly PaintLook[], cloth: Cloth): number {
  const [one, other] = seenAlong(looks, edge);
  return worstContrast(one, other, (linear) => linear, cloth);
}

function seenBy(
  vision: "protan" | "deutan" | "tritan",
  one: PaintLook,
  other: PaintLook,
  cloth: Cloth,
): VisionFigures {
  const contrast = worstContrast(one, other, (linear) => simulate(linear, vision), cloth);
  return {
    contrast,
    grade: gradeOf(contrast),
    deltaE00: measureDifference(simulate(linearOf(one.hex), vision), simulate(linearOf(other.hex), vision)),
  };
}

function worstContrast(
  one: PaintLook,
  other: PaintLook,
  see: (linear: LinearRgb) => LinearRgb,
  cloth: Cloth,
): number {
  let worst = Number.POSITIVE_INFINITY;
  for (const a of endsOf(one)) {
    for (const b of endsOf(other)) {
      worst = Math.min(
        worst,
        measureContrast(
          measureReflectance(see(linearOf(a)), cloth),
          measureReflectance(see(linearOf(b)), cloth),
        ),
      );
    }
  }
  return worst;
}

function endsOf(look: PaintLook): readonly Hex[] {
  return look.uneven === null ? [look.hex] : [look.hex, look.uneven.lightest, look.uneven.darkest];
}

function findTincture(one: Hex, other: Hex): MeasuredEdge["tincture"] {
  const tincture = tinctureOf(one);
  if (tincture !== tinctureOf(other)) return null;
  return tincture === "metal" ? "both metals" : tincture === "colour" ? "both colours" : null;
}

/** Returns the colours table. */
export function describeColours(
  table: EdgeTable,
  looks: readonly PaintLook[],
  cloth: Cloth,
): readonly MeasuredColour[] {
  return table.paints.map((paint, index) => {
    const look = looks[index] as PaintLook;
    return {
      id: paint.id,
      hex: look.hex,
      name: look.name,
      tincture: tinctureOf(look.hex),
      share: paint.share,
      touchesBorder: paint.touchesBorder,
      reflectance: measureReflectance(linearOf(look.hex), cloth),
      vanishes: paint.vanishes,
      uneven: look.uneven,
    };
  });
}

/** What a measure says beside its colours and edges. */
export interface Frame {
  readonly file: string;
  readonly proportions: readonly [number, number];
  readonly distance: number;
  readonly warnings: readonly string[];
}

/** Puts a measure together from colours and measured edges. `readsTo` as {@link measureReadsTo} gives it. */
export function summarise(
  frame: Frame,
  colours: readonly MeasuredColour[],
  edges: readonly MeasuredEdge[],
  focus: TableFocus,
  readsTo: number | null,
): Measure {
  const weakest = findWeakest(edges);
  return {
    file: frame.file,
    proportions: frame.proportions,
    distance: frame.distance,
    colours,
    edges,
    clearEdgeShare: measureClearShare(edges),
    clarity: measureClarity(edges),
    weakestEdge: weakest === undefined ? null : { a: weakest.a, b: weakest.b, contrast: weakest.contrast },
    focus: { source: focus.source, share: focus.share, clarity: measureFocusClarity(edges), readsTo },
    warnings: frame.warnings,
  };
}

/** Measures a drawing: `looks[i]` belongs to `table.paints[i]`. */
export function measureLooks(
  frame: Frame,
  table: EdgeTable,
  looks: readonly PaintLook[],
  cloth: Cloth,
): Measure {
  const edges = table.edges.map((edge) => measureEdge(table, edge, looks, cloth));
  const readsTo = measureReadsTo(table.focus, (edge) => measureContrastOf(edge, looks, cloth));
  return summarise(frame, describeColours(table, looks, cloth), edges, table.focus, readsTo);
}
