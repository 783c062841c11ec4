// Floor 7. The messages of what heraldry calls the colours that have lines.
import type { BasicWord } from "../colour/basicword.ts";
import type { WordId } from "./en/all.ts";

/** All colours with lines, as the legend names them: what heraldry calls them stands behind. */
export const signIds = {
  red: "sheet.red",
  blue: "sheet.blue",
  green: "sheet.green",
  black: "sheet.black",
  purple: "sheet.purple",
  yellow: "sheet.yellow",
  white: "sheet.white",
  orange: "sheet.orange",
  brown: "sheet.brown",
} as const satisfies Partial<Record<BasicWord, WordId>>;
