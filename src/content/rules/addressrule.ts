// Floor 5, the catalogue of rules: addresses.txt, which keeps published addresses answering. None of them costs a study.
import type { Rule } from "./rule.ts";

const file = "addresses.txt";

/** Rules of the list of addresses. */
export const addressRules: readonly Rule[] = [
  {
    id: "address/line",
    severity: "error",
    means: "A line of addresses.txt is neither an address of the site nor says what became of one.",
    why: "What stood at that address could be dead without anyone knowing.",
    example: { file, wrong: "/studies/Ferry Wheel/", right: "/studies/ferry-wheel/ -> /studies/ferry/" },
  },
  {
    id: "address/two-leads",
    severity: "warning",
    means: "An address leads to two others.",
    why: "A reader can be led to one page, so the first line counts.",
    example: {
      file,
      wrong: "/studies/old/ -> /studies/ferry/\n/studies/old/ -> /studies/wheel/",
      right: "/studies/old/ -> /studies/ferry/",
    },
  },
  {
    id: "address/file-size",
    severity: "error",
    means: "The list of addresses has more than 8 MB.",
    why: "Each line may need a page of its own.",
    example: { file: "told", wrong: "a list of 9 MB", right: "a list of 1 MB" },
  },
  {
    id: "address/lacking",
    severity: "warning",
    means: "The list lacks an address that the gallery has.",
    why: "Only what is listed goes on answering when its page has gone.",
    example: {
      file: "told",
      wrong: "a study that is new since the list was written",
      right: "the list after “publish”",
    },
  },
  {
    id: "address/not-written",
    severity: "warning",
    means: "The list could not be added to after the site was published.",
    why: "The site is as it should be; the list is added to when it is published the next time.",
    example: {
      file: "told",
      wrong: "a content folder on a disk that can only be read",
      right: "one that can be written to",
    },
  },
];
