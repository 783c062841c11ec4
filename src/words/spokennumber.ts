// Floor 7. Numbers as a speaker says them, with the exact one beside: “about half (52%)”.
import { gradeOf, isClear } from "../colour/contrast.ts";
import type { ComparedEdge } from "../measure/comparison.ts";
import type { Format } from "./format.ts";

/** Shares that people have words for, in percent. */
const said: readonly (readonly [percent: number, words: string])[] = [
  [5, "one part in twenty"],
  [100 / 15, "one part in fifteen"],
  [10, "a tenth"],
  [12.5, "an eighth"],
  [100 / 6, "a sixth"],
  [20, "a fifth"],
  [25, "a quarter"],
  [100 / 3, "a third"],
  [40, "two fifths"],
  [50, "half"],
  [60, "three fifths"],
  [200 / 3, "two thirds"],
  [75, "three quarters"],
  [80, "four fifths"],
  [90, "nine tenths"],
];
/** From here on to both ends a share is almost none or almost all. */
const ends = { none: 2.5, all: 95 };
/** So near, in points, what is said is the number itself. */
const exact = 0.5;
/** Most edges that are told one by one. */
const mostPrices = 3;
const counts = ["none", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten"];

/**
 * A number in percent in the words of the share that is nearest by its odds, so that small ones are told as well as large ones:
 * `about half`. Throws RangeError outside 0 to 100.
 */
export function sayNearly(percent: number): string {
  if (!(percent >= 0 && percent <= 100)) throw new RangeError(`${percent} is no percentage`);
  if (percent < ends.none) return percent <= exact ? "none" : "almost none";
  if (percent > ends.all) return 100 - percent <= exact ? "all" : "almost all";
  const odds = (share: number) => Math.log(share / (100 - share));
  const near = said.map(([at]) => Math.abs(odds(at) - odds(percent)));
  const [at = 0, words = ""] = said[near.indexOf(Math.min(...near))] ?? [];
  return Math.abs(at - percent) <= exact ? words : `about ${words}`;
}

/** `about half (52%)`. */
export function sayPercent(percent: number, format: Format): string {
  return `${sayNearly(percent)} (${format.percent(percent)})`;
}

/** What becomes of the edges, counted: `Of four edges, one gets easier to see and two get harder to see.` */
export function sayEdges(edges: readonly Pick<ComparedEdge, "outcome">[], format: Format): string {
  const count = (...outcomes: readonly string[]) =>
    edges.filter(({ outcome }) => outcomes.includes(outcome)).length;
  const say = (number: number) => counts[number] ?? format.number(number, 0);
  const [better, worse] = [count("gained", "better", "parted"), count("lost", "worse", "merged")];
  const moved = [
    ...(better === 0 ? [] : [`${say(better)} ${better === 1 ? "gets" : "get"} easier to see`]),
    ...(worse === 0 ? [] : [`${say(worse)} ${worse === 1 ? "gets" : "get"} harder to see`]),
  ];
  const what = moved.length === 0 ? "none gets easier or harder to see" : moved.join(" and ");
  return `Of ${say(edges.length)} ${edges.length === 1 ? "edge" : "edges"}, ${what}.`;
}

/**
 * What a change makes worse, a sentence for each edge, the longest first; empty where nothing gets worse.
 *
 * Example: `The price: where dark red meets white, the edge was strong (78%); now, orange beside white, it is only soft (42%).`
 */
export function sayPrice(
  price: readonly Pick<ComparedEdge, "names" | "contrast" | "outcome">[],
  format: Format,
): string {
  if (price.length === 0) return "";
  const named = price.slice(0, mostPrices).map((edge) => sayLoss(edge, format));
  const more = price.length - named.length;
  const rest = more === 0 ? [] : [`and ${counts[more] ?? format.number(more, 0)} more get harder to see`];
  return `The price: ${[...named, ...rest].join("; ")}.`;
}

function sayLoss(
  { names, contrast: [before, after], outcome }: Pick<ComparedEdge, "names" | "contrast" | "outcome">,
  format: Format,
): string {
  const [was, is] = names;
  if (outcome === "merged") return `${was.join(" and ")} merge into one colour`;
  const now = `${gradeOf(after)} (${format.contrast(after)})`;
  if (before === null) return `${is.join(" and ")} part, and the edge between them is ${now}`;
  const only = gradeOf(before) === gradeOf(after) ? "still " : isClear(gradeOf(after)) ? "" : "only ";
  const beside = was.join() === is.join() ? "now" : `now, ${is.join(" beside ")},`;
  return `where ${was.join(" meets ")}, the edge was ${gradeOf(before)} (${format.contrast(before)}); ${beside} it is ${only}${now}`;
}
