// Floor 8. The seen-otherwise previews: four kinds of vision, original over redesign, with one number each.
import type { Hex } from "../../colour/colour.ts";
import { nameColours } from "../../colour/colourname.ts";
import { hexOf, linearOf } from "../../colour/colourtext.ts";
import { simulate, type Vision, visions } from "../../colour/vision.ts";
import { measureClarity } from "../../measure/clarity.ts";
import type { ComparedEdge, Comparison } from "../../measure/comparison.ts";
import type { Measure, MeasuredEdge } from "../../measure/measurement.ts";
import { sayColour } from "../../words/colourphrase.ts";
import type { WordId } from "../../words/en/all.ts";
import type { Format } from "../../words/format.ts";

export interface SeenView {
  readonly vision: Vision;
  readonly heading: string;
  readonly explanation: string;
  /** What the two numbers are. */
  readonly measure: string;
  readonly before: string;
  readonly after: string;
  /** What becomes of the colours of the original and of the redesign: `dark red looks brown; white keeps its name`. */
  readonly looks: readonly [string, string];
}

/** What each kind of vision is called. */
export const visionIds = {
  protan: "sight.protan",
  deutan: "sight.deutan",
  tritan: "sight.tritan",
  grey: "sight.grey",
} as const satisfies Record<Vision, WordId>;

const explanationIds = {
  protan: "sight.protanMeans",
  deutan: "sight.deutanMeans",
  tritan: "sight.tritanMeans",
  grey: "sight.greyMeans",
} as const satisfies Record<Vision, WordId>;

/** The four previews, in the order protan, deutan, tritan, grey. */
export function presentSeen(comparison: Comparison, format: Format): readonly SeenView[] {
  return visions.map((vision) => {
    const before = comparison.edges.filter((edge) => edge.contrast[0] !== null);
    const say = (edges: readonly ComparedEdge[], measure: Measure) =>
      vision === "grey" ? sayGrey(edges, measure, format) : sayClarity(measure, vision, format);
    return {
      vision,
      heading: format.say(visionIds[vision]),
      explanation: format.say(explanationIds[vision]),
      measure: format.say(vision === "grey" ? "seen.greys" : "seen.clarity"),
      before: say(before, comparison.before),
      after: say(comparison.edges, comparison.after),
      looks: [
        describeLooks(comparison.before, vision, format),
        describeLooks(comparison.after, vision, format),
      ],
    };
  });
}

/** Under this share of the flag a colour is not worth a word. */
const leastShare = 0.005;
const mostColours = 8;

function describeLooks(measure: Measure, vision: Vision, format: Format): string {
  const colours = measure.colours.filter(({ share }) => share >= leastShare).slice(0, mostColours);
  const nameAll = (see: (hex: Hex) => Hex): readonly string[] =>
    nameColours(
      colours.map(({ hex }) => see(hex)),
      colours.map(({ share }) => share),
    );
  const plain = nameAll((hex) => hex);
  const seen = nameAll((hex) => hexOf(simulate(linearOf(hex), vision)));
  const same = colours.filter((_, index) => plain[index] === seen[index]).map(({ name }) => name);
  const other = colours.flatMap(({ name }, index) =>
    plain[index] === seen[index]
      ? []
      : [format.say("seen.looks", { name, seen: sayColour(seen[index] ?? "", format) })],
  );
  const kept =
    same.length === 0 ? [] : [format.say("seen.kept", { names: format.list(same), count: same.length })];
  return [...(other.length === 0 ? [] : [format.list(other)]), ...kept].join(format.say("list.semicolon"));
}

/** Clarity with the contrasts that this kind of vision has. */
function sayClarity({ edges }: Measure, vision: "protan" | "deutan" | "tritan", format: Format): string {
  return format.percent(
    measureClarity(edges.map((edge) => ({ ...edge, contrast: edge.vision[vision].contrast }))),
  );
}

function sumLengths(edges: readonly ComparedEdge[]): number {
  return edges.reduce((sum, edge) => sum + edge.length, 0);
}

function sayGrey(edges: readonly ComparedEdge[], measure: Measure, format: Format): string {
  const all = sumLengths(edges);
  const steps = edges
    .filter((edge) => edge.length >= 0.01 * all)
    .map((edge) => findEdge(measure, edge)?.vision.grey.deltaE00 ?? 0);
  return steps.length === 0 ? format.say("number.noEdges") : format.number(Math.min(...steps), 0);
}

function findEdge(measure: Measure, edge: ComparedEdge): MeasuredEdge | undefined {
  return measure.edges.find(
    (candidate) =>
      (candidate.a === edge.a && candidate.b === edge.b) ||
      (candidate.a === edge.b && candidate.b === edge.a),
  );
}
