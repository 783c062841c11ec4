// Floor 4, step 6d. Which colour to change first and why, or why none: one or two sentences made of the numbers.
import { clearFrom } from "../../colour/contrast.ts";
import { roundMark } from "../clarity.ts";
import { formatContrast, formatPercent, formatShare } from "../percenttext.ts";
import { type ColourOptions, leastGain } from "./rank.ts";
import type { OptionMarks, TodayEdge } from "./tryoptions.ts";

/** A paint that was tried: its name, and its deciding edges today. */
export interface TriedPaint {
  readonly id: string;
  readonly name: string;
  readonly edges: readonly TodayEdge[];
}

/** Clarity, in percent, from which a flag as a whole is clear (our own judgement). */
export const wholeClear = 90;

/** Share of the flag up to which a paint is a detail (our own judgement). */
const detail = 0.03;

/**
 * Says why the paints of `first` come first. Throws RangeError where there is none.
 *
 * Example: “Change red first (34 % of the flag): with white in its place clarity rises from 53 % to 100 %. Most is gained
 * where red meets black (contrast 27 % today).”
 */
export function explainFirst(
  first: readonly ColourOptions[],
  tried: readonly TriedPaint[],
  today: OptionMarks,
): string {
  const [one] = first;
  if (one === undefined) throw new RangeError("no colour to change first, so nothing to explain");
  const nameOf = (id: string): string => tried.find((paint) => paint.id === id)?.name ?? id;
  const from = formatPercent(today.clarity, 0);
  const says = first.length === 1 ? sayOne(one, nameOf(one.id), from) : saySeveral(first, nameOf, from);
  const isDetail = roundMark(today.clarity) >= wholeClear && first.every(({ share }) => share < detail);
  return [
    ...(isDetail ? [`The flag as a whole is clear, at ${from}; only a detail gains.`] : []),
    says,
    ...explainEdge(one, nameOf(one.id), tried),
  ].join(" ");
}

function sayOne({ share, best }: ColourOptions, name: string, from: string): string {
  return `Change ${name} first (${formatShare(share, 0)} of the flag): with ${best.name} in its place clarity rises from ${from} to ${formatPercent(best.clarity, 0)}.`;
}

/** Colours that come to the same with the same replacement are told together. */
function saySeveral(first: readonly ColourOptions[], nameOf: (id: string) => string, from: string): string {
  const colours = first.map(
    ({ id, share }, index) => `${nameOf(id)} (${formatShare(share, 0)}${index === 0 ? " of the flag" : ""})`,
  );
  const ends = first.map(({ best }) => ({ name: best.name, to: formatPercent(best.clarity, 0) }));
  const [end] = ends;
  const areAlike = ends.every(({ name, to }) => name === end?.name && to === end.to);
  const either = first.length === 2 ? "either" : "any of them";
  const moves = first.map(
    ({ id }, index) =>
      `with ${ends[index]?.name} for ${nameOf(id)}${index === 0 ? ` clarity rises from ${from}` : ""} to ${ends[index]?.to}`,
  );
  return `Change ${listNames(colours)} first: ${
    areAlike
      ? `with ${end?.name} in place of ${either} clarity rises from ${from} to ${end?.to}`
      : moves.join(", ")
  }.`;
}

/** Says why no colour comes first. `today` is null where the drawing has no edge. */
export function explainNone(today: OptionMarks | null, tried: number, ranked: number): string {
  if (today === null) return "One colour: no edges to measure.";
  if (tried === 0) return "None of the colours could be tried.";
  if (ranked === 0) return "Every change that was tried merges a third of a charge's outline or more.";
  const clarity = formatPercent(today.clarity, 0);
  const mark = roundMark(today.clarity);
  if (mark > 100 - leastGain) return `The flag is clear as it is, at a clarity of ${clarity}.`;
  const none = "no single change brings five points more";
  return mark >= wholeClear
    ? `The flag is clear as it is, at a clarity of ${clarity}: ${none}.`
    : `The flag has a clarity of ${clarity}, and ${none}.`;
}

/** The edge that gains most: its weight times what it lacks of clear today. */
function explainEdge(
  { id, best }: ColourOptions,
  name: string,
  tried: readonly TriedPaint[],
): readonly string[] {
  const up = new Set([...best.gained, ...best.better].map(({ a, b }) => `${a} ${b}`));
  const lack = ({ weight, contrast }: TodayEdge): number => weight * (clearFrom - contrast);
  const [most] = (tried.find((paint) => paint.id === id)?.edges ?? [])
    .filter(({ pair, contrast }) => up.has(`${pair.a} ${pair.b}`) && contrast < clearFrom)
    .sort((one, other) => lack(other) - lack(one));
  return most === undefined
    ? []
    : [
        `Most is gained where ${name} meets ${most.other} (contrast ${formatContrast(most.contrast, 0)} today).`,
      ];
}

function listNames(names: readonly string[]): string {
  return names.length < 2 ? (names[0] ?? "") : `${names.slice(0, -1).join(", ")} or ${names.at(-1)}`;
}
