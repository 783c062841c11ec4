// Floor 6. What studies of one flag call it: none of them names it for the others by what it says of itself.
import type { Study } from "../../content/study/study.ts";
import { type Problem, report } from "../../problem/problem.ts";
import { quoteText } from "../../problem/quote.ts";
import type { StudyResult } from "../result.ts";
import type { GallerySurvey } from "./surveyentry.ts";

/**
 * Returns what a flag is called: of the names that `studies` give it, one that `isKnown` before that it has never had, then
 * the one that most of them give, then the first; undefined where they give none.
 */
export function callFlag(
  studies: readonly Pick<Study, "flag">[],
  isKnown: (name: string) => boolean = () => false,
): string | undefined {
  const names = studies.flatMap(({ flag }) => flag ?? []);
  const weigh = (name: string) => names.filter((other) => isOneName(name, other)).length;
  const [first] = [...names].sort((a, b) => Number(isKnown(b)) - Number(isKnown(a)) || weigh(b) - weigh(a));
  return first;
}

/** Returns the warning `study/flag-called` at `flag` of each study that calls its flag otherwise than the others do. */
export function checkFlagNames(
  { entries }: GallerySurvey,
  results: readonly StudyResult[],
): readonly Problem[] {
  const bySlug = new Map(results.map(({ study }) => [study.slug, study]));
  return entries.flatMap(({ slugs }) => {
    const studies = slugs.flatMap((slug) => bySlug.get(slug) ?? []);
    const called = callFlag(studies);
    return studies.flatMap(({ flag, file, places }) =>
      flag === undefined || called === undefined || isOneName(flag, called)
        ? []
        : report(
            "study/flag-called",
            { file, ...places.get("flag") },
            {
              reason: `The flag is called ${quoteText(flag)} here, and ${quoteText(called)} in other studies of the same drawing.`,
              hint: `Type, if it is the same flag: flag: ${called}`,
            },
            "warning",
          ),
    );
  });
}

function isOneName(one: string, other: string): boolean {
  const fold = (name: string) => name.normalize("NFKC").trim().toLowerCase();
  return fold(one) === fold(other);
}
