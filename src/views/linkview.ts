// Floor 8. What a link picture says: the picture that a site or chat shows when someone posts a link to a comparison.

import type { StudyResult } from "../analysis/result.ts";
import type { Hex } from "../colour/colour.ts";
import type { Gallery } from "../content/study/study.ts";
import type { WordId } from "../words/en/all.ts";
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
function captionHalves(split: Split, { say }: Format): LinkPicture["captions"] {
  const [before, after] = [say("plate.original"), say("picture.redesign")];
  return split === "per fess"
    ? [say("picture.above", { half: before }), say("picture.below", { half: after })]
    : [before, after];
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
    title: formatTitle(study, format),
    subtitle: study.authors.length === 0 ? undefined : format.list(study.authors),
    split,
    captions: captionHalves(split, format),
    swatches: undefined,
    measure: hasEdges ? format.say("picture.clarity", { verdict }) : format.say("picture.oneColour"),
    move: hasEdges ? [format.percent(before), format.percent(after)] : [undefined, format.percent(null)],
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
  return { picture: { path: `/${picture.file}`, alt: describePicture(picture, format) } };
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
    captions: captionHalves(split, format),
    swatches: [row.before?.hexes, row.after.hexes],
    measure: format.say("picture.contrast", { outcome }),
    move: [row.before?.contrast, row.after.contrast],
    gallery: gallery.title,
    caution: format.say("still.mark"),
  };
}

const splitIds = {
  "per pale": "picture.perPale",
  "per bend": "picture.perBend",
  "per bend sinister": "picture.perBendSinister",
  "per fess": "picture.perFess",
} as const satisfies Record<Split, WordId>;

/** The picture in words. */
export function describePicture(
  { title, subtitle, split, measure, move: [before, after] }: LinkPicture,
  { say }: Format,
): string {
  const move = before === undefined ? after : say("number.move", { was: before, is: after });
  const told = { split: say(splitIds[split]), title, measure, move };
  return subtitle === undefined ? say("picture.alt", told) : say("picture.altOf", { ...told, of: subtitle });
}
