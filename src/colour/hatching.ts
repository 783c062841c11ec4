// Floor 1. The lines that stand for a colour where there is no colour: the hatching of engraved coats of arms.
import type { BasicWord } from "./basicword.ts";
import type { Hex } from "./colour.ts";
import { wordOf } from "./colourname.ts";

/**
 * Directions as the viewer sees them: `down` runs from the upper left, the dexter chief of heraldry, to the lower right;
 * `up` from the lower left to the upper right.
 */
export type HatchLine = "vertical" | "horizontal" | "down" | "up";

/** All lines that a colour has; `isDotted` in their place; `isToned`: no lines, but a plain grey. */
export interface Hatching {
  readonly lines: readonly HatchLine[];
  readonly isDotted?: true;
  readonly isToned?: true;
}

/**
 * Source of the first seven: Silvester Petra Sancta, “Tesserae gentilitiae”, Rome 1638; told in A. C. Fox-Davies, “A
 * Complete Guide to Heraldry”, 1909, chapter VII. Orange and brown: later convention, on which books differ; no source.
 * Grey and pink have no lines in it, and are toned: our own choice.
 */
export const hatchings: Readonly<Record<BasicWord, Hatching>> = {
  red: { lines: ["vertical"] },
  blue: { lines: ["horizontal"] },
  green: { lines: ["down"] },
  black: { lines: ["horizontal", "vertical"] },
  purple: { lines: ["up"] },
  yellow: { lines: [], isDotted: true },
  white: { lines: [] },
  orange: { lines: ["up", "horizontal"] },
  brown: { lines: ["down", "vertical"] },
  grey: { lines: [], isToned: true },
  pink: { lines: [], isToned: true },
};

/**
 * The hatching of a colour, by the word that a person would use for it, dark or light.
 *
 * Throws RangeError where `hex` is not `#rrggbb`. Example: `#12235c`, dark blue → horizontal lines.
 */
export function hatchingOf(hex: Hex): Hatching {
  return hatchings[wordOf(hex)];
}
