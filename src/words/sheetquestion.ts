// Floor 7. Three questions to a class, made from a study's own numbers, with their answers for the teacher.
import { clearFrom, type Grade, gradeOf, isClear, softFrom, strongFrom } from "../colour/contrast.ts";
import { listDeciding } from "../measure/clarity.ts";
import type { ComparedEdge, Comparison } from "../measure/comparison.ts";
import type { Measure, MeasuredEdge } from "../measure/measurement.ts";
import type { WordId } from "./en/all.ts";
import type { Format } from "./format.ts";
import { gradeIds } from "./gradeword.ts";
import { findPaint, nameWhole } from "./paintname.ts";
import { capitalise, formatNames, nameInText } from "./phrase.ts";
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
  if (edges.length === 0) return [area, change, askMore(before, format)];
  const several = listDeciding(before.edges).length > 1;
  return [several ? askHardest(before, format) : area, askGrade(comparison, format), change];
}

function askHardest(measure: Measure, format: Format): Question {
  const deciding = listDeciding(measure.edges);
  const least = Math.min(...deciding.map(({ contrast }) => contrast));
  const text = format.contrast(least);
  const hardest = deciding.filter(({ contrast }) => format.contrast(contrast) === text);
  const values = {
    names: format.list(hardest.map((edge) => nameBoth(edge, measure, format))),
    contrast: text,
    grade: format.say(gradeIds[gradeOf(least)]),
  };
  const answer = isClear(gradeOf(least)) ? "question.hardestIsClear" : "question.hardestAnswer";
  return { ask: format.say("question.hardest"), answer: capitalise(format.say(answer, values)) };
}

/** An edge of the redesign, at best one that moved, and the longest of these. */
function askGrade({ edges, after }: Comparison, format: Format): Question {
  const there = listDeciding(edges).filter(({ outcome }) => outcome !== "merged");
  const moved = there.filter(({ contrast: [was, is] }) => was !== is);
  const [edge] = [...(moved.length > 0 ? moved : there)].sort((a, b) => b.length - a.length);
  const { say, percent } = format;
  if (edge === undefined) return { ask: say("question.lines"), answer: say("question.linesAnswer") };
  const [, contrast] = edge.contrast;
  const [one = "", other = ""] = namesOf(edge, after, format);
  return {
    ask: say("question.grade", { one, other, contrast: format.contrast(contrast) }),
    answer: say(rangeIds[gradeOf(contrast)], {
      soft: percent(softFrom),
      clear: percent(clearFrom),
      strong: percent(strongFrom),
    }),
  };
}

const rangeIds = {
  weak: "question.weak",
  soft: "question.soft",
  clear: "question.clear",
  strong: "question.strong",
} as const satisfies Record<Grade, WordId>;

/** Beside a price, what other change there is; without one what the change brings; without that, why anyone would make it. */
function askChange(comparison: Comparison, format: Format, other: string | undefined): Question {
  const { price, edges, clarity } = comparison;
  const { say, percent } = format;
  if (price.length > 0) {
    const answer = say("question.priceAnswer");
    return { ask: say("question.price"), answer: other === undefined ? answer : `${other} ${answer}` };
  }
  const gains = listDeciding(edges).filter(({ outcome }) => outcome === "gained" || outcome === "better");
  const [best] = [...gains].sort((a, b) => gainOf(b) - gainOf(a));
  if (best === undefined)
    return {
      ask: say("question.noGain", { verdict: describeVerdict(comparison, format).sentence }),
      answer: say("question.noGainAnswer"),
    };
  return {
    ask: say(edges.length === 1 ? "question.gainOfOne" : "question.gain", {
      before: percent(clarity[0]),
      after: percent(clarity[1]),
    }),
    answer: capitalise(sayGain(best, comparison, format)),
  };
}

function gainOf({ contrast: [before, after] }: ComparedEdge): number {
  return after - (before ?? after);
}

function sayGain(
  edge: ComparedEdge,
  { before: original, after: redesign }: Comparison,
  format: Format,
): string {
  const { say, contrast } = format;
  const [before, now] = [edge.contrast[0] ?? 0, edge.contrast[1]];
  const [was, is] = [nameBoth(edge, original, format), nameBoth(edge, redesign, format)];
  return say(was === is ? "question.gainAnswer" : "question.gainAnswerRenamed", {
    was,
    is,
    before: contrast(before),
    wasGrade: say(gradeIds[gradeOf(before)]),
    after: contrast(now),
    grade: say(gradeIds[gradeOf(now)]),
  });
}

/** Parts of one paint count as one colour. */
function askArea({ colours }: Measure, format: Format): Question {
  const shares = new Map<string, number>();
  for (const paint of colours)
    shares.set(nameWhole(paint), (shares.get(nameWhole(paint)) ?? 0) + paint.share);
  const [[name, share] = ["", 0]] = [...shares].sort(([, a], [, b]) => b - a);
  return {
    ask: format.say("question.area"),
    answer: capitalise(format.say("question.areaAnswer", { name, share: format.share(share) })),
  };
}

function askMore({ colours }: Measure, { say }: Format): Question {
  return {
    ask: say("question.more"),
    answer: say("question.moreAnswer", { name: colours[0]?.name ?? say("question.field") }),
  };
}

function nameBoth(edge: Pick<MeasuredEdge, "a" | "b">, measure: Measure, format: Format): string {
  return formatNames(namesOf(edge, measure, format), format);
}

function namesOf(
  { a, b }: Pick<MeasuredEdge, "a" | "b">,
  measure: Measure,
  format: Format,
): readonly [string, string] {
  const nameOf = (id: string) => nameInText(findPaint(measure, id) ?? { name: id }, format);
  return [nameOf(a), nameOf(b)];
}
