// Floor 5. A colour as an author writes it → the colour of the drawing, or of the palette, that is meant.
import type { Hex } from "../../colour/colour.ts";
import { isOwnName, type NamedColour } from "../../colour/colourname.ts";
import { linearOf, parseColour } from "../../colour/colourtext.ts";
import { measureDifference } from "../../colour/difference.ts";
import { findNearest } from "../../problem/knownword.ts";
import { type Located, type Problem, report } from "../../problem/problem.ts";
import { quoteText } from "../../problem/quote.ts";
import { isUsualPalette } from "../gallery/palette.ts";
import { describeUnknownColour } from "./unknowncolour.ts";

/** Where a value stands: the parts of a problem that say so. */
export type Whereabouts = Partial<Located> & { readonly file: string; readonly at?: string };

/** A value by its dotted path (`change.replace`, `focus.select`), in a text that is named where the problem is told. */
export const keyed = (path: string): Whereabouts => ({ file: "", at: path });

/**
 * The colour that is meant, where there is one, and what should be said about it. `called` is the author's word for it,
 * where that is one of the palette's, of the study's, or of CSS.
 */
export interface Resolved {
  readonly hex?: Hex;
  readonly called?: string;
  readonly problem?: Problem;
}

/** What words mean besides the drawing's colours. */
export interface Vocabulary {
  /** The gallery's palette: name → CSS colour. */
  readonly palette: ReadonlyMap<string, string>;
  /** What the author calls colours of this flag. */
  readonly names?: ReadonlyMap<Hex, string>;
  /** What `try` calls the colours that it would put in the place of `replace`; asked for only where nothing else is meant. */
  readonly offer?: (replace: Hex) => readonly NamedColour[];
}

/** ΔE00 under which a colour that is not in the drawing is taken for one that is. */
const nearMiss = 2;

/** ΔE00 under which a colour of the drawing is proposed for one that is not in it. */
const alikeUnder = 25;

/**
 * Resolves `replace`: a name of the drawing first, then any CSS colour that is in the drawing. A name that CSS has too
 * is no question unless the drawing has both colours, and none where `palette` has it. `instead` is what shall take its
 * place: where the drawing has that colour, and none like `text`, the two were most likely exchanged.
 *
 * Problems: study/colour-absent; warnings study/colour-near, study/two-meanings.
 */
export function resolveReplace(
  text: string,
  colours: readonly NamedColour[],
  at: Whereabouts,
  palette: Vocabulary["palette"],
  instead?: string,
): Resolved {
  const named = findNamed(text, colours);
  const css = parseColour(text)?.hex;
  const hasCss = colours.some((colour) => colour.hex === css);
  if (named !== undefined) {
    const other = hasCss && findEntry(text, palette) === undefined ? css : undefined;
    return { hex: named.hex, ...warnTwoMeanings(text, named.hex, "the drawing", other, at) };
  }
  if (css === undefined) return { problem: absent(text, colours, at, instead) };
  if (hasCss) return { hex: css };
  const [nearest] = sortByDifference(colours, css);
  if (nearest === undefined || nearest.away >= nearMiss)
    return { problem: absent(text, colours, at, instead) };
  return {
    hex: nearest.hex,
    problem: report(
      "study/colour-near",
      at,
      {
        reason: `${quoteText(text)} is not in the drawing; ${nearest.hex} (${nearest.name}) is so near that it was taken.`,
        hint: `Type: ${JSON.stringify(nearest.hex)}`,
      },
      "warning",
    ),
  };
}

/**
 * Resolves `with`: what the study itself calls a colour, a name of the palette, of the drawing, of what `try` offers in
 * the place of `replace`, then any CSS colour. The words of the usual palette, which nobody chose for this flag, stand
 * behind those of the drawing. `colours` are those of the drawing that stay.
 *
 * Problems: study/wrong-colour; warning study/two-meanings, where CSS has the word for another colour and no palette has it.
 */
export function resolveWith(
  text: string,
  { palette, names, offer }: Vocabulary,
  at: Whereabouts,
  colours: readonly NamedColour[] = [],
  replace?: Hex,
): Resolved {
  const css = parseColour(text)?.hex;
  const own = findNamed(
    text,
    [...(names ?? [])].map(([hex, name]) => ({ hex, name })),
  );
  if (own !== undefined) return { hex: own.hex, called: own.name };
  const entry = findEntry(text, palette);
  const drawn = findNamed(text, colours);
  if (entry !== undefined && (drawn === undefined || !isUsualPalette(palette)))
    return { hex: entry.hex, called: entry.name };
  const isOurs = drawn === undefined && replace !== undefined && isOwnName(text.trim().toLowerCase());
  const offered = isOurs ? (offer?.(replace) ?? []) : [];
  const meant = drawn ?? findNamed(text, offered);
  if (meant !== undefined) {
    const other = entry === undefined ? css : undefined;
    const from = drawn === undefined ? "what “try” offers" : "the drawing";
    return { hex: meant.hex, called: meant.name, ...warnTwoMeanings(text, meant.hex, from, other, at) };
  }
  if (css === undefined) return { problem: unknown(text, palette, offered, at) };
  const called = names?.get(css) ?? (/^[a-z]+$/i.test(text.trim()) ? text.trim().toLowerCase() : undefined);
  return { hex: css, ...(called === undefined ? {} : { called }) };
}

function findNamed(text: string, colours: readonly NamedColour[]): NamedColour | undefined {
  const word = text.trim().toLowerCase();
  return colours.find(({ name }) => name.toLowerCase() === word);
}

function findEntry(text: string, palette: Vocabulary["palette"]): NamedColour | undefined {
  const word = text.trim().toLowerCase();
  const [name, colour] = [...palette].find(([one]) => one.toLowerCase() === word) ?? ["", ""];
  const hex = parseColour(colour)?.hex;
  return hex && { hex, name };
}

/** In our own words, what else `try` would put there is the best answer. */
function unknown(
  text: string,
  palette: Vocabulary["palette"],
  offered: readonly NamedColour[],
  at: Whereabouts,
): Problem {
  const names = [...new Set([...palette.keys(), ...offered.map(({ name }) => name)])];
  return report("study/wrong-colour", at, describeUnknownColour(text, names));
}

function warnTwoMeanings(
  text: string,
  hex: Hex,
  from: string,
  css: Hex | undefined,
  at: Whereabouts,
): { readonly problem?: Problem } {
  if (css === undefined || css === hex) return {};
  return {
    problem: report(
      "study/two-meanings",
      at,
      {
        reason: `${quoteText(text)} means ${hex} of ${from} here, not ${css} of CSS.`,
        hint: `Type ${JSON.stringify(hex)} or ${JSON.stringify(css)} to be sure.`,
      },
      "warning",
    ),
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
  return report("study/colour-absent", at, {
    reason: `The drawing has no colour ${quoteText(text)}.`,
    hint: `${nearest}Its colours are: ${list}.`,
  });
}

function has(text: string, colours: readonly NamedColour[]): boolean {
  const css = parseColour(text)?.hex;
  return findNamed(text, colours) !== undefined || colours.some(({ hex }) => hex === css);
}

function findNear(text: string, colours: readonly NamedColour[]): NamedColour | undefined {
  const word = text.trim().toLowerCase();
  const within = colours.filter(({ name }) => name.toLowerCase().split(" ").includes(word));
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
