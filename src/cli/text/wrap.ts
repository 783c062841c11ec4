// Floor 11. Long text for a terminal: broken into lines between words, or cut to the columns that there are.
import { measureColumns, splitCharacters } from "../../problem/width.ts";

/** Columns that text of ours takes at most, where it may break. */
export const widest = 100;

/**
 * Returns `text` in lines of at most `columns`, each of them behind `indent`, broken between words, but not before a %.
 * A word that is longer than a line is cut.
 */
export function wrapText(text: string, columns = widest, indent = ""): readonly string[] {
  const room = columns - measureColumns(indent);
  const lines: string[] = [];
  let line = "";
  for (const word of text.split(/ (?!%)/).map((whole) => cutText(whole, room))) {
    const longer = line === "" ? word : `${line} ${word}`;
    if (measureColumns(longer) <= room) line = longer;
    else {
      lines.push(line);
      line = word;
    }
  }
  return [...lines, line].map((each) => `${indent}${each}`);
}

/** Returns `text`, cut to `columns` with “…” at its end where it is longer. */
export function cutText(text: string, columns: number): string {
  if (measureColumns(text) <= columns) return text;
  let cut = "";
  for (const character of splitCharacters(text)) {
    if (measureColumns(cut) + measureColumns(character) > columns - 1) break;
    cut += character;
  }
  return `${cut.trimEnd()}…`;
}

/**
 * Returns as many of `items` as have room in `columns`, parted by `mark`, and how many more there are. The first stands
 * there whatever its length, cut if it must be.
 *
 * Example: `listFitting(["red", "dark blue"], ", ", 14)` is `red and 1 more`.
 */
export function listFitting(items: readonly string[], mark: string, columns: number): string {
  let fitting: string | undefined;
  for (let count = 1; count <= items.length; count += 1) {
    const listed = items.slice(0, count).join(mark);
    if (measureColumns(listed) > columns) break;
    const text = count === items.length ? listed : `${listed} and ${items.length - count} more`;
    if (measureColumns(text) <= columns) fitting = text;
  }
  return fitting ?? cutText(items.slice(0, 1).join(mark), columns);
}
