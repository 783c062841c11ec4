// Floor 8. What a link picture says: the picture that a site or chat shows when someone posts a link to a comparison.

import type { StudyResult } from "../analysis/result.ts";
import type { Hex } from "../colour/colour.ts";
import type { Gallery } from "../content/study/study.ts";
import type { Format } from "../words/format.ts";
import { formatTitle } from "../words/title.ts";
import { describeVerdict } from "../words/verdict.ts";
import type { EdgeRow } from "./edge/edgerow.ts";
import { formatStudyPath } from "./status.ts";
import { chooseSplit, type Split } from "./study/splitline.ts";

export interface LinkPicture {
  /** The file, from the top of the site, without a slash before it. */
  readonly file: string;
  readonly direction: Format["direction"];
  readonly title: string;
  /** Under the title; undefined where it needs no more. */
  readonly subtitle: string | undefined;
  /** How the flag is divided. */
  readonly split: Split;
  /** Under each half. */
  readonly captions: readonly [string, string];
  /** The two colours of an edge under each half. */
  readonly swatches: readonly [readonly [Hex, Hex] | undefined, readonly [Hex, Hex]] | undefined;
  /** What the one number is, and how it moves; the first is undefined where there was none. */
  readonly measure: string;
  readonly move: readonly [string | undefined, string];
  readonly gallery: string;
  /** What a redesign is. */
  readonly caution: string;
}

/** Size in pixels, as sites that show links ask for. Source: common practice, no standard. */
export const linkSize = { width: 1200, height: 630 };
/** The name of the file in the folder of its page. */
export const linkFile = "link.png";

/** Whose half is which is seen where they lie side by side. */
function captionHalves(split: Split): LinkPicture["captions"] {
  const [before, after] = ["Original", "Redesign · unofficial study"];
  return split === "per fess" ? [`Above: ${before}`, `Below: ${after}`] : [before, after];
}

/** The link picture of a study: the number is its clarity. */
export function pictureStudy(result: StudyResult, gallery: Gallery, format: Format): LinkPicture {
  const { study, comparison } = result;
  const split = chooseSplit(result);
  const [before, after] = comparison.clarity;
  const hasEdges = comparison.edges.length > 0;
  const verdict = describeVerdict(comparison, format).word;
  return {
    file: `${formatStudyPath(study.slug).slice(1)}${linkFile}`,
    direction: format.direction,
    title: formatTitle(study),
    subtitle: study.authors.length === 0 ? undefined : format.list(study.authors),
    split,
    captions: captionHalves(split),
    swatches: undefined,
    measure: hasEdges ? `${verdict}: clarity` : "One colour",
    move: hasEdges ? [format.percent(before), format.percent(after)] : [undefined, "no edges"],
    gallery: gallery.title,
    caution: format.say("still.mark"),
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
  readonly split: Split;
}

/** The link picture of an edge: the number is its contrast. */
export function pictureEdge(
  { folder, title, studyTitle, outcome, row, split }: PicturedEdge,
  gallery: Gallery,
  format: Format,
): LinkPicture {
  return {
    file: `${folder}/${linkFile}`,
    direction: format.direction,
    title,
    subtitle: studyTitle,
    split,
    captions: captionHalves(split),
    swatches: [row.before?.hexes, row.after.hexes],
    measure: `${outcome}: contrast of this edge`,
    move: [row.before?.contrast, row.after.contrast],
    gallery: gallery.title,
    caution: format.say("still.mark"),
  };
}

/** The picture in words. */
export function describePicture({ title, subtitle, split, measure, move }: LinkPicture): string {
  const [before, after] = move;
  const moved = before === undefined ? after : `${before} to ${after}`;
  const of = subtitle === undefined ? title : `${title} (${subtitle})`;
  return `A flag divided ${split}, half original and half redesign. ${of}. ${measure} ${moved}. Unofficial study.`;
}
