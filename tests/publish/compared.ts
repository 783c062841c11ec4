// Test support. Comparisons for the words, made of typed numbers: paints by name, edges by contrast and outcome.
import { gradeOf } from "../../src/colour/contrast.ts";
import type { ComparedEdge, Comparison, Outcome } from "../../src/measure/comparison.ts";
import type { Measure, MeasuredColour, MeasuredEdge, MeasuredFocus } from "../../src/measure/measurement.ts";
import { anyFigures } from "../measure/build.ts";
import { comparison } from "./sample.ts";

/** A paint: its name and hex before, and after where they change. */
export interface Paint {
  readonly name: string;
  readonly hex: MeasuredColour["hex"];
  readonly becomes?: { readonly name: string; readonly hex: MeasuredColour["hex"] };
  readonly more?: Partial<MeasuredColour>;
}

/** An edge between the paints with these ids; `focus` is its focusLength. */
export interface Edge {
  readonly between: readonly [string, string];
  readonly length: number;
  readonly focus?: number;
  readonly contrast: readonly [number | null, number];
  readonly outcome: Outcome;
  readonly more?: Partial<MeasuredEdge>;
}

/** A focus: to where it lasts, its clarity from the gallery's distance, what is left of it and its clarity from each step. */
export interface Focus {
  readonly lastsTo: number | null;
  readonly clarity: readonly [number, number];
  /** Share left, clarity before, clarity after; from steps that are not given all is as from the gallery's distance. */
  readonly from?: Readonly<Record<number, readonly [number, number | null, number | null]>>;
}

/** Without `focus` there is none. Paints are `p1`, `p2` … in the order given. The price is typed in `more`. */
export function compared(
  paints: readonly Paint[],
  edges: readonly Edge[],
  focus?: Focus,
  more: Partial<Comparison> = {},
): Comparison {
  const names = (side: 0 | 1, id: string) => {
    const paint = paints[Number(id.slice(1)) - 1];
    return (side === 1 ? paint?.becomes?.name : undefined) ?? paint?.name ?? "";
  };
  const namesOf = (side: 0 | 1, [a, b]: Edge["between"]) => [names(side, a), names(side, b)] as const;
  const measure = (side: 0 | 1): Measure => ({
    ...comparison.before,
    distance: 40,
    colours: paints.map((paint, index) => colour(paint, index, side)),
    edges: edges.flatMap((edge) => {
      const contrast = edge.contrast[side];
      return contrast === null ? [] : [measured(edge, namesOf(side, edge.between), contrast)];
    }),
    focus: focusOf(focus, side),
  });
  return {
    ...comparison,
    before: measure(0),
    after: measure(1),
    edges: edges.map(
      (edge): ComparedEdge => ({
        a: edge.between[0],
        b: edge.between[1],
        names: [namesOf(0, edge.between), namesOf(1, edge.between)],
        length: edge.length,
        contrast: edge.contrast,
        outcome: edge.outcome,
      }),
    ),
    ...more,
  };
}

function colour({ name, hex, becomes, more }: Paint, index: number, side: 0 | 1): MeasuredColour {
  const shown = side === 1 && becomes ? becomes : { name, hex };
  return {
    id: `p${index + 1}`,
    ...shown,
    tincture: "unclassed",
    share: 0.25,
    touchesBorder: true,
    reflectance: 20,
    vanishes: false,
    uneven: null,
    ...more,
  };
}

function measured(edge: Edge, names: readonly [string, string], contrast: number): MeasuredEdge {
  const figures = { contrast, grade: gradeOf(contrast), deltaE00: 30 };
  return {
    a: edge.between[0],
    b: edge.between[1],
    names,
    length: edge.length,
    focusLength: edge.focus ?? 0,
    ...anyFigures,
    ...figures,
    nearLine: false,
    contrastRatio: 3,
    hueOnly: false,
    tincture: null,
    vision: { protan: figures, deutan: figures, tritan: figures, grey: { deltaE00: 20 } },
    ...edge.more,
  };
}

function focusOf(focus: Focus | undefined, side: 0 | 1): MeasuredFocus {
  if (focus === undefined) return { source: "none", share: 0, clarity: null, from: [], lastsTo: null };
  const clarity = focus.clarity[side];
  const from = [10, 20, 40, 80, 160, 320].map((distance) => {
    const [left, before, after] = focus.from?.[distance] ?? [1, ...focus.clarity];
    return { distance, left, clarity: side === 0 ? before : after, outlineClear: 0 };
  });
  return { source: "found", share: 0.1, clarity, from, lastsTo: focus.lastsTo };
}
