// Floor 7. Numbers as a speaker says them, with the exact one beside: “about half (52%)”.
import type { ComparedEdge } from "../measure/comparison.ts";
import type { Format } from "./format.ts";

/** Shares that people have words for, in percent. */
const said: readonly (readonly [percent: number, words: string])[] = [
  [0, "none"],
  [5, "one part in twenty"],
  [10, "a tenth"],
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
  [100, "all"],
];
/** So near, in points, what is said is the number itself. */
const exact = 0.5;
const counts = ["none", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten"];

/** A number in percent in the words of the nearest share: `about half`. Throws RangeError outside 0 to 100. */
export function sayNearly(percent: number): string {
  if (!(percent >= 0 && percent <= 100)) throw new RangeError(`${percent} is no percentage`);
  const near = said.map(([at]) => Math.abs(at - percent));
  const index = near.indexOf(Math.min(...near));
  const words = said[index]?.[1] ?? "";
  if ((near[index] ?? 0) <= exact) return words;
  if (words === "none") return "almost none";
  return words === "all" ? "almost all" : `about ${words}`;
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
