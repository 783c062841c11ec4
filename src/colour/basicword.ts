// Floor 1. Shades whose basic word is known: a survey's, with corrections where someone who reads flags says otherwise.
import survey from "xkcd-colors";
import type { Hex } from "./colour.ts";
import { linearOf } from "./colourtext.ts";
import { type Lab, oklabOf } from "./space.ts";

/** The words for a hue. Black, white and grey are told by lightness and need no anchor, save tinted greys. */
export type BasicWord =
  | "black"
  | "white"
  | "grey"
  | "red"
  | "orange"
  | "yellow"
  | "green"
  | "blue"
  | "purple"
  | "pink"
  | "brown";

export const basicWords: readonly BasicWord[] = [
  "black",
  "white",
  "grey",
  "red",
  "orange",
  "yellow",
  "green",
  "blue",
  "purple",
  "pink",
  "brown",
];

/**
 * Survey names that lead a reader of flags astray: off-whites called pink or grey, greys called after their tint or
 * tinted shades called grey, wine reds called purple or brown, sea greens called blue.
 */
const misleading: ReadonlySet<string> = new Set([
  ...["very light pink", "pale grey", "light blue grey", "dark grey", "dark blue grey"],
  ...["purpley grey", "reddish grey", "greeny grey", "brown grey", "pinkish grey", "brownish grey"],
  ...["purplish grey", "purple grey", "green grey", "greenish grey"],
  ...["reddy brown", "purple brown", "purplish brown", "purple red", "red purple", "reddish purple"],
  ...["pinkish red", "pink red", "brownish purple"],
  ...["green blue", "light green blue", "light greenish blue", "dark green blue", "seafoam blue"],
]);

/**
 * Shades the survey has no near neighbour for, or whose neighbour carries another word.
 *
 * Source: our own judgement of how people speak of flags; common practice, no source.
 */
const corrections: Readonly<Partial<Record<BasicWord, readonly Hex[]>>> = {
  // Grey with a tint of lilac.
  grey: ["#ccbac8"],
  // Maroon, wine, burgundy, scarlet on the edge of raspberry.
  red: ["#5a0512", "#68101f", "#702c36", "#8c1940", "#d81f48", "#450109", "#43021f", "#833c40", "#7b2d27"],
  // Golden orange, peach, terracotta.
  orange: ["#fde0c1", "#fbc083", "#c37c5a"],
  // Mustard, old gold, cream.
  yellow: ["#b98a12", "#af8a06", "#c09404", "#e6c75a", "#f4b310", "#fffbd2", "#f2e4bd", "#e4e8c4"],
  // Bottle green, olive, grey greens, mint.
  green: [
    ...(["#04684d", "#016557", "#3c5d49", "#355f55", "#3b3e1e", "#66785a", "#44512a"] as const),
    ...(["#a2b697", "#c1d5b4", "#d7ecca", "#c9eed8"] as const),
  ],
  // Navy, ink, pale sky blue.
  blue: ["#1a1c3c", "#2c2b4d", "#26304d", "#a9d3e2", "#7fb2dc", "#dbe4fd", "#131d54", "#365a6a"],
  // Aubergine, indigo, lilac, mauve.
  purple: [
    ...(["#331a38", "#241350", "#440092", "#3b2d66", "#574a86", "#755ec0", "#927ce0"] as const),
    ...(["#7d6a86", "#a3849b", "#c6a0c9", "#d9c5e6"] as const),
  ],
  // Raspberry, old rose.
  pink: ["#e3206a", "#a1586e", "#ab838c", "#ecc1be"],
  // Coffee, tan, beige.
  brown: ["#442a16", "#47390f", "#6f3c28", "#bd885b", "#6e4a46", "#6c4d3f", "#c3a686", "#dbcca8", "#e3c8ad"],
};

export interface Anchor {
  readonly word: BasicWord;
  readonly hex: Hex;
  /** OKLab of the shade. */
  readonly oklab: Lab;
}

/**
 * The anchors of the namer: every survey colour whose name ends in a basic word, less the misleading ones, with the
 * corrections.
 *
 * Source: xkcd colour survey, 2010, as packaged in `xkcd-colors` (colour list CC0).
 */
export const anchors: readonly Anchor[] = [
  ...survey.colors.flatMap(({ name, hex }) => {
    const word = basicWords.find((basic) => name === basic || name.endsWith(` ${basic}`));
    if (word === undefined || misleading.has(name) || !isHex(hex)) return [];
    return [{ word, hex, oklab: oklabOf(linearOf(hex)) }];
  }),
  ...basicWords.flatMap((word) =>
    (corrections[word] ?? []).map((hex) => ({ word, hex, oklab: oklabOf(linearOf(hex)) })),
  ),
];

function isHex(text: string): text is Hex {
  return /^#[0-9a-f]{6}$/.test(text);
}
