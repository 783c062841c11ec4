// Floor 5, the catalogue of rules: ballots that came back from a vote. None of them costs a series.
import type { Rule } from "./rule.ts";

const file = "votes/quay/ballots.csv";
const head = "ballot,series,study,choice,why";
const id = "70ccec313571810a";
const right = `${head}\n${id},quay,ferry,redesign,`;

/** Rules of votes. */
export const voteRules: readonly Rule[] = [
  {
    id: "vote/file-name",
    severity: "error",
    means: "What lies in the folder votes is neither the folder of a series nor a file of ballots in it.",
    why: "The folder says of which series the ballots are, and the ending that they are ballots.",
    example: {
      file: "folder",
      wrong: "studies/ferry/study.md\nstudies/ferry/original.svg\nseries/quay.md\nvotes/ballots.csv",
      right: "studies/ferry/study.md\nstudies/ferry/original.svg\nseries/quay.md\nvotes/quay/ballots.csv",
    },
  },
  {
    id: "vote/unknown-series",
    severity: "error",
    means: "A folder in votes has the name of no series.",
    why: "Its ballots would count for nothing.",
    example: {
      file: "folder",
      wrong: "studies/ferry/study.md\nstudies/ferry/original.svg\nseries/quay.md\nvotes/qauy/ballots.csv",
      right: "studies/ferry/study.md\nstudies/ferry/original.svg\nseries/quay.md\nvotes/quay/ballots.csv",
    },
  },
  {
    id: "vote/file-size",
    severity: "error",
    means: "A file of ballots has more than 64 KB.",
    why: "Several hundred ballots fit in one, and one that is larger is most likely something else.",
    example: { file: "told", wrong: "a table of 100 KB", right: "two tables of 50 KB each" },
  },
  {
    id: "vote/no-ballots",
    severity: "error",
    means: "A file of ballots neither begins with the names of the columns nor has a line of a ballot.",
    why: "Nobody can tell which value is which.",
    example: { file, wrong: `${id},quay,ferry,redesign,`, right },
  },
  {
    id: "vote/row",
    severity: "error",
    means: "A line in a file of ballots cannot be read, or the id in it is none that the page draws.",
    why: "A vote that is half read would be guessed; the other ballots of the file count.",
    example: { file, wrong: `${head}\n${id},quay,ferry`, right },
  },
  {
    id: "vote/other-series",
    severity: "error",
    means: "A ballot lies with those of another series.",
    why: "The same study may be asked about in several series.",
    example: { file, wrong: `${head}\n${id},season,ferry,redesign,`, right },
  },
  {
    id: "vote/unknown-study",
    severity: "error",
    means: "A ballot names a study that is not in its series.",
    why: "The whole ballot is left out: somebody has changed it, or it is older than the series.",
    example: { file, wrong: `${head}\n${id},quay,fery,redesign,`, right },
  },
  {
    id: "vote/unknown-choice",
    severity: "error",
    means: "A choice is neither original nor redesign nor neither.",
    why: "The whole ballot is left out, since somebody has changed it.",
    example: { file, wrong: `${head}\n${id},quay,ferry,yes,`, right },
  },
  {
    id: "vote/other-lines",
    severity: "warning",
    means: "Beside ballots a file has lines that are none: a greeting, the mark of a reply, a signature.",
    why: "A ballot that came by mail is read as it was saved; look whether one of the lines was meant as a ballot.",
    example: {
      file,
      wrong: `Dear Ines,\nballot ${id} quay ferry=redesign`,
      right: `ballot ${id} quay ferry=redesign`,
    },
  },
  {
    id: "vote/ballot-contradicted",
    severity: "error",
    means: "A ballot stands twice, by its id, and the two choose different things.",
    why: "Nobody knows which of them the voter sent, so none counts; which file is read first decides nothing.",
    example: { file, wrong: `${right}\n${id},quay,ferry,original,`, right },
  },
  {
    id: "vote/ballot-twice",
    severity: "warning",
    means: "A ballot stands a second time, by its id.",
    why: "It counts once, as it stands first; who sends it by mail and as a table need not mind.",
    example: { file, wrong: `${right}\n${id},quay,ferry,redesign,`, right },
  },
];

/** Rules of flags that readers named. */
export const nominationRules: readonly Rule[] = [
  {
    id: "nomination/unknown-flag",
    severity: "error",
    means: "A nomination names no drawing of the folder flags.",
    why: "It is shown beside the flag in the survey, and there is none.",
    example: {
      file: "flags/nominations.yaml",
      wrong: "nominations: [{ flag: /flags/habour.svg, reason: Dark on dark }]",
      right: "nominations: [{ flag: /flags/harbour.svg, reason: Dark on dark }]",
    },
  },
  {
    id: "nomination/twice",
    severity: "error",
    means: "One flag is nominated twice by the same person.",
    why: "Several may name a flag, each once.",
    example: {
      file: "flags/nominations.yaml",
      wrong: `nominations:
  - { flag: /flags/harbour.svg, by: Ines Valcourt, reason: Dark on dark }
  - { flag: /flags/harbour.svg, by: Ines Valcourt, reason: Nobody sees it }`,
      right: `nominations:
  - { flag: /flags/harbour.svg, by: Ines Valcourt, reason: Dark on dark }`,
    },
  },
];
