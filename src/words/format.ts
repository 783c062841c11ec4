// Floor 7. Numbers, dates and lists as finished text in the gallery's language.
import { formatContrast, formatDifference, formatPercent, formatShare } from "../measure/percenttext.ts";
import { directionOf, isolate, isolateForeign, markForeign } from "./direction.ts";
import { english } from "./en/all.ts";
import { createSay, noOwnWords, type OwnWords, type Say, type Worded } from "./say.ts";

/** Says words and numbers in one language. */
export interface Format {
  readonly language: string;
  readonly direction: "ltr" | "rtl";
  /** A message of the catalogue. */
  readonly say: Say;
  /** A fraction 0 to 1 as whole percent, with more decimals short of 0 and 100; `no edges` for null. */
  share(fraction: number | null): string;
  /** The same of a number already in percent, as whole percent unless `decimals` are asked for. */
  percent(percent: number | null, decimals?: number): string;
  /** A contrast in percent, never rounded across a grade. */
  contrast(contrast: number, decimals?: number): string;
  /** A ΔE00, never rounded across `limit`. */
  difference(deltaE00: number, limit: number): string;
  number(value: number, decimals: number): string;
  /** An ISO date, spelled out. */
  date(iso: string): string;
  /** A text of others between ours: it keeps its own order where it runs the other way. */
  piece(text: string): string;
  list(items: readonly string[]): string;
  /** The same in pieces, so that items can be links; `at` is the place of an item, undefined for what stands between. A list of type `unit` has no “and”. */
  listParts(
    items: readonly string[],
    type?: "conjunction" | "unit",
  ): readonly { readonly text: string; readonly at: number | undefined }[];
}

/** To make one takes far longer than to use it, and a build asks for the same again and again. */
const made = new WeakMap<OwnWords, Map<string, Format>>();

/**
 * Returns the format of `language`, a BCP 47 tag; throws RangeError for any other text. `own` are words of the gallery in
 * place of ours.
 */
export function createFormat(language: string, own = noOwnWords): Format {
  const known = made.get(own) ?? new Map<string, Format>();
  const format = known.get(language) ?? buildFormat(language, own);
  made.set(own, known.set(language, format));
  return format;
}

/** The format of a gallery. */
export function formatOf({ language, words }: Worded): Format {
  return createFormat(language, words);
}

function buildFormat(language: string, own: OwnWords): Format {
  const say = createSay(language, own);
  const direction = directionOf(language);
  const write = (value: number, decimals: number) => formatNumber(language, value, decimals);
  const isRightToLeft = direction === "rtl";
  const piece = isRightToLeft ? isolateForeign : isolate;
  const inPercent = (value: number, decimals: number) => {
    const text = writePercent(language, value, decimals);
    return isRightToLeft ? markForeign(text) : text;
  };
  const calendar = new Intl.DateTimeFormat(language, { dateStyle: "long", timeZone: "UTC" });
  const list = new Intl.ListFormat(language, { type: "conjunction" });
  const units = new Intl.ListFormat(language, { type: "unit" });
  return {
    language,
    direction,
    say,
    share: (fraction) => (fraction === null ? say("number.noEdges") : formatShare(fraction, 0, inPercent)),
    percent: (percent, decimals = 0) =>
      percent === null ? say("number.noEdges") : formatPercent(percent, decimals, inPercent),
    contrast: (contrast, decimals = 0) => formatContrast(contrast, decimals, inPercent),
    difference: (deltaE00, limit) => formatDifference(deltaE00, limit, write),
    number: write,
    date: (iso) => calendar.format(new Date(`${iso}T00:00:00Z`)),
    piece,
    list: (items) => list.format(isRightToLeft ? items.map(piece) : items),
    listParts: (items, type = "conjunction") =>
      splitList((type === "unit" ? units : list).formatToParts(items)),
  };
}

/** The English words with the apostrophe that every terminal has. */
const straightQuoted: OwnWords = Object.fromEntries(
  Object.entries<string>(english).map(([id, message]) => [id, message.replaceAll("’", "'")]),
);

/** How the command and files for machines say numbers: in plain English, whatever the gallery's language. */
export const plainFormat: Format = {
  ...createFormat("en", straightQuoted),
  share: (fraction) => formatShare(fraction, 0),
  percent: (percent, decimals = 0) => formatPercent(percent, decimals),
  contrast: (contrast, decimals = 0) => formatContrast(contrast, decimals),
};

function splitList(parts: ReturnType<Intl.ListFormat["formatToParts"]>): ReturnType<Format["listParts"]> {
  const elements = parts.filter(({ type }) => type === "element");
  return parts.map((part) => {
    const at = elements.indexOf(part);
    return { text: part.value, at: at < 0 ? undefined : at };
  });
}

/** To make one takes far longer than to use it, and a site has thousands of numbers. */
const numbers = new Map<string, Intl.NumberFormat>();

function writePercent(language: string, percent: number, decimals: number): string {
  const key = `${language} ${decimals} %`;
  const digits = { minimumFractionDigits: decimals, maximumFractionDigits: decimals };
  const format = numbers.get(key) ?? new Intl.NumberFormat(language, { style: "percent", ...digits });
  numbers.set(key, format);
  return format.format(percent / 100);
}

function formatNumber(language: string, value: number, decimals: number): string {
  const key = `${language} ${decimals}`;
  const format =
    numbers.get(key) ??
    new Intl.NumberFormat(language, {
      minimumFractionDigits: decimals,
      maximumFractionDigits: decimals,
      useGrouping: false,
      // A rounded −0.3 is no “-0”.
      signDisplay: "negative",
    });
  numbers.set(key, format);
  return format.format(value);
}
