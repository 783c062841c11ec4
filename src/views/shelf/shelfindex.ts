// Floor 8. The ways to all authors and tags, and the pages that list each with its studies.
import type { StudyResult } from "../../analysis/result.ts";
import type { Gallery } from "../../content/study/study.ts";
import type { WordId } from "../../words/en/all.ts";
import type { Format } from "../../words/format.ts";
import { verdictIds } from "../../words/verdict.ts";
import { type Linker, linkFrom } from "../address.ts";
import { pictureFirst } from "../linkview.ts";
import { type Frame, presentFrame } from "../pageframe.ts";
import { divideList, type ListPage, type PagesView, presentPages, titlePage } from "../paging.ts";
import { type Plate, presentPair } from "../plate.ts";
import { formatStudyPath } from "../status.ts";
import { decisionsPath, listDecided, listShelves, placeShelf, type Shelf, type ShelfKind } from "./shelf.ts";

/** One way to a shelf. */
export interface ShelfLink {
  readonly slug: string;
  readonly name: string;
  readonly address: string;
  readonly count: string;
}

/** The way to the index of one kind: `26 tags`. */
export interface ShelfIndexLink {
  readonly text: string;
  readonly address: string;
}

/** The index of all authors, or of all tags. */
export interface ShelfIndex {
  /** The page's folder in the site, without slashes around it. */
  readonly folder: string;
  readonly frame: Frame;
  readonly title: string;
  readonly lede: string;
  readonly empty: string;
  /** Tags are many, and a study stands under several: its flags alone stand for it. */
  readonly isDense: boolean;
  readonly entries: readonly (ShelfLink & {
    readonly studies: readonly IndexedStudy[];
    /** How many more the shelf's own page has; undefined where all are here. */
    readonly more: string | undefined;
  })[];
  readonly pages: PagesView | undefined;
}

/** A study in the index, with both its flags. */
export interface IndexedStudy {
  readonly title: string;
  readonly flag: string | undefined;
  readonly address: string;
  readonly verdict: string;
  readonly plates: readonly [Plate, Plate];
}

const kinds = ["authors", "tags"] as const;
const wordIds = {
  authors: {
    count: "shelf.authorCount",
    heading: "shelf.authors",
    lede: "shelf.authorsLede",
    empty: "shelf.noAuthors",
  },
  tags: { count: "shelf.tagCount", heading: "shelf.tags", lede: "shelf.tagsLede", empty: "shelf.noTags" },
} as const satisfies Record<ShelfKind, Readonly<Record<string, WordId>>>;
/** Studies of a shelf in the index. Our own judgement: the page of the shelf has all. */
const mostTitles = 24;

/** The ways to the indexes and to the decisions; what has nothing in it is left out. */
export function linkIndexes(
  results: readonly StudyResult[],
  link: Linker,
  format: Format,
): readonly ShelfIndexLink[] {
  const counts = [
    ...kinds.map(
      (kind) => [listShelves(results, kind, format).length, wordIds[kind].count, `/${kind}/`] as const,
    ),
    [listDecided(results).length, "shelf.decisionCount", decisionsPath] as const,
  ];
  return counts.flatMap(([count, id, path]) =>
    count === 0 ? [] : { text: format.say(id, { count }), address: link(path) },
  );
}

/** The ways to the shelves of a kind that most studies stand on, in the order of the alphabet, and how many more there are. */
export function linkShelves(
  results: readonly StudyResult[],
  kind: ShelfKind,
  most: number,
  link: Linker,
  format: Format,
): { readonly links: readonly ShelfLink[]; readonly hidden: number } {
  const shelves = listShelves(results, kind, format);
  const shown = new Set([...shelves].sort((a, b) => b.results.length - a.results.length).slice(0, most));
  const links = shelves
    .filter((shelf) => shown.has(shelf))
    .map((shelf) => linkShelf(shelf, kind, link, format));
  return { links, hidden: shelves.length - links.length };
}

function linkShelf(shelf: Shelf, kind: ShelfKind, link: Linker, format: Format): ShelfLink {
  const { slug, name, results } = shelf;
  return { slug, name, address: link(placeShelf(kind, shelf)), count: format.number(results.length, 0) };
}

/** The pages `/authors/` and `/tags/`. */
export function presentShelfIndexes(
  results: readonly StudyResult[],
  gallery: Gallery,
  format: Format,
): readonly ShelfIndex[] {
  return kinds.flatMap((kind) => {
    const shelves = listForIndex(results, kind, format);
    return divideList(`/${kind}/`, shelves).map((page) => presentIndex(kind, page, results, gallery, format));
  });
}

/** Tags that most studies have first: most have but one. Authors as in the alphabet. */
function listForIndex(results: readonly StudyResult[], kind: ShelfKind, format: Format): readonly Shelf[] {
  const shelves = listShelves(results, kind, format);
  return kind === "tags" ? [...shelves].sort((a, b) => b.results.length - a.results.length) : shelves;
}

function presentIndex(
  kind: ShelfKind,
  page: ListPage<Shelf>,
  results: readonly StudyResult[],
  gallery: Gallery,
  format: Format,
): ShelfIndex {
  const { path, items } = page;
  const link = linkFrom(path);
  const pages = presentPages(`/${kind}/`, page, link, format);
  const ids = wordIds[kind];
  const [heading, lede] = [format.say(ids.heading), format.say(ids.lede)];
  return {
    folder: path.slice(1, -1),
    frame: presentFrame(
      {
        path,
        title: titlePage(heading, pages, format),
        description: lede,
        section: "studies",
        ...pictureFirst(results, gallery, format),
      },
      gallery,
      format,
    ),
    title: heading,
    lede,
    empty: format.say(ids.empty),
    isDense: kind === "tags",
    entries: items.map((shelf) => ({
      ...linkShelf(shelf, kind, link, format),
      studies: shelf.results.slice(0, mostTitles).map((result) => presentIndexed(result, link, format)),
      more:
        shelf.results.length > mostTitles
          ? format.say("front.more", { count: shelf.results.length - mostTitles })
          : undefined,
    })),
    pages,
  };
}

function presentIndexed(result: StudyResult, link: Linker, format: Format): IndexedStudy {
  const { title, flag, slug } = result.study;
  return {
    title,
    flag,
    address: link(formatStudyPath(slug)),
    verdict: format.say(verdictIds[result.comparison.verdict]),
    plates: presentPair(result, link, format),
  };
}
