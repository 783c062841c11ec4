// Floor 8. Whose a study is, from when, and what it is about: the lines under its title.
import type { StudyResult } from "../../analysis/result.ts";
import type { Study } from "../../content/study/study.ts";
import { slugOf } from "../../words/addressslug.ts";
import type { Format } from "../../words/format.ts";
import type { Linker } from "../address.ts";
import { type Linked, linkList } from "../linklist.ts";
import { formatShelfPath } from "../shelf/shelf.ts";

export interface Byline {
  readonly date: { readonly iso: string; readonly text: string } | undefined;
  readonly authors: string | undefined;
  readonly names: readonly string[];
  /** The authors in pieces, each with the way to all their studies. */
  readonly people: readonly Linked[];
  /** A tag that no other study has leads to the index of all. */
  readonly tags: readonly { readonly text: string; readonly address: string }[];
}

/** Authors, date and tags of a study, each with the way to its shelf. `all` are the studies of the gallery. */
export function presentByline(
  { authors, date, tags }: Study,
  link: Linker,
  format: Format,
  all: readonly StudyResult[],
): Byline {
  const counts = countTags(all);
  return {
    date: date === undefined ? undefined : { iso: date, text: format.date(date) },
    authors: authors.length === 0 ? undefined : format.list(authors),
    names: authors,
    people: linkPeople(authors, link, format),
    tags: tags.map((tag) => ({
      text: tag,
      address: link((counts.get(slugOf(tag)) ?? 1) > 1 ? formatShelfPath("tags", tag) : "/tags/"),
    })),
  };
}

/** Names in pieces, each with the way to all studies of that author; of `known` alone, where some have none. */
export function linkPeople(
  authors: readonly string[],
  link: Linker,
  format: Format,
  known?: ReadonlySet<string>,
): readonly Linked[] {
  const people = authors.map((text) => {
    const hasShelf = known?.has(slugOf(text)) !== false;
    return { text, address: hasShelf ? link(formatShelfPath("authors", text)) : undefined };
  });
  return linkList(people, format);
}

/** How many studies have each tag, by its slug; counted once for a gallery. */
const counted = new WeakMap<readonly StudyResult[], ReadonlyMap<string, number>>();

function countTags(all: readonly StudyResult[]): ReadonlyMap<string, number> {
  const known = counted.get(all);
  if (known !== undefined) return known;
  const counts = new Map<string, number>();
  for (const { study } of all)
    for (const slug of new Set(study.tags.map(slugOf))) counts.set(slug, (counts.get(slug) ?? 0) + 1);
  counted.set(all, counts);
  return counts;
}
