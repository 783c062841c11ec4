// Floor 5, the catalogue of rules: series, several studies in an order.
import type { Rule } from "./rule.ts";

const file = "series/quay.md";

/** Rules of series. What holds for the text and the keys of a study holds for those of a series too. */
export const seriesRules: readonly Rule[] = [
  {
    id: "series/file-name",
    severity: "error",
    means:
      "A file in the folder series has a name that cannot be an address or that Windows keeps for a device, or does not end with .md.",
    why: "The file’s name is the address of the series, which others link to.",
    example: {
      file: "folder",
      wrong: "studies/ferry/study.md\nstudies/ferry/original.svg\nseries/The Quay.md",
      right: "studies/ferry/study.md\nstudies/ferry/original.svg\nseries/quay.md",
    },
  },
  {
    id: "series/unknown-study",
    severity: "error",
    means: "A series names a study that is not in the folder studies.",
    why: "It is named by its folder; a series with a gap would be read wrongly.",
    example: { file, wrong: "studies: [fery]", right: "studies: [ferry]" },
  },
  {
    id: "series/study-twice",
    severity: "error",
    means: "A study, or a flag, stands twice in one series.",
    why: "Each has one number in it, and one before and after it.",
    example: { file, wrong: "studies: [ferry, ferry]", right: "studies: [ferry]" },
  },
  {
    id: "series/flag-path",
    severity: "error",
    means: "A series names the drawing of a flag in another way than /flags/ and a file name.",
    why: "A series shows flags without a study from the folder flags alone.",
    example: {
      file,
      wrong: "studies: [ferry, { flag: harbour.svg }]",
      right: "studies: [ferry, { flag: /flags/harbour.svg }]",
    },
  },
  {
    id: "series/flag-missing",
    severity: "error",
    means: "A series names a drawing that is not in the folder flags.",
    why: "There would be nothing to look at.",
    example: {
      file,
      wrong: "studies: [ferry, { flag: /flags/habour.svg }]",
      right: "studies: [ferry, { flag: /flags/harbour.svg }]",
    },
  },
  {
    id: "series/left-out",
    severity: "warning",
    means: "A study or a flag of a series is not published, and the series goes on without it.",
    why: "A draft, or a study with an error, is left out until it is ready; the others of the series do not wait for it.",
    example: {
      file: "told",
      wrong: "a series with a study that is a draft",
      right: "the same when the study is open",
    },
  },
];
