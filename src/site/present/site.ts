// Floor 6. The whole site as one plain object: all that the templates ever see.
import type { GalleryResult, StudyResult } from "../../study/result.ts";
import { resolveBase } from "../address.ts";
import { orderStudies } from "./card.ts";
import { type EdgePage, presentEdgePages } from "./edgepage.ts";
import { createFormat } from "./format.ts";
import { type FrontPage, presentFront } from "./front.ts";
import { type MethodPage, presentMethod } from "./method.ts";
import { type MovedPage, presentMoved } from "./moved.ts";
import { type Frame, presentFrame } from "./page.ts";
import { presentRules, type RulesPage } from "./rules.ts";
import { presentShelfIndexes, type ShelfIndex } from "./shelfindex.ts";
import { presentShelves, type ShelfPage } from "./shelfpage.ts";
import { presentStudy, type StudyPage } from "./study.ts";
import { presentSurvey, type SurveyPage } from "./survey.ts";

/** Which pages of a site: those of the studies in `slugs`, default all, and those of the gallery as a whole. */
export interface SitePart {
  readonly slugs?: readonly string[];
  readonly isShared: boolean;
}

/** Feeds tell what is new; `studies.json` has all. Our own judgement. */
export const feedLength = 100;

export const wholeSite: SitePart = { isShared: true };

export interface SiteView {
  readonly front: FrontPage;
  readonly studies: readonly StudyPage[];
  readonly edges: readonly EdgePage[];
  /** The newest studies, for feeds. */
  readonly news: readonly StudyPage[];
  readonly shelves: readonly ShelfPage[];
  readonly shelfIndexes: readonly ShelfIndex[];
  readonly moved: readonly MovedPage[];
  readonly survey: SurveyPage;
  readonly method: MethodPage;
  readonly rules: RulesPage;
  readonly missing: { readonly frame: Frame };
}

export function isIn({ slugs }: SitePart, slug: string): boolean {
  return slugs === undefined || slugs.includes(slug);
}

/** Turns a gallery's results into finished pages; `part` says of which studies. */
export function presentSite(
  result: GalleryResult,
  base: string | undefined,
  part: SitePart = wholeSite,
): SiteView {
  const { gallery } = result;
  const format = createFormat(gallery.language);
  const ordered = orderStudies(result.studies);
  const present = (study: StudyResult) => presentStudy(study, gallery, format, result);
  const own = ordered.filter(({ study }) => isIn(part, study.slug));
  const studies = own.map(present);
  const missing = presentFrame(
    {
      path: "/404.html",
      title: "No page here",
      description: "There is no page at this address.",
      section: undefined,
      base: resolveBase(base, gallery.address),
    },
    gallery,
    format,
  );
  // What shows the gallery as a whole is made where it is asked for: in every part it would be as long again.
  const shared: GalleryResult = part.isShared ? result : { gallery, studies: [], problems: [] };
  const all = orderStudies(shared.studies);
  const edges = presentEdgePages(ordered, gallery, format, own);
  return {
    front: presentFront(shared, format),
    studies,
    edges,
    news:
      part.slugs === undefined
        ? studies.slice(0, feedLength)
        : part.isShared
          ? ordered.slice(0, feedLength).map(present)
          : [],
    shelves: presentShelves(all, gallery, format),
    shelfIndexes: presentShelfIndexes(all, gallery, format),
    moved: presentMoved(ordered, edges, gallery, format, own),
    survey: presentSurvey(shared, format),
    method: presentMethod(shared, format),
    rules: presentRules(gallery, format),
    missing: { frame: missing },
  };
}
