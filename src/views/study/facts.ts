// Floor 8. Facts beside the numbers, none of them a score: clear-edge share, grades near the line, hue-only edges, rule of
// tincture, count of colours, warnings.

import { linearOf } from "../../colour/colourtext.ts";
import { measureDifference } from "../../colour/difference.ts";
import type { Gallery } from "../../content/study/study.ts";
import type { Comparison } from "../../measure/comparison.ts";
import type { Measure, MeasuredEdge } from "../../measure/measurement.ts";
import { isSameColour } from "../../measure/outcome.ts";
import { listLines } from "../../words/fimbriationfact.ts";
import type { Format } from "../../words/format.ts";
import { formatNames } from "../../words/phrase.ts";
import { describeDoubt } from "../../words/uncertainty.ts";

/** One fact, original and redesign. `id` names its source on the page. */
export interface FactRow {
  readonly id: "share" | "near" | "hue" | "tincture" | "count";
  readonly name: string;
  readonly before: readonly string[];
  readonly after: readonly string[];
}

export interface FactsView {
  /** What goes against the rule of tincture, in a sentence or two; undefined where the gallery does not speak of it. */
  readonly tincture: string | undefined;
  readonly rows: readonly FactRow[];
  /** What the rule of tincture leaves out on this flag. */
  readonly exempt: readonly string[];
  /** What makes the figures of this flag less certain. */
  readonly warnings: readonly string[];
}

const againstIds = {
  "both metals": "facts.metalOnMetal",
  "both colours": "facts.colourOnColour",
} as const;

/** Share of the area over which a paint counts as a colour of the flag (our own judgement). */
const countedFrom = 0.005;

/** The facts of a comparison, without those of taste that `terms` leaves out. */
export function presentFacts(
  comparison: Comparison,
  format: Format,
  { tincture = true, colours = true }: Gallery["terms"] = {},
): FactsView {
  const { before, after } = comparison;
  const { say } = format;
  const row = (id: FactRow["id"], name: string, list: (measure: Measure) => readonly string[]): FactRow => ({
    id,
    name,
    before: list(before),
    after: list(after),
  });
  return {
    tincture: tincture ? sayRule(sayTincture(before, format), sayTincture(after, format), format) : undefined,
    rows: [
      row("share", say("facts.clearShare"), (measure) => [format.share(measure.clearEdgeShare)]),
      row("near", say("facts.near"), (measure) =>
        listNames(
          measure.edges.filter((edge) => edge.nearLine),
          format,
        ),
      ),
      row("hue", say("facts.hue"), (measure) =>
        listNames(
          measure.edges.filter((edge) => edge.hueOnly),
          format,
        ),
      ),
      row("tincture", say("facts.tincture"), (measure) => sayTincture(measure, format)),
      row("count", say("facts.count"), (measure) => [format.number(countColours(measure), 0)]),
    ].filter(({ id }) => (id === "tincture" ? tincture : id === "count" ? colours : true)),
    exempt: tincture ? listExempt(comparison, format) : [],
    warnings: [
      ...before.warnings.map((doubt) => describeDoubt(doubt, format)),
      ...sayUneven(comparison, format),
    ],
  };
}

/** How many colours a reader sees: paints over 0.5 % of the area, those closer than ΔE00 5 to a larger one with it. */
export function countColours({ colours }: Measure): number {
  const groups: { readonly hex: Measure["colours"][number]["hex"]; share: number }[] = [];
  for (const { hex, share } of [...colours].sort((first, second) => second.share - first.share)) {
    const near = groups.find((group) => isSameColour(measureDifference(linearOf(group.hex), linearOf(hex))));
    if (near === undefined) groups.push({ hex, share });
    else near.share += share;
  }
  return groups.filter((group) => group.share > countedFrom).length;
}

function listNames(edges: readonly MeasuredEdge[], format: Format): readonly string[] {
  return edges.length === 0
    ? [format.say("facts.none")]
    : edges.map((edge) => formatNames(edge.names, format));
}

function sayTincture(measure: Measure, format: Format): readonly string[] {
  const { say } = format;
  const against = measure.edges.flatMap((edge) =>
    edge.tincture !== null && findExemption(edge, measure) === undefined
      ? [say(againstIds[edge.tincture], { names: formatNames(edge.names, format) })]
      : [],
  );
  return against.length === 0 ? [say("facts.none")] : against;
}

function sayRule(before: readonly string[], after: readonly string[], format: Format): string {
  const { say } = format;
  const [was = "", is = ""] = [before, after].map((edges) => format.list(edges));
  if (was !== is) return say("facts.ruleMoved", { was, is });
  return was === say("facts.none") ? say("facts.ruleKept") : say("facts.ruleBroken", { names: was });
}

/** Why the rule does not speak of an edge: two parts of the field lie beside each other, a fimbriation is no charge. */
function findExemption(edge: MeasuredEdge, measure: Measure): "parted field" | "fimbriation" | undefined {
  const lines = listLines(measure);
  if (lines.has(edge.a) || lines.has(edge.b)) return "fimbriation";
  const ends = measure.colours.filter(({ id }) => id === edge.a || id === edge.b);
  const isField = ends.every(({ touchesBorder }) => touchesBorder) && edge.focusLength < edge.length / 2;
  return isField ? "parted field" : undefined;
}

function listExempt({ before, after }: Comparison, format: Format): readonly string[] {
  const found = [before, after].flatMap((measure) =>
    measure.edges.flatMap((edge) => {
      const why = edge.tincture === null ? undefined : findExemption(edge, measure);
      return why === undefined ? [] : [{ why, names: formatNames(edge.names, format) }];
    }),
  );
  return (["parted field", "fimbriation"] as const).flatMap((why) => {
    const names = [...new Set(found.filter((one) => one.why === why).map((one) => one.names))];
    return names.length === 0
      ? []
      : [
          format.say(why === "fimbriation" ? "facts.exemptFimbriation" : "facts.exemptField", {
            names: format.list(names),
          }),
        ];
  });
}

function sayUneven({ before }: Comparison, { say }: Format): readonly string[] {
  return before.colours.flatMap(({ name, uneven }) =>
    uneven === null
      ? []
      : [say("facts.uneven", { name, lightest: uneven.lightest, darkest: uneven.darkest })],
  );
}
