// Floor 5. A survey as rows of CSV, for spreadsheets: the same file from the command and from the site.
import { showText } from "../problem/quote.ts";
import type { Survey } from "./survey.ts";

const heads = [
  "file",
  "clarity",
  "clearEdgeShare",
  "weakestEdge",
  "weakestContrast",
  "readsTo",
  "changeFirst",
  "bestReplace",
  "bestWith",
  "bestName",
  "bestClarity",
  "problem",
];

/**
 * Returns a survey as CSV with a heading, CR LF between the lines, broken drawings last with their problem. Percent and
 * shares to four decimals. No cell begins as a formula does.
 *
 * Source: RFC 4180 for the form.
 */
export function formatCsv({ flags, failed }: Survey): string {
  const rows = [
    ...flags.map((flag) => [
      flag.file,
      flag.clarity,
      flag.clearEdgeShare,
      flag.weakestEdge?.names.join(" / ") ?? null,
      flag.weakestEdge?.contrast ?? null,
      flag.readsTo,
      (flag.changeFirst ?? []).map(({ hex }) => hex).join(" "),
      flag.bestOption?.replace ?? null,
      flag.bestOption?.with ?? null,
      flag.bestOption?.name ?? null,
      flag.bestOption?.clarity ?? null,
      null,
    ]),
    ...failed.map(({ file, problem }) => [file, ...Array.from(heads.slice(2), () => null), problem.reason]),
  ];
  return [heads, ...rows].map((row) => row.map(formatCell).join(",")).join("\r\n");
}

function formatCell(value: string | number | null): string {
  if (value === null) return "";
  if (typeof value === "number") return String(Math.round(value * 10_000) / 10_000);
  const text = showText(value);
  // A spreadsheet would compute it. A path means the same with ./ before it; no other cell of ours begins so.
  const plain = /^[=+\-@]/.test(text) ? `./${text}` : text;
  return /[",\r\n]/.test(plain) ? `"${plain.replace(/"/g, '""')}"` : plain;
}
