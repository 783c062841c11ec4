// Floor 7. A survey as text for a terminal, and as rows of CSV.
import { showText } from "../problem/quote.ts";
import { measureColumns } from "../problem/width.ts";
import type { Survey, SurveyedFlag } from "../study/survey.ts";
import type { Output } from "./command.ts";
import { addSwatches } from "./swatch.ts";
import { type Column, formatPercent, formatTable } from "./table.ts";

const left = (head: string): Column => ({ head, align: "left" });
const right = (head: string): Column => ({ head, align: "right" });

/** A column with what stands in it. `isExtra`: left out where there is no room for it. */
interface Field extends Column {
  readonly isExtra?: boolean;
  readonly cell: (flag: SurveyedFlag) => string;
}

const fields: readonly Field[] = [
  { ...left("flag"), cell: ({ file }) => file },
  { ...right("clarity"), cell: ({ clarity }) => formatPercent(clarity) },
  {
    ...right("weakest"),
    cell: ({ weakestEdge: edge }) => (edge === null ? "" : formatPercent(edge.contrast)),
  },
  {
    ...left("edge"),
    isExtra: true,
    cell: ({ weakestEdge: edge }) => (edge === null ? "no edges" : edge.names.join(" / ")),
  },
  { ...right("reads to"), isExtra: true, cell: formatReach },
  {
    ...left("change first"),
    isExtra: true,
    cell: ({ changeFirst }) => (changeFirst ?? []).map(({ name }) => name).join(" or "),
  },
  { ...left("best change"), cell: nameBest },
  { ...right("clarity"), cell: ({ bestOption: best }) => (best === null ? "" : formatPercent(best.clarity)) },
];

/** Returns the table of a survey, least clear first, in `columns` if it can be; with blocks of colour where they show. */
export function describeSurvey(
  { flags }: Survey,
  { columns = Number.POSITIVE_INFINITY, hasColour }: Pick<Output, "columns" | "hasColour">,
): string {
  const room = hasColour ? columns - 6 : columns;
  const format = (used: readonly Field[]): string =>
    formatTable(
      used,
      flags.map((flag) => used.map(({ cell }) => cell(flag))),
    );
  const full = format(fields);
  const isWide = full.split("\n").some((line) => measureColumns(line) > room);
  const table = isWide ? format(fields.filter(({ isExtra }) => isExtra !== true)) : full;
  if (!hasColour) return table;
  return addSwatches(
    table,
    flags.map(({ bestOption }) => (bestOption === null ? [] : [bestOption.replace, bestOption.with])),
  );
}

function nameBest(flag: SurveyedFlag): string {
  const { bestOption: best } = flag;
  return best === null ? "" : `${nameReplaced(flag)} → ${best.name} ${best.with}`;
}

function nameReplaced({ changeFirst, bestOption }: SurveyedFlag): string {
  return changeFirst?.find(({ id }) => id === bestOption?.id)?.name ?? "";
}

function formatReach({ readsTo }: SurveyedFlag): string {
  return readsTo === 320 ? "320+" : readsTo === null ? "" : String(readsTo);
}

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
