// Floor 6. The front page: one entry a study, newest first.
import type { GalleryResult, StudyResult } from "../../study/result.ts";
import { linkFrom } from "../address.ts";
import type { Format } from "./format.ts";
import { type Frame, presentFrame } from "./page.ts";
import { type Plate, presentPlate } from "./plate.ts";
import { formatStudyPath, presentStatus, type StatusView } from "./status.ts";
import { describeChange, describeVerdict } from "./verdict.ts";

export interface Card {
  readonly address: string;
  readonly title: string;
  readonly authors: string | undefined;
  readonly date: { readonly iso: string; readonly text: string } | undefined;
  readonly status: StatusView;
  readonly change: string;
  readonly verdict: string;
  readonly share: { readonly before: string; readonly after: string };
  readonly plates: readonly [Plate, Plate];
}

export interface FrontPage {
  readonly frame: Frame;
  readonly title: string;
  readonly description: string;
  readonly count: string;
  readonly cards: readonly Card[];
}

/** The front page of a gallery. */
export function presentFront(result: GalleryResult, format: Format): FrontPage {
  const { gallery } = result;
  const cards = orderStudies(result.studies).map((study) => presentCard(study, format));
  return {
    frame: presentFrame(
      { path: "/", title: undefined, description: gallery.description, section: "studies" },
      gallery,
      format,
    ),
    title: gallery.title,
    description: gallery.description,
    count: `${format.number(cards.length, 0)} ${cards.length === 1 ? "study" : "studies"}`,
    cards,
  };
}

/** Newest first, undated last, then by slug, by code unit. */
export function orderStudies(studies: readonly StudyResult[]): readonly StudyResult[] {
  return [...studies].sort((first, second) => {
    const [a, b] = [first.study, second.study];
    return compareText(b.date ?? "", a.date ?? "") || compareText(a.slug, b.slug);
  });
}

function presentCard(result: StudyResult, format: Format): Card {
  const { study, comparison } = result;
  const link = linkFrom("/");
  const path = formatStudyPath(study.slug);
  const [before, after] = comparison.clearEdgeShare;
  return {
    address: link(path),
    title: study.title,
    authors: study.authors.length === 0 ? undefined : format.list(study.authors),
    date: study.date === undefined ? undefined : { iso: study.date, text: format.date(study.date) },
    status: presentStatus(study.status),
    change: describeChange(result),
    verdict: describeVerdict(comparison, format).word,
    share: { before: format.share(before), after: format.share(after) },
    plates: [
      presentPlate("Original", link(`${path}original.svg`), comparison.before, format),
      presentPlate("Redesign", link(`${path}redesign.svg`), comparison.after, format),
    ],
  };
}

function compareText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
