// Floor 8. One study as an entry of a list, with what the list can be searched and sorted by; and their order.

import type { StudyResult } from "../../analysis/result.ts";
import { compareText } from "../../problem/problem.ts";
import { slugOf } from "../../words/addressslug.ts";
import { type Tongue, tongueOf } from "../../words/direction.ts";
import type { Format } from "../../words/format.ts";
import { describeChange, describeVerdict, slugVerdict } from "../../words/verdict.ts";
import type { Linker } from "../address.ts";
import { type MarkedPlate, presentPair } from "../plate.ts";
import { formatStudyPath, presentStatus, type StatusView } from "../status.ts";

export interface Card {
  readonly address: string;
  readonly title: string;
  readonly flag: string | undefined;
  /** Of title and flag. */
  readonly tongue: Tongue;
  readonly authors: string | undefined;
  readonly date: { readonly iso: string; readonly text: string } | undefined;
  readonly status: StatusView;
  readonly change: string;
  readonly verdict: string;
  /** What a change that is clearer at a price costs; empty for every other verdict. */
  readonly price: string;
  readonly clarity: { readonly before: string; readonly after: string };
  readonly plates: readonly [MarkedPlate, MarkedPlate];
  readonly search: CardSearch;
}

/** What a script can find and sort an entry by. Lists are parted by spaces. */
export interface CardSearch {
  readonly slug: string;
  readonly status: string;
  readonly verdict: string;
  readonly authors: string;
  readonly tags: string;
  readonly date: string;
  /** Clarity after, and how much of it the change brought, in percent; empty where there is no edge. */
  readonly after: string;
  readonly gain: string;
}

/** Newest first, undated last, then by slug, by code unit. */
export function orderStudies(studies: readonly StudyResult[]): readonly StudyResult[] {
  return [...studies].sort((first, second) => {
    const [a, b] = [first.study, second.study];
    return compareText(b.date ?? "", a.date ?? "") || compareText(a.slug, b.slug);
  });
}

/** The entry of a study, for the page that `link` writes addresses for. */
export function presentCard(result: StudyResult, link: Linker, format: Format): Card {
  const { study, comparison } = result;
  const path = formatStudyPath(study.slug);
  const [before, after] = comparison.clarity;
  const verdict = describeVerdict(comparison, format);
  return {
    address: link(path),
    title: study.title,
    flag: study.flag,
    tongue: tongueOf(study.language, format.language),
    authors: study.authors.length === 0 ? undefined : format.list(study.authors),
    date: study.date === undefined ? undefined : { iso: study.date, text: format.date(study.date) },
    status: presentStatus(study.status, format),
    change: describeChange(result, format),
    verdict: verdict.word,
    price: comparison.verdict === "clearer, at a price" ? verdict.cost : "",
    clarity: { before: format.percent(before), after: format.percent(after) },
    plates: presentPair(result, link, format),
    search: presentSearch(result),
  };
}

/** What a study is found and sorted by. */
export function presentSearch({ study, comparison }: StudyResult): CardSearch {
  const [before, after] = comparison.clarity;
  return {
    slug: study.slug,
    status: study.status,
    verdict: slugVerdict(comparison.verdict),
    authors: study.authors.map(slugOf).join(" "),
    tags: study.tags.map(slugOf).join(" "),
    date: study.date ?? "",
    after: after === null ? "" : after.toFixed(4),
    gain: before === null || after === null ? "" : (after - before).toFixed(4),
  };
}
