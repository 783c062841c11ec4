// Floor 5. A colour as an author writes it → the colour of the drawing, or of the palette, that is meant.
import type { Hex } from "../colour/colour.ts";
import { measureDifference } from "../colour/difference.ts";
import { linearOf, parseColour } from "../colour/parse.ts";
import { findNearest } from "../problem/nearest.ts";
import type { Place, Problem } from "../problem/problem.ts";
import { quoteText } from "../problem/quote.ts";

/** Where a value stands: the parts of a problem that say so. */
export interface Whereabouts {
  readonly file: string;
  readonly place?: Place;
  readonly sourceLine?: string;
}

/** The colour that is meant, where there is one, and what should be said about it. */
export interface Resolved {
  readonly hex?: Hex;
  readonly problem?: Problem;
}

/** A colour of a drawing with the name the page shows. */
export interface NamedColour {
  readonly hex: Hex;
  readonly name: string;
}

/** ΔE00 under which a colour that is not in the drawing is taken for one that is. */
const nearMiss = 2;

/**
 * Resolves `replace`: a name of the drawing first, then any CSS colour that is in the drawing.
 *
 * Problems: study/colour-absent; warnings study/colour-near, study/two-meanings.
 */
export function resolveReplace(text: string, colours: readonly NamedColour[], at: Whereabouts): Resolved {
  const named = colours.find((colour) => colour.name === text.trim().toLowerCase());
  const css = parseColour(text)?.hex;
  if (named !== undefined)
    return { hex: named.hex, ...warnTwoMeanings(text, named.hex, css, "the drawing", at) };
  if (css === undefined) return { problem: absent(text, colours, at) };
  if (colours.some((colour) => colour.hex === css)) return { hex: css };
  const [nearest] = colours
    .map((colour) => ({ ...colour, away: measureDifference(linearOf(colour.hex), linearOf(css)) }))
    .sort((a, b) => a.away - b.away);
  if (nearest === undefined || nearest.away >= nearMiss) return { problem: absent(text, colours, at) };
  return {
    hex: nearest.hex,
    problem: {
      rule: "study/colour-near",
      severity: "warning",
      ...at,
      reason: `${quoteText(text)} is not in the drawing; ${nearest.hex} (${nearest.name}) is so near that it was taken.`,
      hint: `Type: ${JSON.stringify(nearest.hex)}`,
    },
  };
}

/**
 * Resolves `with`: a name of the palette first, then any CSS colour.
 *
 * Problems: study/wrong-colour; warning study/two-meanings.
 */
export function resolveWith(text: string, palette: ReadonlyMap<string, string>, at: Whereabouts): Resolved {
  const named = palette.get(text.trim().toLowerCase()) ?? palette.get(text.trim());
  const css = parseColour(text)?.hex;
  const hex = named === undefined ? css : parseColour(named)?.hex;
  if (hex !== undefined)
    return { hex, ...(named === undefined ? {} : warnTwoMeanings(text, hex, css, "the palette", at)) };
  const near = findNearest(text, [...palette.keys()]);
  return {
    problem: {
      rule: "study/wrong-colour",
      severity: "error",
      ...at,
      reason: `${quoteText(text)} is neither a name of the palette nor a CSS colour.`,
      hint:
        near === undefined
          ? `The palette has: ${[...palette.keys()].join(", ")}.`
          : `Type: ${JSON.stringify(near)}, or a colour such as "#f4c430".`,
    },
  };
}

function warnTwoMeanings(
  text: string,
  hex: Hex,
  css: Hex | undefined,
  where: string,
  at: Whereabouts,
): { readonly problem?: Problem } {
  if (css === undefined || css === hex) return {};
  return {
    problem: {
      rule: "study/two-meanings",
      severity: "warning",
      ...at,
      reason: `${quoteText(text)} means ${hex} of ${where} here, not the CSS colour ${css}.`,
      hint: `Type ${JSON.stringify(hex)} or ${JSON.stringify(css)} to be sure.`,
    },
  };
}

function absent(text: string, colours: readonly NamedColour[], at: Whereabouts): Problem {
  const list = colours.map((colour) => `${colour.hex} ${colour.name}`).join(", ");
  return {
    rule: "study/colour-absent",
    severity: "error",
    ...at,
    reason: `The drawing has no colour ${quoteText(text)}.`,
    hint: `Its colours are: ${list}.`,
  };
}
