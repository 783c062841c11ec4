// Floor 7. Numbers as a speaker says them, with the exact one beside: “about half (52%)”.
import type { ComparedEdge } from "../measure/comparison.ts";
import type { WordId } from "./en/all.ts";
import type { Format } from "./format.ts";
import { sayLoss } from "./optionwords.ts";

/** Shares that people have words for, in percent. */
const said = [
  [5, "spoken.twentieth"],
  [100 / 15, "spoken.fifteenth"],
  [10, "spoken.tenth"],
  [12.5, "spoken.eighth"],
  [100 / 6, "spoken.sixth"],
  [20, "spoken.fifth"],
  [25, "spoken.quarter"],
  [100 / 3, "spoken.third"],
  [40, "spoken.twoFifths"],
  [50, "spoken.half"],
  [60, "spoken.threeFifths"],
  [200 / 3, "spoken.twoThirds"],
  [75, "spoken.threeQuarters"],
  [80, "spoken.fourFifths"],
  [90, "spoken.nineTenths"],
] as const satisfies readonly (readonly [percent: number, id: WordId])[];
/** From here on to both ends a share is almost none or almost all. */
const ends = { none: 2.5, all: 95 };
/** So near, in points, what is said is the number itself. */
const exact = 0.5;
/** Most edges that are told one by one. */
const mostPrices = 3;

/**
 * A number in percent in the words of the share that is nearest by its odds, so that small ones are told as well as large ones:
 * `about half`. Throws RangeError outside 0 to 100.
 */
export function sayNearly(percent: number, { say }: Format): string {
  if (!(percent >= 0 && percent <= 100)) throw new RangeError(`${percent} is no percentage`);
  if (percent < ends.none) return say(percent <= exact ? "spoken.none" : "spoken.almostNone");
  if (percent > ends.all) return say(100 - percent <= exact ? "spoken.all" : "spoken.almostAll");
  const odds = (share: number) => Math.log(share / (100 - share));
  const near = said.map(([at]) => Math.abs(odds(at) - odds(percent)));
  const [at, id] = said[near.indexOf(Math.min(...near))] ?? said[0];
  const part = say(id);
  return Math.abs(at - percent) <= exact ? part : say("spoken.about", { part });
}

/** `about half (52%)`. */
export function sayPercent(percent: number, format: Format): string {
  return format.say("spoken.percent", { near: sayNearly(percent, format), percent: format.percent(percent) });
}

/** What becomes of the edges, counted: `Of four edges, one gets easier to see and two get harder to see.` */
export function sayEdges(edges: readonly Pick<ComparedEdge, "outcome">[], { say }: Format): string {
  const count = (...outcomes: readonly string[]) =>
    edges.filter(({ outcome }) => outcomes.includes(outcome)).length;
  const spell = (number: number) => ({ count: number, edges: say("spoken.count", { count: number }) });
  const [rising, falling] = [count("gained", "better", "parted"), count("lost", "worse", "merged")];
  const [better, worse] = [say("spoken.better", spell(rising)), say("spoken.worse", spell(falling))];
  const moves =
    rising > 0 && falling > 0
      ? say("spoken.betterAndWorse", { better, worse })
      : rising > 0
        ? better
        : falling > 0
          ? worse
          : say("spoken.noneMoves");
  return say("spoken.edges", {
    count: edges.length,
    all: say("spoken.count", { count: edges.length }),
    moves,
  });
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
  const { say } = format;
  const named = price
    .slice(0, mostPrices)
    .map((edge) => sayLoss(edge, ["spoken.lost", "spoken.lostRenamed"], format));
  const count = price.length - named.length;
  const rest =
    count === 0 ? [] : [say("spoken.moreLosses", { count, edges: say("spoken.count", { count }) })];
  return say("spoken.price", { losses: [...named, ...rest].join(say("list.semicolon")) });
}
