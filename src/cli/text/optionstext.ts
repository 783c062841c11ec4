// Floor 11. The options of a drawing as text for a terminal: what to change and why, then the best of each of its colours.

import { type ColourOptions, groupByColour } from "../../measure/options/rank.ts";
import type { Option } from "../../measure/options/tryoptions.ts";
import { formatPercent, formatShare } from "../../measure/percenttext.ts";
import { showText } from "../../problem/quote.ts";
import type { ToldReport } from "../../words/optionsreport.ts";
import { describeDistance } from "./distancetext.ts";
import { listLosses } from "./losstext.ts";
import { addSwatches } from "./terminalswatch.ts";
import { type Column, formatTable } from "./texttable.ts";
import { cutText, listFitting, widest, wrapText } from "./wrap.ts";

/** Most lines in all, most lines of notes, and most columns of a colour's name. JSON has everything. */
const most = { lines: 29, notes: 4, name: 17 };

/** Under the line of a colour, what is told of its best change. */
const indent = "      ";

/** How a ranking is shown. `distance` in flag heights; `hasColour`: with a block of each colour. */
export interface RankingStyle {
  readonly distance: number;
  readonly hasColour: boolean;
}

/**
 * Returns what to change and why, then by the colour that is changed the best change, its equals and what gets worse, then
 * what was not ranked and not tried: under 30 lines of at most 100 columns.
 */
export function describeRanking(report: ToldReport, style: RankingStyle): string {
  const above = [...wrapText(showText(report.reason)), "", ...describeToday(report, style)];
  const below = [...listUnranked(report), ...listNotes(report)];
  const room = most.lines - above.length - below.length;
  return [...above, ...listColours(report, style, room), ...below].join("\n");
}

function describeToday(
  { file, clarity, focusClarity }: ToldReport,
  { distance }: RankingStyle,
): readonly string[] {
  const focus = focusClarity === null ? "" : `, focus clarity ${formatPercent(focusClarity, 0)}`;
  const says = `: clarity ${formatPercent(clarity, 0)}${focus}`;
  return [`${cutText(showText(file), widest - says.length)}${says}`, `  ${describeDistance(distance)}`];
}

interface Row {
  readonly colour: ColourOptions;
  readonly cells: readonly string[];
  readonly details: readonly string[];
}

/** The table with what is told of each row under it, in `room` lines with the empty one before it. */
function listColours(report: ToldReport, style: RankingStyle, room: number): readonly string[] {
  const rows = groupByColour(report.options).map((colour) => describeColour(colour, report));
  if (rows.length === 0) return [];
  const shown = chooseRows(rows, room - 2);
  const rest = rows.length - shown.length;
  const table = formatTable(
    listColumns(report),
    shown.map(({ cells }) => cells),
  );
  const swatches = shown.map(({ colour: { hex, best } }) => [hex, best.with]);
  const [head = "", ...lines] = (style.hasColour ? addSwatches(table, swatches) : table).split("\n");
  return [
    "",
    head,
    ...lines.flatMap((line, index) => [line, ...(shown[index]?.details ?? [])]),
    ...(rest > 0 ? [`  and ${rest === 1 ? "1 more colour" : `${rest} more colours`}: --json has all`] : []),
  ];
}

/** As many rows as have room, the line that counts the rest included: with their details, or without them. */
function chooseRows(rows: readonly Row[], room: number): readonly Row[] {
  const linesOf = (some: readonly Row[]): number =>
    some.reduce((sum, { details }) => sum + 1 + details.length, some.length < rows.length ? 1 : 0);
  for (let count = rows.length; count > 0; count -= 1)
    if (linesOf(rows.slice(0, count)) <= room) return rows.slice(0, count);
  return rows.slice(0, 1);
}

function listColumns({ focusClarity }: ToldReport): readonly Column[] {
  return [
    { head: "change", align: "left" },
    { head: "share", align: "right" },
    { head: "best in its place", align: "left" },
    { head: "clarity", align: "right" },
    ...(focusClarity === null ? [] : [{ head: "focus clarity", align: "right" } as const]),
  ];
}

function describeColour(colour: ColourOptions, report: ToldReport): Row {
  const { id, hex, share, best, equals } = colour;
  const { clarity, focusClarity, shades } = report;
  const name = shades.find((shade) => shade.id === id)?.name ?? "";
  const focus = focusClarity === null ? [] : [formatMove(focusClarity, best.focusClarity)];
  const price = listLosses(best);
  const others = listNames(equals).filter((other) => other !== best.name);
  const details = [
    ...(others.length === 0 ? [] : [`as good: ${listFitting(others, ", ", widest - 15)}`]),
    ...(price === "" ? [] : [`but: ${price}`]),
  ];
  return {
    colour,
    cells: [
      nameColour(name, hex),
      formatShare(share, 0),
      nameColour(best.name, best.with),
      formatMove(clarity, best.clarity),
      ...focus,
    ],
    details: details.map((line) => cutText(`${indent}${showText(line)}`, widest)),
  };
}

function nameColour(name: string, hex: string): string {
  return `${cutText(name, most.name)} ${hex}`;
}

/** Two colours of one name, of the palette and of the flag, are told once. */
function listNames(options: readonly Option[]): readonly string[] {
  return [...new Set(options.map(({ name }) => name))];
}

/** `14 → 100 %`. */
function formatMove(before: number | null, after: number | null): string {
  const was = formatPercent(before, 0, (value, decimals) => value.toFixed(decimals));
  return `${was} → ${formatPercent(after, 0)}`;
}

/** One line, by the colour that is changed: `red → black, brown; white → yellow`. */
function listUnranked({ vanishing, shades }: ToldReport): readonly string[] {
  if (vanishing.length === 0) return [];
  const begin = "Not ranked, since a charge would merge: ";
  const groups = [...new Set(vanishing.map(({ id }) => id))].map((id) => {
    const names = listNames(vanishing.filter((option) => option.id === id));
    return `${shades.find((shade) => shade.id === id)?.name ?? id} → ${names.join(", ")}`;
  });
  return ["", `${begin}${listFitting(groups.map(showText), "; ", widest - begin.length)}`];
}

/** What was left out, then why colours have no shade that clears; cut to a few lines, with how many more there are. */
function listNotes({ notes, shades }: ToldReport): readonly string[] {
  const all = [...notes, ...shades.flatMap(({ reason }) => (reason === undefined ? [] : [reason]))];
  const shown: string[] = [];
  let count = 0;
  for (const note of all) {
    const lines = wrapText(showText(`Note: ${note}`));
    const isLong = lines.length > 2;
    const fit = isLong ? [lines[0] ?? "", cutText(`${lines[1]} ${lines[2]}`, widest)] : lines;
    if (shown.length + fit.length > most.notes) break;
    shown.push(...fit);
    count += 1;
  }
  const rest = all.length - count;
  const more = rest > 0 ? [`and ${rest} more: --json has all`] : [];
  return all.length === 0 ? [] : ["", ...shown, ...more];
}
