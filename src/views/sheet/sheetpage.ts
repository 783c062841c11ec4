// Floor 8. Sheets for a class: a handout, a worksheet and the answers of a study, or of all that a series holds.
import type { GalleryResult, StudyResult } from "../../analysis/result.ts";
import type { Gallery } from "../../content/study/study.ts";
import type { Format } from "../../words/format.ts";
import { formatTitle } from "../../words/title.ts";
import { describeChange } from "../../words/verdict.ts";
import { formatCanonical, linkFrom } from "../address.ts";
import { pictureFirst } from "../linkview.ts";
import { type Frame, presentFrame } from "../pageframe.ts";
import type { Plate } from "../plate.ts";
import { formatSeriesPath, orderSeries, presentItems, type SeriesItem } from "../series/seriespage.ts";
import { formatStudyPath } from "../status.ts";
import type { Chip } from "./hatchchip.ts";
import { listPalette, listSigns, presentSheetStudy, type SheetStudy } from "./sheetpart.ts";

export interface SheetPage {
  readonly frame: Frame;
  /** The page's folder in the site, without slashes around it. */
  readonly folder: string;
  readonly title: string;
  readonly back: { readonly address: string; readonly text: string };
  /** What stands at the foot of every sheet of paper. */
  readonly foot: string;
  readonly parts: readonly SheetPart[];
  readonly signs: ReturnType<typeof listSigns>;
}

/** What fills one page of paper. `page` is its number among all: `2 / 3`. */
export type SheetPart = SheetSubject & { readonly id: string; readonly page: string };

type SheetSubject =
  | { readonly kind: "handout" | "worksheet" | "answers"; readonly study: SheetStudy }
  | {
      readonly kind: "contents";
      readonly lines: readonly ContentsLine[];
      readonly closing: string | undefined;
    }
  | {
      readonly kind: "yours";
      readonly name: string;
      readonly ask: string;
      readonly plate: Plate;
      readonly palette: readonly Chip[];
    };

export interface ContentsLine {
  readonly name: string;
  readonly says: string;
  /** The numbers of its pages, with the addresses of these on the page. */
  readonly pages: readonly {
    readonly kind: SheetPart["kind"];
    readonly anchor: string;
    readonly number: string;
  }[];
}

/** The site path of a study's or a series' sheet, which stands below its page at `path`. */
export function formatSheetPath(path: string): string {
  return `${path}sheet/`;
}

/** The sheet of one study. */
export function presentSheet(result: StudyResult, gallery: Gallery, format: Format): SheetPage {
  const { study } = result;
  const path = formatStudyPath(study.slug);
  const title = formatTitle(study, format);
  const own = presentSheetStudy(result, gallery, linkFrom(formatSheetPath(path)), format);
  return {
    ...presentAround(
      { path, title, says: describeChange(result, format), back: format.say("sheet.toStudy") },
      [result],
      gallery,
      format,
    ),
    parts: numberPages(listSheets(own), format),
  };
}

/** The sheets of all series: contents, handouts in the order of the series, worksheets, and what the teacher keeps. */
export function presentSeriesSheets(result: GalleryResult, format: Format): readonly SheetPage[] {
  const { gallery, series = [] } = result;
  const bySlug = new Map(result.studies.map((one) => [one.study.slug, one]));
  return orderSeries(series).map((one) => {
    const path = formatSeriesPath(one.slug);
    const link = linkFrom(formatSheetPath(path));
    const studies = one.entries.flatMap((entry) => ("study" in entry ? (bySlug.get(entry.study) ?? []) : []));
    const rest = [...studies];
    const entries = presentItems(one, bySlug, result, link, format).flatMap((item): readonly Entry[] => {
      if ("plate" in item) return [enterFlag(item, listPalette(gallery, format))];
      const study = rest.shift();
      return study === undefined ? [] : [enterStudy(presentSheetStudy(study, gallery, link, format))];
    });
    const around = { path, title: one.title, says: one.closing ?? "", back: format.say("sheet.toSeries") };
    return {
      ...presentAround(around, studies, gallery, format),
      parts: numberPages(addContents(entries, one.closing, format), format),
    };
  });
}

type Unnumbered = SheetSubject & { readonly id: string };

/** What one item of a series has of pages. */
interface Entry {
  readonly name: string;
  readonly says: string;
  readonly pages: readonly Unnumbered[];
}

/** Pages of one kind follow each other, so that a teacher prints a range of them for all. */
const inTurn: readonly (readonly Unnumbered["kind"][])[] = [["handout"], ["worksheet", "yours"], ["answers"]];

function enterStudy(study: SheetStudy): Entry {
  return { name: study.name, says: study.title, pages: listSheets(study, `-${study.slug}`) };
}

function enterFlag(item: Extract<SeriesItem, { readonly plate: Plate }>, palette: readonly Chip[]): Entry {
  const { name, ask, plate, number } = item;
  const page = { kind: "yours", id: `yours-${number}`, name, ask, plate, palette } as const;
  return { name, says: ask, pages: [page] };
}

function listSheets(study: SheetStudy, mark = ""): readonly Unnumbered[] {
  const sheet = (kind: "handout" | "worksheet" | "answers") => ({ kind, id: `${kind}${mark}`, study });
  return [sheet("handout"), sheet("worksheet"), sheet("answers")];
}

/** The contents fill the first page, so that others begin at the second. */
function addContents(
  entries: readonly Entry[],
  closing: string | undefined,
  format: Format,
): readonly Unnumbered[] {
  const all = entries.flatMap((entry) => entry.pages);
  const pages = inTurn.flatMap((kinds) => all.filter(({ kind }) => kinds.includes(kind)));
  const lines = entries.map(({ name, says, pages: own }) => ({
    name,
    says,
    pages: own.map((part) => ({
      kind: part.kind,
      anchor: `#${part.id}`,
      number: format.number(pages.indexOf(part) + 2, 0),
    })),
  }));
  return [{ kind: "contents", id: "contents", lines, closing }, ...pages];
}

function numberPages(parts: readonly Unnumbered[], format: Format): readonly SheetPart[] {
  const all = format.number(parts.length, 0);
  return parts.map((part, index) => ({ ...part, page: `${format.number(index + 1, 0)} / ${all}` }));
}

function presentAround(
  { path, title, says, back }: Readonly<Record<"path" | "title" | "says" | "back", string>>,
  studies: readonly StudyResult[],
  gallery: Gallery,
  format: Format,
): Omit<SheetPage, "parts"> {
  const own = formatSheetPath(path);
  return {
    frame: presentFrame(
      {
        path: own,
        title: format.say("sheet.title", { title }),
        description: `${format.say("sheet.description")} ${says}`.trim(),
        section: "studies",
        isArticle: true,
        ...pictureFirst(studies, gallery, format),
      },
      gallery,
      format,
    ),
    folder: own.slice(1, -1),
    title,
    back: { address: linkFrom(own)(path), text: back },
    foot: [gallery.title, formatCanonical(gallery.address, path)].filter(Boolean).join(" · "),
    signs: listSigns(format),
  };
}
