// Floor 6. The survey of a gallery: the originals of its studies and the flags that have none, least clear first.

import type { StudyResult } from "../result.ts";
import { findHomes, leaveOriginals } from "./sameflag.ts";
import type { GallerySurvey, SurveyEntry } from "./surveyentry.ts";
import { collectSurvey, describeFlag, type FlagOutcome } from "./surveyflags.ts";

/**
 * Puts the survey together. A flag that studies begin with is there once, with the focus of the first of them, also where
 * each has a copy of the drawing; `flags` are the others.
 */
export function surveyGallery(studies: readonly StudyResult[], flags: readonly FlagOutcome[]): GallerySurvey {
  const entries = new Map<string, SurveyEntry>();
  for (const [result, file] of findHomes(studies)) {
    const known = entries.get(file) ?? surveyStudy(file, result);
    entries.set(file, { ...known, slugs: [...known.slugs, result.study.slug].sort() });
  }
  const others = leaveOriginals(flags, studies);
  for (const { file, outcome } of others) {
    if (outcome.value === undefined) continue;
    const { flag, measure, drawing } = outcome.value;
    entries.set(file, { flag: { ...flag, file }, measure, drawing, slugs: [] });
  }
  const ordered = collectSurvey([
    ...[...entries.values()].map(({ flag }) => ({ file: flag.file, outcome: { value: flag, problems: [] } })),
    ...others.flatMap(({ file, outcome: { value, problems } }) =>
      value === undefined
        ? [{ file, outcome: { value, problems: problems.map((problem) => ({ ...problem, file })) } }]
        : [],
    ),
  ]);
  return {
    entries: ordered.flags.flatMap(({ file }) => entries.get(file) ?? []),
    failed: ordered.failed,
  };
}

/** The study has measured it already; a part that `only` selects is no colour of its own here. */
function surveyStudy(file: string, { comparison, ranking }: StudyResult): SurveyEntry {
  const flag = describeFlag(file, comparison.before, ranking?.report);
  const whole = (id: string, name: string): string =>
    comparison.before.colours.find((colour) => colour.id === id)?.part?.of ?? name;
  const { weakestEdge } = flag;
  return {
    flag: {
      ...flag,
      weakestEdge:
        weakestEdge === null
          ? null
          : {
              ...weakestEdge,
              names: [whole(weakestEdge.a, weakestEdge.names[0]), whole(weakestEdge.b, weakestEdge.names[1])],
            },
    },
    measure: comparison.before,
    slugs: [],
  };
}
