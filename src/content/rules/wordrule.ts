// Floor 5, the catalogue of rules: words.yaml.
import type { Rule } from "./rule.ts";

const file = "words.yaml";

/** Rules of a society's own words. */
export const wordRules: readonly Rule[] = [
  {
    id: "words/unknown",
    severity: "error",
    means: "A line of words.yaml names a message that there is not.",
    why: "It would stand nowhere, and the word that was meant to go would stay.",
    example: { file, wrong: "edges.were: Where they meet", right: "edges.where: Where they meet" },
  },
  {
    id: "words/message",
    severity: "error",
    means: "A message of words.yaml is no text, or has a brace or a tag without its end.",
    why: "Braces are values, and tags are links: what is half open cannot be filled in.",
    example: {
      file,
      wrong: 'verdict.change: "From {before to {after}."',
      right: 'verdict.change: "From {before} to {after}."',
    },
  },
  {
    id: "words/values",
    severity: "error",
    means: "A message of words.yaml has other values or tags in it than ours.",
    why: "What is not given cannot be said, and what is left out is lost to the reader.",
    example: {
      file,
      wrong: 'verdict.change: "To {after}."',
      right: 'verdict.change: "From {before} to {after}."',
    },
  },
];
