// Floor 6. Series with what is published: studies that are left out are named, and the others keep their order.
import { type Series, studyOf, subjectOf } from "../content/series/series.ts";
import { type Problem, report } from "../problem/problem.ts";
import { quoteText } from "../problem/quote.ts";
import type { GalleryResult } from "./result.ts";

/**
 * Returns the series without the studies and flags that a gallery does not publish, and the warning `series/left-out` at each
 * of them. A series of which nothing is left goes.
 */
export function settleSeries(
  all: readonly Series[],
  { studies, survey }: Pick<GalleryResult, "studies" | "survey">,
): { readonly series: readonly Series[]; readonly problems: readonly Problem[] } {
  const published = new Set([
    ...studies.map(({ study }) => study.slug),
    ...(survey?.entries ?? []).flatMap(({ flag, slugs, drawing }) =>
      drawing === undefined && slugs.length === 0 ? [] : [flag.file],
    ),
  ]);
  const problems: Problem[] = [];
  const series = all.map((one) => {
    const isHere = one.entries.map((entry) => published.has(subjectOf(entry)));
    one.entries.forEach((entry, index) => {
      if (isHere[index]) return;
      const name = studyOf(entry) ?? `/${subjectOf(entry)}`;
      problems.push(
        report(
          "series/left-out",
          { file: one.file, ...one.places[index] },
          {
            reason: `${quoteText(name)} is not published, so the series goes on without it.`,
            hint: "Studies that are drafts or have an error are left out until they are ready.",
          },
          "warning",
        ),
      );
    });
    const keep = <T>(items: readonly T[]) => items.filter((_, index) => isHere[index]);
    return { ...one, entries: keep(one.entries), places: keep(one.places) };
  });
  return { series: series.filter(({ entries }) => entries.length > 0), problems };
}
