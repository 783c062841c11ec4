// Floor 5. A ballot that came back: what one voter chose in a series, and its checks one value at a time.
import { findNearest } from "../../problem/knownword.ts";
import type { Advice } from "../../problem/problem.ts";
import { quoteText } from "../../problem/quote.ts";
import { listNames } from "../folder/absent.ts";
import { isSlug } from "../study/slug.ts";

export const choices = ["original", "redesign", "neither"] as const;
export type Choice = (typeof choices)[number];

/** What was chosen of one study, and why, in the voter's words. Among rivals the one study that was chosen stands here. */
export interface Vote {
  readonly study: string;
  readonly choice: Choice;
  readonly why?: string;
}

export interface Ballot {
  readonly id: string;
  readonly votes: readonly Vote[];
}

/** One vote as a file has it, not yet checked. */
export interface RawVote {
  readonly ballot: string;
  readonly series: string;
  readonly study: string;
  readonly choice: string;
  readonly why: string;
}

/** What is wrong with the value `at`, by which rule. */
export type VoteFault = Advice & { readonly rule: string; readonly at: keyof RawVote };

/** Most characters of a word why. */
const longestWhy = 200;

/** Returns the first thing that is wrong with a vote in the series `slug` of `studies`, or undefined. */
export function checkVote(vote: RawVote, slug: string, studies: readonly string[]): VoteFault | undefined {
  const fault = (at: keyof RawVote, rule: string, reason: string, hint: string): VoteFault => ({
    at,
    rule,
    reason,
    hint,
  });
  const of = (word: string, known: readonly string[]): string => {
    const near = findNearest(word, known);
    return near === undefined ? `There are: ${listNames(known)}` : `Type: ${near}`;
  };
  const { ballot, series, study, choice } = vote;
  if (!/^[0-9a-f]{16}$/.test(ballot)) {
    const reason = `${quoteText(ballot)} is no id of a ballot: sixteen digits and letters from a to f.`;
    return fault(
      "ballot",
      "vote/row",
      reason,
      "Ask the voter to send the ballot again, as the page gave it.",
    );
  }
  if (series !== slug) {
    const reason = `The ballot is of the series ${quoteText(series)}, and lies with those of ${quoteText(slug)}.`;
    return fault(
      "series",
      "vote/other-series",
      reason,
      `Move it to: votes/${isSlug(series) ? series : "its series"}/`,
    );
  }
  if (!studies.includes(study))
    return fault(
      "study",
      "vote/unknown-study",
      `The series has no study ${quoteText(study)}.`,
      of(study, studies),
    );
  if (!choices.some((one) => one === choice))
    return fault("choice", "vote/unknown-choice", `${quoteText(choice)} is no choice.`, of(choice, choices));
  return undefined;
}

/** Returns a checked vote: its words in one line without what cannot be seen, cut at 200 characters. */
export function readVote({ study, choice, why }: RawVote): Vote {
  const found = choices.find((one) => one === choice);
  if (found === undefined) throw new RangeError(`unchecked choice: ${choice}`);
  // The apostrophe keeps spreadsheets from computing what follows.
  const words = why
    .normalize("NFC")
    .replace(/^'(?=[=+\-@])/, "")
    .replace(/[\p{C}\s]+/gu, " ")
    .trim();
  return { study, choice: found, ...(words === "" ? {} : { why: [...words].slice(0, longestWhy).join("") }) };
}
