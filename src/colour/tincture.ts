// Floor 1. Metal or colour: what the rule of tincture would call a colour, or that it does not speak of it.
import type { Hex } from "./colour.ts";
import { nameColour } from "./colourname.ts";

export type Tincture = "metal" | "colour" | "unclassed";

const metals: ReadonlySet<string> = new Set(["white", "yellow", "light yellow", "dark yellow"]);

const colours: ReadonlySet<string> = new Set([
  "black",
  "red",
  "dark red",
  "green",
  "dark green",
  "blue",
  "dark blue",
  "light blue",
  "purple",
  "dark purple",
]);

/**
 * The tincture of a colour by the name a person would use for it: white and yellow are metals (silver and gold); red,
 * blue, green, black and purple are colours, dark or not, and so is light blue. Orange, brown, pink, grey and the other
 * light forms are `unclassed`: the rule does not speak of them.
 *
 * Throws RangeError where `hex` is not `#rrggbb`.
 *
 * Source: A. C. Fox-Davies, “A Complete Guide to Heraldry”, 1909, chapter VII (two metals, five colours). That light
 * blue is a colour is common practice, no source.
 */
export function tinctureOf(hex: Hex): Tincture {
  const name = nameColour(hex);
  if (metals.has(name)) return "metal";
  return colours.has(name) ? "colour" : "unclassed";
}
