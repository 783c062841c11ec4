// Floor 8. A study for a projector: steps with one idea each, every one at an address of its own.
import type { StudyResult } from "../../analysis/result.ts";
import type { Gallery } from "../../content/study/study.ts";
import type { Format } from "../../words/format.ts";
import { formatTitle } from "../../words/title.ts";
import { describeChange, describeVerdict } from "../../words/verdict.ts";
import { linkFrom } from "../address.ts";
import { cropFiles, placeEdges } from "../edge/edgeaddress.ts";

import { formatNames } from "../edge/edgerow.ts";
import { pictureFirst } from "../linkview.ts";
import { type Frame, presentFrame } from "../pageframe.ts";
import { type DrawnPlate, type Plate, presentPlate } from "../plate.ts";
import { formatStudyPath } from "../status.ts";
import type { RulerView } from "../study/contrastruler.ts";
import { findPlace } from "../study/edgedetail.ts";
import type { EdgeMapView } from "../study/edgemap.ts";
import { presentOptions } from "../study/optionsview.ts";
import { presentFigures, type StudyPage } from "../study/studypage.ts";

export interface ShowPage {
  readonly frame: Frame;
  /** The page's folder in the site, without slashes around it. */
  readonly folder: string;
  readonly title: string;
  readonly back: string;
  readonly steps: readonly ShowStep[];
}

/** One step. `anchor` is its address on the page; `says` stands under the picture. */
export interface ShowStep {
  readonly anchor: string;
  readonly heading: string;
  readonly says: string | undefined;
  readonly picture: ShowPicture;
}

export type ShowPicture =
  | { readonly kind: "flag"; readonly plate: Plate }
  | { readonly kind: "pair"; readonly plates: readonly [Plate, Plate] }
  | { readonly kind: "map"; readonly map: EdgeMapView }
  | {
      readonly kind: "afar";
      readonly steps: readonly { readonly from: string; readonly plate: DrawnPlate }[];
    }
  | { readonly kind: "ruler"; readonly ruler: RulerView }
  | { readonly kind: "seen"; readonly seen: StudyPage["seen"] };

const original = "The original";
const redesign = "The redesign, an unofficial study";
const mapKey =
  "Solid lines are clear, dotted lines are hard to see. The band marks what has to be seen before the rest.";
const rulerKey = "Ring: the original. Dot: the redesign.";

/** The site path of a study's show. */
export function formatShowPath(slug: string): string {
  return `${formatStudyPath(slug)}show/`;
}

/** The show of one study. A step that the study has nothing for is left out. */
export function presentShow(result: StudyResult, gallery: Gallery, format: Format): ShowPage {
  const { study } = result;
  const path = formatShowPath(study.slug);
  const link = linkFrom(path);
  const title = formatTitle(study);
  return {
    frame: presentFrame(
      {
        path,
        title: `${title}, step by step`,
        description: `Unofficial redesign study. ${describeChange(result)}`,
        section: "studies",
        isArticle: true,
        ...pictureFirst([result], gallery, format),
      },
      gallery,
      format,
    ),
    folder: path.slice(1, -1),
    title,
    back: link(formatStudyPath(study.slug)),
    steps: listSteps(result, gallery, format),
  };
}

function listSteps(result: StudyResult, gallery: Gallery, format: Format): readonly ShowStep[] {
  const { study, comparison } = result;
  const link = linkFrom(formatShowPath(study.slug));
  const { plates, edgeMap, strip, ruler, seen } = presentFigures(result, gallery, link, format);
  const tried = presentOptions(result, link, format)?.noted ?? [];
  const verdict = describeVerdict(comparison, format);
  const name = study.flag ?? study.title;
  const step = (anchor: string, heading: string, picture: ShowPicture, says?: string): ShowStep => ({
    anchor,
    heading,
    says,
    picture,
  });
  const flag = (plate: Plate): ShowPicture => ({ kind: "flag", plate });
  const both: ShowPicture = { kind: "pair", plates };
  const afar = strip.steps.map(({ distance, plates: [plate] }) => ({ from: distance, plate }));
  return [
    step("the-flag", name, flag(plates[0]), original),
    ...(comparison.before.focus.source === "none"
      ? []
      : [step("what-has-to-be-seen", "What has to be seen", { kind: "map", map: edgeMap }, mapKey)]),
    ...presentWeakest(result, format),
    ...(comparison.edges.length > 0
      ? [step("from-afar", "From afar", { kind: "afar", steps: afar }, original)]
      : []),
    ...tried.map(({ id, change, plate, figures, note = "" }) =>
      step(id, change, flag(plate), `Tried, an unofficial study. ${figures}. ${note}`.trim()),
    ),
    step("before", "Before", flag(plates[0]), original),
    step("after", describeChange(result), flag(plates[1]), redesign),
    ...(ruler
      ? [step("better-and-worse", "What got better and worse", { kind: "ruler", ruler }, rulerKey)]
      : []),
    step("the-price", verdict.word, both, verdict.sentence),
    step(
      "to-other-eyes",
      "To colour-blind readers, and in grey",
      { kind: "seen", seen },
      `${original}, and ${redesign.toLowerCase()}`,
    ),
    step("the-question", "Original or redesign?", both, redesign),
  ];
}

/** The weakest edge of the original, close by; nothing where it has none, or the edge has no page with that picture. */
function presentWeakest(result: StudyResult, format: Format): readonly ShowStep[] {
  const { study, comparison } = result;
  const { weakestEdge } = comparison.before;
  const edge = weakestEdge && comparison.edges.find(({ a, b }) => a === weakestEdge.a && b === weakestEdge.b);
  if (!edge || findPlace(result, edge) === undefined) return [];
  const folder = placeEdges(study.slug, comparison)(edge);
  if (!folder.endsWith("/")) return [];
  const src = linkFrom(formatShowPath(study.slug))(`${folder}${cropFiles.original}`);
  const names = formatNames(edge.names[0]);
  const plate = { ...presentPlate("Original", src, comparison.before, format), width: 900, height: 600 };
  return [
    {
      anchor: "the-weakest-edge",
      heading: "Its weakest edge",
      says: `${names}: contrast ${format.contrast(weakestEdge?.contrast ?? 0)}`,
      picture: { kind: "flag", plate: { ...plate, alt: `The place where ${names} meet`, fit: "wide" } },
    },
  ];
}
