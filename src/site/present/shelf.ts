// Floor 6. All studies of one author or with one tag: index pages, and the ways to them.
import type { StudyResult } from "../../study/result.ts";
import type { Gallery } from "../../study/study.ts";
import { type Linker, linkFrom } from "../address.ts";
import { type Card, presentCard } from "./card.ts";
import type { Format } from "./format.ts";
import { type Frame, presentFrame } from "./page.ts";
import { slugOf } from "./slug.ts";

export type ShelfKind = "authors" | "tags";

export interface ShelfPage {
  /** The page's folder in the site, without slashes around it. */
  readonly folder: string;
  readonly frame: Frame;
  readonly kind: string;
  readonly name: string;
  readonly count: string;
  readonly cards: readonly Card[];
}

/** One way to a shelf. */
export interface ShelfLink {
  readonly slug: string;
  readonly name: string;
  readonly address: string;
  readonly count: string;
}

interface Shelf {
  readonly slug: string;
  readonly name: string;
  readonly results: readonly StudyResult[];
}

const kinds: Readonly<Record<ShelfKind, string>> = { authors: "Author", tags: "Tag" };

/** The site path of a shelf. */
export function formatShelfPath(kind: ShelfKind, name: string): string {
  return `/${kind}/${slugOf(name)}/`;
}

/** The page of every author and of every tag. `results` are in the order of the front page. */
export function presentShelves(
  results: readonly StudyResult[],
  gallery: Gallery,
  format: Format,
): readonly ShelfPage[] {
  return (["authors", "tags"] as const).flatMap((kind) =>
    listShelves(results, kind, format).map((shelf) => presentShelf(kind, shelf, gallery, format)),
  );
}

/** The ways to all shelves of a kind, in the order of the alphabet. */
export function linkShelves(
  results: readonly StudyResult[],
  kind: ShelfKind,
  link: Linker,
  format: Format,
): readonly ShelfLink[] {
  return listShelves(results, kind, format).map(({ slug, name, results: own }) => ({
    slug,
    name,
    address: link(formatShelfPath(kind, name)),
    count: format.number(own.length, 0),
  }));
}

function presentShelf(kind: ShelfKind, shelf: Shelf, gallery: Gallery, format: Format): ShelfPage {
  const path = formatShelfPath(kind, shelf.name);
  const link = linkFrom(path);
  const count = countStudies(shelf.results.length, format);
  const what = kind === "authors" ? `by ${shelf.name}` : `tagged ${shelf.name}`;
  return {
    folder: path.slice(1, -1),
    frame: presentFrame(
      {
        path,
        title: shelf.name,
        description: `${count} ${what}: one colour changed, every edge measured.`,
        section: "studies",
      },
      gallery,
      format,
    ),
    kind: kinds[kind],
    name: shelf.name,
    count,
    cards: shelf.results.map((result) => presentCard(result, link, format)),
  };
}

/** `1 study`, `12 studies`. */
export function countStudies(count: number, format: Format): string {
  return `${format.number(count, 0)} ${count === 1 ? "study" : "studies"}`;
}

/** Names that differ in case alone are one; the first spelling is shown. */
function listShelves(results: readonly StudyResult[], kind: ShelfKind, format: Format): readonly Shelf[] {
  const shelves = new Map<string, { name: string; results: StudyResult[] }>();
  for (const result of results) {
    for (const name of result.study[kind]) {
      const slug = slugOf(name);
      const shelf = shelves.get(slug) ?? { name, results: [] };
      if (!shelf.results.includes(result)) shelf.results.push(result);
      shelves.set(slug, shelf);
    }
  }
  const order = new Intl.Collator(format.language);
  return [...shelves]
    .map(([slug, shelf]) => ({ slug, ...shelf }))
    .sort((first, second) => order.compare(first.name, second.name) || (first.slug < second.slug ? -1 : 1));
}
