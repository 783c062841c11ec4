// Floor 7. Three questions to a class, made from a study's own numbers, with their answers for the teacher.
import { clearFrom, type Grade, gradeOf, isClear, softFrom, strongFrom } from "../colour/contrast.ts";
import { listDeciding } from "../measure/clarity.ts";
import type { ComparedEdge, Comparison } from "../measure/comparison.ts";
import type { Measure, MeasuredEdge } from "../measure/measurement.ts";
import type { Format } from "./format.ts";
import { findPaint, nameWhole } from "./paintname.ts";
import { capitalise, nameInText } from "./phrase.ts";
import { describeVerdict } from "./verdict.ts";

export interface Question {
  readonly ask: string;
  readonly answer: string;
}

/**
 * Asks of what is there: a flag of one edge has no hardest one, a flag of one colour no edge. `best` says what other change is
 * the best, where that is known.
 */
export function askClass(
  comparison: Comparison,
  format: Format,
  best?: string,
): readonly [Question, Question, Question] {
  const { before, edges } = comparison;
  const [area, change] = [askArea(before, format), askChange(comparison, format, best)];
  if (edges.length === 0) return [area, change, askMore(before)];
  const several = listDeciding(before.edges).length > 1;
  return [several ? askHardest(before, format) : area, askGrade(comparison, format), change];
}

function askHardest(measure: Measure, format: Format): Question {
  const deciding = listDeciding(measure.edges);
  const least = Math.min(...deciding.map(({ contrast }) => contrast));
  const text = format.contrast(least);
  const hardest = deciding.filter(({ contrast }) => format.contrast(contrast) === text);
  const names = format.list(hardest.map((edge) => nameBoth(edge, measure)));
  const even = isClear(gradeOf(least)) ? " Even that is clear." : "";
  return {
    ask: "Look at the original from the other end of the room. Which two colours that meet are hardest to tell apart?",
    answer: `${capitalise(names)}: contrast ${text}, ${gradeOf(least)}.${even}`,
  };
}

/** An edge of the redesign, at best one that moved, and the longest of these. */
function askGrade({ edges, after }: Comparison, format: Format): Question {
  const there = listDeciding(edges).filter(({ outcome }) => outcome !== "merged");
  const moved = there.filter(({ contrast: [was, is] }) => was !== is);
  const [edge] = [...(moved.length > 0 ? moved : there)].sort((a, b) => b.length - a.length);
  if (edge === undefined)
    return {
      ask: "How many lines between two colours has the redesign?",
      answer: "None that counts: the colours that met have become one.",
    };
  const [, contrast] = edge.contrast;
  const grade = gradeOf(contrast);
  return {
    ask: `In the redesign ${nameBoth(edge, after, " beside ")} has a contrast of ${format.contrast(contrast)}. Which grade is that: weak, soft, clear or strong?`,
    answer: `${capitalise(grade)}: ${sayRange(grade, format)}.`,
  };
}

function sayRange(grade: Grade, format: Format): string {
  const [soft, clear, strong] = [softFrom, clearFrom, strongFrom].map((limit) => format.percent(limit));
  const ranges = {
    weak: `under ${soft}`,
    soft: `${soft} to under ${clear}`,
    clear: `${clear} to under ${strong}`,
    strong: `${strong} and over`,
  };
  return ranges[grade];
}

/** Beside a price, what other change there is; without one what the change brings; without that, why anyone would make it. */
function askChange(comparison: Comparison, format: Format, other: string | undefined): Question {
  const { price, edges, clarity } = comparison;
  if (price.length > 0)
    return {
      ask: "The change has a price, told above. Would you pay it? Or which colour of the original would you change, and into what, to make it clearer still?",
      answer: `${other === undefined ? "" : `${other} `}Whether the price is too much, no number says: ask for reasons.`,
    };
  const gains = listDeciding(edges).filter(({ outcome }) => outcome === "gained" || outcome === "better");
  const [best] = [...gains].sort((a, b) => gainOf(b) - gainOf(a));
  if (best === undefined)
    return {
      ask: `${describeVerdict(comparison, format).sentence} Can there be a reason to make the change all the same?`,
      answer:
        "Not in these numbers. A reason has to come from elsewhere: what the colours stand for, who else flies them, or taste.",
    };
  const where =
    edges.length === 1
      ? "Which two colours made the difference, and by how much?"
      : "Where does the contrast grow most?";
  return {
    ask: `Clarity was ${format.percent(clarity[0])} and is ${format.percent(clarity[1])} after the change. ${where}`,
    answer: `${capitalise(sayGain(best, comparison, format))}.`,
  };
}

function gainOf({ contrast: [before, after] }: ComparedEdge): number {
  return after - (before ?? after);
}

function sayGain(edge: ComparedEdge, { before, after }: Comparison, format: Format): string {
  const say = (contrast: number) => `${format.contrast(contrast)} (${gradeOf(contrast)})`;
  const [was, is] = [nameBoth(edge, before), nameBoth(edge, after)];
  const renamed = was === is ? "" : ` as ${is}`;
  return `${was}, from contrast ${say(edge.contrast[0] ?? 0)} to ${say(edge.contrast[1])}${renamed}`;
}

/** Parts of one paint count as one colour. */
function askArea({ colours }: Measure, format: Format): Question {
  const shares = new Map<string, number>();
  for (const paint of colours)
    shares.set(nameWhole(paint), (shares.get(nameWhole(paint)) ?? 0) + paint.share);
  const [[name, share] = ["", 0]] = [...shares].sort(([, a], [, b]) => b - a);
  return {
    ask: "Guess: which colour covers most of the original, and how much of it?",
    answer: `${capitalise(name)}: ${format.share(share)} of the flag.`,
  };
}

function askMore({ colours }: Measure): Question {
  const [only] = colours;
  return {
    ask: "What would you add, so that this flag can be told from others across the room?",
    answer: `There are many answers. Whatever is added has to be much lighter or much darker than ${only?.name ?? "the field"}.`,
  };
}

function nameBoth({ a, b }: Pick<MeasuredEdge, "a" | "b">, measure: Measure, between = " / "): string {
  return [a, b]
    .map((id) => {
      const paint = findPaint(measure, id);
      return paint === undefined ? id : nameInText(paint);
    })
    .join(between);
}
