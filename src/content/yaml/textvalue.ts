// Floor 5. The two kinds of text that a key may hold.
import { z } from "zod";

/** Words of 1 to `longest` characters in one line: where the author breaks it, a space stands. */
export function line(longest: number) {
  return z.string().overwrite(joinLines).min(1).max(longest);
}

/** Text of 1 to `longest` characters, in as many lines as the author likes. */
export function prose(longest: number) {
  return z.string().min(1).max(longest);
}

function joinLines(text: string): string {
  if (!/[\r\n]/.test(text)) return text;
  return text
    .split(/[\r\n]/)
    .map((part) => part.trim())
    .filter((part) => part !== "")
    .join(" ");
}
