// Floor 5. A series as its author wrote it, checked: several studies in the order in which they are to be read.
import type { Located } from "../../problem/problem.ts";
import type { Ballot } from "../vote/ballot.ts";

/**
 * A study by its slug; or a flag without a study, `flags/x.svg` in the content folder, with what is asked of the reader, and
 * `note`, what its speaker is reminded of.
 */
export type SeriesEntry =
  | { readonly study: string }
  | { readonly flag: string; readonly name?: string; readonly ask?: string; readonly note?: string };

export interface Series {
  readonly slug: string;
  /** Path of the file, as shown in messages. */
  readonly file: string;
  readonly title: string;
  readonly authors: readonly string[];
  /** ISO date, `2026-04-02`. */
  readonly date?: string;
  readonly entries: readonly SeriesEntry[];
  /** The question at the end. */
  readonly closing?: string;
  /** Whether the words of ballots may be shown. */
  readonly showWords?: boolean;
  /** What the speaker of its show is reminded of, by step; notes to the steps of a study are the study's. */
  readonly show?: { readonly notes?: { readonly "the-opening"?: string; readonly "the-closing"?: string } };
  /** What came back from the vote, by file; absent where nobody looked. */
  readonly ballots?: readonly Ballot[];
  /** The opening, Markdown. */
  readonly body: string;
  /** Line on which the opening begins in its file, from 1. */
  readonly bodyLine: number;
  /** Where each entry stands, in their order. */
  readonly places: readonly (Located | undefined)[];
}

/** Returns what an entry is of: the slug of a study, or the path of a flag in the content folder. */
export function subjectOf(entry: SeriesEntry): string {
  return "study" in entry ? entry.study : entry.flag;
}

/** Returns the slug of a study's entry, or undefined. */
export function studyOf(entry: SeriesEntry): string | undefined {
  return "study" in entry ? entry.study : undefined;
}
