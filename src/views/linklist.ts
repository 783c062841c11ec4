// Floor 8. A list of links in a sentence, in pieces: the links, and what the language puts between them.
import type { Format } from "../words/format.ts";

/** A piece of text; what stands between two links has no address. */
export interface Linked {
  readonly text: string;
  readonly address: string | undefined;
}

/** `A, B, and C` in pieces; as `unit`, `A, B, C`. */
export function linkList(
  items: readonly Linked[],
  format: Format,
  type: "conjunction" | "unit" = "conjunction",
): readonly Linked[] {
  const texts = items.map(({ text }) => text);
  return format.listParts(texts, type).map(({ text, at }) => {
    const address = at === undefined ? undefined : items[at]?.address;
    return { text, address };
  });
}
