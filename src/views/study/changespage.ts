// Floor 8. The page with the other single changes of a study, as finished values.
import type { StudyResult } from "../../analysis/result.ts";
import type { Gallery } from "../../content/study/study.ts";
import type { Format } from "../../words/format.ts";
import { formatTitle } from "../../words/title.ts";
import { linkFrom } from "../address.ts";
import { describePicture, linkFile, pictureStudy } from "../linkview.ts";
import { type Frame, presentFrame } from "../pageframe.ts";
import { type MarkedPlate, presentPair } from "../plate.ts";
import { formatChangesPath, formatStudyPath, presentStatus, type StatusView } from "../status.ts";
import { type OptionsView, presentOptions } from "./optionsview.ts";
import { presentSaidOfChanges, type SaidView } from "./saidview.ts";

export interface ChangesPage {
  /** The page's folder in the site, without slashes around it. */
  readonly folder: string;
  /** Of its study. */
  readonly slug: string;
  readonly frame: Frame;
  readonly title: string;
  readonly flag: string | undefined;
  readonly study: { readonly title: string; readonly address: string };
  readonly status: StatusView;
  readonly plates: readonly MarkedPlate[];
  readonly options: OptionsView;
  /** What others said of single changes here. */
  readonly said: readonly SaidView[];
}

/** A page for each study whose options could be ranked. */
export function presentChanges(
  results: readonly StudyResult[],
  gallery: Gallery,
  format: Format,
): readonly ChangesPage[] {
  return results.flatMap((result) => {
    const { study } = result;
    const path = formatChangesPath(study.slug);
    const link = linkFrom(path);
    const options = presentOptions(result, link, format);
    if (options === undefined) return [];
    const title = format.say("options.title");
    const whole = formatTitle(study, format);
    const description = [format.say("options.description", { title: whole }), options.first].join(" ");
    const share = {
      path: `${formatStudyPath(study.slug)}${linkFile}`,
      alt: describePicture(pictureStudy(result, gallery, format), format),
    };
    const facts = {
      path,
      title: format.say("options.titleOf", { study: whole }),
      description,
      picture: share,
      isArticle: true,
    };
    return [
      {
        folder: path.slice(1, -1),
        slug: study.slug,
        frame: presentFrame({ ...facts, section: "studies" }, gallery, format),
        title,
        flag: study.flag,
        study: { title: study.title, address: link(formatStudyPath(study.slug)) },
        status: presentStatus(study.status, format),
        plates: presentPair(result, link, format),
        options,
        said: presentSaidOfChanges(result, format),
      },
    ];
  });
}
