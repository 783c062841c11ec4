// Floor 6. A gallery without some of its studies: nothing that stays speaks of them.
import { compareProblems, compareText, type Problem } from "../problem/problem.ts";
import type { GalleryResult, StudyResult } from "./result.ts";
import { findUnshown, settleSeries } from "./settleseries.ts";
import type { GallerySurvey } from "./survey/surveyentry.ts";

/** Returns the gallery without the studies of these slugs, `problems` among its own. Their flags stay, if others show them. */
export function leaveOut<R extends GalleryResult>(
  result: R,
  slugs: ReadonlySet<string>,
  problems: readonly Problem[],
): R {
  const { leftOut } = result;
  const studies = result.studies
    .filter(({ study }) => !slugs.has(study.slug))
    .map((one) => forget(one, slugs));
  const survey = result.survey && forgetFlags(result.survey, slugs);
  const unshown = findUnshown(result.pages ?? [], { studies, folders: [...slugs] });
  const settled = settleSeries(result.series ?? [], { studies, ...(survey && { survey }) });
  return {
    ...result,
    studies,
    ...(result.series && { series: settled.series }),
    ...(survey && { survey }),
    ...(leftOut === undefined ? {} : { leftOut: [...leftOut, ...slugs].sort(compareText) }),
    problems: [...result.problems, ...settled.problems, ...unshown, ...problems].sort(compareProblems),
  };
}

function forget(result: StudyResult, slugs: ReadonlySet<string>): StudyResult {
  const { likeness } = result;
  if (likeness === undefined) return result;
  const nearest = likeness.nearest.filter(({ slug }) => slug === undefined || !slugs.has(slug));
  return { ...result, likeness: { ...likeness, nearest } };
}

/** A flag that only such studies show has no drawing left to show. */
function forgetFlags(survey: GallerySurvey, slugs: ReadonlySet<string>): GallerySurvey {
  const entries = survey.entries.flatMap((entry) => {
    const left = entry.slugs.filter((slug) => !slugs.has(slug));
    return left.length === 0 && entry.drawing === undefined ? [] : [{ ...entry, slugs: left }];
  });
  return { ...survey, entries };
}
