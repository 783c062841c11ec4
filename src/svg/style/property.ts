// Floor 2, part of step 2. The properties that a drawing may have, each with the values that the measuring renderer and
// browsers draw alike; every value is written in one way.
import { parseColour } from "../../colour/colourtext.ts";
import { formatColour } from "../colourspelling.ts";
import { readDashes, readLength, readNumber, readShare, splitReference } from "./attributevalue.ts";

export interface Property {
  /** Whether elements inside have the value too (CSS and SVG property tables). */
  readonly inherits: boolean;
  /** The value where nothing is declared. */
  readonly initial: string;
  /** Returns a value as it is written, or undefined for one that is not of the set. */
  readonly read: (value: string) => string | undefined;
  /** What may be written, for a message. */
  readonly choice: string;
}

/**
 * Hex, rgb() and hsl() with numbers or with percentages, and names: what SVG 1.1 and CSS Color 3 have, and their spelling
 * without commas (CSS Color 4, sections 5.1, 5.2 and 7).
 */
const colourNotation =
  /^(?:#(?:[\da-f]{3,4}|[\da-f]{6}|[\da-f]{8})|[a-z]+|rgba?\(\s*(?:N(?:\s*,\s*N){2}|P(?:\s*,\s*P){2})(?:\s*,\s*[NP])?\s*\)|rgba?\(\s*(?:N(?:\s+N){2}|P(?:\s+P){2})(?:\s*\/\s*[NP])?\s*\)|hsla?\(\s*N(?:deg)?(?:\s*,\s*P){2}(?:\s*,\s*[NP])?\s*\)|hsla?\(\s*N(?:deg)?(?:\s+P){2}(?:\s*\/\s*[NP])?\s*\))$/;
const notation = new RegExp(
  colourNotation.source
    .replaceAll("[NP]", "N%?")
    .replaceAll("P", "N%")
    .replaceAll("N", "[+-]?(?:\\d{1,9}(?:\\.\\d{1,9})?|\\.\\d{1,9})"),
  "i",
);

function readColour(value: string): string | undefined {
  const colour = notation.test(value) ? parseColour(value) : undefined;
  return colour === undefined ? undefined : formatColour(colour.hex, colour.alpha01);
}

function readPaint(value: string): string | undefined {
  if (/^(?:none|currentcolor)$/i.test(value)) return value.toLowerCase() === "none" ? "none" : "currentColor";
  const reference = splitReference(value);
  if (reference === undefined) return readColour(value);
  if (reference === null) return undefined;
  const fallback = reference.rest === "" ? "" : readPaint(reference.rest);
  return fallback === undefined ? undefined : `${reference.url} ${fallback}`.trim();
}

function readUrl(value: string): string | undefined {
  if (/^none$/i.test(value)) return "none";
  const reference = splitReference(value);
  return reference?.rest === "" ? reference.url : undefined;
}

/** `to` says what some words are written as. */
function words(
  list: string,
  to: Readonly<Record<string, string>> = {},
): (value: string) => string | undefined {
  const known = new Map(list.split(" ").map((word) => [word.toLowerCase(), to[word] ?? word]));
  return (value) => known.get(value.toLowerCase());
}

/** Every order of fill, stroke and markers, or the beginning of one (SVG 2, section 13.8). */
function readOrder(value: string): string | undefined {
  const parts = value.toLowerCase().split(/\s+/);
  if (value.toLowerCase() === "normal") return "normal";
  const isOrder = parts.every(
    (part, at) => /^(?:fill|stroke|markers)$/.test(part) && parts.indexOf(part) === at,
  );
  return isOrder ? parts.join(" ") : undefined;
}

const property = (inherits: boolean, initial: string, read: Property["read"], choice: string): Property => ({
  inherits,
  initial,
  read,
  choice,
});

/** Renderers reckon in single floats: where dashes begin is lost in a large number. */
function readOffset(value: string): string | undefined {
  const length = readLength(value);
  return length !== undefined && Math.abs(Number.parseFloat(length)) <= 1e5 ? length : undefined;
}

/** A mitre of more than a thousand strokes' width comes to an end in another place in every program. */
function readMiter(value: string): string | undefined {
  const limit = readNumber(value, 1);
  return Number(limit) <= 1000 ? limit : undefined;
}

const colourChoice = "a hex colour, for example #f4c430";
const paintChoice = `${colourChoice}, none, or url(#id) of a gradient or pattern in this file`;
const share = "a number from 0 to 1";
const marker = property(true, "none", readUrl, "none, or url(#id) of a marker in this file");
const rule = property(true, "nonzero", words("nonzero evenodd"), "nonzero or evenodd");

/** By name. `marker` is a shorthand of three. */
export const properties: ReadonlyMap<string, Property> = new Map([
  ["fill", property(true, "#000000", readPaint, paintChoice)],
  ["fill-opacity", property(true, "1", readShare, share)],
  ["fill-rule", rule],
  ["stroke", property(true, "none", readPaint, paintChoice)],
  ["stroke-opacity", property(true, "1", readShare, share)],
  ["stroke-width", property(true, "1", (value) => readLength(value, 0), "a number, for example 2")],
  ["stroke-linecap", property(true, "butt", words("butt round square"), "butt, round or square")],
  ["stroke-linejoin", property(true, "miter", words("miter round bevel"), "miter, round or bevel")],
  ["stroke-miterlimit", property(true, "4", readMiter, "a number from 1 to 1000")],
  ["stroke-dasharray", property(true, "none", readDashes, "none, or numbers such as 4 2")],
  ["stroke-dashoffset", property(true, "0", readOffset, "a number up to 100000, for example 2")],
  ["color", property(true, "#000000", (value) => readCurrent(value), colourChoice)],
  ["opacity", property(false, "1", readShare, share)],
  ["stop-color", property(false, "#000000", (value) => readCurrent(value), colourChoice)],
  ["stop-opacity", property(false, "1", readShare, share)],
  [
    "display",
    property(
      false,
      "inline",
      words("none inline block inline-block list-item table flex grid", {
        block: "inline",
        "inline-block": "inline",
        "list-item": "inline",
        table: "inline",
        flex: "inline",
        grid: "inline",
      }),
      "none or inline",
    ),
  ],
  [
    "visibility",
    property(true, "visible", words("visible hidden collapse", { collapse: "hidden" }), "visible or hidden"),
  ],
  [
    "overflow",
    property(
      false,
      "visible",
      words("visible hidden scroll auto", { scroll: "hidden", auto: "visible" }),
      "visible or hidden",
    ),
  ],
  ["clip-path", property(false, "none", readUrl, "none, or url(#id) of a clipPath in this file")],
  ["clip-rule", rule],
  ["mask", property(false, "none", readUrl, "none, or url(#id) of a mask in this file")],
  ["mask-type", property(false, "luminance", words("luminance alpha"), "luminance or alpha")],
  ["marker", marker],
  ["marker-start", marker],
  ["marker-mid", marker],
  ["marker-end", marker],
  ["paint-order", property(true, "normal", readOrder, "normal, or fill, stroke and markers in some order")],
  [
    "vector-effect",
    property(false, "none", words("none"), "none: a stroke grows and shrinks with its shape"),
  ],
  ["color-interpolation", property(true, "sRGB", words("auto sRGB", { auto: "sRGB" }), "sRGB")],
]);

function readCurrent(value: string): string | undefined {
  return /^currentcolor$/i.test(value) ? "currentColor" : readColour(value);
}
