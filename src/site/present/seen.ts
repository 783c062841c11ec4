// Floor 6. The seen-otherwise previews: four kinds of vision, original over redesign, with one number each.
import { isClear } from "../../colour/contrast.ts";
import { type Vision, visions } from "../../colour/vision.ts";
import type { ComparedEdge, Comparison } from "../../measure/comparison.ts";
import type { Measure, MeasuredEdge } from "../../measure/measure.ts";
import type { Format } from "./format.ts";

export interface SeenView {
  readonly vision: Vision;
  readonly heading: string;
  readonly explanation: string;
  /** What the two numbers are. */
  readonly measure: string;
  readonly before: string;
  readonly after: string;
}

const words: Readonly<Record<Vision, { heading: string; explanation: string }>> = {
  protan: { heading: "Protan", explanation: "without the cones for long waves" },
  deutan: { heading: "Deutan", explanation: "without the cones for middle waves" },
  tritan: { heading: "Tritan", explanation: "without the cones for short waves" },
  grey: { heading: "Grey", explanation: "luminance alone, as in grey print" },
};

/** The four previews, in the order protan, deutan, tritan, grey. */
export function presentSeen(comparison: Comparison, format: Format): readonly SeenView[] {
  return visions.map((vision) => {
    const before = comparison.edges.filter((edge) => edge.contrast[0] !== null);
    const say = (edges: readonly ComparedEdge[], measure: Measure) =>
      vision === "grey" ? sayGrey(edges, measure, format) : sayShare(edges, measure, vision, format);
    return {
      vision,
      ...words[vision],
      measure: vision === "grey" ? "nearest two greys, ΔE00" : "clear-edge share",
      before: say(before, comparison.before),
      after: say(comparison.edges, comparison.after),
    };
  });
}

/** A merged edge keeps its length and is not clear, whether or not the measure of the redesign still lists it. */
function sayShare(
  edges: readonly ComparedEdge[],
  measure: Measure,
  vision: "protan" | "deutan" | "tritan",
  format: Format,
): string {
  const isSeen = (edge: ComparedEdge) => {
    const grade = findEdge(measure, edge)?.vision[vision].grade;
    return grade !== undefined && isClear(grade);
  };
  const total = sumLengths(edges);
  return format.share(total === 0 ? null : sumLengths(edges.filter(isSeen)) / total);
}

function sumLengths(edges: readonly ComparedEdge[]): number {
  return edges.reduce((sum, edge) => sum + edge.length, 0);
}

function sayGrey(edges: readonly ComparedEdge[], measure: Measure, format: Format): string {
  const all = sumLengths(edges);
  const steps = edges
    .filter((edge) => edge.length >= 0.01 * all)
    .map((edge) => findEdge(measure, edge)?.vision.grey.deltaE00 ?? 0);
  return steps.length === 0 ? "no edges" : format.number(Math.min(...steps), 0);
}

function findEdge(measure: Measure, edge: ComparedEdge): MeasuredEdge | undefined {
  return measure.edges.find(
    (candidate) =>
      (candidate.a === edge.a && candidate.b === edge.b) ||
      (candidate.a === edge.b && candidate.b === edge.a),
  );
}
