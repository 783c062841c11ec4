// Floor 7. What a change does, in two sentences: the change itself, and the verdict with its price.

import type { StudyResult } from "../analysis/result.ts";
import { clearFrom, gradeOf, isClear } from "../colour/contrast.ts";
import { listDeciding, roundMark } from "../measure/clarity.ts";
import type { ComparedEdge, Comparison, Verdict } from "../measure/comparison.ts";
import { edgeLimits } from "../measure/limit.ts";
import type { WordId } from "./en/all.ts";
import type { Format } from "./format.ts";
import { describePrice } from "./optionwords.ts";
import { findChanged } from "./paintname.ts";
import { capitalise } from "./phrase.ts";

export interface VerdictView {
  readonly word: string;
  readonly sentence: string;
  /** What the sentence says beyond the word and the movement of clarity, for places that show both; empty where nothing is left. */
  readonly cost: string;
}

/** Verdicts as headings. */
export const verdictIds = {
  clearer: "verdict.clearer",
  "clearer, at a price": "verdict.clearerAtPrice",
  mixed: "verdict.mixed",
  "less clear": "verdict.lessClear",
  "no gain": "verdict.noGain",
} as const satisfies Record<Verdict, WordId>;

/** A verdict in an address: `clearer-at-a-price`. */
export function slugVerdict(verdict: Verdict): string {
  return verdict.replace(/\W+/g, "-");
}

/** The change in one sentence: `Dark red becomes yellow.`, `Green becomes darker green.`, with the part where `only` selects one. */
export function describeChange(result: StudyResult, format: Format): string {
  return capitalise(sayChange(result, format));
}

/** The same with a small letter, to stand behind a colon. */
export function sayChange(result: StudyResult, { say }: Format): string {
  const [before, after] = findChanged(result);
  const { only, part } = result.change;
  const names = { before: before.name, after: after.name };
  return only === undefined
    ? say("verdict.change", names)
    : say("verdict.changeInPart", {
        ...names,
        part: part ?? say("verdict.selectedPart", { selector: only }),
      });
}

/** The verdict in a word and in one sentence with what made it: clarity, and each edge that it costs. */
export function describeVerdict(comparison: Comparison, format: Format): VerdictView {
  const { verdict, clarity } = comparison;
  const word = format.say(verdictIds[verdict]);
  if (clarity[0] === null && clarity[1] === null) {
    const noEdges = format.say("edges.none");
    return { word, sentence: noEdges, cost: noEdges };
  }
  const join = ([id, more]: Cost, clause: string): string =>
    more === "" ? clause : format.say(id, { clause, more });
  const cost = sayCost(comparison, format);
  const strength = sayStrength(comparison, format);
  const told = strength === "" ? cost : (["verdict.and", join(cost, strength)] as const);
  const beyond = verdict === "clearer, at a price" ? describePrice(comparison.price, format) : told[1];
  return {
    word,
    sentence: `${capitalise(join(told, sayClarity(comparison, format)))}.`,
    cost: beyond === "" ? "" : `${capitalise(beyond)}.`,
  };
}

/** What goes with the movement of clarity, and the message that joins it to that. */
type Cost = readonly [
  id: "verdict.semicolon" | "verdict.thePrice" | "verdict.colon" | "verdict.and" | "verdict.but",
  cost: string,
];

function sayCost(comparison: Comparison, format: Format): Cost {
  const price = describePrice(comparison.price, format);
  switch (comparison.verdict) {
    case "clearer":
      return ["verdict.semicolon", sayNothingLost(comparison, format)];
    case "clearer, at a price":
      return ["verdict.thePrice", price];
    case "mixed":
      return [
        "verdict.colon",
        format.say("verdict.but", { clause: countGains(comparison, format), more: price }),
      ];
    case "less clear":
      return ["verdict.colon", price];
    case "no gain":
      return sayNoGain(comparison, price, format);
  }
}

/** `clarity rises from 74 % to 100 %`. */
function sayClarity({ clarity }: Comparison, { percent, say }: Format): string {
  const [before, now] = [percent(clarity[0]), percent(clarity[1])];
  if (before === now) return say("verdict.stays", { now });
  return say((clarity[1] ?? 0) > (clarity[0] ?? 0) ? "verdict.rises" : "verdict.falls", { before, now });
}

/** Where clarity is level, what becomes of edges that are clear already. */
function sayStrength({ verdict, clarity, strength, edges }: Comparison, { say }: Format): string {
  if (verdict === "mixed" || verdict === "no gain") return "";
  if (roundMark(clarity[0] ?? 0) !== roundMark(clarity[1] ?? 0)) return "";
  const move = roundMark(strength[1] ?? 0) - roundMark(strength[0] ?? 0);
  const isBeyond = ({ contrast: [before, after] }: ComparedEdge): boolean =>
    before !== null && (after - before) * move > 0 && Math.max(before, after) > clearFrom;
  if (!edges.some(isBeyond)) return "";
  return say(move > 0 ? "verdict.stronger" : "verdict.weaker");
}

function sayNothingLost({ edges, price }: Comparison, { say, share }: Format): string {
  const losses = edges.filter((edge) => edge.outcome !== "same" && !isGain(edge));
  return losses.length > price.length
    ? say("verdict.onlyShort", { part: share(edgeLimits.deciding) })
    : say("verdict.noneHarder");
}

function sayNoGain(comparison: Comparison, price: string, format: Format): Cost {
  const { clarity, edges } = comparison;
  const { percent, say, share } = format;
  const isLevel = percent(clarity[0]) === percent(clarity[1]);
  const hasGain = listDeciding(edges).some(isGain);
  if (price !== "" || hasGain) {
    const moved = price === "" ? countGains(comparison, format) : price;
    return isLevel ? ["verdict.colon", say("verdict.tooLittle", { moved })] : ["verdict.but", moved];
  }
  if (!isLevel) return ["verdict.but", say("verdict.noStep", { points: edgeLimits.step })];
  return edges.every(({ outcome }) => outcome === "same")
    ? ["verdict.colon", say("verdict.noneMoves")]
    : ["verdict.colon", say("verdict.noneToTheEye", { part: share(edgeLimits.deciding) })];
}

function countGains({ edges }: Comparison, { say }: Format): string {
  return say("verdict.gains", { count: listDeciding(edges).filter(isGain).length });
}

function isGain({ outcome, contrast }: ComparedEdge): boolean {
  if (outcome === "parted") return isClear(gradeOf(contrast[1]));
  return outcome === "gained" || outcome === "better";
}
