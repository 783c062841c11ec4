// Floor 8. Pages at addresses that a study had before, or a tag: each leads to where the study, or a page below it, is now.
import type { StudyResult } from "../analysis/result.ts";
import type { Gallery } from "../content/study/study.ts";
import type { Format } from "../words/format.ts";
import { describeFate, type FateWords } from "../words/movedphrase.ts";
import { formatTitle } from "../words/title.ts";
import { formatCanonical, formatRelative } from "./address.ts";
import type { EdgePage } from "./edge/edgepage.ts";
import type { GoneAddress } from "./goneaddress.ts";
import { type Frame, presentFrame } from "./pageframe.ts";
import { formatShelfPath, isLone, listShelves } from "./shelf/shelf.ts";
import { formatStudyPath } from "./status.ts";
import type { ChangesPage } from "./study/changespage.ts";

export interface MovedPage {
  /** Folder of the page at the old address: `studies/old-light`. */
  readonly folder: string;
  /** Its canonical address is the new one. */
  readonly frame: Frame;
  readonly words: FateWords;
  /** What it leads to, and the way there from here. */
  readonly title: string;
  readonly address: string;
  /** What it may lead to as well. */
  readonly others: readonly { readonly title: string; readonly address: string }[];
  /** Whether the reader is led on at once: the page there is the same one. */
  readonly isSame: boolean;
}

/** A page that is there, by its folder. */
interface Landing {
  readonly slug: string;
  readonly folder: string;
  readonly title: string;
}

/**
 * Returns a page for every old address of the studies, and of each of their other changes and edges: what points at a
 * comparison goes on pointing at it. `changes` and `edges` are those pages of these studies, `former` the old addresses of
 * the gallery.
 */
export function presentMoved(
  results: readonly StudyResult[],
  changes: readonly Pick<ChangesPage, "slug" | "folder" | "title" | "study">[],
  edges: readonly Pick<EdgePage, "slug" | "folder" | "title" | "study">[],
  former: readonly { readonly from: string; readonly to: string }[],
  gallery: Gallery,
  format: Format,
): readonly MovedPage[] {
  const landings: readonly Landing[] = [
    ...results.map(({ study: { slug, title } }) => ({
      slug,
      title,
      folder: formatStudyPath(slug).slice(1, -1),
    })),
    ...[...changes, ...edges].map(({ slug, folder, title, study }) => ({
      slug,
      folder,
      title: format.say("picture.within", { title, study: formatTitle(study, format) }),
    })),
  ];
  return former.flatMap(({ from, to }) =>
    landings.filter(({ slug }) => slug === to).map((landing) => presentOne(from, landing, gallery, format)),
  );
}

function presentOne(
  from: string,
  { slug, folder, title }: Landing,
  gallery: Gallery,
  format: Format,
): MovedPage {
  const inner = folder.slice(formatStudyPath(slug).length - 1);
  const path = `${formatStudyPath(from)}${inner === "" ? "" : `${inner}/`}`;
  return leadOn(path, `/${folder}/`, title, gallery, format);
}

/** The page of every tag that one study alone has: it leads to that study. `some` are those of `all` that are asked for. */
export function presentLoneTags(
  some: readonly StudyResult[],
  all: readonly StudyResult[],
  gallery: Gallery,
  format: Format,
): readonly MovedPage[] {
  return listShelves(all, "tags", format)
    .filter((shelf) => isLone("tags", shelf) && shelf.results.every((result) => some.includes(result)))
    .flatMap(({ name, results }) =>
      results.map(({ study }) =>
        leadOn(formatShelfPath("tags", name), formatStudyPath(study.slug), study.title, gallery, format),
      ),
    );
}

/** The pages at addresses that have no other; `titles` are those of all pages there are, by address. */
export function presentGone(
  gone: readonly GoneAddress[],
  titles: ReadonlyMap<string, string>,
  gallery: Gallery,
  format: Format,
): readonly MovedPage[] {
  return gone.map(({ address, to = "/", orTo = [], fate, why }) => {
    const nameOf = (place: string) => titles.get(place) ?? gallery.title;
    const title = nameOf(to);
    if (fate === "moved") return leadOn(address, to, title, gallery, format);
    const words = describeFate(fate, format, why);
    const frame = presentFrame(
      { path: address, title: words.heading, description: words.text, section: "studies" },
      gallery,
      format,
    );
    const others = orTo.map((other) => ({ title: nameOf(other), address: formatRelative(address, other) }));
    const link = { folder: address.slice(1, -1), title, address: formatRelative(address, to) };
    return {
      ...link,
      others,
      frame: { ...frame, canonical: undefined, share: undefined },
      words,
      isSame: false,
    };
  });
}

/** The page at `path` that leads to `to`, both site paths. */
function leadOn(path: string, to: string, title: string, gallery: Gallery, format: Format): MovedPage {
  const frame = presentFrame(
    { path, title, description: format.say("frame.moved", { title }), section: "studies" },
    gallery,
    format,
  );
  return {
    folder: path.slice(1, -1),
    frame: { ...frame, canonical: formatCanonical(gallery.address, to), share: undefined },
    words: describeFate("moved", format),
    title,
    address: formatRelative(path, to),
    others: [],
    isSame: true,
  };
}
