// Floor 6. One flag is redesigned once: two adopted studies of it contradict each other.
import { type Problem, report } from "../../problem/problem.ts";
import { quoteText } from "../../problem/quote.ts";
import type { StudyResult } from "../result.ts";
import type { GallerySurvey } from "./surveyentry.ts";

/** Returns the warning `study/adopted-twice` at the status of every adopted study whose flag has another one. */
export function findAdoptedTwice(
  { entries }: GallerySurvey,
  studies: readonly StudyResult[],
): readonly Problem[] {
  const adopted = new Map(
    studies.flatMap(({ study }) => (study.status === "adopted" ? [[study.slug, study] as const] : [])),
  );
  return entries.flatMap(({ slugs }) => {
    const rivals = slugs.flatMap((slug) => adopted.get(slug) ?? []);
    if (rivals.length < 2) return [];
    return rivals.map((study) => {
      const other = rivals.find((one) => one !== study)?.title ?? "";
      return report(
        "study/adopted-twice",
        { file: study.file, ...study.places.get("status") },
        {
          reason: `This study is adopted, and so is ${quoteText(other)}, another one of the same flag.`,
          hint: "Type: status: declined, in the one that was not adopted.",
        },
        "warning",
      );
    });
  });
}
