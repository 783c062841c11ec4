// Floor 4, step 3. An edge table with colours on it → contrasts, grades, and the figures of the whole drawing.
import type { Cloth } from "../colour/cloth.ts";
import { tinctureOf } from "../colour/tincture.ts";
import type { List, Rank } from "../svg/paintnumber.ts";
import {
  findWeakest,
  measureClarity,
  measureClearShare,
  measureFocusClarity,
  measureStrength,
} from "./clarity.ts";
import { SwatchBook } from "./colourcache.ts";
import { contrastOf, type PaintLook, seenAlong } from "./edgefigure.ts";
import { measureMetrics } from "./edgemetric.ts";
import type { EdgeTable, TableEdge, TableFocus } from "./edgetable.ts";
import { measureFocus } from "./focusclarity.ts";
import type { Doubt, Measure, MeasuredColour, MeasuredEdge } from "./measurement.ts";

/** Measures one edge between two looks, as they are along it. */
export function measureEdge(
  table: EdgeTable,
  edge: TableEdge,
  looks: List<Rank, PaintLook>,
  book: SwatchBook,
): MeasuredEdge {
  const [one, other] = seenAlong(looks, edge);
  const { contrast, pair: worst } = contrastOf(one, other, book);
  return {
    a: table.paints[edge.a]?.id ?? "",
    b: table.paints[edge.b]?.id ?? "",
    names: [one.name, other.name],
    length: edge.length,
    focusLength: edge.focusLength,
    ...measureMetrics({
      looks: [one, other],
      wholes: [looks[edge.a]?.hex ?? one.hex, looks[edge.b]?.hex ?? other.hex],
      contrast,
      worst,
      deltaE00: book.differenceOf(one.hex, other.hex),
      book,
      cloth: book.cloth,
    }),
  };
}

/** Returns the colours table. */
export function describeColours(
  table: EdgeTable,
  looks: List<Rank, PaintLook>,
  book: SwatchBook,
): readonly MeasuredColour[] {
  return table.paints.flatMap((paint, rank) => {
    const look = looks[rank] as PaintLook;
    return {
      id: paint.id,
      hex: look.hex,
      name: look.name,
      ...(look.part === undefined ? {} : { part: look.part }),
      tincture: tinctureOf(look.hex),
      share: paint.share,
      touchesBorder: paint.touchesBorder,
      reflectance: book.reflectanceOf(look.hex),
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
  looks: List<Rank, PaintLook>,
  cloth: Cloth,
): Measure {
  const book = new SwatchBook(cloth);
  const edges = table.edges.map((edge) => measureEdge(table, edge, looks, book));
  const contrastAlong = (edge: TableEdge) => contrastOf(...seenAlong(looks, edge), book).contrast;
  return summarise(frame, describeColours(table, looks, book), edges, table.focus, contrastAlong);
}
