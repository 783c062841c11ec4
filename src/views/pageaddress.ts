// Floor 8. The address of every page of a site, with what the page is called.
import type { GalleryResult, StudyResult } from "../analysis/result.ts";
import type { Gallery } from "../content/study/study.ts";
import { formatOf } from "../words/format.ts";
import { listPlacedEdges } from "./edge/edgeaddress.ts";
import { partPath } from "./pageframe.ts";
import { presentLoneTags } from "./redirectpage.ts";
import { formatSeriesPath } from "./series/seriespage.ts";
import { formatMakerPath } from "./sheet/makerpage.ts";
import { formatSheetPath } from "./sheet/sheetpage.ts";
import { formatShowPath } from "./show/showpage.ts";
import { openSite, type SiteView } from "./siteview.ts";
import { formatChangesPath, formatStudyPath } from "./status.ts";
import { hasRanking } from "./study/optionsview.ts";
import { formatVotePath } from "./vote/votepage.ts";

/** A page of a view: its folder, and a frame with its title. */
interface Page {
  readonly folder: string;
  readonly frame: { readonly title: string };
}

/** Returns the address and the title of every page of `view` but the one for addresses that are none. */
export function listPages(view: Partial<SiteView>, { title: gallery }: Gallery): ReadonlyMap<string, string> {
  const { changes = [], shows = [], sheets = [], makers = [], edges = [], moved = [], rivals = [] } = view;
  const { seriesSheets = [], seriesShows = [], shelves = [], shelfIndexes = [], pages: own = [] } = view;
  const inFolders: readonly (readonly Page[])[] = [
    changes,
    shows,
    sheets,
    makers,
    edges,
    moved,
    rivals,
    seriesSheets,
  ];
  const foldered = [...inFolders, seriesShows, shelves, shelfIndexes, own].flatMap((pages) =>
    pages.map(({ folder, frame }) => [`/${folder}/`, frame.title] as const),
  );
  const { studies = [], series = [], votes = [], front, survey, method, rules, takePart } = view;
  const fixed = {
    "/": front,
    "/survey/": survey,
    "/method/": method,
    "/rules/": rules,
    [partPath]: takePart?.[0],
  };
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

/** Returns the addresses of a study's pages. */
export function listStudyPages({ study, comparison, ranking }: StudyResult): readonly string[] {
  const { slug } = study;
  const home = formatStudyPath(slug);
  const maker = formatMakerPath(study);
  return [
    home,
    ...(hasRanking(ranking) ? [formatChangesPath(slug)] : []),
    formatShowPath(slug),
    formatSheetPath(home),
    ...(maker === undefined ? [] : [maker]),
    ...listPlacedEdges(slug, comparison).map(({ path }) => path),
  ];
}

/** Returns the addresses that a gallery has once it is published, without making the pages of its studies. */
export function listAddresses(result: GalleryResult): readonly string[] {
  const { gallery } = result;
  const { ordered, former, presentShared } = openSite(result, undefined);
  const own = new Map(ordered.map((one) => [one.study.slug, listStudyPages(one)]));
  const isMoved = (path: string): boolean => !/\/(?:show|sheet|maker)\/$/.test(path);
  const moved = former.flatMap(({ from, to }) =>
    (own.get(to) ?? [])
      .filter(isMoved)
      .map((path) => path.replace(formatStudyPath(to), formatStudyPath(from))),
  );
  const tags = presentLoneTags(ordered, ordered, gallery, formatOf(gallery));
  return [
    ...[...own.values()].flat(),
    ...moved,
    ...listPages({ ...presentShared(), moved: tags }, gallery).keys(),
  ];
}
