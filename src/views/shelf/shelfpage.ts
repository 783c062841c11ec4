// Floor 8. The page of one author or of one tag: all studies of it, as the front page shows them.
import type { StudyResult } from "../../analysis/result.ts";
import type { Gallery } from "../../content/study/study.ts";
import { slugOf } from "../../words/addressslug.ts";
import { describeDecision, tellDecision } from "../../words/decisionphrase.ts";
import type { WordId } from "../../words/en/all.ts";
import type { Format } from "../../words/format.ts";
import { linkFrom } from "../address.ts";
import { type Card, presentCard } from "../front/card.ts";
import { pictureFirst } from "../linkview.ts";
import { type Frame, presentFrame } from "../pageframe.ts";
import {
  divideList,
  type ListPage,
  listPath,
  mostOnPage,
  type PagesView,
  presentPages,
  titlePage,
} from "../paging.ts";
import { recordList } from "../schemarecord.ts";
import { formatMakerPath } from "../sheet/makerpage.ts";
import {
  countStudies,
  decisionsPath,
  formatShelfPath,
  isLone,
  listDecided,
  listShelves,
  type Shelf,
  type ShelfKind,
} from "./shelf.ts";

export interface ShelfPage {
  /** The page's folder in the site, without slashes around it. */
  readonly folder: string;
  readonly frame: Frame;
  /** What it is a page of, and the way to the index of all of them. */
  readonly kind: { readonly text: string; readonly address: string; readonly all: string };
  readonly name: string;
  readonly count: string;
  /** In the list of decisions each with its own, what became of it and why apart, its day, and the address of the sheet for makers of what is adopted. */
  readonly cards: readonly (Card &
    Partial<Readonly<Record<"decision" | "outcome" | "why" | "decided" | "maker", string>>>)[];
  /** The ways to the other pages of a long list; undefined where this is all of it. */
  readonly pages: PagesView | undefined;
}

type ListKind = ShelfKind | "list" | "decisions";

const wordIds = {
  authors: { kind: "shelf.author", index: "shelf.allAuthors", about: "shelf.aboutAuthor" },
  tags: { kind: "shelf.tag", index: "shelf.allTags", about: "shelf.aboutTag" },
  list: { kind: "shelf.list", index: "shelf.byAuthor", about: "shelf.aboutAll" },
  decisions: { kind: "shelf.record", index: "shelf.byAuthor", about: "shelf.aboutDecisions" },
} as const satisfies Record<ListKind, Readonly<Record<string, WordId>>>;

/**
 * The pages of every author, of every tag that several studies have, and of all studies where the front page cannot show
 * them. `results` are in the order of the front page.
 */
export function presentShelves(
  results: readonly StudyResult[],
  gallery: Gallery,
  format: Format,
): readonly ShelfPage[] {
  const all = { slug: "list", name: format.say("frame.allStudies"), results };
  const decided = listDecided(results);
  return [
    ...(results.length > mostOnPage ? presentShelf("list", all, gallery, format) : []),
    ...(decided.length === 0
      ? []
      : presentShelf(
          "decisions",
          { slug: "decisions", name: format.say("shelf.decisions"), results: decided },
          gallery,
          format,
        )),
    ...(["authors", "tags"] as const).flatMap((kind) =>
      listShelves(results, kind, format)
        .filter((shelf) => !isLone(kind, shelf))
        .flatMap((shelf) => presentShelf(kind, shelf, gallery, format)),
    ),
  ];
}

function presentShelf(kind: ListKind, shelf: Shelf, gallery: Gallery, format: Format): readonly ShelfPage[] {
  const path =
    kind === "list" ? listPath : kind === "decisions" ? decisionsPath : formatShelfPath(kind, shelf.name);
  return divideList(path, shelf.results).map((page) => presentOne(kind, shelf, path, page, gallery, format));
}

function presentOne(
  kind: ListKind,
  shelf: Shelf,
  begin: string,
  page: ListPage<StudyResult>,
  gallery: Gallery,
  format: Format,
): ShelfPage {
  const { path } = page;
  const link = linkFrom(path);
  const pages = presentPages(begin, page, link, format);
  const ids = wordIds[kind];
  const description = format.say(ids.about, { count: shelf.results.length, name: shelf.name });
  return {
    folder: path.slice(1, -1),
    frame: presentFrame(
      {
        path,
        title: titlePage(shelf.name, pages, format),
        description,
        section: "studies",
        ...pictureFirst(page.items, gallery, format),
        record: recordList(shelf.name, description, gallery),
      },
      gallery,
      format,
    ),
    kind: {
      text: format.say(ids.kind),
      all: format.say(ids.index),
      address: link(kind === "tags" ? "/tags/" : "/authors/"),
    },
    name: shelf.name,
    count:
      kind === "decisions"
        ? format.say("shelf.decisionCount", { count: shelf.results.length })
        : countStudies(shelf.results.length, format),
    cards: page.items.map((result) => {
      const card = presentCard(result, link, format);
      const { decision, status } = result.study;
      const maker = formatMakerPath(result.study);
      if (kind === "decisions") {
        const told = decision && tellDecision(decision, status, format);
        return {
          ...card,
          outcome: told?.outcome ?? card.status.word,
          ...(told && { why: told.why, decision: describeDecision(decision, status, format) }),
          ...(decision?.date && { decided: decision.date }),
          ...(maker && { maker: link(maker) }),
        };
      }
      return kind === "authors" ? { ...card, authors: nameOthers(result, shelf.slug, format) } : card;
    }),
    pages,
  };
}

/** On the page of one author, those who wrote a study with them. */
function nameOthers({ study }: StudyResult, slug: string, format: Format): string | undefined {
  const others = study.authors.filter((name) => slugOf(name) !== slug);
  return others.length === 0 ? undefined : format.say("shelf.with", { authors: format.list(others) });
}
