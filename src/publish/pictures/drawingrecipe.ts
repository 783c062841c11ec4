// Floor 9. What is drawn for a site, as recipes. Nothing of an author's drawing is read or rendered here.

import type { StudyResult } from "../../analysis/result.ts";
import type { GallerySurvey, SurveyEntry } from "../../analysis/survey/surveyentry.ts";
import { visions } from "../../colour/vision.ts";
import type { Gallery } from "../../content/study/study.ts";
import { cropFiles, listPlacedEdges } from "../../views/edge/edgeaddress.ts";
import { findCrop } from "../../views/edge/edgecrop.ts";
import { pictureEdges } from "../../views/edge/edgepage.ts";
import { type LinkPicture, pictureStudy } from "../../views/linkview.ts";
import { labelFile } from "../../views/method/workedflag.ts";
import { hatchedFiles, hatchedSize } from "../../views/sheet/sheetpart.ts";
import { formatStudyPath } from "../../views/status.ts";
import { formatStripFile, shownSteps, stripSize } from "../../views/study/distancestrip.ts";
import { matrixFile } from "../../views/study/matrixview.ts";
import { pngFiles, pngSize } from "../../views/study/notes.ts";
import { listTriedDrawings } from "../../views/study/optionsview.ts";
import { mostPictured, type SurveyPicture } from "../../views/survey/surveylinkview.ts";
import { type Format, formatOf } from "../../words/format.ts";
import { nameStudy } from "../../words/namedresult.ts";
import { listRuler } from "./figurerecipe.ts";
import { iconSvg } from "./icon.ts";
import { fitFlag, linkRoom } from "./paper.ts";
import type { DrawnFile, Recipe, Sheeted } from "./recipe.ts";
import { listOffered } from "./stillrecipe.ts";
import { unofficial } from "./unofficial.ts";

/** The files of a study's folder, in the order of {@link listDrawings}. */
export const drawingFiles: readonly string[] = [
  "original.svg",
  "redesign.svg",
  ...visions.flatMap((vision) => [`seen-${vision}-original.svg`, `seen-${vision}-redesign.svg`]),
];

/** The icon as a picture, for browsers that take no other. */
const iconFile: DrawnFile = {
  path: "assets/icon.png",
  recipe: { kind: "picture", drawing: iconSvg, size: { width: 96, height: 96 } },
};

/** What is drawn for the site as a whole: the icon, and the link picture of the survey where there is a flag. */
export function listShared(
  picture: SurveyPicture | undefined,
  { entries }: Pick<GallerySurvey, "entries">,
  studies: readonly StudyResult[],
): readonly DrawnFile[] {
  if (picture === undefined) return [iconFile];
  const flags = entries.slice(0, mostPictured).flatMap((entry) => findDrawing(entry, studies) ?? []);
  const { file, ...words } = picture;
  return [iconFile, { path: file, recipe: { kind: "sheet", words, flags } }];
}

/** Every file of a study but its pages and its data. */
export function listDrawn(result: StudyResult, gallery: Gallery): readonly DrawnFile[] {
  const format = formatOf(gallery);
  const named = nameStudy(result, format);
  const words = [pictureStudy(named, gallery, format), ...pictureEdges(named, gallery, format)];
  const shown = [
    ...listDrawings(result),
    ...listCrops(result, format),
    ...listStrip(result),
    ...listMatrixPicture(result),
    place(result, labelFile, {
      kind: "labels",
      drawing: result.drawings.original,
      size: stripSize(result.comparison.before.proportions),
    }),
    ...listHatched(result),
    ...listRuler(result, gallery).map(({ path, recipe }) => place(result, path, recipe)),
    ...listDownloads(result),
    ...listLinkPictures(result, words),
  ];
  return result.study.downloads === true ? [...shown, ...listOffered(result, gallery, shown)] : shown;
}

/** The original, the redesign, both as each kind of vision sees them, and the author's other options. */
function listDrawings(result: StudyResult): readonly DrawnFile[] {
  const { original, redesign, seen } = result.drawings;
  const pairs = [{ original, redesign }, ...visions.map((vision) => seen[vision])];
  const texts = pairs.flatMap((pair) => [pair.original, pair.redesign]);
  const own = drawingFiles.map((file, index) => ({ file, drawing: texts[index] ?? "" }));
  return [...own, ...listTriedDrawings(result)].map(({ file, drawing }) =>
    place(result, file, { kind: "drawing", drawing }),
  );
}

/** The place where the two paints of each edge meet, before and after. */
function listCrops(
  { study, comparison, edgeLines, drawings }: StudyResult,
  { say }: Format,
): readonly DrawnFile[] {
  const { original, redesign } = drawings;
  return listPlacedEdges(study.slug, comparison).flatMap(({ edge, path }): readonly DrawnFile[] => {
    const crop = findCrop(edgeLines, edge, comparison.before.proportions);
    if (crop === undefined) return [];
    const folder = path.slice(1);
    return [
      { path: `${folder}${cropFiles.original}`, recipe: { kind: "crop", drawing: original, crop } },
      {
        path: `${folder}${cropFiles.redesign}`,
        recipe: { kind: "crop", drawing: redesign, crop, note: say("still.unofficial") },
      },
    ];
  });
}

/** The distance strip of a study: both flags as they look from each distance that is shown. */
function listStrip(result: StudyResult): readonly DrawnFile[] {
  const size = stripSize(result.comparison.before.proportions);
  return (["original", "redesign"] as const).flatMap((name) => {
    const drawing = result.drawings[name];
    const isRedesign = name === "redesign";
    return shownSteps.map((distance) =>
      place(result, formatStripFile(distance, name), {
        kind: "distance",
        drawing,
        size,
        distance,
        isRedesign,
      }),
    );
  });
}

/** Every single change of a study as small flags, in one picture; none where there is no change. */
function listMatrixPicture(result: StudyResult): readonly DrawnFile[] {
  const picture = result.ranking?.matrix?.picture;
  return picture === undefined ? [] : [place(result, matrixFile, { kind: "matrix", picture })];
}

/** For paper printed in grey both flags in the lines that stand for their colours, and the original to colour in. */
function listHatched(result: StudyResult): readonly DrawnFile[] {
  const { original, redesign } = result.drawings;
  const { proportions } = result.comparison.before;
  const draw = (file: string, drawing: string, isRedesign: boolean, isOutline = false) =>
    place(result, file, {
      kind: "hatched",
      drawing,
      size: hatchedSize(proportions, isOutline),
      isRedesign,
      isOutline,
    });
  return [
    draw(hatchedFiles.original, original, false),
    draw(hatchedFiles.redesign, redesign, true),
    draw(hatchedFiles.outline, original, false, true),
    ...(result.study.status === "adopted" ? [draw(hatchedFiles.made, redesign, true, true)] : []),
  ];
}

/** Both flags as pictures to take away. */
function listDownloads(result: StudyResult): readonly DrawnFile[] {
  const { original, redesign } = result.drawings;
  const size = pngSize(result.comparison.before.proportions);
  return [
    place(result, pngFiles.original, { kind: "picture", drawing: original, size }),
    place(result, pngFiles.redesign, {
      kind: "picture",
      drawing: redesign,
      size,
      note: unofficial,
    }),
  ];
}

/** The link pictures of one study and of its edges. */
function listLinkPictures(
  { drawings: { original, redesign }, comparison }: StudyResult,
  pictures: readonly LinkPicture[],
): readonly DrawnFile[] {
  const size = fitFlag(comparison.before.proportions, linkRoom);
  return pictures.map(({ file, ...words }) => ({
    path: file,
    recipe: { kind: "link", words, drawings: [original, redesign], size },
  }));
}

function findDrawing(entry: SurveyEntry, studies: readonly StudyResult[]): Sheeted | undefined {
  const [slug] = entry.slugs;
  const svg = entry.drawing ?? studies.find(({ study }) => study.slug === slug)?.drawings.original;
  return svg === undefined ? undefined : { svg, proportions: entry.measure.proportions };
}

function place({ study }: StudyResult, file: string, recipe: Recipe): DrawnFile {
  return { path: `${formatStudyPath(study.slug)}${file}`.slice(1), recipe };
}
