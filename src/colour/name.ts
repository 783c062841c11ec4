// Floor 1. What a person would call a colour, and how two colours of one flag that share a word are told apart.
import { anchors, type BasicWord } from "./anchor.ts";
import type { Hex } from "./colour.ts";
import { linearOf } from "./parse.ts";
import { type Oklch, oklabOf, oklchOf } from "./space.ts";

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

/** OKLCH lightness that two shades of one name must differ by to be called lighter and darker. */
const seenLightnessStep = 0.02;

/**
 * The name a person would use for a colour: black, white, grey, red, orange, yellow (gold too), green, blue, purple, pink
 * or brown, with `light` or `dark` before it where a person would say so.
 *
 * Throws RangeError where `hex` is not `#rrggbb`. Example: `#12235c` → `dark blue`.
 *
 * Source: nearest shade in OKLab among those of a colour-naming survey; see the notes in anchor.ts.
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

/**
 * The plain word for a colour, without `light` or `dark`: its family.
 *
 * Throws RangeError where `hex` is not `#rrggbb`. Example: `#12235c` → `blue`.
 */
export function familyOf(hex: Hex): BasicWord {
  return findWord(hex, oklchOf(linearOf(hex)));
}

/**
 * Names for the colours of one flag, in the order given. Different colours get different names: those that share one are
 * told apart by lightness (`red`, `darker red`, `darkest red`; `dark blue`, `very dark blue`; `light blue`, `very light
 * blue`), or by a number where their lightness is too close (`green`, `green 2`). The order given changes no name, and
 * the same hex twice is one colour with one name.
 *
 * Throws RangeError where one is not `#rrggbb`.
 */
export function nameColours(hexes: readonly Hex[]): string[] {
  const shades = [...new Set(hexes)].map((hex) => ({
    hex,
    name: nameColour(hex),
    lightness01: lightnessOf(hex),
  }));
  const names = new Map<Hex, string>();
  for (const name of new Set(shades.map((shade) => shade.name))) {
    const sharing = shades.filter((shade) => shade.name === name).sort(compareShades);
    tellApart(name, sharing).forEach((own, index) => {
      const shade = sharing[index];
      if (shade !== undefined) names.set(shade.hex, own);
    });
  }
  return hexes.map((hex) => names.get(hex) ?? nameColour(hex));
}

interface Shade {
  readonly hex: Hex;
  readonly lightness01: number;
}

/** Lightest first; equals by hex, so that the order is the same every time. */
function compareShades(a: Shade, b: Shade): number {
  return b.lightness01 - a.lightness01 || (a.hex < b.hex ? -1 : 1);
}

/** The own names of shades that share `name`, which come lightest first. */
function tellApart(name: string, shades: readonly Shade[]): readonly string[] {
  const areApart = shades.every((shade, index) => {
    const lighter = shades[index - 1];
    return lighter === undefined || lighter.lightness01 - shade.lightness01 >= seenLightnessStep;
  });
  if (!areApart) return shades.map((_, index) => numbered(name, index));
  // Black and the light forms keep the plain name for the darkest, for nothing reads as `darker black`.
  if (name === "black") return comparatives(name, "lighter", "lightest", shades.length).reverse();
  if (name.startsWith("light ")) return intensified(name, shades.length).reverse();
  if (name.startsWith("dark ")) return intensified(name, shades.length);
  return comparatives(name, "darker", "darkest", shades.length);
}

/** `red`, `darker red`, `darkest red`; from four on the middle ones are numbered. */
function comparatives(name: string, more: string, most: string, count: number): string[] {
  return Array.from({ length: count }, (_, index) => {
    if (index === 0) return name;
    return index === count - 1 && count > 2 ? `${most} ${name}` : numbered(`${more} ${name}`, index - 1);
  });
}

/** `dark blue`, `very dark blue`, `very dark blue 2`. */
function intensified(name: string, count: number): string[] {
  return Array.from({ length: count }, (_, index) =>
    index === 0 ? name : numbered(`very ${name}`, index - 1),
  );
}

function numbered(name: string, index: number): string {
  return index === 0 ? name : `${name} ${index + 1}`;
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
    const distance = Math.hypot(oklab.l - l, oklab.a - a, oklab.b - b);
    if (distance < least) {
      least = distance;
      nearest = word;
    }
  }
  return nearest;
}

function lightnessOf(hex: Hex): number {
  return oklchOf(linearOf(hex)).lightness01;
}
