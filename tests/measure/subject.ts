// Flags written out by hand as what the options work on: a subject for each paint, and a palette to try.
import type { Hex } from "../../src/colour/colour.ts";
import { SwatchBook } from "../../src/measure/colourcache.ts";
import type { EdgeTable } from "../../src/measure/edgetable.ts";
import { type Candidate, listCandidates, type Subject } from "../../src/measure/options/candidate.ts";
import { measureOptions, type Option } from "../../src/measure/options/tryoptions.ts";
import { nth } from "../numbered.ts";
import { focusOf, looksOf, tableOf } from "./build.ts";
import type { Flag } from "./twin.ts";

export const cloth = { black: 5, white: 85 };

/** Shades of the trade-pairs table (tests/reference/trade-pairs.ts), with grey and brown. */
export const shades = {
  white: "#ffffff",
  yellow: "#fcd20f",
  orange: "#ff8c1a",
  red: "#c8202f",
  green: "#0b7a3b",
  "dark green": "#0a5c36",
  "light blue": "#6cb4e4",
  "dark blue": "#12235c",
  purple: "#6a2c8c",
  black: "#000000",
  grey: "#8f9499",
  brown: "#6f4526",
} as const;

export const palette: readonly Candidate[] = Object.entries(shades).map(([name, hex]) => ({
  name,
  hex,
  kind: "palette",
}));

/** The edge table of `flag`. */
export function tableOfFlag({ paints, edges, charges = [], groups }: Flag): EdgeTable {
  const table = tableOf(
    paints.map((_, index) => [`p${index + 1}`, groups?.[index] ?? index] as const),
    edges,
  );
  return { ...table, focus: focusOf([], charges) };
}

/** A subject for every paint of `flag`. */
export function subjectsOf(flag: Flag): readonly Subject[] {
  const { paints } = flag;
  const table = tableOfFlag(flag);
  const looks = looksOf(...paints.map((hex) => hex as Hex));
  return paints.map((_, paint) => ({ table, looks, paint: nth(paint) }));
}

/** What a paint may be replaced by where no shade of its own is asked for. */
export const noShade = { isClear: true, least: null, lighter: null, darker: null, demands: [] };

/** All options of `flag`, paint by paint. */
export function optionsOf(flag: Flag, candidates: readonly Candidate[] = palette): readonly Option[] {
  const book = new SwatchBook(cloth);
  return subjectsOf(flag).flatMap((subject) =>
    measureOptions(subject, listCandidates(subject, candidates, [], noShade, book), book),
  );
}
