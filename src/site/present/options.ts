// Floor 6. The contact sheet of a study: other single changes with their numbers, and where the author's own stands.
import type { PaintPair } from "../../measure/pair.ts";
import type { RankedOption } from "../../measure/rank.ts";
import type { NotedResult, SheetGroup, StudyRanking } from "../../study/ranking.ts";
import type { StudyResult } from "../../study/result.ts";
import type { Linker } from "../address.ts";
import type { Format } from "./format.ts";
import { describeEdges, describeGroup, describeTies, inWords } from "./optionwords.ts";
import type { Swatch } from "./paint.ts";
import { nameWhole } from "./paint.ts";
import { capitalise } from "./phrase.ts";
import { type Plate, presentPlate } from "./plate.ts";
import { formatStudyPath } from "./status.ts";

/** One drawing on the sheet. */
export interface OptionView {
  readonly plate: Plate;
  readonly swatches: readonly [Swatch, Swatch];
  readonly change: string;
  readonly figures: string;
  /** That others do equally well, where they do. */
  readonly ties: string | undefined;
  /** What stands behind the numbers: gained, lost, merged, what it can be taken for. */
  readonly details: readonly string[];
  /** Whether it is the change of this study. */
  readonly isChosen: boolean;
  readonly note: string | undefined;
}

export interface OptionsView {
  /** The colour to change first, and why. */
  readonly first: string;
  /** Where the change of this study stands. */
  readonly standing: string | undefined;
  readonly best: readonly OptionView[];
  readonly noted: readonly OptionView[];
  /** Changes that would make the charge vanish, in a sentence, where there are any. */
  readonly vanishing: string | undefined;
  readonly notes: readonly string[];
  readonly how: string;
}

/** A drawing of an option to be published: its file name in the study's folder, and its text. */
export interface OptionDrawing {
  readonly file: string;
  readonly drawing: string;
}

/** The files of a study's options, the best first, then the author's own. */
export function listOptionDrawings({ ranking }: StudyResult): readonly OptionDrawing[] {
  if (ranking === undefined) return [];
  return [
    ...ranking.sheet.map(({ head }) => ({ file: fileOf(head, undefined), drawing: head.drawing })),
    ...ranking.noted.map((noted, index) => ({ file: fileOf(noted, index), drawing: noted.drawing })),
  ];
}

/** The section of a study page, or undefined where the options could not be ranked. */
export function presentOptions(result: StudyResult, link: Linker, format: Format): OptionsView | undefined {
  const { ranking } = result;
  if (ranking === undefined || ranking.report.clarity === null) return undefined;
  return {
    first: inWords(ranking.report.reason, format),
    standing: ranking.standing === null ? undefined : `This study: ${inWords(ranking.standing.says, format)}`,
    best: withChosen(
      ranking.sheet.map((group) => presentGroup(group, result, link, format)),
      presentChosen(result, link, format),
    ),
    noted: ranking.noted.map((noted, index) => presentNoted(noted, index, result, link, format)),
    vanishing: describeVanishing(ranking, format),
    notes: ranking.report.notes.map((note) => inWords(note, format)),
    how: link("/method/#options"),
  };
}

/** The change of the study stands on the sheet too, last where it is not among the best. */
function withChosen(best: readonly OptionView[], chosen: OptionView): readonly OptionView[] {
  return best.some(({ isChosen }) => isChosen) ? best : [...best, chosen];
}

function presentChosen(result: StudyResult, link: Linker, format: Format): OptionView {
  const { change, comparison, ranking } = result;
  const name = comparison.after.colours.find((colour) => colour.hex === change.with)?.name ?? change.with;
  const shown = {
    ...change,
    name,
    clarity: comparison.clarity[1],
    clearEdgeShare: comparison.clearEdgeShare[1],
  };
  const pairs = (outcome: string): readonly PaintPair[] =>
    comparison.edges
      .filter((edge) => edge.outcome === outcome)
      .map(({ a, b, names }) => ({ a, b, names: names[0] }));
  const edges = { gained: pairs("gained"), lost: pairs("lost"), merged: pairs("merged") };
  const standing = ranking?.standing?.says;
  return {
    ...presentChange(shown, "redesign.svg", result, link, format),
    details: [...(standing === undefined ? [] : [standing]), ...describeEdges(edges, format)],
    isChosen: true,
    ties: undefined,
    note: undefined,
  };
}

function presentGroup(
  { head, others }: SheetGroup,
  result: StudyResult,
  link: Linker,
  format: Format,
): OptionView {
  return {
    ...presentChange(head, fileOf(head, undefined), result, link, format),
    ties: describeTies(others, format),
    details: describeGroup(head, others, format),
    isChosen: [head, ...others].some((option) => isOwn(option, result)),
    note: undefined,
  };
}

function presentNoted(
  noted: NotedResult,
  index: number,
  result: StudyResult,
  link: Linker,
  format: Format,
): OptionView {
  const standing = noted.standing === null ? [] : [`${noted.standing.says}`];
  return {
    ...presentChange(noted, fileOf(noted, index), result, link, format),
    details: [...standing, ...describeEdges(noted, format)],
    isChosen: false,
    ties: undefined,
    note: noted.note,
  };
}

interface ShownChange {
  readonly replace: `#${string}`;
  readonly with: `#${string}`;
  readonly only?: string;
  readonly part?: string;
  readonly name: string;
  readonly clarity: number | null;
  readonly clearEdgeShare: number | null;
}

function presentChange(option: ShownChange, file: string, result: StudyResult, link: Linker, format: Format) {
  const before = nameOfPaint(result, option.replace);
  const after = { hex: option.with, name: option.name };
  const where = option.only === undefined ? "" : ` in ${option.part ?? "one part"}`;
  const change = `${capitalise(before.name)} becomes ${after.name}${where}`;
  const plate = presentPlate(
    "Option",
    link(`${formatStudyPath(result.study.slug)}${file}`),
    result.comparison.before,
    format,
  );
  return {
    plate: { ...plate, alt: `The flag where ${before.name} is ${option.name}${where}` },
    swatches: [before, after] as const,
    change,
    figures: `Clarity ${format.percent(option.clarity)}, clear edges ${format.share(option.clearEdgeShare)}`,
  };
}

function nameOfPaint({ comparison }: StudyResult, hex: `#${string}`): Swatch {
  const paint = comparison.before.colours.find((colour) => colour.hex === hex);
  return { hex, name: paint === undefined ? hex : nameWhole(paint) };
}

function describeVanishing({ report }: StudyRanking, format: Format): string | undefined {
  if (report.vanishing.length === 0) return undefined;
  const changes = [
    ...new Set(report.vanishing.map((option) => `${nameIn(report, option.replace)} to ${option.name}`)),
  ];
  const few = changes.slice(0, 6);
  const rest = changes.length - few.length;
  const all = rest > 0 ? [...few, rest === 1 ? "1 other" : `${format.number(rest, 0)} others`] : few;
  return `Not ranked, because the charge or a part of it would vanish: ${format.list(all)}.`;
}

function nameIn(report: StudyRanking["report"], hex: string): string {
  return report.shades.find((shade) => shade.hex === hex)?.name ?? hex;
}

function isOwn(option: RankedOption, { change }: StudyResult): boolean {
  return change.only === undefined && option.replace === change.replace && option.with === change.with;
}

function fileOf(
  option: { readonly replace: string; readonly with: string },
  noted: number | undefined,
): string {
  const mark = noted === undefined ? "option" : `tried-${noted + 1}`;
  return `${mark}-${option.replace.slice(1)}-${option.with.slice(1)}.svg`;
}
