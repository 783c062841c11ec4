// Floor 8. The steps about the redesign: what became of the edges, the price, how others see both flags, and the question.
import { sayEdges, sayPrice } from "../../words/spokennumber.ts";
import { describeVerdict } from "../../words/verdict.ts";
import { type Ground, type ShowStep, sides, type Told, tellStep } from "./step.ts";

const rulerKey = "Ring: the original. Dot: the redesign.";
/** Edges of which it tells (our own judgement, as they have to be read from afar); the study's page has all. */
const mostEdges = 6;

/** What became of the edges, the price, how others see both flags, and the question. */
export function tellOutcome({
  result: { comparison },
  format,
  figures: { ruler, seen, plates },
}: Ground): readonly Told[] {
  const { word, sentence, cost } = describeVerdict(comparison, format);
  const both: ShowStep["picture"] = { kind: "pair", plates };
  const [was, is] = comparison.clarity;
  const clarity =
    was === null || is === null
      ? sentence
      : `${word}. The clarity of the original is ${format.number(was, 0)} of 100 points, and that of the redesign ${format.number(is, 0)}. ${sayPrice(comparison.price, format) || cost}`;
  const visions = seen.map(
    ({ heading, explanation, measure, before, after }) =>
      `${heading}, ${explanation}: ${measure} ${before} to ${after}.`,
  );
  return [
    ...(ruler
      ? [
          tellStep(
            "better-and-worse",
            "What got better and worse",
            {
              kind: "ruler",
              ruler: { ...ruler, rows: [...ruler.rows, ...(ruler.rest?.rows ?? [])].slice(0, mostEdges) },
            },
            rulerKey,
            sayEdges(comparison.edges, format),
          ),
        ]
      : []),
    tellStep("the-price", word, both, sentence, clarity.trim()),
    tellStep(
      "to-other-eyes",
      "To colour-blind readers, and in grey",
      { kind: "seen", seen },
      sides.both,
      `This is about what readers with a colour-vision deficiency see. ${visions.join(" ")}`,
    ),
    tellStep(
      "the-question",
      "Original or redesign?",
      both,
      sides.both,
      "The original, or the redesign? And what would you say to somebody who chose the other?",
    ),
  ];
}
