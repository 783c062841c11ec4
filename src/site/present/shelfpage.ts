// Floor 6. The page of one author or of one tag: all studies of it, as the front page shows them.
import type { StudyResult } from "../../study/result.ts";
import type { Gallery } from "../../study/study.ts";
import { linkFrom } from "../address.ts";
import { type Card, presentCard } from "./card.ts";
import type { Format } from "./format.ts";
import { pictureFirst } from "./linkpicture.ts";
import { type Frame, presentFrame } from "./page.ts";
import { recordList } from "./record.ts";
import { countStudies, formatShelfPath, isLone, listShelves, type Shelf, type ShelfKind } from "./shelf.ts";

export interface ShelfPage {
  /** The page's folder in the site, without slashes around it. */
  readonly folder: string;
  readonly frame: Frame;
  /** What it is a page of, and the way to the index of all of them. */
  readonly kind: { readonly text: string; readonly address: string; readonly all: string };
  readonly name: string;
  readonly count: string;
  readonly cards: readonly Card[];
}

const kinds: Readonly<Record<ShelfKind, { readonly text: string; readonly all: string }>> = {
  authors: { text: "Author", all: "All authors" },
  tags: { text: "Tag", all: "All tags" },
};

/** The page of every author, and of every tag that several studies have. `results` are in the order of the front page. */
export function presentShelves(
  results: readonly StudyResult[],
  gallery: Gallery,
  format: Format,
): readonly ShelfPage[] {
  return (["authors", "tags"] as const).flatMap((kind) =>
    listShelves(results, kind, format)
      .filter((shelf) => !isLone(kind, shelf))
      .map((shelf) => presentShelf(kind, shelf, gallery, format)),
  );
}

function presentShelf(kind: ShelfKind, shelf: Shelf, gallery: Gallery, format: Format): ShelfPage {
  const path = formatShelfPath(kind, shelf.name);
  const link = linkFrom(path);
  const count = countStudies(shelf.results.length, format);
  const what = kind === "authors" ? `by ${shelf.name}` : `tagged ${shelf.name}`;
  const description = `${count} ${what}: one colour changed, every edge measured.`;
  return {
    folder: path.slice(1, -1),
    frame: presentFrame(
      {
        path,
        title: shelf.name,
        description,
        section: "studies",
        ...pictureFirst(shelf.results, gallery, format),
        record: recordList(shelf.name, description, gallery),
      },
      gallery,
      format,
    ),
    kind: { ...kinds[kind], address: link(`/${kind}/`) },
    name: shelf.name,
    count,
    cards: shelf.results.map((result) => presentCard(result, link, format)),
  };
}
