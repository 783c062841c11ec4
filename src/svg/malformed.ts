// Floor 2, part of step 1. What is usually wrong with a file that is no XML, and how to mend it.
import type { Place } from "../problem/problem.ts";

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
