// Floor 7. What a change does, in two sentences: the change itself, and the verdict with its price.

import type { StudyResult } from "../analysis/result.ts";
import { clearFrom, gradeOf, isClear } from "../colour/contrast.ts";
import { listDeciding, roundMark } from "../measure/clarity.ts";
import type { ComparedEdge, Comparison, Verdict } from "../measure/comparison.ts";
import { edgeLimits } from "../measure/limit.ts";
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
export const verdictWords: Readonly<Record<Verdict, string>> = {
  clearer: "Clearer",
  "clearer, at a price": "Clearer, at a price",
  mixed: "Mixed",
  "less clear": "Less clear",
  "no gain": "No gain",
};

/** A verdict in an address: `clearer-at-a-price`. */
export function slugVerdict(verdict: Verdict): string {
  return verdict.replace(/\W+/g, "-");
}

const noEdges = "One colour: no edges to measure.";

/** The change in one sentence: `Dark red becomes yellow.`, `Green becomes darker green.`, with the part where `only` selects one. */
export function describeChange(result: StudyResult, { say }: Format): string {
  const [before, after] = findChanged(result);
  const { only, part } = result.change;
  const names = { before: capitalise(before.name), after: after.name };
  return only === undefined
    ? say("verdict.change", names)
    : say("verdict.changeInPart", {
        ...names,
        part: part ?? say("verdict.selectedPart", { selector: only }),
      });
}

/** The verdict in a word and in one sentence with what made it: clarity, and each edge that it costs. */
export function describeVerdict(comparison: Comparison, format: Format): VerdictView {
  const word = verdictWords[comparison.verdict];
  if (comparison.clarity[0] === null && comparison.clarity[1] === null)
    return { word, sentence: noEdges, cost: noEdges };
  const move = sayClarity(comparison, format);
  const [joint, cost] = sayCost(comparison, format);
  const beyond =
    comparison.verdict === "clearer, at a price" ? describePrice(comparison.price, format) : cost;
  return { word, sentence: `${move}${joint}${cost}.`, cost: beyond === "" ? "" : `${capitalise(beyond)}.` };
}

/** What goes with the movement of clarity, behind the words that join it to that. */
function sayCost(comparison: Comparison, format: Format): readonly [joint: string, cost: string] {
  const strength = sayStrength(comparison);
  const price = describePrice(comparison.price, format);
  const join = (joint: string, cost: string): readonly [string, string] =>
    strength === "" ? [joint, cost] : [", and ", `${strength}${joint}${cost}`];
  switch (comparison.verdict) {
    case "clearer":
      return join("; ", sayNothingLost(comparison, format));
    case "clearer, at a price":
      return join("; ", `the price: ${price}`);
    case "mixed":
      return [": ", `${countGains(comparison, format)}, but ${price}`];
    case "less clear":
      return price === "" ? join("", "") : join(": ", price);
    case "no gain":
      return sayNoGain(comparison, price, format);
  }
}

/** `Clarity rises from 74 % to 100 %`. */
function sayClarity({ clarity: [before, after] }: Comparison, format: Format): string {
  const [was, is] = [format.percent(before), format.percent(after)];
  if (was === is) return `Clarity stays at ${is}`;
  return `Clarity ${(after ?? 0) > (before ?? 0) ? "rises" : "falls"} from ${was} to ${is}`;
}

/** Where clarity is level, what becomes of edges that are clear already. */
function sayStrength({ clarity, strength, edges }: Comparison): string {
  if (roundMark(clarity[0] ?? 0) !== roundMark(clarity[1] ?? 0)) return "";
  const move = roundMark(strength[1] ?? 0) - roundMark(strength[0] ?? 0);
  const isBeyond = ({ contrast: [before, after] }: ComparedEdge): boolean =>
    before !== null && (after - before) * move > 0 && Math.max(before, after) > clearFrom;
  if (!edges.some(isBeyond)) return "";
  return move > 0 ? "edges grow stronger beyond clear" : "edges grow weaker beyond clear";
}

function sayNothingLost({ edges, price }: Comparison, format: Format): string {
  const losses = edges.filter((edge) => edge.outcome !== "same" && !isGain(edge));
  return losses.length > price.length
    ? `only edges under ${format.share(edgeLimits.deciding)} of all edge length become harder to see`
    : "no edge becomes harder to see";
}

function sayNoGain(
  comparison: Comparison,
  price: string,
  format: Format,
): readonly [joint: string, cost: string] {
  const { clarity, edges } = comparison;
  const isLevel = format.percent(clarity[0]) === format.percent(clarity[1]);
  const hasGain = listDeciding(edges).some(isGain);
  if (price !== "" || hasGain) {
    const moved = price === "" ? countGains(comparison, format) : price;
    return isLevel ? [": ", `${moved}, too little to move it`] : [", but ", moved];
  }
  if (!isLevel)
    return [", but ", `no edge gets clearer or less clear by ${format.number(edgeLimits.step, 0)} points`];
  return edges.every(({ outcome }) => outcome === "same")
    ? [": ", "no edge becomes easier or harder to see"]
    : [
        ": ",
        `nothing changes to the eye but edges under ${format.share(edgeLimits.deciding)} of all edge length`,
      ];
}

function countGains({ edges }: Comparison, format: Format): string {
  const gains = listDeciding(edges).filter(isGain).length;
  return gains === 1 ? "one edge gains" : `${format.number(gains, 0)} edges gain`;
}

function isGain({ outcome, contrast }: ComparedEdge): boolean {
  if (outcome === "parted") return isClear(gradeOf(contrast[1]));
  return outcome === "gained" || outcome === "better";
}
