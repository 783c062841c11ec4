// Floor 8. A study for a projector: steps with one idea each, every one at an address of its own.
import type { StudyResult } from "../../analysis/result.ts";
import type { Gallery } from "../../content/study/study.ts";
import type { Format } from "../../words/format.ts";
import { formatTitle } from "../../words/title.ts";
import { describeChange } from "../../words/verdict.ts";
import { linkFrom } from "../address.ts";
import { pictureFirst } from "../linkview.ts";
import { type Frame, presentFrame } from "../pageframe.ts";
import { formatStudyPath } from "../status.ts";
import { listSteps } from "./showsteps.ts";
import type { ShowStep } from "./step.ts";

export interface ShowPage {
  readonly frame: Frame;
  /** The page's folder in the site, without slashes around it. */
  readonly folder: string;
  readonly title: string;
  readonly back: { readonly address: string; readonly text: string };
  readonly steps: readonly ShowStep[];
}

/** The site path of a study's show. */
export function formatShowPath(slug: string): string {
  return `${formatStudyPath(slug)}show/`;
}

/** The show of one study. */
export function presentShow(result: StudyResult, gallery: Gallery, format: Format): ShowPage {
  const { study } = result;
  const path = formatShowPath(study.slug);
  const title = formatTitle(study, format);
  return {
    frame: presentFrame(
      {
        path,
        title: format.say("show.title", { title }),
        description: `${format.say("show.description")} ${describeChange(result, format)}`,
        section: "studies",
        isArticle: true,
        ...pictureFirst([result], gallery, format),
      },
      gallery,
      format,
    ),
    folder: path.slice(1, -1),
    title,
    back: { address: linkFrom(path)(formatStudyPath(study.slug)), text: format.say("show.toStudy") },
    steps: listSteps(result, gallery, path, format),
  };
}
