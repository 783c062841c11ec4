// Floor 8. The whole site as one plain object: all that the templates ever see.

import type { GalleryResult, StudyResult } from "../analysis/result.ts";
import { listFormer } from "../content/folder/formerly.ts";
import type { Gallery } from "../content/study/study.ts";
import { type Format, formatOf } from "../words/format.ts";
import { measuredOf, nameGallery, nameStudy } from "../words/namedresult.ts";
import { resolveBase } from "./address.ts";
import { type EdgePage, indexNames, presentEdgePages } from "./edge/edgepage.ts";
import { formatFlagPath, indexRivals, listRivals } from "./flag/findrivals.ts";
import { presentRivals, type RivalsPage } from "./flag/rivalspage.ts";
import { orderStudies } from "./front/card.ts";
import { type FrontPage, presentFront } from "./front/front.ts";
import { rankGains } from "./front/gainchart.ts";
import { findGone, type GoneAddress } from "./goneaddress.ts";
import { type MethodPage, presentMethod } from "./method/method.ts";
import { type OwnPage, presentPages } from "./page/ownpage.ts";
import { type Frame, presentFrame } from "./pageframe.ts";
import { presentTakePart, type TakePartPage } from "./part/takepart.ts";
import { type MovedPage, presentGone, presentLoneTags, presentMoved } from "./redirectpage.ts";
import { presentRules, type RulesPage } from "./rules/rulespage.ts";
import { presentSeries, type SeriesPage } from "./series/seriespage.ts";
import { indexSeries } from "./series/seriesplace.ts";
import { type MakerPage, presentMaker } from "./sheet/makerpage.ts";
import { presentSeriesSheets, presentSheet, type SheetPage } from "./sheet/sheetpage.ts";
import { presentShelfIndexes, type ShelfIndex } from "./shelf/shelfindex.ts";
import { presentShelves, type ShelfPage } from "./shelf/shelfpage.ts";
import { presentLesson } from "./show/lessonoffer.ts";
import { presentSeriesShows } from "./show/seriesshow.ts";
import { presentShow, type ShowPage } from "./show/showpage.ts";
import { formatStudyPath } from "./status.ts";
import { type ChangesPage, presentChanges } from "./study/changespage.ts";
import { presentStudy, type StudyPage } from "./study/studypage.ts";
import { presentSurvey, type SurveyPage } from "./survey/surveypage.ts";
import { presentVotes, type VotePage } from "./vote/votepage.ts";

/** The pages of studies. */
export interface StudyPages {
  readonly studies: readonly StudyPage[];
  readonly changes: readonly ChangesPage[];
  readonly shows: readonly ShowPage[];
  readonly sheets: readonly SheetPage[];
  /** Of adopted ones. */
  readonly makers: readonly MakerPage[];
  readonly edges: readonly EdgePage[];
  readonly moved: readonly MovedPage[];
}

/** The pages of the gallery as a whole. */
export interface SharedPages {
  readonly front: FrontPage;
  readonly series: readonly SeriesPage[];
  readonly rivals: readonly RivalsPage[];
  readonly seriesSheets: readonly SheetPage[];
  readonly seriesShows: readonly ShowPage[];
  readonly votes: readonly VotePage[];
  readonly shelves: readonly ShelfPage[];
  readonly shelfIndexes: readonly ShelfIndex[];
  readonly survey: SurveyPage;
  readonly method: MethodPage;
  readonly rules: RulesPage;
  readonly pages: readonly OwnPage[];
  /** One, or none where the gallery takes no answers. */
  readonly takePart: readonly TakePartPage[];
  readonly missing: { readonly frame: Frame };
}

export type SiteView = StudyPages & SharedPages;

/** A gallery whose pages can be had some at a time: what all of them need is looked up once. */
export interface OpenSite {
  /** In the order of the front page. */
  readonly ordered: readonly StudyResult[];
  presentStudies(some: readonly StudyResult[]): StudyPages;
  presentShared(): SharedPages;
  /** Old addresses of studies, and the names they have now. */
  readonly former: NonNullable<GalleryResult["former"]>;
  /** Where addresses lead once no page is at them: old ones of studies to the new, flags with rivals to their oldest study. */
  readonly leads: ReadonlyMap<string, string>;
  /** What becomes of the addresses of the list, and of `more`, that are none of `live`, which are those there are. */
  findGone(live: ReadonlySet<string>, more?: readonly string[]): readonly GoneAddress[];
  /** The pages at such addresses; `pages` has the titles of those there are. */
  presentGone(gone: readonly GoneAddress[], pages: ReadonlyMap<string, string>): readonly MovedPage[];
}

/** Turns a gallery's results into finished pages. */
export function presentSite(result: GalleryResult, base: string | undefined): SiteView {
  const { ordered, presentStudies, presentShared } = openSite(result, base);
  return { ...presentStudies(ordered), ...presentShared() };
}

/** Prepares the pages of a gallery. */
export function openSite(measured: GalleryResult, base: string | undefined): OpenSite {
  const { gallery } = measured;
  const format = formatOf(gallery);
  const result = nameGallery(measured, format);
  const { survey } = result;
  const ordered = orderStudies(result.studies);
  const rivals = listRivals(result);
  const around = {
    studies: ordered,
    gains: rankGains(ordered, format),
    series: indexSeries(result),
    rivals: indexRivals(rivals),
    lesson: (study: StudyResult) => presentLesson(study, gallery, format),
    ...(survey && { survey }),
  };
  const namesakes = indexNames(ordered);
  const { former = listFormer(ordered.map(({ study }) => study)) } = result;
  const leads = new Map([
    ...former.map(({ from, to }) => [formatStudyPath(from), formatStudyPath(to)] as const),
    ...rivals.flatMap(({ slug, studies: [oldest] }) =>
      oldest === undefined ? [] : [[formatFlagPath(slug), formatStudyPath(oldest.study.slug)] as const],
    ),
  ]);
  return {
    ordered: ordered.map(measuredOf),
    former,
    leads,
    findGone: (live, more = []) => {
      const { addresses = new Map(), folders = [], contested = new Map() } = result;
      const notes = new Map([...more.map((address) => [address, {}] as const), ...addresses]);
      const flags = new Map(
        rivals.flatMap((flag) =>
          flag.studies.map(({ study }) => [formatStudyPath(study.slug), formatFlagPath(flag.slug)] as const),
        ),
      );
      return findGone({ notes, live, leads, flags, folders: new Set(folders), contested });
    },
    presentGone: (gone, pages) => presentGone(gone, pages, gallery, format),
    presentStudies: (asked) => {
      const some = asked.map((study) => nameStudy(study, format));
      const changes = presentChanges(some, gallery, format);
      const edges = presentEdgePages(some, namesakes, gallery, format);
      return {
        studies: some.map((study) => presentStudy(study, gallery, format, around)),
        changes,
        shows: some.map((study) => presentShow(study, gallery, format)),
        sheets: some.map((study) => presentSheet(study, gallery, format)),
        makers: some.flatMap((study) => presentMaker(study, gallery, format)),
        edges,
        moved: [
          ...presentMoved(some, changes, edges, former, gallery, format),
          ...presentLoneTags(some, ordered, gallery, format),
        ],
      };
    },
    presentShared: () => ({
      front: presentFront(result, format),
      series: presentSeries(result, format),
      rivals: presentRivals(result, format),
      seriesSheets: presentSeriesSheets(result, format),
      seriesShows: presentSeriesShows(result, format),
      votes: presentVotes(result, format),
      shelves: presentShelves(ordered, gallery, format),
      shelfIndexes: presentShelfIndexes(ordered, gallery, format),
      survey: presentSurvey(result, format),
      method: presentMethod(result, format),
      rules: presentRules(gallery, format),
      pages: presentPages(result, format),
      takePart: presentTakePart(gallery, format),
      missing: { frame: presentMissing(gallery, base, format) },
    }),
  };
}

function presentMissing(gallery: Gallery, base: string | undefined, format: Format): Frame {
  return presentFrame(
    {
      path: "/404.html",
      title: format.say("frame.missing"),
      description: format.say("frame.missingDescription"),
      section: undefined,
      base: resolveBase(base, gallery.address),
    },
    gallery,
    format,
  );
}
