// Floor 8. The address of every page of a site, with what the page is called.
import type { Gallery } from "../content/study/study.ts";
import { formatSeriesPath } from "./series/seriespage.ts";
import type { SiteView } from "./siteview.ts";
import { formatStudyPath } from "./status.ts";
import { formatVotePath } from "./vote/votepage.ts";

/** A page of a view: its folder, and a frame with its title. */
interface Page {
  readonly folder: string;
  readonly frame: { readonly title: string };
}

/** Returns the address and the title of every page of `view` but the one for addresses that are none. */
export function listPages(view: Partial<SiteView>, { title: gallery }: Gallery): ReadonlyMap<string, string> {
  const { changes = [], shows = [], sheets = [], edges = [], moved = [], rivals = [] } = view;
  const { seriesSheets = [], seriesShows = [], shelves = [], shelfIndexes = [] } = view;
  const inFolders: readonly (readonly Page[])[] = [
    changes,
    shows,
    sheets,
    edges,
    moved,
    rivals,
    seriesSheets,
  ];
  const foldered = [...inFolders, seriesShows, shelves, shelfIndexes].flatMap((pages) =>
    pages.map(({ folder, frame }) => [`/${folder}/`, frame.title] as const),
  );
  const { studies = [], series = [], votes = [], front, survey, method, rules } = view;
  const fixed = { "/": front, "/survey/": survey, "/method/": method, "/rules/": rules };
  const all = [
    ...foldered,
    ...studies.map(({ slug, frame }) => [formatStudyPath(slug), frame.title] as const),
    ...series.map(({ slug, frame }) => [formatSeriesPath(slug), frame.title] as const),
    ...votes.map(({ slug, frame }) => [formatVotePath(slug), frame.title] as const),
    ...Object.entries(fixed).flatMap(([address, page]) =>
      page ? [[address, page.frame.title] as const] : [],
    ),
  ];
  const ending = ` – ${gallery}`;
  return new Map(
    all.map(([address, title]) => [address, title.endsWith(ending) ? title.slice(0, -ending.length) : title]),
  );
}
