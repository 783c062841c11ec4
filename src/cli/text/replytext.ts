// Floor 11. The whole reply to a contribution, in Markdown: each study that moved with its marks, and the problems. What authors wrote
// in it (the names of their colours) is mere text.
import type { GalleryResult, StudyResult } from "../../analysis/result.ts";
import { roundMark } from "../../measure/clarity.ts";
import type { Problem } from "../../problem/problem.ts";
import type { Moved, MovedStudy } from "../../publish/comparesite.ts";
import { formatFlagPath, indexRivals, listRivals, type RivalFlag } from "../../views/flag/findrivals.ts";
import { linkFile } from "../../views/linkview.ts";
import { formatStudyPath } from "../../views/status.ts";
import { presentOptionsLine } from "../../views/study/optionsview.ts";
import { presentSummary } from "../../views/study/studypage.ts";
import { plainFormat } from "../../words/format.ts";
import { describePrice, formatOrdinal } from "../../words/optionwords.ts";
import { capitalise } from "../../words/phrase.ts";
import { describeRival } from "../../words/rivalphrase.ts";
import { describeVerdict } from "../../words/verdict.ts";
import { count, countProblems } from "./exitstatus.ts";
import { formatCode, formatLink, formatMarkdown, formatWords, type ReplyTo } from "./markdown.ts";
import { describeFormer } from "./movedtext.ts";

/** Told in full, and in a line (our own judgement: what a reviewer reads, and within what sites take as one comment). */
const most = { full: 10, lines: 40 };

/** Returns the reply. `shown`: what publishing would show; of it those that moved, or all where no site is known to compare with. */
export function formatReply(
  problems: readonly Problem[],
  shown: GalleryResult,
  moved: Moved | undefined,
  to: ReplyTo,
): string {
  const { leftOut = [] } = shown;
  const { address } = to;
  const moves = new Map(moved?.studies.map((one) => [one.study, one]));
  const told = shown.studies.filter(({ study }) => moved === undefined || moves.has(study.slug));
  const rivals = indexRivals(listRivals(shown));
  const full = told
    .slice(0, most.full)
    .map((one) => formatStudy(one, moves.get(one.study.slug), rivals.get(one.study.slug), address));
  const lines = [
    ...told.slice(most.full).map((one) => formatHead(one, moves.get(one.study.slug))),
    ...leftOut.map((slug) => `- ${formatCode(slug)} cannot be built until its errors are mended.`),
    ...(moved === undefined ? [] : listGone(moved, new Set(leftOut))),
  ];
  const rest = lines.length - most.lines;
  const list = [...full, ...lines.slice(0, most.lines), ...(rest > 0 ? [`- And ${rest} more.`] : [])];
  const studies = count(told.length, "study", "studies");
  const head = [
    countProblems(problems),
    moved === undefined ? studies : `${studies} changed against the site that stands`,
    ...(leftOut.length > 0 ? [`${leftOut.length} cannot be built`] : []),
  ];
  return [`**${head.join("; ")}.**`, list.join("\n"), formatMarkdown(problems, to)]
    .filter((part) => part !== "")
    .join("\n\n");
}

function formatHead(result: StudyResult, move: MovedStudy | undefined): string {
  const { study, comparison } = result;
  const { word } = describeVerdict(comparison, plainFormat);
  const former = move === undefined ? "" : ` ${formatWords(`${capitalise(describeFormer(move))}.`)}`;
  return `- **${formatCode(study.slug)}: ${word}.**${former}`;
}

function formatStudy(
  result: StudyResult,
  move: MovedStudy | undefined,
  rival: RivalFlag | undefined,
  address: string,
): string {
  const { price } = result.comparison;
  const { cost } = describeVerdict(result.comparison, plainFormat);
  const options = presentOptionsLine(result, (to) => to, plainFormat);
  const says = [
    `Marks: ${sayMarks(result)}.`,
    price.length > 0 ? `Price: ${describePrice(price, plainFormat)}.` : `Price: none. ${cost}`,
    ...(options === undefined ? [] : [`Options: ${options.says}`]),
    ...sayRivals(result, rival),
  ];
  const links = linkPages(result, rival, address);
  return [
    formatHead(result, move),
    ...says.map((line) => `  - ${formatWords(line)}`),
    ...(links.length === 0 ? [] : [`  - When published: ${links.join(", ")}`]),
  ].join("\n");
}

/** `clarity 53 % → 100 %; of what has to be seen 40 % → 90 %; weakest edge 27 % (red / black) → 64 % (red / white)`. */
function sayMarks({ comparison }: StudyResult): string {
  return presentSummary(comparison, plainFormat)
    .filter(({ before, after }) => /\d/.test(before + after))
    .map(({ name, before, after, of = ["", ""] }) => {
      const [was, is] = of.map((pair) => (pair === "" ? "" : ` (${pair})`));
      const says = name.replace(/^Clarity (?=of)/, "").replace(/^./, (sign) => sign.toLowerCase());
      return `${says} ${before}${was} → ${after}${is}`;
    })
    .join("; ");
}

/** How many there are, and where it stands by the clarity of its redesign, in whole percent as pages show it. */
function sayRivals(result: StudyResult, rival: RivalFlag | undefined): readonly string[] {
  if (rival === undefined || rival.studies.length < 2) return [];
  const markOf = ({ comparison }: StudyResult) => roundMark(comparison.clarity[1] ?? 0);
  const own = markOf(result);
  const others = rival.studies.filter(({ study }) => study.slug !== result.study.slug).map(markOf);
  const place = 1 + others.filter((mark) => mark > own).length;
  const level = others.filter((mark) => mark === own).length;
  const beside = level === 0 ? "" : `, level with ${count(level, "other", "others")}`;
  return [
    `Rivals: ${describeRival(rival.studies.length, plainFormat)}, ${formatOrdinal(place)} by clarity${beside}.`,
  ];
}

function linkPages({ study }: StudyResult, rival: RivalFlag | undefined, address: string): readonly string[] {
  const page = formatStudyPath(study.slug);
  const flag =
    rival !== undefined && rival.studies.length > 1 ? [["rivals", formatFlagPath(rival.slug)]] : [];
  return [
    ["page", page],
    ["original", `${page}original.svg`],
    ["redesign", `${page}redesign.svg`],
    ["both in one picture", `${page}${linkFile}`],
    ...flag,
  ].flatMap(([text = "", path = ""]) => formatLink(text, address, path) ?? []);
}

/** Studies that are no longer shown, and addresses that go. */
function listGone({ studies, gone }: Moved, leftOut: ReadonlySet<string>): readonly string[] {
  return [
    ...studies
      .filter(({ study, is }) => is === null && !leftOut.has(study))
      .map(({ study }) => `- ${formatCode(study)} is not shown any more.`),
    ...gone.map(({ address, to }) =>
      to === null
        ? `- ${formatCode(address)} goes and will say so.`
        : `- ${formatCode(address)} goes and leads to ${formatCode(to)}.`,
    ),
  ];
}
