// Floor 6. The whole site as one plain object: all that the templates ever see.
import type { GalleryResult } from "../../study/result.ts";
import { resolveBase } from "../address.ts";
import { orderStudies } from "./card.ts";
import { type EdgePage, presentEdgePages } from "./edgepage.ts";
import { createFormat } from "./format.ts";
import { type FrontPage, presentFront } from "./front.ts";
import { type MethodPage, presentMethod } from "./method.ts";
import { type MovedPage, presentLoneTags, presentMoved } from "./moved.ts";
import { type Frame, presentFrame } from "./page.ts";
import { presentRules, type RulesPage } from "./rules.ts";
import { presentShelfIndexes, type ShelfIndex } from "./shelfindex.ts";
import { presentShelves, type ShelfPage } from "./shelfpage.ts";
import { presentStudy, type StudyPage } from "./study.ts";
import { presentSurvey, type SurveyPage } from "./survey.ts";

export interface SiteView {
  readonly front: FrontPage;
  readonly studies: readonly StudyPage[];
  readonly edges: readonly EdgePage[];
  readonly shelves: readonly ShelfPage[];
  readonly shelfIndexes: readonly ShelfIndex[];
  readonly moved: readonly MovedPage[];
  readonly survey: SurveyPage;
  readonly method: MethodPage;
  readonly rules: RulesPage;
  readonly missing: { readonly frame: Frame };
}

/** Turns a gallery's results into finished pages. */
export function presentSite(result: GalleryResult, base: string | undefined): SiteView {
  const { gallery } = result;
  const format = createFormat(gallery.language);
  const ordered = orderStudies(result.studies);
  const studies = ordered.map((study) => presentStudy(study, gallery, format, result));
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
  const edges = presentEdgePages(ordered, gallery, format);
  return {
    front: presentFront(result, format),
    studies,
    edges,
    shelves: presentShelves(ordered, gallery, format),
    shelfIndexes: presentShelfIndexes(ordered, gallery, format),
    moved: [
      ...presentMoved(ordered, edges, gallery, format),
      ...presentLoneTags(ordered, ordered, gallery, format),
    ],
    survey: presentSurvey(result, format),
    method: presentMethod(result, format),
    rules: presentRules(gallery, format),
    missing: { frame: missing },
  };
}
