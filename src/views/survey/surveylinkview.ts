// Floor 8. What the link picture of the survey says, and which flags stand on it.

import type { GallerySurvey, SurveyEntry } from "../../analysis/survey/surveyentry.ts";
import { gradeOf } from "../../colour/contrast.ts";
import type { Gallery } from "../../content/study/study.ts";
import type { Format } from "../../words/format.ts";
import { linkFile } from "../linkview.ts";
import { surveyPath } from "./flagname.ts";

export interface SurveyPicture {
  /** The file, from the top of the site, without a slash before it. */
  readonly file: string;
  readonly direction: Format["direction"];
  readonly title: string;
  readonly subtitle: string;
  /** What the one number is. */
  readonly measure: string;
  readonly number: string;
  readonly gallery: string;
  readonly caution: string;
}

/** Most flags on the picture: what can still be told apart where a link is shown (our own judgement). */
export const mostPictured = 40;

/** Returns what the link picture of the survey says, or undefined where there is no flag to show. */
export function pictureSurvey(
  { entries }: Pick<GallerySurvey, "entries">,
  gallery: Gallery,
  format: Format,
): SurveyPicture | undefined {
  if (entries.length === 0) return undefined;
  const { say } = format;
  const marks = entries.flatMap(({ flag }) => flag.clarity ?? []);
  const [least, most] = [format.percent(marks[0] ?? null), format.percent(marks.at(-1) ?? null)];
  return {
    file: `${surveyPath.slice(1)}${linkFile}`,
    direction: format.direction,
    title: say("survey.title"),
    subtitle: say("survey.pictured", { count: entries.length }),
    measure: say("mark.clarity"),
    number: least === most ? least : say("survey.range", { least, most }),
    gallery: gallery.title,
    caution: say("survey.caution"),
  };
}

/** The picture in words. */
export function describeSurveyPicture({ subtitle, number, caution }: SurveyPicture, { say }: Format): string {
  return say("survey.alt", { flags: subtitle, number, caution });
}

/** How many flags have an edge that is weak. */
export function countWeak(entries: readonly SurveyEntry[]): number {
  return entries.filter(
    ({ flag: { weakestEdge } }) => weakestEdge && gradeOf(weakestEdge.contrast) === "weak",
  ).length;
}
