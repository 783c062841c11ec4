// Floor 7. How the measures of an edge are shown, by their units: on pages, in the command's table, in tables for programs,
// and what the schema of JSON says of them.
import { type EdgeMetric, edgeMetrics, type Metric, type MetricUnit } from "../measure/edgemetric.ts";
import { colourLimits } from "../measure/limit.ts";
import type { WordId } from "./en/all.ts";
import type { Format } from "./format.ts";

/** A column of a table for programs: its name, and what stands in it. */
export type MetricColumn<V> = readonly [name: string, cell: (value: V) => string | number];

/** `cell` stands under a head of the command's table, `note` behind the row. */
interface UnitWords<V> {
  readonly page?: (value: V, format: Format) => string;
  readonly cell?: (value: V) => string;
  readonly note?: (value: V, head: string) => string;
  readonly columns?: (id: string) => readonly MetricColumn<V>[];
  readonly schema: object;
}

type ValueOf<U> = ReturnType<Extract<Metric, { readonly unit: U }>["compute"]>;

const record = (properties: object) => ({
  type: "object",
  additionalProperties: false,
  required: Object.keys(properties),
  properties,
});
const deltaE00 = { $ref: "#/$defs/deltaE00" };
const vision = { $ref: "#/$defs/vision" };

const ruleIds = {
  "both metals": "metric.bothMetals",
  "both colours": "metric.bothColours",
} as const satisfies Record<NonNullable<ValueOf<"rule">>, WordId>;

const unitWords: { readonly [U in MetricUnit]: UnitWords<ValueOf<U>> } = {
  percent: { schema: { $ref: "#/$defs/contrast" } },
  grade: { schema: { $ref: "#/$defs/grade" } },
  "yes or no": {
    page: (value, { say }) => say(value ? "metric.yes" : "metric.no"),
    note: (value, head) => (value ? head : ""),
    columns: (id) => [[id, String]],
    schema: { type: "boolean" },
  },
  ratio: {
    page: (value, format) => `${format.number(value, 1)}:${format.number(1, 0)}`,
    cell: (value) => value.toFixed(2),
    columns: (id) => [[id, (value) => value]],
    schema: { type: "number", minimum: 1, maximum: 21 },
  },
  ΔE00: {
    page: (value, format) => format.difference(value, colourLimits.hue),
    cell: (value) => value.toFixed(1),
    columns: (id) => [[id, (value) => value]],
    schema: deltaE00,
  },
  rule: {
    page: (value, { say }) => say(value === null ? "metric.noObjection" : ruleIds[value]),
    note: (value) => value ?? "",
    columns: (id) => [[id, (value) => value ?? "none"]],
    schema: { enum: ["both metals", "both colours", null] },
  },
  vision: {
    columns: () => [
      ["protanContrast", ({ protan }) => protan.contrast],
      ["deutanContrast", ({ deutan }) => deutan.contrast],
      ["tritanContrast", ({ tritan }) => tritan.contrast],
      ["greyDeltaE00", ({ grey }) => grey.deltaE00],
    ],
    schema: record({ protan: vision, deutan: vision, tritan: vision, grey: record({ deltaE00 }) }),
  },
};

/** What a metric is called in lists of figures on pages, for those that have a place there. */
export const metricIds: Readonly<Partial<Record<Metric["id"], MetricWordId>>> = {
  contrastRatio: "metric.contrastRatio",
  deltaE00: "metric.deltaE00",
  hueOnly: "metric.hueOnly",
  tincture: "metric.tincture",
};

/** What it means, for those whose name does not say it. */
export const metricMeansIds: Readonly<Partial<Record<Metric["id"], MetricWordId>>> = {
  tincture: "metric.tinctureMeans",
};

/** A message without values. */
type MetricWordId = Extract<WordId, `metric.${string}`>;

/** Returns how a metric is shown; its values are those that it computes. */
export function wordsOf({ unit }: EdgeMetric): UnitWords<unknown> {
  return unitWords[unit] as UnitWords<unknown>;
}

/** Returns a measured edge as JSON Schema: its place in the drawing and every metric. */
export function describeEdgeSchema(): object {
  const [paint, length] = [{ $ref: "#/$defs/paint" }, { $ref: "#/$defs/length" }];
  const metrics = edgeMetrics.map((metric: EdgeMetric) => {
    const { id, description } = metric;
    return [id, { ...wordsOf(metric).schema, ...(description === undefined ? {} : { description }) }];
  });
  const names = { $ref: "#/$defs/names" };
  return record({ a: paint, b: paint, names, length, focusLength: length, ...Object.fromEntries(metrics) });
}
