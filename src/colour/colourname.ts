// Floor 1. What a person would call a colour, what the colours of one flag are called, and what takes their place.
import { anchors, type BasicWord, basicWords } from "./basicword.ts";
import type { Hex } from "./colour.ts";
import { linearOf } from "./colourtext.ts";
import { nameFamily } from "./familyname.ts";
import { countName, isOwnWord, listDifferences, nameBy } from "./qualifier.ts";
import { type Oklch, oklabOf, oklchOf } from "./space.ts";

/** A colour with what it is called. */
export interface NamedColour {
  readonly hex: Hex;
  readonly name: string;
}

/** OKLCH chroma below which a colour counts as grey, black or white: people see no hue. */
const greyChroma = 0.018;

/** OKLCH chroma below which a colour as dark as black, or as light as white, is black or white in spite of a tint. */
const tintChroma = 0.03;

/** OKLCH lightness up to which a colour without hue is black, and from which it is white. */
const blackLightness = 0.31;
const whiteLightness = 0.94;

/** OKLCH lightness under which nothing but black is seen, whatever the hue. */
const sightLightness = 0.15;

/**
 * OKLCH lightness under which people say dark, and over which they say light, word by word: yellow is light and blue is
 * dark without anyone saying so. Black and white have no limits.
 *
 * Source: our own judgement, agreed on the table of shades in the tests; common practice, no source.
 */
const lightnessLimits: Readonly<Record<BasicWord, readonly [dark: number, light: number]>> = {
  black: [0, 2],
  white: [0, 2],
  grey: [0.525, 0.77],
  red: [0.455, 0.7],
  orange: [0.6, 0.81],
  yellow: [0.72, 0.88],
  green: [0.45, 0.77],
  blue: [0.335, 0.65],
  purple: [0.34, 0.68],
  pink: [0.58, 0.88],
  brown: [0.37, 0.62],
};

/** OKLCH chroma from which a light shade is full and not light: pure yellow and pure green are never called light. */
const fullChroma: Readonly<Partial<Record<BasicWord, number>>> = { yellow: 0.135, green: 0.2 };

/** OKLCH chroma and lightness under which a dull blue is called dark: slate and ink blues look darker than they are. */
const dullBlue = { chroma: 0.1, lightness01: 0.42 };

/**
 * The name a person would use for a colour: black, white, grey, red, orange, yellow (gold too), green, blue, purple, pink
 * or brown, with `light` or `dark` before it where a person would say so.
 *
 * Throws RangeError where `hex` is not `#rrggbb`. Example: `#12235c` → `dark blue`.
 *
 * Source: nearest shade in OKLab among those of a colour-naming survey; see the notes in basicword.ts.
 */
export function nameColour(hex: Hex): string {
  const oklch = oklchOf(linearOf(hex));
  const word = findWord(hex, oklch);
  const [dark, light] = lightnessLimits[word];
  const { lightness01, chroma } = oklch;
  const isDull = word === "blue" && chroma < dullBlue.chroma && lightness01 < dullBlue.lightness01;
  if (lightness01 < dark || isDull) return `dark ${word}`;
  return lightness01 > light && chroma < (fullChroma[word] ?? 1) ? `light ${word}` : word;
}

/** Whether all of a name, in small letters, is said in words that names are made of here: `dark yellow`, `off-white`. */
export function isOwnName(name: string): boolean {
  const [last, ...before] = name.split(/[ -]/).reverse();
  return basicWords.some((word) => word === last) && before.every((word) => isOwnWord(word));
}

/** The word of a colour's name, without `light` or `dark`. Throws RangeError where `hex` is not `#rrggbb`. */
export function wordOf(hex: Hex): BasicWord {
  return findWord(hex, oklchOf(linearOf(hex)));
}

/**
 * Names for the colours of one flag, in the order given. The largest of those that share a name has it plain, and the
 * others have what sets them apart (`darker red`, `very dark blue`, `bluer green`, `off-white`). `shares` are the parts
 * of the flag that they cover, in any unit; a hex that comes twice is one colour. `given` are names that are settled:
 * they are kept, and no other colour gets them. The order given changes no name.
 *
 * Throws RangeError where one is not `#rrggbb`. Example: red over 60 % of a flag, a darker one over 5 % → `red`,
 * `darker red`.
 */
export function nameColours(
  hexes: readonly Hex[],
  shares: readonly number[],
  given: ReadonlyMap<Hex, string> = new Map(),
): string[] {
  const areas = new Map<Hex, number>();
  for (const [index, hex] of hexes.entries()) areas.set(hex, (areas.get(hex) ?? 0) + (shares[index] ?? 0));
  const largestFirst = [...areas].sort(([a, x], [b, y]) => y - x || (a < b ? -1 : 1)).map(([hex]) => hex);
  const names = new Map([...given].filter(([hex]) => areas.has(hex)));
  const shades = largestFirst.map((hex) => ({ hex, word: wordOf(hex), plain: nameColour(hex) }));
  for (const word of new Set(shades.map((shade) => shade.word))) {
    nameFamily(
      word,
      shades.filter((shade) => shade.word === word),
      names,
    );
  }
  return hexes.map((hex) => names.get(hex) ?? nameColour(hex));
}

/**
 * The name of `hex` where it takes the place of `today` in a flag whose other colours are `others`. `called` is what the
 * author or the palette calls it, if they do. It has the name of another colour, or today's, only where it is that very
 * colour. A colour that keeps the word of today's is named by how it differs: `lighter green`, `dark blue` for blue.
 *
 * Throws RangeError where a hex is not `#rrggbb`.
 */
export function nameReplacement(
  hex: Hex,
  today: NamedColour,
  others: readonly NamedColour[],
  called?: string,
): string {
  const flag = [today, ...others];
  const same = flag.find((colour) => colour.hex === hex);
  if (same !== undefined) return same.name;
  const plain = called ?? nameColour(hex);
  const clash = flag.find(({ name }) => name === plain);
  const keepsWord = called === undefined && wordOf(hex) === wordOf(today.hex);
  const saysMore = plain.includes(" ") && plain !== nameColour(today.hex);
  if (clash === undefined && (!keepsWord || saysMore)) return plain;
  const noun = called === undefined || isOwnName(called) ? wordOf(hex) : called;
  return nameApart(hex, noun, keepsWord ? today : (clash ?? today), flag);
}

/** The first name by which `hex` differs from `from` that no colour of the flag has and none gives the lie to. */
function nameApart(hex: Hex, noun: string, from: NamedColour, flag: readonly NamedColour[]): string {
  const word = wordOf(hex);
  const [first, ...more] = listDifferences(word, from.hex, hex);
  const comparative = first?.comparative ?? "";
  const isSo = (other: NamedColour): boolean =>
    listDifferences(word, other.hex, hex).some((difference) => difference.comparative === comparative);
  const holderOf = (name: string): NamedColour | undefined => flag.find((colour) => colour.name === name);
  const rival = holderOf(noun);
  const name = rival === undefined || isSo(rival) ? nameBy(comparative, noun) : `mid ${noun}`;
  const holder = holderOf(name);
  const degree = holder === undefined || isSo(holder) ? "much" : "slightly";
  const qualified = more.map(({ quality }) => nameBy(comparative, `${quality} ${noun}`));
  const free = [name, `${degree} ${comparative} ${noun}`, ...qualified];
  return (
    free.find((one) => holderOf(one) === undefined) ?? countName(name, (one) => holderOf(one) !== undefined)
  );
}

function findWord(hex: Hex, { lightness01, chroma }: Oklch): BasicWord {
  const limit = lightness01 < blackLightness || lightness01 > whiteLightness ? tintChroma : greyChroma;
  if (lightness01 < sightLightness && chroma < 0.1) return "black";
  if (chroma < limit) {
    if (lightness01 < blackLightness) return "black";
    return lightness01 < whiteLightness ? "grey" : "white";
  }
  const { l, a, b } = oklabOf(linearOf(hex));
  let nearest: BasicWord = "grey";
  let least = Number.POSITIVE_INFINITY;
  for (const { word, oklab } of anchors) {
    // Squared: the nearest is the same, and a root for each of hundreds of shades is most of the work.
    const distance = (oklab.l - l) ** 2 + (oklab.a - a) ** 2 + (oklab.b - b) ** 2;
    if (distance < least) {
      least = distance;
      nearest = word;
    }
  }
  return nearest;
}
