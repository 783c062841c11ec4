// Floor 7. What is told of an option behind its numbers: who does as well, what gets worse, what it is taken for, where it stands.

import type { OptionsReport } from "../analysis/options/rankoptions.ts";
import type { CountedStanding } from "../analysis/options/studyranking.ts";
import { gradeOf, isClear } from "../colour/contrast.ts";
import type { ComparedEdge } from "../measure/comparison.ts";
import type { PaintPair } from "../measure/options/candidate.ts";
import type { Confusion } from "../measure/options/confusion.ts";
import type { Option } from "../measure/options/tryoptions.ts";
import type { WordId } from "./en/all.ts";
import type { Format } from "./format.ts";
import { gradeIds } from "./gradeword.ts";
import { capitalise } from "./phrase.ts";

/** Most names in one list, before the rest is counted. */
const mostNames = { equals: 3, unranked: 6, price: 3 };

/** `yellow does as well`, `yellow and grey do as well`; undefined where nothing does. Names that come twice are named once. `isShort`: without the verb. */
export function describeEquals(
  best: { readonly name: string },
  equals: readonly { readonly name: string }[],
  format: Format,
  isShort = false,
): string | undefined {
  if (equals.length === 0) return undefined;
  const { say } = format;
  const all = [
    ...new Set(equals.map(({ name }) => (name === best.name ? say("otherChange.another", { name }) : name))),
  ];
  const names = listFew(all, mostNames.equals, format);
  return isShort
    ? say("otherChange.equalShort", { names })
    : say("otherChange.equal", { count: all.length, names });
}

/** Says what an option makes worse, a short sentence each; none where nothing gets worse. */
export function describeWorse(option: Option, format: Format): readonly string[] {
  const say = (
    id: "otherChange.lost" | "otherChange.worse" | "otherChange.merged" | "otherChange.confusable",
    pairs: readonly PaintPair[],
  ): readonly string[] => {
    const names = pairs.map(({ a, names: both }) => both[a === option.id ? 1 : 0]);
    return pairs.length === 0 ? [] : [format.say(id, { names: format.list([...new Set(names)]) })];
  };
  const outline = format.say("otherChange.outlineMerges", { share: format.share(option.mergedOutline) });
  return [
    ...say("otherChange.lost", option.lost),
    ...say("otherChange.worse", option.worse),
    ...say("otherChange.merged", option.merged),
    ...(option.mergedOutline > 0 ? [outline] : []),
    ...say("otherChange.confusable", option.confusable),
    ...describeConfusions(option, format),
  ];
}

const sightIds = {
  protan: "otherChange.protan",
  deutan: "otherChange.deutan",
  tritan: "otherChange.tritan",
} as const satisfies Record<Confusion["sight"], WordId>;

/** `Protan and deutan eyes take it for green.`, a sentence for each neighbour. */
function describeConfusions({ id, confusions }: Option, { list, say }: Format): readonly string[] {
  const sights = new Map<string, string[]>();
  for (const { a, names, sight } of confusions) {
    const name = names[a === id ? 1 : 0];
    sights.set(name, [...(sights.get(name) ?? []), say(sightIds[sight])]);
  }
  return [...sights].map(([name, kinds]) =>
    capitalise(say("otherChange.confused", { sights: list([...new Set(kinds)]), name })),
  );
}

type PricedEdge = Pick<ComparedEdge, "names" | "contrast" | "outcome">;

/** The longest edge that keeps its place and loses contrast. */
export const findFallen = <E extends PricedEdge>(price: readonly E[]): E | undefined =>
  price.find(({ outcome }) => outcome === "lost" || outcome === "worse");

/**
 * Names the edges that a change makes worse, longest first; empty where there are none.
 *
 * Example: `rust on white has contrast 27% (weak), where red on white had 84% (strong)`.
 */
export function describePrice(price: readonly PricedEdge[], format: Format): string {
  const named = price
    .slice(0, mostNames.price)
    .map((edge) => sayLoss({ ...edge, names: putChangedFirst(edge.names) }, priceIds, format));
  const count = price.length - named.length;
  const all = count === 0 ? named : [...named, format.say("price.more", { count })];
  return all.join(format.say("list.semicolon"));
}

/** How a loss is told where both colours are called as before, and where one is not. */
type LossIds = typeof priceIds | readonly ["spoken.lost", "spoken.lostRenamed"];

const priceIds = ["price.falls", "price.fallsRenamed"] as const;

/** Says one edge that a change makes worse, as a clause; `ids` for one whose two sides stay apart. */
export function sayLoss(
  { names, contrast: [before, after], outcome }: PricedEdge,
  [kept, renamed]: LossIds,
  { say, contrast }: Format,
): string {
  const [[one, other], [newOne, newOther]] = names;
  const [was, is] = [gradeOf(before ?? 0), gradeOf(after)];
  const values = { one, other, newOne, newOther, grade: say(gradeIds[is]), contrast: contrast(after) };
  if (outcome === "merged") return say("spoken.merged", values);
  if (before === null) return say("spoken.parted", values);
  return say(one === newOne && other === newOther ? kept : renamed, {
    ...values,
    how: was === is ? "still" : isClear(is) ? "plain" : "only",
    wasGrade: say(gradeIds[was]),
    wasContrast: contrast(before),
  });
}

/** The same with the side first that changes its name, where only the second one does. */
function putChangedFirst([[a, b], [newA, newB]]: PricedEdge["names"]): PricedEdge["names"] {
  const isSecond = a === newA && b !== newB;
  return isSecond
    ? [
        [b, a],
        [newB, newA],
      ]
    : [
        [a, b],
        [newA, newB],
      ];
}

/** Names the changes that have no place, in one sentence; undefined where there are none. */
export function describeUnranked({ vanishing, shades }: OptionsReport, format: Format): string | undefined {
  const { say } = format;
  const nameOf = (hex: string): string => shades.find((shade) => shade.hex === hex)?.name ?? hex;
  const changes = [
    ...new Set(
      vanishing.map(({ replace, name }) =>
        say("otherChange.fromTo", { before: nameOf(replace), after: name }),
      ),
    ),
  ];
  if (changes.length === 0) return undefined;
  return say("otherChange.unranked", {
    count: changes.length,
    changes: listFew(changes, mostNames.unranked, format),
  });
}

function listFew(names: readonly string[], most: number, format: Format): string {
  const few = names.slice(0, names.length === most + 1 ? most + 1 : most);
  const count = names.length - few.length;
  return format.list(count > 0 ? [...few, format.say("otherChange.others", { count })] : few);
}

/**
 * Says a standing in one neutral sentence: looks are the author's, so it has numbers and no advice.
 *
 * Examples: “3rd of 58 in clarity, within 2 points of the best; no edge is lost or merged.” “1st of 58 in clarity, level with 6
 * others; 1 edge is lost or merged.”
 */
export function describeStanding({ place, total, level, behindBest, lost }: CountedStanding): string {
  const behind =
    behindBest === 0 ? "" : `, within ${behindBest === 1 ? "1 point" : `${behindBest} points`} of the best`;
  const edges = lost === 0 ? "no edge is" : lost === 1 ? "1 edge is" : `${lost} edges are`;
  return `${formatOrdinal(place)} of ${total} in clarity${sayLevel(level)}${behind}; ${edges} lost or merged.`;
}

/** Returns a standing as files for machines tell it. */
export function tellStanding(standing: CountedStanding) {
  const { lost: _, ...plain } = standing;
  return { ...plain, says: describeStanding(standing) };
}

/** Says the place by those before it: `7 of 35 changes of one colour are clearer.` */
export function describePlace(
  { place, total }: Pick<CountedStanding, "place" | "total">,
  format: Format,
): string {
  return format.say("otherChange.place", { clearer: place - 1, total: format.number(total, 0) });
}

function sayLevel(level: number): string {
  return level === 0 ? "" : `, level with ${level === 1 ? "1 other" : `${level} others`}`;
}

/** `1st`, `12th`: for the command and files for machines, which are English. */
export function formatOrdinal(count: number): string {
  const tens = count % 100;
  const ones = count % 10;
  const ending =
    tens >= 11 && tens <= 13 ? "th" : ones === 1 ? "st" : ones === 2 ? "nd" : ones === 3 ? "rd" : "th";
  return `${count}${ending}`;
}
