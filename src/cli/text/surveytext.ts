// Floor 11. A survey as text for a terminal.

import type { Survey, SurveyedFlag } from "../../analysis/survey/surveyflags.ts";
import { formatContrast, formatPercent } from "../../measure/percenttext.ts";
import { showText } from "../../problem/quote.ts";
import { measureColumns } from "../../problem/width.ts";
import type { Output } from "../command.ts";
import { formatLastsTo } from "./distancetext.ts";
import { addSwatches } from "./terminalswatch.ts";
import { type Column, formatTable } from "./texttable.ts";

const left = (head: string): Column => ({ head, align: "left" });
const right = (head: string): Column => ({ head, align: "right" });

/** A column with what stands in it. `isExtra`: left out where there is no room for it. */
interface Field extends Column {
  readonly isExtra?: boolean;
  readonly cell: (flag: SurveyedFlag) => string;
}

const fields: readonly Field[] = [
  { ...left("flag"), cell: ({ file }) => file },
  { ...right("clarity"), cell: ({ clarity }) => (clarity === null ? "no edges" : formatPercent(clarity)) },
  {
    ...right("weakest"),
    isExtra: true,
    cell: ({ weakestEdge: edge }) => (edge === null ? "" : formatContrast(edge.contrast)),
  },
  {
    ...left("edge"),
    isExtra: true,
    cell: ({ weakestEdge: edge }) => (edge === null ? "" : edge.names.join(" / ")),
  },
  {
    ...right("focus"),
    cell: ({ focus }) => (focus.source === "none" ? "no emblem" : formatPercent(focus.clarity)),
  },
  {
    ...right("lasts to"),
    isExtra: true,
    cell: ({ focus }) => (focus.source === "none" ? "" : formatLastsTo(focus.lastsTo)),
  },
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

/** A line for each flag of which not every colour was tried, under the table; none where all were. */
export function listPartlyTried({ flags }: Survey): readonly string[] {
  return flags.flatMap(({ file, tried }) =>
    tried === undefined
      ? []
      : [`  ${showText(file)}: of ${tried.of} colours only the ${tried.paints} largest were tried.`],
  );
}

function nameBest(flag: SurveyedFlag): string {
  const { bestOption: best } = flag;
  return best === null ? "" : `${nameReplaced(flag)} → ${best.name} ${best.with}`;
}

function nameReplaced({ changeFirst, bestOption }: SurveyedFlag): string {
  return changeFirst?.find(({ id }) => id === bestOption?.id)?.name ?? "";
}
