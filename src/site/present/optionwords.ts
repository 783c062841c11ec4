// Floor 6. What is told of an option behind its numbers: what it gains, loses, merges, who does as well, what it is taken for.
import type { PaintPair } from "../../measure/pair.ts";
import type { RankedOption } from "../../measure/rank.ts";
import type { Format } from "./format.ts";

/** Sets a sentence of the measuring code as pages set their numbers and apostrophes. */
export function inWords(sentence: string, format: Format): string {
  return sentence
    .replace(/\d+(?:\.(\d+))? %/g, (percent, decimals = "") =>
      format.percent(Number.parseFloat(percent), decimals.length),
    )
    .replace(/(\p{L})'/gu, "$1’");
}

/** Tells all there is to tell of the first of a group of equals. */
export function describeGroup(
  head: RankedOption,
  others: readonly RankedOption[],
  format: Format,
): readonly string[] {
  return [
    ...(others.length === 0
      ? []
      : [`As clear, and further from today’s colour: ${listTies(others, format)}.`]),
    ...describeEdges(head, format),
    describeDeparture(head, format),
    ...describeConfusion(head, format),
  ];
}

/** Two of a palette may share a plain name: each is named once. */
function listTies(others: readonly RankedOption[], format: Format): string {
  return format.list([...new Set(others.map(({ name }) => name))]);
}

/** Says how many of a group do equally well; undefined where it stands alone. */
export function describeTies(others: readonly RankedOption[], format: Format): string | undefined {
  if (others.length === 0) return undefined;
  const all = others.length === 1 ? "Two colours" : `${countInWords(others.length + 1, format)} colours`;
  return `${all} do equally well here; this one is nearest to today’s.`;
}

const words = ["Three", "Four", "Five", "Six", "Seven", "Eight", "Nine", "Ten", "Eleven", "Twelve"];

function countInWords(count: number, format: Format): string {
  return words[count - 3] ?? format.number(count, 0);
}

/** Names the edges that a change gains, loses and merges. */
export function describeEdges(
  option: {
    readonly gained: readonly PaintPair[];
    readonly lost: readonly PaintPair[];
    readonly merged: readonly PaintPair[];
  },
  format: Format,
): readonly string[] {
  const say = (word: string, pairs: readonly PaintPair[]): readonly string[] =>
    pairs.length === 0
      ? []
      : [`${word}: ${format.list(pairs.map(({ names }) => `${names[0]} / ${names[1]}`))}.`];
  const said = [
    ...say("Gained", option.gained),
    ...say("Lost", option.lost),
    ...say("Merged", option.merged),
  ];
  return said.length === 0 ? ["No edge is gained, lost or merged."] : said;
}

function describeDeparture({ deltaE00 }: RankedOption, format: Format): string {
  return `ΔE00 from today’s colour: ${format.number(deltaE00, 0)}.`;
}

function describeConfusion(option: RankedOption, format: Format): readonly string[] {
  const own = option.confusable
    .flatMap(({ names }) => names)
    .filter((name, index, all) => all.indexOf(name) === index);
  const warnings =
    own.length === 0 ? [] : [`Easily taken for another colour of the flag: ${format.list(own)}.`];
  return option.confusions.length === 0
    ? warnings
    : [...warnings, "Some colour-blind readers would take two neighbours for one."];
}
