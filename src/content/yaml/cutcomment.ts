// Floor 5. A text that YAML cuts off at a #, which begins a comment where a space stands before it.
import { quoteText } from "../../problem/quote.ts";
import type { Slip } from "./brokenline.ts";
import { quoteAnew } from "./innerquote.ts";

/** Where words with a # are likely to be meant. Behind colours, dates and words from a list a comment is a comment. */
const textPaths =
  /^(?:title|flag|decision|symbolism|description|society|options\.\d+\.note|credit\.(?:title|author))$/;

/**
 * Returns what a comment takes away from the plain text at `path`, or undefined where it is most likely a comment: two
 * spaces or more stand before it. `line` holds the end of the text in `column`, from 1; the text begins in `start`, from 1
 * too, or on an earlier line, which is undefined.
 */
export function findComment(
  path: string,
  line: string,
  column: number,
  start: number | undefined,
): Slip | undefined {
  if (!textPaths.test(path)) return undefined;
  const rest = line.slice(column - 1);
  const words = /^ #+/.test(rest) ? rest.replace(/^ #+/, "").trim() : "";
  if (words === "") return undefined;
  const typed =
    start === undefined
      ? "Put the whole text in double quotes."
      : `Type: ${line.slice(0, start - 1).trim()} ${quoteAnew(line.slice(start - 1).trim())}`;
  return {
    column: column + 1,
    length: rest.trim().length,
    reason: `Behind a space # begins a comment: ${quoteText(words)} is not read.`,
    hint: `${typed}\nIf it is a comment, put two spaces before the #.`,
  };
}
