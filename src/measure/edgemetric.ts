// Floor 4, step 3. Every measure of an edge, one entry each: tables, pages, files for machines and their schema read it.
import type { Cloth } from "../colour/cloth.ts";
import type { Hex, LinearRgb } from "../colour/colour.ts";
import { linearOf } from "../colour/colourtext.ts";
import { type Grade, gradeOf, isNearLine, measureContrastRatio } from "../colour/contrast.ts";
import { tinctureOf } from "../colour/tincture.ts";
import type { SwatchBook } from "./colourcache.ts";
import { contrastOf, type Ends } from "./edgefigure.ts";
import { colourLimits } from "./limit.ts";

/**
 * Two paints where they meet: what they look like along the edge and as a whole, their contrast in percent, the two colours
 * that have it, and ΔE00.
 */
export interface MetPair {
  readonly looks: readonly [Ends, Ends];
  readonly wholes: readonly [Hex, Hex];
  readonly contrast: number;
  readonly worst: readonly [LinearRgb, LinearRgb];
  readonly deltaE00: number;
  readonly book: SwatchBook;
  readonly cloth: Cloth;
}

/**
 * What a value is measured in, which settles how it is shown and what the schema says of it, in `words/metricwords.ts`.
 */
export type MetricUnit = "percent" | "grade" | "yes or no" | "ratio" | "ΔE00" | "rule" | "vision";

/**
 * `head` is its name in the table of the command, absent where that shows it in a way of its own; pages have theirs from
 * `metricIds` of `words/metricwords.ts`. `description` stands in the schema, `about` on the method page, where its own text has nothing of it.
 */
export interface EdgeMetric {
  readonly id: string;
  readonly unit: MetricUnit;
  readonly head?: string;
  readonly description?: string;
  readonly about?: string;
  readonly source: string;
  // A value of each unit goes to the words of that unit alone.
  readonly compute: (pair: MetPair) => unknown;
}

/** Contrast (percent), grade and ΔE00 of an edge as one kind of colour vision sees it. */
export interface VisionFigures {
  readonly contrast: number;
  readonly grade: Grade;
  readonly deltaE00: number;
}

/** In the order in which JSON has them. */
export const edgeMetrics = [
  {
    id: "contrast",
    unit: "percent",
    source: "Bowman–Sapolinski formula, AS 1428.1:2009 Appendix B",
    compute: ({ contrast }: MetPair) => contrast,
  },
  {
    id: "grade",
    unit: "grade",
    source: "AS 1428.1, AS/NZS 1428.4.1",
    compute: ({ contrast }: MetPair): Grade => gradeOf(contrast),
  },
  {
    id: "nearLine",
    unit: "yes or no",
    description: "The grade would be another on cloth of 4 to 92 %.",
    source: "own judgement, over the published range of cloth",
    compute: ({ worst, cloth }: MetPair) => isNearLine(...worst, cloth),
  },
  {
    id: "contrastRatio",
    unit: "ratio",
    head: "contrast ratio",
    source: "WCAG 2.2, definition of contrast ratio",
    compute: ({ looks: [one, other] }: MetPair) =>
      measureContrastRatio(linearOf(one.hex), linearOf(other.hex)),
  },
  {
    id: "deltaE00",
    unit: "ΔE00",
    head: "ΔE00",
    source: "Sharma, Wu, Dalal, CIEDE2000, 2005",
    compute: ({ deltaE00 }: MetPair) => deltaE00,
  },
  {
    id: "hueOnly",
    unit: "yes or no",
    head: "hue only",
    source: "own judgement",
    compute: (pair: MetPair) =>
      gradeOf(pair.contrast) === "weak" &&
      pair.deltaE00 >= colourLimits.hue &&
      differenceBy("grey", pair) < colourLimits.confusable,
  },
  {
    // `both metals` and `both colours` break the rule; null where it does not speak.
    id: "tincture",
    unit: "rule",
    head: "tincture",
    source: "common practice in heraldry",
    compute: ({ wholes: [one, other] }: MetPair): "both metals" | "both colours" | null => {
      const tincture = tinctureOf(one);
      if (tincture !== tinctureOf(other)) return null;
      return tincture === "metal" ? "both metals" : tincture === "colour" ? "both colours" : null;
    },
  },
  {
    id: "vision",
    unit: "vision",
    source: "Machado, Oliveira, Fernandes, 2009; Brettel, 1997, for tritan; grey keeps luminance",
    compute: (pair: MetPair) => ({
      protan: seenBy("protan", pair),
      deutan: seenBy("deutan", pair),
      tritan: seenBy("tritan", pair),
      grey: { deltaE00: differenceBy("grey", pair) },
    }),
  },
] as const satisfies readonly EdgeMetric[];

export type Metric = (typeof edgeMetrics)[number];

/** What the metrics come to, by id. */
export type EdgeFigures = { readonly [M in Metric as M["id"]]: ReturnType<M["compute"]> };

/** Returns every figure of a pair. */
export function measureMetrics(pair: MetPair): EdgeFigures {
  return Object.fromEntries(edgeMetrics.map(({ id, compute }) => [id, compute(pair)])) as EdgeFigures;
}

function seenBy(vision: "protan" | "deutan" | "tritan", pair: MetPair): VisionFigures {
  const { contrast } = contrastOf(...pair.looks, pair.book, vision);
  return { contrast, grade: gradeOf(contrast), deltaE00: differenceBy(vision, pair) };
}

function differenceBy(
  vision: "protan" | "deutan" | "tritan" | "grey",
  { looks: [one, other], book }: MetPair,
): number {
  return book.differenceOf(one.hex, other.hex, vision);
}
