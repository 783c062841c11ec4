// Floor 8. The gallery's own pages: what their authors wrote, studies among it, and the ways between them.
import type { GalleryResult, StudyResult } from "../../analysis/result.ts";
import { listUnled } from "../../content/page/loadpages.ts";
import { placeDrawing } from "../../content/page/pagedrawing.ts";
import { type Page, parentOf } from "../../content/page/pagefile.ts";
import type { AskedDrawing } from "../../content/study/figurekind.ts";
import { findStudyLines } from "../../content/study/prosecheck.ts";
import { slugOf } from "../../words/addressslug.ts";
import type { Format } from "../../words/format.ts";
import { type Linker, linkFrom } from "../address.ts";
import { type Card, presentCard } from "../front/card.ts";
import { pictureFirst } from "../linkview.ts";
import { type Frame, presentFrame } from "../pageframe.ts";
import { shownDrawings } from "../pagepolicy.ts";
import { type Plate, presentPlate } from "../plate.ts";
import { firstSentence, type ProseBlock, renderProse } from "../renderprose.ts";
import { nameEntry, nameFile, placeEntry } from "../survey/flagname.ts";

export interface OwnPage {
  /** The page's folder in the site, without slashes around it. */
  readonly folder: string;
  readonly frame: Frame;
  readonly title: string;
  /** The pages above it, the highest first. */
  readonly above: readonly Way[];
  /** HTML that we wrote, studies and drawings. */
  readonly blocks: readonly ProseBlock<PageFigure>[];
  /** The pages below it, each with its first sentence, under their headings; those without one have none. */
  readonly below: readonly Group<Way & { readonly summary: string }>[];
  /** All pages below the same page, this one among them, under the same headings; none of a page that lies in no folder, or alone in one. */
  readonly beside: readonly Group<Way & { readonly isHere: boolean }>[];
  /** The ways to the sections of its text. */
  readonly sections: readonly Way[];
  readonly next: Way | undefined;
}

/** What a line of a page shows. `page` tells of the flag, where one does. */
export type PageFigure =
  | { readonly kind: "study"; readonly card: Card }
  | { readonly kind: "drawing"; readonly plate: Plate; readonly page: string | undefined };

interface Way {
  readonly title: string;
  readonly address: string;
}

interface Group<OneWay> {
  readonly group: string | undefined;
  readonly ways: readonly OneWay[];
}

/** Highest heading in the text: the title of the page alone stands above it. */
const topHeading = 2;

/** Returns the pages, and at `/pages/` the list of those that neither the navigation nor a page leads to, if there are any. */
export function presentPages(result: GalleryResult, format: Format): readonly OwnPage[] {
  const { gallery, pages = [] } = result;
  const bySlug = new Map(result.studies.map((one) => [one.study.slug, one]));
  const made = pages.map((page) => {
    const path = placePage(page.path);
    const link = linkFrom(path);
    const findStudy = (slug: string): PageFigure | undefined => {
      const study = bySlug.get(slug);
      return study && { kind: "study", card: presentCard(study, link, format) };
    };
    const findDrawing = (asked: AskedDrawing): PageFigure | undefined =>
      presentDrawing(placeDrawing(page, asked.drawing), asked, result, link, format);
    const parent = parentOf(page.path);
    const beside = parent === undefined ? [] : pages.filter((other) => parentOf(other.path) === parent);
    const next = beside[beside.indexOf(page) + 1];
    const sections: Way[] = [];
    const nameSection = (text: string) => {
      const slug = `at-${slugOf(text)}`;
      const same = sections.filter(({ address }) => address.replace(/\.\d+$/, "") === `#${slug}`).length;
      const anchor = same === 0 ? slug : `${slug}.${same + 1}`;
      sections.push({ title: text, address: `#${anchor}` });
      return anchor;
    };
    return {
      folder: page.path,
      frame: frameOf(
        path,
        page.title,
        summaryOf(page, gallery.language),
        findStudyLines(page).flatMap(({ slug }) => bySlug.get(slug) ?? []),
        result,
        format,
      ),
      title: page.title,
      above: listAbove(page.path, pages, link),
      blocks: renderProse(page.body, () => undefined, { findStudy, findDrawing, topHeading, nameSection }),
      sections,
      below: listBelow(
        pages.filter((other) => parentOf(other.path) === page.path),
        link,
        gallery.language,
      ),
      beside: groupPages(beside.length === 1 ? [] : beside, (other) => ({
        ...presentWay(other, link),
        isHere: other === page,
      })),
      next: next && presentWay(next, link),
    };
  });
  return [...made, ...presentRest(result, format)];
}

/** The site path of a page. */
export function placePage(path: string): string {
  return `/${path}/`;
}

/** A drawing is called as its author says, else as the survey calls it, else as its file is. */
function presentDrawing(
  path: string,
  { caption }: AskedDrawing,
  { drawings, survey, studies }: GalleryResult,
  link: Linker,
  format: Format,
): PageFigure | undefined {
  const shown = drawings?.get(path);
  if (shown === undefined) return undefined;
  const entry = survey?.entries.find(({ flag }) => flag.file === path);
  const name = caption ?? (entry ? nameEntry(entry, studies) : nameFile(path));
  return {
    kind: "drawing",
    plate: presentPlate(name, link(`${shownDrawings}${path}`), shown.measure, format),
    page: entry && link(placeEntry(entry)),
  };
}

function presentRest(result: GalleryResult, format: Format): readonly OwnPage[] {
  const { gallery, pages = [] } = result;
  if (!gallery.menu?.some(({ path }) => path === "pages")) return [];
  const path = placePage("pages");
  const rest = listUnled(pages, gallery.menu);
  const title = format.say("ownPage.pages");
  const description = format.say("ownPage.pagesOf", { gallery: gallery.title });
  return [
    {
      folder: "pages",
      frame: frameOf(path, title, description, [], result, format),
      title,
      above: [],
      blocks: [],
      below: listBelow(rest, linkFrom(path), gallery.language),
      beside: [],
      sections: [],
      next: undefined,
    },
  ];
}

function frameOf(
  path: string,
  title: string,
  description: string,
  shown: readonly StudyResult[],
  { gallery }: GalleryResult,
  format: Format,
): Frame {
  const picture = pictureFirst(shown, gallery, format);
  const facts = { path, title, description, section: undefined, isArticle: true, ...picture };
  return presentFrame(facts, gallery, format);
}

function listAbove(path: string, pages: readonly Page[], link: Linker): readonly Way[] {
  const parent = parentOf(path);
  if (parent === undefined) return [];
  const page = pages.find((other) => other.path === parent);
  return [...listAbove(parent, pages, link), ...(page === undefined ? [] : [presentWay(page, link)])];
}

function listBelow(pages: readonly Page[], link: Linker, language: string): OwnPage["below"] {
  return groupPages(pages, (page) => ({ ...presentWay(page, link), summary: summaryOf(page, language) }));
}

/** Groups in the order of their first pages. */
function groupPages<OneWay>(
  pages: readonly Page[],
  present: (page: Page) => OneWay,
): readonly Group<OneWay>[] {
  return [...new Set(pages.map(({ group }) => group))].map((group) => ({
    group,
    ways: pages.filter((page) => page.group === group).map(present),
  }));
}

function presentWay({ path, title }: Page, link: Linker): Way {
  return { title, address: link(placePage(path)) };
}

function summaryOf({ title, body }: Page, language: string): string {
  return firstSentence(body, language) ?? title;
}
