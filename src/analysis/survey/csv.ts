// Floor 6. Rows of CSV, for spreadsheets; and a survey as such rows: the same file from the command and from the site.
import { roundFigure } from "../../measure/roundnumber.ts";
import { showText } from "../../problem/quote.ts";
import type { Survey, SurveyedFlag } from "./surveyflags.ts";

/** What may stand in a cell; null leaves it empty. */
export type Cell = string | number | null;

const heads = [
  "file",
  "clarity",
  "clearEdgeShare",
  "weakestEdge",
  "weakestContrast",
  "focus",
  "focusClarity",
  "lastsTo",
  "changeFirst",
  "bestReplace",
  "bestWith",
  "bestName",
  "bestClarity",
  "problem",
];

/**
 * Returns a survey as CSV with a heading, CR LF between the lines, broken drawings last with their problem. Percent and
 * shares to four decimals.
 */
export function formatCsv({ flags, failed }: Survey): string {
  const rows = [
    ...flags.map((flag) => [
      formatPath(flag.file),
      flag.clarity,
      flag.clearEdgeShare,
      flag.weakestEdge?.names.join(" / ") ?? null,
      flag.weakestEdge?.contrast ?? null,
      flag.focus.source,
      flag.focus.clarity,
      formatLastsTo(flag.focus),
      (flag.changeFirst ?? []).map(({ hex }) => hex).join(" "),
      flag.bestOption?.replace ?? null,
      flag.bestOption?.with ?? null,
      flag.bestOption?.name ?? null,
      flag.bestOption?.clarity ?? null,
      null,
    ]),
    ...failed.map(({ file, problem }) => [
      formatPath(file),
      ...Array.from(heads.slice(2), () => null),
      problem.reason,
    ]),
  ];
  return [heads, ...rows].map((row) => formatRow(row.map(clean))).join("\r\n");
}

/** A focus that lasts to no step is told from none. */
function formatLastsTo({ source, lastsTo }: SurveyedFlag["focus"]): string | number | null {
  return source === "none" ? null : (lastsTo ?? "under 10");
}

/**
 * Returns one row without a line end, numbers to four decimals, or as JSON has them where that would make a whole number of one
 * that is none: grades begin at whole numbers. Text that a spreadsheet would compute gets an apostrophe
 * before it, which spreadsheets do not show.
 *
 * Sources: RFC 4180 for commas and quotes; OWASP, “CSV Injection”: cells that begin with = + - @, tab or carriage return.
 */
export function formatRow(cells: readonly Cell[]): string {
  return cells.map(formatCell).join(",");
}

function formatCell(cell: Cell): string {
  if (cell === null) return "";
  if (typeof cell === "number") return formatNumber(cell);
  const text = /^[=+\-@\t\r]/.test(cell) ? `'${cell}` : cell;
  return /[",\r\n]/.test(text) ? `"${text.replace(/"/g, '""')}"` : text;
}

function formatNumber(value: number): string {
  const rounded = Number(value.toFixed(4));
  const isMadeWhole = Number.isInteger(rounded) && Math.abs(value - rounded) > 1e-11;
  return String(isMadeWhole ? roundFigure(value) : rounded);
}

function clean(cell: Cell): Cell {
  return typeof cell === "string" ? showText(cell) : cell;
}

/** A path means the same with ./ before it, and is none to be computed then. */
function formatPath(file: string): string {
  return /^[=+\-@]/.test(file) ? `./${file}` : file;
}
