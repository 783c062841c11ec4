// Floor 8. What became of a study since it was published: revisions, the study before it and those after it.
import type { StudyResult } from "../../analysis/result.ts";
import type { Study } from "../../content/study/study.ts";
import { compareText } from "../../problem/problem.ts";
import type { Format } from "../../words/format.ts";
import { formatTitle } from "../../words/title.ts";
import type { Linker } from "../address.ts";
import { formatStudyPath } from "../status.ts";

export interface HistoryView {
  /** The oldest first. */
  readonly revised: readonly { readonly iso: string; readonly date: string; readonly what: string }[];
  /** `Takes the place of` an older study, `Followed by` a newer one. */
  readonly kin: readonly { readonly lead: string; readonly title: string; readonly address: string }[];
}

/** Undefined where nothing is known. `all` are the studies of the gallery; by whom a study is followed say its own authors. */
export function presentHistory(
  { slug, authors, revised = [], follows }: Study,
  all: readonly StudyResult[],
  link: Linker,
  format: Format,
): HistoryView | undefined {
  const others = all.map(({ study }) => study).filter((study) => study.slug !== slug);
  const tell = (lead: string) => (study: Study) => ({
    lead,
    title: formatTitle(study, format),
    address: link(formatStudyPath(study.slug)),
  });
  const kin = [
    ...others.filter((study) => study.slug === follows).map(tell(format.say("history.follows"))),
    ...others
      .filter((study) => study.follows === slug && isSameSet(study.authors, authors))
      .map(tell(format.say("history.followed"))),
  ];
  if (kin.length === 0 && revised.length === 0) return undefined;
  const inOrder = [...revised].sort((a, b) => compareText(a.date, b.date));
  return {
    revised: inOrder.map(({ date, what }) => ({ iso: date, date: format.date(date), what })),
    kin,
  };
}

function isSameSet(some: readonly string[], others: readonly string[]): boolean {
  return new Set([...some, ...others]).size === new Set(some).size && some.length === others.length;
}
