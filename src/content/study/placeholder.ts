// Floor 5. Words that the command begin writes for the author to replace, and that were left standing.
import { quoteText } from "../../problem/quote.ts";
import { type Finding, wrong } from "../yaml/finding.ts";

/** Dotted path → the words, as the first text of a study has them behind a #. */
export const placeholders = {
  flag: "What the flag is called",
  "authors.0": "Your Name",
  "credit.author": "Who drew it",
  symbolism: "What the change does to the meaning.",
} as const;

/** Returns a warning for each value in `raw`, the front matter of a study, that is still the word of `begin`. */
export function checkPlaceholders(raw: unknown): Finding[] {
  return Object.entries(placeholders).flatMap(([path, words]): Finding[] =>
    findText(raw, path.split(".")) === words
      ? wrong(
          "study/placeholder",
          path,
          {
            reason: `${quoteText(words)} still stands here, as begin wrote it, and is published.`,
            hint: "Write your own words in its place, or put the # back before the line.",
          },
          { severity: "warning" },
        )
      : [],
  );
}

function findText(raw: unknown, [first, ...rest]: readonly string[]): unknown {
  if (first === undefined) return raw;
  if (typeof raw !== "object" || raw === null) return undefined;
  return findText((raw as Readonly<Record<string, unknown>>)[first], rest);
}
