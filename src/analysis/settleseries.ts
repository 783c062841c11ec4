// Floor 6. Series and pages with what is published: studies that are left out are named, and the others keep their order.
import type { Page } from "../content/page/pagefile.ts";
import { type Series, studyOf, subjectOf } from "../content/series/series.ts";
import { findStudyLines } from "../content/study/prosecheck.ts";
import { type Problem, report } from "../problem/problem.ts";
import { quoteText } from "../problem/quote.ts";
import type { GalleryResult } from "./result.ts";

const untilReady = "Studies that are drafts or have an error are left out until they are ready.";

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
            hint: untilReady,
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

/** Returns the warning `page/left-out` at each line of a page that shows a study which is known and not published. */
export function findUnshown(
  pages: readonly Page[],
  { studies, folders = [] }: Pick<GalleryResult, "studies" | "folders">,
): readonly Problem[] {
  const published = new Set(studies.map(({ study }) => study.slug));
  const shown = pages.flatMap(findStudyLines);
  return shown.flatMap(({ slug, at }) => {
    if (published.has(slug) || !folders.includes(slug)) return [];
    const reason = `${quoteText(slug)} is not published, so the page goes on without it.`;
    return [report("page/left-out", at, { reason, hint: untilReady }, "warning")];
  });
}
