// Floor 6. What a link picture says: the picture that a site or chat shows when someone posts a link to a comparison.
import type { Hex } from "../../colour/colour.ts";
import type { StudyResult } from "../../study/result.ts";
import type { Gallery } from "../../study/study.ts";
import type { EdgeRow } from "./edge.ts";
import type { Format } from "./format.ts";
import { formatStudyPath } from "./status.ts";
import { formatTitle } from "./title.ts";
import { describeVerdict } from "./verdict.ts";

export interface LinkPicture {
  /** The file, from the top of the site, without a slash before it. */
  readonly file: string;
  readonly direction: Format["direction"];
  readonly title: string;
  /** Under the title; undefined where it needs no more. */
  readonly subtitle: string | undefined;
  /** Under each flag. */
  readonly captions: readonly [string, string];
  /** The two colours of an edge under each flag. */
  readonly swatches: readonly [readonly [Hex, Hex] | undefined, readonly [Hex, Hex]] | undefined;
  /** What the one number is, and how it moves; the first is undefined where there was none. */
  readonly measure: string;
  readonly move: readonly [string | undefined, string];
  readonly gallery: string;
}

/** Size in pixels, as sites that show links ask for. Source: common practice, no standard. */
export const linkSize = { width: 1200, height: 630 };
/** The name of the file in the folder of its page. */
export const linkFile = "link.png";

const captions = ["Original", "Redesign · unofficial study"] as const;

/** The link picture of a study: the number is its clarity. */
export function pictureStudy(
  { study, comparison }: StudyResult,
  gallery: Gallery,
  format: Format,
): LinkPicture {
  const [before, after] = comparison.clarity;
  const hasEdges = comparison.edges.length > 0;
  const verdict = describeVerdict(comparison, format).word;
  return {
    file: `${formatStudyPath(study.slug).slice(1)}${linkFile}`,
    direction: format.direction,
    title: formatTitle(study),
    subtitle: study.authors.length === 0 ? undefined : format.list(study.authors),
    captions,
    swatches: undefined,
    measure: hasEdges ? `${verdict}: clarity` : "One colour",
    move: hasEdges ? [format.percent(before), format.percent(after)] : [undefined, "no edges"],
    gallery: gallery.title,
  };
}

/** For a page that lists studies: the link picture of the first, with its words; nothing where there is none. */
export function pictureFirst(
  [first]: readonly StudyResult[],
  gallery: Gallery,
  format: Format,
): { readonly picture?: { readonly path: string; readonly alt: string } } {
  if (first === undefined) return {};
  const picture = pictureStudy(first, gallery, format);
  return { picture: { path: `/${picture.file}`, alt: describePicture(picture) } };
}

/** What the link picture of an edge shows, besides the flags. */
export interface PicturedEdge {
  readonly folder: string;
  readonly title: string;
  readonly studyTitle: string;
  readonly outcome: string;
  readonly row: EdgeRow;
}

/** The link picture of an edge: the number is its contrast. */
export function pictureEdge(
  { folder, title, studyTitle, outcome, row }: PicturedEdge,
  gallery: Gallery,
  format: Format,
): LinkPicture {
  return {
    file: `${folder}/${linkFile}`,
    direction: format.direction,
    title,
    subtitle: studyTitle,
    captions,
    swatches: [row.before?.hexes, row.after.hexes],
    measure: `${outcome}: contrast of this edge`,
    move: [row.before?.contrast, row.after.contrast],
    gallery: gallery.title,
  };
}

/** The picture in words. */
export function describePicture({ title, subtitle, measure, move }: LinkPicture): string {
  const [before, after] = move;
  const moved = before === undefined ? after : `${before} to ${after}`;
  const of = subtitle === undefined ? title : `${title} (${subtitle})`;
  return `Original and redesign of a flag side by side. ${of}. ${measure} ${moved}. Unofficial study.`;
}
