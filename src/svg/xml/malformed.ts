// Floor 2, part of step 1. What is usually wrong with a file that is no XML, and how to mend it.
import type { Place } from "../../problem/problem.ts";
import { quoteText } from "../../problem/quote.ts";
import type { XmlElement } from "./xmlnode.ts";

/** How far the parser was when it gave up. `closed` is the element it closed last, `open` the innermost still open. */
export interface Halt {
  readonly lines: readonly string[];
  readonly here: Place;
  readonly closed: XmlElement | undefined;
  readonly open: XmlElement | undefined;
  /** Whether no element was opened at all. */
  readonly isEmpty: boolean;
}

/** Returns what is wrong with a file that the XML parser gave up on, from its sentence (`cause`), where, and the remedy. */
export function describeMalformed(
  cause: string,
  halt: Halt,
): { readonly place: Place; readonly reason: string; readonly hint: string } {
  const { here, open, closed, lines } = halt;
  if (halt.isEmpty && /outside of root|must contain a root/.test(cause)) return describeText(lines);
  if (/outside of root/.test(cause)) {
    const reason = "Something stands behind the end of the drawing.";
    return {
      place: findRest(lines, here),
      reason,
      hint: "Delete what follows the last closing tag, </svg>.",
    };
  }
  const tag = findTag(lines, here);
  if (/unexpected close tag/.test(cause) && closed !== undefined && tag !== undefined) {
    const name = nameTag(closed);
    const reason = `${tag.text} closes while <${name}> of line ${closed.place.line} is still open.`;
    return { place: tag.place, reason, hint: `Put </${name}> where that element ends, before ${tag.text}.` };
  }
  if (/unclosed tag/.test(cause) && open !== undefined) {
    const name = nameTag(open);
    const reason = `The file ends while <${name}> of line ${open.place.line} is still open.`;
    return {
      place: open.place,
      reason,
      hint: `It may be cut off: export it again, or close it with </${name}>.`,
    };
  }
  return { place: here, reason: `The file is not well-formed XML: ${cause}.`, hint: hintFor(cause) };
}

/** A file without an element: its first words say best what it is. */
function describeText(lines: readonly string[]): ReturnType<typeof describeMalformed> {
  const line = Math.max(
    0,
    lines.findIndex((each) => each.trim() !== ""),
  );
  const text = (lines[line] ?? "").trim();
  const begin = text.length > 30 ? `${text.slice(0, 30).trimEnd()}…` : text;
  return {
    place: { line: line + 1, column: (lines[line] ?? "").search(/\S/) + 1 },
    reason: `The file is not an SVG drawing: it begins with ${quoteText(begin)}.`,
    hint: "Put the drawing itself here; an SVG file begins with <svg, perhaps with an <?xml line before it.",
  };
}

/** Returns where that begins which stands behind the last tag before `here`. */
function findRest(lines: readonly string[], here: Place): Place {
  for (let line = Math.min(here.line, lines.length); line >= 1; line -= 1) {
    const text = lines[line - 1] ?? "";
    const end = text.lastIndexOf(">") + 1;
    const rest = text.slice(end).search(/\S/);
    if (rest >= 0 && (end > 0 || (lines[line - 2] ?? "").trimEnd().endsWith(">")))
      return { line, column: end + rest + 1 };
    if (end > 0) break;
  }
  return here;
}

function nameTag({ prefix, local }: XmlElement): string {
  return prefix === "" ? local : `${prefix}:${local}`;
}

/** Returns the closing tag that ends at `here`, on its line or one before, or undefined. */
function findTag(
  lines: readonly string[],
  here: Place,
): { readonly text: string; readonly place: Place } | undefined {
  const line = lines[here.line - 1] ?? "";
  const column = line.lastIndexOf("</", here.column - 1) + 1;
  const name = /^<\/\s*([^\s>]+)/.exec(line.slice(column - 1))?.[1];
  if (column === 0 || name === undefined) return undefined;
  return { text: `</${name}>`, place: { line: here.line, column, length: name.length + 3 } };
}

/** Returns what to do about a file that the XML parser gave up on, from its sentence. */
export function hintFor(cause: string): string {
  if (/unbound namespace prefix/.test(cause)) {
    return 'Declare the prefix on <svg>, for xlink: xmlns:xlink="http://www.w3.org/1999/xlink"; or write href without a prefix.';
  }
  if (/undefined entity|entity/i.test(cause))
    return "Write &amp; for an ampersand, and the character itself for any other entity.";
  if (/unclosed|unexpected end|unmatched|close tag|closing tag/i.test(cause))
    return "Check that every element that is opened is closed, in the right order; the file may be cut off.";
  if (/duplicate attribute/.test(cause)) return "Keep only one of the two attributes.";
  if (/quote|attribute without value/i.test(cause)) return 'Write every attribute as name="value".';
  return "Export the drawing again as SVG, or mend the line by hand.";
}

/** A carriage return that was written as a character reference is a line end too. */
export function evenLines(text: string): string {
  return text.replace(/\r\n?/g, "\n");
}

/** Returns where the first ampersand stands that begins no reference: what comes behind it is read as its name. */
export function findStrayAmpersand(text: string): Place | undefined {
  const aside =
    /<!--[\s\S]*?(?:-->|$)|<!\[CDATA\[[\s\S]*?(?:\]\]>|$)|<\?[\s\S]*?(?:\?>|$)|&(?!#\d+;|#x[\da-fA-F]+;|[\p{L}_:][\p{L}\p{N}\p{M}_:.-]*;)/gu;
  for (const found of text.matchAll(aside)) {
    if (found[0] !== "&") continue;
    const before = text.slice(0, found.index);
    const lineStart = before.lastIndexOf("\n") + 1;
    return {
      line: before.split("\n").length,
      column: found.index - lineStart + 1,
    };
  }
  return undefined;
}
