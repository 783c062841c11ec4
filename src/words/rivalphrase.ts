// Floor 7. What is said of studies that propose a change for one and the same flag.
import type { Format } from "./format.ts";

const words = ["no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten"];

/** `two proposals for one flag`. */
export function countRivals(count: number, format: Format): string {
  return `${spellCount(count, format)} proposals for one flag`;
}

/** `one of two proposals for it`, said beside the name of the flag. */
export function describeRival(count: number, format: Format): string {
  return `one of ${spellCount(count, format)} proposals for it`;
}

/** Numbers up to ten as words (common practice, no source). */
function spellCount(count: number, format: Format): string {
  return words[count] ?? format.number(count, 0);
}
