// Floor 4, for the options. The kept hue: the least change of lightness that makes a paint clear of what it meets.
import { type Cloth, measureReflectance } from "../../colour/cloth.ts";
import type { Hex } from "../../colour/colour.ts";
import { wordOf } from "../../colour/colourname.ts";
import { hexOf, linearOf } from "../../colour/colourtext.ts";
import { clearFrom, measureContrast, strongFrom } from "../../colour/contrast.ts";
import { measureDifference } from "../../colour/difference.ts";
import { linearOfOklch, type Oklch, oklchOf } from "../../colour/space.ts";
import { edgeLimits } from "../limit.ts";

/** A paint beside the one that changes. `reflectances` in percent: more than one where it is uneven. */
export interface Neighbour {
  readonly name: string;
  readonly reflectances: readonly number[];
}

/**
 * A shade of the same hue that meets every demand. `contrast` is the lowest it has, in percent; `isFamily` whether it is
 * still called by the same word: a red that has become a pink is no red.
 */
export interface Shade {
  readonly hex: Hex;
  readonly deltaE00: number;
  readonly contrast: number;
  readonly isFamily: boolean;
}

/** What one neighbour asks: reflect at most this, or at least that (percent); null where no cloth can. */
export interface Demand {
  readonly name: string;
  readonly atMost: number | null;
  readonly atLeast: number | null;
}

/**
 * The nearest shades on both sides, null where there is none. `least` is the one of the same family that departs less;
 * darker if equal.
 */
export interface ShadeFinding {
  /** Whether the colour is clear of every neighbour as it is: then nothing is asked, and `least` is null. */
  readonly isClear: boolean;
  readonly least: Shade | null;
  readonly lighter: Shade | null;
  readonly darker: Shade | null;
  readonly demands: readonly Demand[];
}

/** OKLCH lightness by which a solution is moved on where rounding to 8 bits took it back over the limit. */
const nudge = 1 / 4096;

/** A stretch of reflectance, in percent, both ends allowed. */
type Window = readonly [low: number, high: number];

/**
 * Finds the nearest lighter and the nearest darker shade of `hex` that has a contrast of 50 or more against every neighbour
 * that it is not clear of today, and keeps the grade it has against the others: OKLCH hue kept, chroma lowered only as far
 * as sRGB forces. Shades run from black to white.
 *
 * Throws RangeError for a colour that is not `#rrggbb`, a reflectance that is not 0 to 100, or an impossible cloth.
 * Example: pure blue beside black alone needs a reflectance of at least 2125 / 75 = 28.33 %, and only a lighter one does.
 */
export function findShade(hex: Hex, neighbours: readonly Neighbour[], cloth: Cloth): ShadeFinding {
  const today = reflectanceOf(hex, cloth);
  const sides = neighbours.flatMap(({ name, reflectances }) => {
    const least = leastContrast(measureLowest(today, reflectances));
    return reflectances.map((reflectance) => ({ name, reflectance, least }));
  });
  const demands = sides.map((side) => demandOf(side, cloth));
  const all = sides.map(({ reflectance }) => reflectance);
  if (measureLowest(today, all) >= clearFrom)
    return { isClear: true, least: null, lighter: null, darker: null, demands };
  const passes = (shade: Hex): boolean => {
    const reached = reflectanceOf(shade, cloth);
    return sides.every(({ reflectance, least }) => measureContrast(reached, reflectance) >= least);
  };
  const windows = findWindows(demands, cloth);
  const solve = (direction: 1 | -1): Shade | null => {
    const shade = walk(hex, windows, direction, cloth, passes);
    return shade === null
      ? null
      : {
          hex: shade,
          deltaE00: measureDifference(linearOf(hex), linearOf(shade)),
          contrast: measureLowest(reflectanceOf(shade, cloth), all),
          isFamily: wordOf(shade) === wordOf(hex),
        };
  };
  const [darker, lighter] = [solve(-1), solve(1)];
  const [least = null] = [darker, lighter]
    .filter((shade) => shade?.isFamily === true)
    .sort((one, other) => (one?.deltaE00 ?? 0) - (other?.deltaE00 ?? 0));
  return { isClear: false, least, lighter, darker, demands };
}

/** What a shade must reach where today's contrast is `today`: clear with some in hand, or the grade it has. */
function leastContrast(today: number): number {
  if (today < clearFrom) return clearFrom + edgeLimits.inHand;
  return today < strongFrom ? clearFrom : strongFrom;
}

/** Solves `125 · |y − x| / (x + y + 25) = least` for x on both sides of y. */
function demandOf(
  {
    name,
    reflectance: y,
    least,
  }: { readonly name: string; readonly reflectance: number; readonly least: number },
  cloth: Cloth,
): Demand {
  const atMost = ((125 - least) * y - 25 * least) / (125 + least);
  const atLeast = ((125 + least) * y + 25 * least) / (125 - least);
  return {
    name,
    atMost: atMost < cloth.black ? null : atMost,
    atLeast: atLeast > cloth.white ? null : atLeast,
  };
}

/** What is left of the cloth's whole range when every neighbour has taken its own stretch out, from dark to light. */
function findWindows(demands: readonly Demand[], cloth: Cloth): readonly Window[] {
  let windows: readonly Window[] = [[cloth.black, cloth.white]];
  for (const { atMost, atLeast } of demands) {
    windows = windows.flatMap(([low, high]) => {
      const below: readonly Window[] = atMost === null || atMost < low ? [] : [[low, Math.min(high, atMost)]];
      const above: readonly Window[] =
        atLeast === null || atLeast > high ? [] : [[Math.max(low, atLeast), high]];
      return [...below, ...above];
    });
  }
  return windows;
}

/** Goes from window to window away from `hex` until a shade of 8 bits passes. */
function walk(
  hex: Hex,
  windows: readonly Window[],
  direction: 1 | -1,
  cloth: Cloth,
  passes: (shade: Hex) => boolean,
): Hex | null {
  const from = oklchOf(linearOf(hex));
  const start = reflectanceOf(hex, cloth);
  const ahead = windows.filter(([low, high]) => (direction === 1 ? high >= start : low <= start));
  for (const [low, high] of direction === 1 ? ahead : [...ahead].reverse()) {
    const entry = direction === 1 ? Math.max(low, start) : Math.min(high, start);
    let lightness01 = findLightness(from, entry, direction, cloth);
    for (;;) {
      const shade = shadeOf(from, lightness01);
      if (passes(shade)) return shade;
      const reached = reflectanceOf(shade, cloth);
      const isPast = direction === 1 ? reached > high : reached < low;
      const isAtEnd = direction === 1 ? lightness01 >= 1 : lightness01 <= 0;
      if (isPast || isAtEnd) break;
      lightness01 = Math.min(1, Math.max(0, lightness01 + direction * nudge));
    }
  }
  return null;
}

/** Halves the way from the colour to white (or black) until its reflectance is the one asked for, on the far side. */
function findLightness(from: Oklch, reflectance: number, direction: 1 | -1, cloth: Cloth): number {
  let near = from.lightness01;
  let far = direction === 1 ? 1 : 0;
  while (Math.abs(far - near) > nudge / 4) {
    const middle = (near + far) / 2;
    const reached = measureReflectance(linearOfOklch({ ...from, lightness01: middle }), cloth);
    if (direction * (reached - reflectance) >= 0) far = middle;
    else near = middle;
  }
  return far;
}

function shadeOf(from: Oklch, lightness01: number): Hex {
  return hexOf(linearOfOklch({ ...from, lightness01 }));
}

function reflectanceOf(hex: Hex, cloth: Cloth): number {
  return measureReflectance(linearOf(hex), cloth);
}

function measureLowest(reflectance: number, neighbours: readonly number[]): number {
  return neighbours.reduce((lowest, other) => Math.min(lowest, measureContrast(reflectance, other)), 100);
}
