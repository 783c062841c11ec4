// Floor 4, step 3. An edge table with colours on it → contrasts, grades, and the figures of the whole drawing.
import { type Cloth, defaultCloth, measureReflectance } from "../colour/cloth.ts";
import type { Hex, LinearRgb } from "../colour/colour.ts";
import { linearOf } from "../colour/colourtext.ts";
import { gradeOf, isNearLine, measureContrast, measureContrastRatio } from "../colour/contrast.ts";
import { measureDifference } from "../colour/difference.ts";
import { tinctureOf } from "../colour/tincture.ts";
import { simulate } from "../colour/vision.ts";
import {
  findWeakest,
  measureClarity,
  measureClearShare,
  measureFocusClarity,
  measureStrength,
} from "./clarity.ts";
import type { EdgeTable, TableEdge, TableFocus } from "./edgetable.ts";
import { measureFocus } from "./focusclarity.ts";
import type {
  Doubt,
  Measure,
  MeasuredColour,
  MeasuredEdge,
  PaintPart,
  VisionFigures,
} from "./measurement.ts";

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
  /** Absent where it is a whole paint, and after a change of it. */
  readonly part?: PaintPart;
  readonly beside?: ReadonlyMap<number, Ends>;
}

/** Returns what the two paints of an edge look like along it. */
export function seenAlong(
  looks: readonly PaintLook[],
  { a, b }: Pick<TableEdge, "a" | "b">,
): readonly [PaintLook, PaintLook] {
  const along = (look: PaintLook, other: number): PaintLook =>
    look.beside === undefined ? look : { ...look, ...look.beside.get(other) };
  return [along(looks[a] as PaintLook, b), along(looks[b] as PaintLook, a)];
}

/** ΔE00 from which a pair of low contrast counts as told apart by hue (our own judgement). */
export const hueDifference = 20;

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
  const worst = findWorst(one, other, (linear) => linear, cloth);
  const { contrast } = worst;
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
    nearLine: isNearLine(...worst.pair, cloth),
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
  return findWorst(one, other, (linear) => linear, cloth).contrast;
}

function seenBy(
  vision: "protan" | "deutan" | "tritan",
  one: PaintLook,
  other: PaintLook,
  cloth: Cloth,
): VisionFigures {
  const { contrast } = findWorst(one, other, (linear) => simulate(linear, vision), cloth);
  return {
    contrast,
    grade: gradeOf(contrast),
    deltaE00: measureDifference(simulate(linearOf(one.hex), vision), simulate(linearOf(other.hex), vision)),
  };
}

/** The ends of two looks, as they are seen, that have the lowest contrast. */
function findWorst(
  one: PaintLook,
  other: PaintLook,
  see: (linear: LinearRgb) => LinearRgb,
  cloth: Cloth,
): { readonly contrast: number; readonly pair: readonly [LinearRgb, LinearRgb] } {
  const pairs = endsOf(one).flatMap((a) =>
    endsOf(other).map((b) => [see(linearOf(a)), see(linearOf(b))] as const),
  );
  return pairs
    .map((pair) => ({
      pair,
      contrast: measureContrast(measureReflectance(pair[0], cloth), measureReflectance(pair[1], cloth)),
    }))
    .reduce((worst, next) => (next.contrast < worst.contrast ? next : worst));
}

/** Returns the colours a look counts with: its own, and its ends where it is uneven. */
export function endsOf({ hex, uneven }: Ends): readonly Hex[] {
  return uneven === null ? [hex] : [hex, uneven.lightest, uneven.darkest];
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
      ...(look.part === undefined ? {} : { part: look.part }),
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
  readonly warnings: readonly Doubt[];
}

/** Puts a measure together from colours and measured edges. `contrastOf` as {@link measureFocus} takes it. */
export function summarise(
  frame: Frame,
  colours: readonly MeasuredColour[],
  edges: readonly MeasuredEdge[],
  focus: TableFocus,
  contrastOf: (edge: TableEdge) => number | null,
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
    strength: measureStrength(edges),
    weakestEdge: weakest === undefined ? null : { a: weakest.a, b: weakest.b, contrast: weakest.contrast },
    focus: measureFocus(focus, measureFocusClarity(edges), contrastOf),
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
  return summarise(frame, describeColours(table, looks, cloth), edges, table.focus, (edge) =>
    measureContrastOf(edge, looks, cloth),
  );
}
