// Floor 5. A colour as an author writes it → the colour of the drawing, or of the palette, that is meant.
import type { Hex } from "../colour/colour.ts";
import { measureDifference } from "../colour/difference.ts";
import { linearOf, parseColour } from "../colour/parse.ts";
import { findNearest } from "../problem/nearest.ts";
import type { Place, Problem } from "../problem/problem.ts";
import { quoteText } from "../problem/quote.ts";
import { describeUnknownColour } from "./unknown.ts";

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

/** ΔE00 under which a colour of the drawing is proposed for one that is not in it. */
const alikeUnder = 25;

/**
 * Resolves `replace`: a name of the drawing first, then any CSS colour that is in the drawing. A name that CSS has too
 * is no question unless the drawing has both colours. `instead` is what shall take its place: where the drawing has that
 * colour, and none like `text`, the two were most likely exchanged.
 *
 * Problems: study/colour-absent; warnings study/colour-near, study/two-meanings.
 */
export function resolveReplace(
  text: string,
  colours: readonly NamedColour[],
  at: Whereabouts,
  instead?: string,
): Resolved {
  const named = colours.find((colour) => colour.name === text.trim().toLowerCase());
  const css = parseColour(text)?.hex;
  const hasCss = colours.some((colour) => colour.hex === css);
  if (named !== undefined) {
    const other = hasCss ? css : undefined;
    return { hex: named.hex, ...warnTwoMeanings(text, named.hex, "the drawing", other, "CSS", at) };
  }
  if (css === undefined) return { problem: absent(text, colours, at, instead) };
  if (hasCss) return { hex: css };
  const [nearest] = sortByDifference(colours, css);
  if (nearest === undefined || nearest.away >= nearMiss)
    return { problem: absent(text, colours, at, instead) };
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
 * Resolves `with`: a name of the palette first, then any CSS colour. `colours` are those of the drawing that stay: a
 * name that one of them has too is used, with a warning where it means another colour. Where CSS means another shade
 * than the palette, `checkMeanings` has said so.
 *
 * Problems: study/wrong-colour; warning study/two-meanings.
 */
export function resolveWith(
  text: string,
  palette: ReadonlyMap<string, string>,
  at: Whereabouts,
  colours: readonly NamedColour[] = [],
): Resolved {
  const word = text.trim().toLowerCase();
  const named = [...palette].find(([name]) => name.toLowerCase() === word)?.[1];
  const css = parseColour(text)?.hex;
  const own = colours.find((colour) => colour.name === word)?.hex;
  const hex = named === undefined ? css : parseColour(named)?.hex;
  if (hex === undefined) return { problem: unknown(text, palette, own, at) };
  const from = named === undefined ? "CSS" : "the palette";
  return { hex, ...warnTwoMeanings(text, hex, from, own, "the drawing", at) };
}

function unknown(
  text: string,
  palette: ReadonlyMap<string, string>,
  own: Hex | undefined,
  at: Whereabouts,
): Problem {
  const { reason, hint } = describeUnknownColour(text, [...palette.keys()]);
  const isOwn =
    own === undefined ? hint : `For ${quoteText(text)} of the drawing type: ${JSON.stringify(own)}`;
  return { rule: "study/wrong-colour", severity: "error", ...at, reason, hint: isOwn };
}

function warnTwoMeanings(
  text: string,
  hex: Hex,
  from: string,
  other: Hex | undefined,
  otherFrom: string,
  at: Whereabouts,
): { readonly problem?: Problem } {
  if (other === undefined || other === hex) return {};
  return {
    problem: {
      rule: "study/two-meanings",
      severity: "warning",
      ...at,
      reason: `${quoteText(text)} means ${hex} of ${from} here, not ${other} of ${otherFrom}.`,
      hint: `Type ${JSON.stringify(hex)} or ${JSON.stringify(other)} to be sure.`,
    },
  };
}

/** Names the nearest colour, by its name where the author typed one, else by how it looks. */
function absent(
  text: string,
  colours: readonly NamedColour[],
  at: Whereabouts,
  instead: string | undefined,
): Problem {
  const list = colours.map((colour) => `${colour.hex} ${colour.name}`).join(", ");
  const near = findNear(text, colours);
  const isExchanged = near === undefined && instead !== undefined && has(instead, colours);
  const nearest = isExchanged
    ? "The drawing has the colour behind “with”: exchange the two, if that is meant.\n"
    : near === undefined
      ? ""
      : `Type ${JSON.stringify(near.hex)} (${near.name}), the nearest.\n`;
  return {
    rule: "study/colour-absent",
    severity: "error",
    ...at,
    reason: `The drawing has no colour ${quoteText(text)}.`,
    hint: `${nearest}Its colours are: ${list}.`,
  };
}

function has(text: string, colours: readonly NamedColour[]): boolean {
  const [word, css] = [text.trim().toLowerCase(), parseColour(text)?.hex];
  return colours.some(({ hex, name }) => name === word || hex === css);
}

function findNear(text: string, colours: readonly NamedColour[]): NamedColour | undefined {
  const word = text.trim().toLowerCase();
  const within = colours.filter(({ name }) => name.split(" ").includes(word));
  const [alike] = within;
  if (alike !== undefined) return within.length === 1 ? alike : undefined;
  const name = findNearest(
    word,
    colours.map((colour) => colour.name),
  );
  if (name !== undefined) return colours.find((colour) => colour.name === name);
  const css = parseColour(text)?.hex;
  if (css === undefined) return undefined;
  const [nearest] = sortByDifference(colours, css);
  return nearest !== undefined && nearest.away < alikeUnder ? nearest : undefined;
}

/** Colours with how far each is from `hex` in ΔE00, nearest first. */
function sortByDifference(colours: readonly NamedColour[], hex: Hex) {
  return colours
    .map((colour) => ({ ...colour, away: measureDifference(linearOf(colour.hex), linearOf(hex)) }))
    .sort((a, b) => a.away - b.away);
}
