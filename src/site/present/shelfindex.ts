// Floor 6. The ways to all authors and tags: on the front page the most used, on a page of its own each with its studies.
import type { StudyResult } from "../../study/result.ts";
import type { Gallery } from "../../study/study.ts";
import { type Linker, linkFrom } from "../address.ts";
import type { Format } from "./format.ts";
import { pictureFirst } from "./linkpicture.ts";
import { type Frame, presentFrame } from "./page.ts";
import { type Plate, presentPair } from "./plate.ts";
import { listShelves, placeShelf, type ShelfKind } from "./shelf.ts";
import { formatStudyPath } from "./status.ts";

/** One way to a shelf. */
export interface ShelfLink {
  readonly slug: string;
  readonly name: string;
  readonly address: string;
  readonly count: string;
}

/** The shelves of one kind on the front page. */
export interface ShelfGroup {
  readonly kind: ShelfKind;
  readonly heading: string;
  readonly address: string;
  readonly links: readonly ShelfLink[];
  /** How many more the index has; undefined where all are here. */
  readonly more: string | undefined;
}

/** The index of all authors, or of all tags. */
export interface ShelfIndex {
  readonly folder: ShelfKind;
  readonly frame: Frame;
  readonly title: string;
  readonly lede: string;
  readonly empty: string;
  readonly entries: readonly (ShelfLink & {
    readonly studies: readonly IndexedStudy[];
  })[];
}

/** A study in the index, with both its flags. */
export interface IndexedStudy {
  readonly title: string;
  readonly flag: string | undefined;
  readonly address: string;
  readonly plates: readonly [Plate, Plate];
}

const kinds = ["tags", "authors"] as const;
const headings: Readonly<Record<ShelfKind, string>> = { authors: "Authors", tags: "Tags" };
const ledes: Readonly<Record<ShelfKind, string>> = {
  authors: "Everyone who has put a study forward here, with what they propose.",
  tags: "What the studies are about, in the words of their authors.",
};
const empties: Readonly<Record<ShelfKind, string>> = {
  authors: "No study names an author yet. The first name will stand here.",
  tags: "No study has a tag yet. Authors add them in their study files.",
};
/** Shelves of a kind on the front page. Our own judgement: more are a page, not a list. */
const mostLinks = 40;

/** Both kinds for the front page, the most used ones in the order of the alphabet; a kind without any is left out. */
export function presentShelfGroups(
  results: readonly StudyResult[],
  link: Linker,
  format: Format,
): readonly ShelfGroup[] {
  return kinds.flatMap((kind) => {
    const shelves = listShelves(results, kind, format);
    if (shelves.length === 0) return [];
    const most = [...shelves].sort((a, b) => b.results.length - a.results.length).slice(0, mostLinks);
    const shown = new Set(most.map(({ slug }) => slug));
    const hidden = shelves.length - most.length;
    return {
      kind,
      heading: headings[kind],
      address: link(`/${kind}/`),
      links: linkShelves(results, kind, link, format).filter(({ slug }) => shown.has(slug)),
      more: hidden === 0 ? undefined : `${format.number(hidden, 0)} more`,
    };
  });
}

/** The ways to all shelves of a kind, in the order of the alphabet. */
export function linkShelves(
  results: readonly StudyResult[],
  kind: ShelfKind,
  link: Linker,
  format: Format,
): readonly ShelfLink[] {
  return listShelves(results, kind, format).map((shelf) => ({
    slug: shelf.slug,
    name: shelf.name,
    address: link(placeShelf(kind, shelf)),
    count: format.number(shelf.results.length, 0),
  }));
}

/** The pages `/authors/` and `/tags/`. */
export function presentShelfIndexes(
  results: readonly StudyResult[],
  gallery: Gallery,
  format: Format,
): readonly ShelfIndex[] {
  return kinds.map((kind) => {
    const path = `/${kind}/`;
    const link = linkFrom(path);
    const shelves = listShelves(results, kind, format);
    const links = linkShelves(results, kind, link, format);
    const [title, lede] = [headings[kind], ledes[kind]];
    return {
      folder: kind,
      frame: presentFrame(
        { path, title, description: lede, section: "studies", ...pictureFirst(results, gallery, format) },
        gallery,
        format,
      ),
      title,
      lede,
      empty: empties[kind],
      entries: links.map((own, index) => ({
        ...own,
        studies: (shelves[index]?.results ?? []).map((result) => presentIndexed(result, link, format)),
      })),
    };
  });
}

function presentIndexed(result: StudyResult, link: Linker, format: Format): IndexedStudy {
  const { title, flag, slug } = result.study;
  return {
    title,
    flag,
    address: link(formatStudyPath(slug)),
    plates: presentPair(result, link, format),
  };
}
