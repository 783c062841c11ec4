// Floor 6. Whose a study is, from when, and what it is about: the lines under its title.
import type { Study } from "../../study/study.ts";
import type { Linker } from "../address.ts";
import type { Format } from "./format.ts";
import { formatShelfPath } from "./shelf.ts";

export interface Byline {
  readonly date: { readonly iso: string; readonly text: string } | undefined;
  readonly authors: string | undefined;
  readonly names: readonly string[];
  /** The authors in pieces, each with the way to all their studies. */
  readonly people: readonly Linked[];
  readonly tags: readonly { readonly text: string; readonly address: string }[];
}

/** A piece of text; what stands between two links has no address. */
export interface Linked {
  readonly text: string;
  readonly address: string | undefined;
}

/** Authors, date and tags of a study, each with the way to its shelf. */
export function presentByline({ authors, date, tags }: Study, link: Linker, format: Format): Byline {
  return {
    date: date === undefined ? undefined : { iso: date, text: format.date(date) },
    authors: authors.length === 0 ? undefined : format.list(authors),
    names: authors,
    people: format.listParts(authors).map(({ text, at }) => ({
      text,
      address: at === undefined ? undefined : link(formatShelfPath("authors", authors[at] ?? text)),
    })),
    tags: tags.map((tag) => ({ text: tag, address: link(formatShelfPath("tags", tag)) })),
  };
}
