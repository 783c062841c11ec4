// Floor 7. What is said of studies that propose a change for one and the same flag.
import type { Format } from "./format.ts";

const words = ["no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten"];

/** `two proposals for one flag`; where a page shows some, `80 proposals for one flag, the first 24 shown`. */
export function countRivals(shown: number, all: number, format: Format): string {
  if (all < 2) return all === 0 ? "no study of it yet" : "one proposal for this flag";
  const some = shown === all ? "" : `, the first ${format.number(shown, 0)} shown`;
  return `${spellCount(all, format)} proposals for one flag${some}`;
}

/** `one of two proposals for it`, said beside the name of the flag. */
export function describeRival(count: number, format: Format): string {
  return `one of ${spellCount(count, format)} proposals for it`;
}

/** Numbers up to ten as words (common practice, no source). */
function spellCount(count: number, format: Format): string {
  return words[count] ?? format.number(count, 0);
}
