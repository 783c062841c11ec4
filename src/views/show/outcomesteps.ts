// Floor 8. The steps about the redesign: what became of the edges, the price, how others see both flags, and the question.
import { sayEdges, sayPrice } from "../../words/spokennumber.ts";
import { describeVerdict } from "../../words/verdict.ts";
import { type Ground, type ShowStep, type Told, tellStep } from "./step.ts";

/** Edges of which it tells (our own judgement, as they have to be read from afar); the study's page has all. */
const mostEdges = 6;

/** What became of the edges, the price, how others see both flags, and the question. */
export function tellOutcome({
  result: { comparison },
  format,
  figures: { ruler, seen, plates },
}: Ground): readonly Told[] {
  const { say } = format;
  const { word, sentence, cost } = describeVerdict(comparison, format);
  const both: ShowStep["picture"] = { kind: "pair", plates };
  const [was, is] = comparison.clarity;
  const clarity =
    was === null || is === null
      ? sentence
      : say("show.priceSaid", {
          verdict: word,
          before: format.number(was, 0),
          after: format.number(is, 0),
          price: sayPrice(comparison.price, format) || cost,
        });
  const visions = seen.map(({ heading, explanation, measure, before, after }) =>
    say("show.visionOf", { heading, explanation, measure, before, after }),
  );
  return [
    ...(ruler
      ? [
          tellStep(
            "better-and-worse",
            say("show.outcomes"),
            {
              kind: "ruler",
              ruler: { ...ruler, rows: [...ruler.rows, ...(ruler.rest?.rows ?? [])].slice(0, mostEdges) },
            },
            say("show.outcomesKey"),
            sayEdges(comparison.edges, format),
          ),
        ]
      : []),
    tellStep("the-price", word, both, sentence, clarity.trim()),
    tellStep(
      "to-other-eyes",
      say("show.vision"),
      { kind: "seen", seen },
      say("show.both"),
      say("show.visionSaid", { visions: visions.join(" ") }),
    ),
    tellStep("the-question", say("show.choose"), both, say("show.both"), say("show.chooseSaid")),
  ];
}
