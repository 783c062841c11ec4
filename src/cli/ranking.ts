// Floor 7. The ranked options of a drawing as text for a terminal.
import { formatPercent } from "../measure/format.ts";
import type { Option } from "../measure/options.ts";
import type { PaintPair } from "../measure/pair.ts";
import type { RankedOption } from "../measure/rank.ts";
import { showText } from "../problem/quote.ts";
import type { OptionsReport } from "../study/options.ts";
import { addSwatches } from "./swatch.ts";
import { type Column, formatTable } from "./table.ts";

/** Most options that are listed; JSON has them all. */
const most = { ranked: 15, vanishing: 8 };

/** How a ranking is shown. `hasColour`: with a block of each colour. */
export interface RankingStyle {
  readonly distance: string;
  readonly hasColour: boolean;
}

const left = (head: string): Column => ({ head, align: "left" });
const right = (head: string): Column => ({ head, align: "right" });

/** Returns the colour to change first, the options in groups of equals, and those that make the charge vanish. */
export function describeRanking(report: OptionsReport, style: RankingStyle): string {
  const { file, clarity, reason, options, vanishing, shades, notes } = report;
  const noShade = shades.flatMap((shade) => (shade.reason === undefined ? [] : [shade.reason]));
  const names = new Map(shades.map(({ id, name }) => [id, name]));
  return [
    showText(`${file}: clarity ${formatPercent(clarity)}, ${style.distance}`),
    "",
    `  ${showText(reason)}`,
    ...listRanked(options, names, style),
    ...listVanishing(vanishing, names, style),
    ...[...noShade, ...notes].flatMap((note, index) => [
      ...(index === 0 ? [""] : []),
      `  Note: ${showText(note)}`,
    ]),
  ].join("\n");
}

type Names = ReadonlyMap<string, string>;

function listRanked(options: readonly RankedOption[], names: Names, { hasColour }: RankingStyle): string[] {
  if (options.length === 0) return [];
  const shown = options.slice(0, most.ranked);
  const columns = [
    right("place"),
    left("change"),
    left("from"),
    right("clarity"),
    right("departure"),
    left("edges with"),
  ];
  const rows = shown.map((option) => [
    placeOf(option, options),
    nameChange(option, names),
    kinds[option.kind],
    formatPercent(option.clarity, 0),
    option.deltaE00.toFixed(1),
    describeEffect(option),
  ]);
  return [
    "",
    paint(formatTable(columns, rows), shown, hasColour),
    ...countRest(options.length - shown.length),
  ];
}

function listVanishing(options: readonly Option[], names: Names, { hasColour }: RankingStyle): string[] {
  if (options.length === 0) return [];
  const shown = options.slice(0, most.vanishing);
  const rows = shown.map((option) => [nameChange(option, names), describeEffect(option)]);
  return [
    "",
    "  Not ranked, because they make the charge vanish:",
    "",
    paint(formatTable([left("change"), left("edges with")], rows), shown, hasColour),
    ...countRest(options.length - shown.length),
  ];
}

const kinds: Readonly<Record<Option["kind"], string>> = {
  palette: "palette",
  own: "the flag",
  shade: "shade",
};

/** `1`, and `1=` where others share the place. */
function placeOf(option: RankedOption, all: readonly RankedOption[]): string {
  const isShared = all.some((other) => other !== option && other.place === option.place);
  return `${option.place}${isShared ? "=" : ""}`;
}

function nameChange({ id, replace, with: next, name }: Option, names: Names): string {
  return `${names.get(id) ?? id} ${replace} → ${name} ${next}`;
}

/** Every edge that a change touches has the changed paint on one side, so its neighbour says which. */
function describeEffect(option: Option): string {
  const parts: readonly (readonly [string, readonly PaintPair[]])[] = [
    ["gains", option.gained],
    ["loses", option.lost],
    ["merges", option.merged],
  ];
  return parts
    .filter(([, pairs]) => pairs.length > 0)
    .map(
      ([verb, pairs]) =>
        `${verb} ${pairs.map((pair) => pair.names[pair.a === option.id ? 1 : 0]).join(", ")}`,
    )
    .join("; ");
}

function paint(table: string, options: readonly Option[], hasColour: boolean): string {
  return hasColour
    ? addSwatches(
        table,
        options.map(({ replace, with: next }) => [replace, next]),
      )
    : table;
}

function countRest(rest: number): string[] {
  return rest > 0 ? [`  … and ${rest} more: --json lists them all.`] : [];
}
