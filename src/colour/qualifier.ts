// Floor 1. How one colour differs from another of the same word, as a person would say it: darker, greyer, bluer.
import type { BasicWord } from "./basicword.ts";
import type { Hex } from "./colour.ts";
import { linearOf } from "./colourtext.ts";
import { oklchOf } from "./space.ts";

/** OKLCH lightness that two shades must differ by to be told apart by it (our own judgement). */
const seenStep = 0.03;

/** The part of the difference in hue or strength that lightness must reach to be named first (our own judgement). */
const tellingPart = 0.5;

/** What a difference in chroma counts beside one in hue: the eye minds it less (our own judgement). */
const strengthPart = 0.5;

export type Axis = "lightness" | "strength" | "hue";

/** One way in which a colour differs. */
export interface Difference {
  readonly axis: Axis;
  /** `darker`, `greyer`, `bluer`: before the word where this alone sets the two apart. */
  readonly comparative: string;
  /** `dark`, `greyish`, `bluish`: behind another comparative. */
  readonly quality: string;
  /** Distance in OKLab along this axis, as the eye weighs it. */
  readonly size: number;
}

/** What a hue is turned towards: with rising and with falling OKLCH hue. */
const turns: Readonly<Record<BasicWord, readonly [rising: string, falling: string]>> = {
  black: ["warm", "blue"],
  white: ["warm", "blue"],
  grey: ["warm", "blue"],
  red: ["warm", "blue"],
  orange: ["yellow", "red"],
  yellow: ["green", "warm"],
  green: ["blue", "yellow"],
  blue: ["purple", "green"],
  purple: ["red", "blue"],
  pink: ["warm", "blue"],
  brown: ["yellow", "red"],
};

/** The tint of what has no hue of its own, by its OKLCH hue in degrees: up to which angle, and the word. */
const tints: readonly (readonly [upTo: number, tint: string])[] = [
  [40, "reddish"],
  [80, "brownish"],
  [115, "yellowish"],
  [200, "greenish"],
  [285, "bluish"],
  [335, "purplish"],
  [360, "reddish"],
];

const comparatives: Readonly<Record<string, string>> = {
  warm: "warmer",
  blue: "bluer",
  yellow: "yellower",
  red: "redder",
  green: "greener",
  purple: "purpler",
};

const qualities: Readonly<Record<string, string>> = {
  warm: "warm",
  blue: "bluish",
  yellow: "yellowish",
  red: "reddish",
  green: "greenish",
  purple: "purplish",
};

/** What people say of near-black and near-white: nothing reads as `lighter black`. Least different first. */
const neutralNames: Readonly<Record<string, readonly string[]>> = {
  "lighter black": ["off-black", "charcoal black"],
  "darker black": ["deep black", "jet black"],
  "darker white": ["off-white", "dull white"],
  "lighter white": ["bright white", "pure white"],
};

/** The names of colours that are `lighter` or `darker` than a black or a white, least different first; else undefined. */
export function findNeutralNames(comparative: string, word: string): readonly string[] | undefined {
  return neutralNames[`${comparative} ${word}`];
}

/** `darker green`, but `off-black` for a lighter black. */
export function nameBy(comparative: string, noun: string): string {
  return findNeutralNames(comparative, noun)?.[0] ?? `${comparative} ${noun}`;
}

/**
 * Returns the ways in which `hex` differs from `from`, most telling first; both are called `word`. Lightness comes first
 * where it is seen; a colour that is the same in every way has none.
 *
 * Throws RangeError where one is not `#rrggbb`.
 */
export function listDifferences(word: BasicWord, from: Hex, hex: Hex): readonly Difference[] {
  const [was, is] = [oklchOf(linearOf(from)), oklchOf(linearOf(hex))];
  const rise = is.lightness01 - was.lightness01;
  const more = is.chroma - was.chroma;
  const turn = ((is.hueDegrees - was.hueDegrees + 540) % 360) - 180;
  const side = 2 * Math.sqrt(is.chroma * was.chroma) * Math.sin((turn * Math.PI) / 360);
  const all: Difference[] = [
    {
      axis: "lightness",
      ...(rise > 0 ? said("lighter", "light") : said("darker", "dark")),
      size: Math.abs(rise),
    },
    ...(isNeutral(word) ? [tint(is.hueDegrees, more)] : [strength(more), hue(word, side)]),
  ];
  const most = Math.max(...all.slice(1).map(({ size }) => size));
  const isSeen = Math.abs(rise) >= seenStep && Math.abs(rise) >= tellingPart * most;
  const rank = (difference: Difference): number =>
    difference.axis === "lightness" && isSeen ? Number.POSITIVE_INFINITY : difference.size;
  return all.filter(({ size }) => size > 0).sort((a, b) => rank(b) - rank(a));
}

/** Before a name that others have. */
export const ordinals = [
  "second",
  "third",
  "fourth",
  "fifth",
  "sixth",
  "seventh",
  "eighth",
  "ninth",
  "tenth",
];

/** Every word that may stand before the word of a colour in a name of ours. */
export const ownWords: ReadonlySet<string> = new Set([
  ...[
    "light",
    "lighter",
    "lightest",
    "dark",
    "darker",
    "darkest",
    "mid",
    "less",
    "neutral",
    "deeper",
    "deep",
  ],
  ...["greyer", "greyish", "very", "much", "slightly", ...ordinals],
  ...[...Object.values(comparatives), ...Object.values(qualities), ...tints.map(([, tint]) => tint)],
  ...Object.values(neutralNames).flatMap((names) => names.map((name) => name.split(/[ -]/)[0] ?? "")),
]);

/** Whether `word` may stand before the word of a colour in a name of ours. */
export function isOwnWord(word: string): boolean {
  return ownWords.has(word);
}

/**
 * The last resort, when every word is used up: the first of `second darker green`, `third darker green` and so on that
 * is free, and behind the tenth `darker green 11`.
 */
export function countName(name: string, isTaken: (name: string) => boolean): string {
  const said = ordinals.map((ordinal) => `${ordinal} ${name}`).find((one) => !isTaken(one));
  let number = ordinals.length + 2;
  while (said === undefined && isTaken(`${name} ${number}`)) number += 1;
  return said ?? `${name} ${number}`;
}

/** Whether a colour called `word` has no hue of its own. */
export function isNeutral(word: BasicWord): boolean {
  return word === "black" || word === "white" || word === "grey";
}

function said(comparative: string, quality: string): Pick<Difference, "comparative" | "quality"> {
  return { comparative, quality };
}

function strength(more: number): Difference {
  const words = more > 0 ? said("deeper", "deep") : said("greyer", "greyish");
  return { axis: "strength", ...words, size: strengthPart * Math.abs(more) };
}

function hue(word: BasicWord, side: number): Difference {
  const towards = turns[word][side > 0 ? 0 : 1];
  const words = said(comparatives[towards] ?? towards, qualities[towards] ?? towards);
  return { axis: "hue", ...words, size: Math.abs(side) };
}

function tint(hueDegrees: number, more: number): Difference {
  const tinted = tints.find(([upTo]) => hueDegrees <= upTo)?.[1] ?? "reddish";
  const word = more > 0 ? tinted : "neutral";
  return { axis: "hue", ...said(word, word), size: Math.abs(more) };
}
