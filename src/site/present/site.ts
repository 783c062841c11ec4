// Floor 6. The whole site as one plain object: all that the templates ever see.
import type { GalleryResult } from "../../study/result.ts";
import { resolveBase } from "../address.ts";
import { type FrontPage, orderStudies, presentFront } from "./card.ts";
import { createFormat } from "./format.ts";
import { type MethodPage, presentMethod } from "./method.ts";
import { type Frame, presentFrame } from "./page.ts";
import { presentStudy, type StudyPage } from "./study.ts";

export interface SiteView {
  readonly front: FrontPage;
  readonly studies: readonly StudyPage[];
  readonly method: MethodPage;
  readonly missing: { readonly frame: Frame };
}

/** Turns a gallery's results into finished pages. */
export function presentSite(result: GalleryResult, base: string | undefined): SiteView {
  const { gallery } = result;
  const format = createFormat(gallery.language);
  const studies = orderStudies(result.studies).map((study) => presentStudy(study, gallery, format));
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
  return {
    front: presentFront(result, format),
    studies,
    method: presentMethod(result, format),
    missing: { frame: missing },
  };
}
