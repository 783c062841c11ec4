// Floor 8. All studies of one author or with one tag: which there are, and where each has its page.

import type { StudyResult } from "../../analysis/result.ts";
import { compareText } from "../../problem/problem.ts";
import { slugOf } from "../../words/addressslug.ts";
import type { Format } from "../../words/format.ts";
import { formatStudyPath } from "../status.ts";

export type ShelfKind = "authors" | "tags";

/** One author or tag with the studies of it, in the order they were given. */
export interface Shelf {
  readonly slug: string;
  readonly name: string;
  readonly results: readonly StudyResult[];
}

/** The site path of a shelf. */
export function formatShelfPath(kind: ShelfKind, name: string): string {
  return `/${kind}/${slugOf(name)}/`;
}

/** The site path to which a shelf leads: a tag of one study has no page of its own, and leads to that study. */
export function placeShelf(kind: ShelfKind, shelf: Shelf): string {
  const [only] = shelf.results;
  return isLone(kind, shelf) && only ? formatStudyPath(only.study.slug) : formatShelfPath(kind, shelf.name);
}

/** Site path of the list of decisions. */
export const decisionsPath = "/decisions/";

/** Studies that were decided, the latest decision first; those whose day is not known stand by that of the study. */
export function listDecided(results: readonly StudyResult[]): readonly StudyResult[] {
  const dayOf = ({ study: { decision, date } }: StudyResult) => decision?.date ?? date ?? "";
  return results
    .filter(({ study: { status } }) => status === "adopted" || status === "declined")
    .sort((a, b) => compareText(dayOf(b), dayOf(a)) || compareText(a.study.slug, b.study.slug));
}

/** Whether it is the tag of one study. */
export function isLone(kind: ShelfKind, { results }: Pick<Shelf, "results">): boolean {
  return kind === "tags" && results.length === 1;
}

/** `1 study`, `12 studies`. */
export function countStudies(count: number, format: Format): string {
  return format.say("shelf.studies", { count });
}

/**
 * All shelves of a kind, in the order of the alphabet. Of the spellings of one name that is shown which most studies have,
 * then that of the oldest: no later study renames a shelf.
 */
export function listShelves(
  results: readonly StudyResult[],
  kind: ShelfKind,
  format: Format,
): readonly Shelf[] {
  const shelves = new Map<string, { names: Map<string, StudyResult[]>; results: Set<StudyResult> }>();
  for (const result of results) {
    for (const name of result.study[kind]) {
      const slug = slugOf(name);
      const shelf = shelves.get(slug) ?? { names: new Map<string, StudyResult[]>(), results: new Set() };
      const uses = shelf.names.get(name) ?? [];
      uses.push(result);
      shelf.names.set(name, uses);
      shelf.results.add(result);
      shelves.set(slug, shelf);
    }
  }
  const order = new Intl.Collator(format.language);
  return [...shelves]
    .map(([slug, { names, results: own }]) => ({ slug, name: chooseSpelling(names), results: [...own] }))
    .sort((first, second) => order.compare(first.name, second.name) || (first.slug < second.slug ? -1 : 1));
}

function chooseSpelling(names: ReadonlyMap<string, readonly StudyResult[]>): string {
  const weighed = Array.from(names, ([name, uses]) => {
    const [oldest = ""] = uses.map(({ study }) => `${study.date ?? "~"} ${study.slug}`).sort(compareText);
    return { name, count: uses.length, oldest };
  });
  const [first] = weighed.sort(
    (a, b) => b.count - a.count || compareText(a.oldest, b.oldest) || compareText(a.name, b.name),
  );
  return first?.name ?? "";
}
