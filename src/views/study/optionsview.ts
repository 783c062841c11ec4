// Floor 8. Other single changes of a study: by the colour that is changed, all at once, and those the author tried; and the
// best of them in a line.

import type { MatrixCell, MatrixRow } from "../../analysis/options/optionmatrix.ts";
import type { NotedResult, StudyRanking } from "../../analysis/options/studyranking.ts";
import type { StudyResult } from "../../analysis/result.ts";
import { roundMark } from "../../measure/clarity.ts";
import { type ColourOptions, groupByColour } from "../../measure/options/rank.ts";
import { isWhole } from "../../measure/percenttext.ts";
import type { Format } from "../../words/format.ts";
import { describeFirst, listNotes } from "../../words/optionsreport.ts";
import {
  describeEquals,
  describePlace,
  describePrice,
  describeUnranked,
  describeWorse,
} from "../../words/optionwords.ts";
import type { Swatch } from "../../words/paintname.ts";
import { nameWhole } from "../../words/paintname.ts";
import { capitalise } from "../../words/phrase.ts";
import { verdictIds } from "../../words/verdict.ts";
import type { Linker } from "../address.ts";
import { type Plate, presentPlate } from "../plate.ts";
import { formatChangesPath, formatStudyPath } from "../status.ts";
import { changeId, hasCell, type MatrixView, notedId, orderNoted, presentMatrix } from "./matrixview.ts";

/** A colour of the flag, with the best that can be put in its place; without `best` where nothing can. */
export interface ColourView extends Swatch {
  readonly id: string;
  readonly share: string;
  readonly best: BestView | undefined;
}

/**
 * `cell` is the address of its cell in the matrix; `short` stands before it where it does not raise clarity; `focus` is undefined where
 * the flag has none.
 */
export interface BestView extends Swatch {
  readonly cell: string | undefined;
  readonly short: string | undefined;
  readonly equals: string | undefined;
  readonly clarity: readonly [string, string];
  readonly focus: readonly [string, string] | undefined;
  readonly worse: readonly string[];
}

/** A change that the author tried. `id` is its anchor, `number` what the matrix calls it by. */
export interface NotedView {
  readonly id: string;
  readonly number: number;
  readonly plate: Plate;
  readonly swatches: readonly [Swatch, Swatch];
  readonly change: string;
  /** The same with a small letter, to stand behind a colon. */
  readonly clause: string;
  readonly figures: string;
  readonly verdict: string;
  readonly note: string | undefined;
}

export interface OptionsView {
  /** The colour to change first, and why. */
  readonly first: string;
  /** Where the change of this study stands. */
  readonly standing: string | undefined;
  readonly colours: readonly ColourView[];
  readonly matrix: MatrixView | undefined;
  readonly noted: readonly NotedView[];
  /** Changes that have no place, in a sentence, where there are any. */
  readonly unranked: string | undefined;
  readonly notes: readonly string[];
  readonly how: string;
}

/** What a study page keeps of them. */
export interface OptionsLine {
  readonly says: string;
  readonly address: string;
}

/** Returns whether the options could be ranked: then the study has a page of them. */
export function hasRanking(ranking: StudyRanking | undefined): ranking is StudyRanking {
  return ranking !== undefined && ranking.report.clarity !== null;
}

/** The best single change and where that of the study stands, or undefined where the options could not be ranked. */
export function presentOptionsLine(
  result: StudyResult,
  link: Linker,
  format: Format,
): OptionsLine | undefined {
  const { study, ranking } = result;
  if (!hasRanking(ranking)) return undefined;
  return {
    says: [sayStanding(ranking, format), sayBest(result, ranking, format)].filter(Boolean).join(" "),
    address: link(formatChangesPath(study.slug)),
  };
}

/** All of them, or undefined where the options could not be ranked. */
export function presentOptions(result: StudyResult, link: Linker, format: Format): OptionsView | undefined {
  const { ranking } = result;
  if (!hasRanking(ranking)) return undefined;
  return {
    first: [describeFirst(ranking.report, format), ...sayAuthors(result, ranking, format)].join(" "),
    standing: format.say("options.standing", { standing: sayStanding(ranking, format) }),
    colours: presentByColour(result, ranking, format),
    matrix: presentMatrix(result, link, format),
    noted: orderNoted(result).flatMap((at, index) => {
      const noted = ranking.noted[at];
      return noted === undefined ? [] : [presentNoted(noted, at, index + 1, result, link, format)];
    }),
    unranked: describeUnranked(ranking.report, format),
    notes: listNotes(ranking.report, format),
    how: link("/method/#options"),
  };
}

/** Why there is none, where no change has a place, or none can raise the clarity. */
function sayBest(result: StudyResult, ranking: StudyRanking, format: Format): string {
  const { change } = result;
  const { report, standing, noted } = ranking;
  const [computed] = report.options;
  if (computed === undefined) return describeFirst(report, format);
  if (report.clarity !== null && isWhole(report.clarity / 100))
    return format.say("options.whole", { clarity: format.percent(100) });
  if (standing?.place === 1) return "";
  const tried = findClearer(noted, computed.clarity);
  const best = tried ?? computed;
  const paint = result.comparison.before.colours.find(({ hex }) => hex === best.replace);
  const replaced = paint === undefined ? best.replace : nameWhole(paint);
  const isOwn = change.only === undefined && change.replace === best.replace && change.with === best.with;
  if (isOwn) return "";
  const values = { was: replaced, is: best.name, clarity: format.percent(best.clarity) };
  if (tried === undefined) return format.say("options.clearest", values);
  return tried.only === undefined
    ? format.say("options.clearestTried", values)
    : format.say("options.clearestTriedInPart", { ...values, part: nameTried(tried, format) });
}

/** What the author tried, where that is clearer than all that is computed. */
function findClearer(noted: readonly NotedResult[], best: number): NotedResult | undefined {
  const [first] = noted
    .filter(({ clarity }) => roundMark(clarity ?? 0) > roundMark(best))
    .sort((one, other) => (other.clarity ?? 0) - (one.clarity ?? 0));
  return first;
}

/** The same in a sentence behind the colours to change first. */
function sayAuthors(
  { comparison }: StudyResult,
  { report, noted }: StudyRanking,
  format: Format,
): readonly string[] {
  const first = findClearer(noted, report.options[0]?.clarity ?? 100);
  if (first === undefined) return [];
  const paint = comparison.before.colours.find(({ hex }) => hex === first.replace);
  const replaced = paint === undefined ? first.replace : nameWhole(paint);
  const values = { was: replaced, is: first.name, clarity: format.percent(first.clarity) };
  return first.only === undefined
    ? [format.say("options.clearerTried", values)]
    : [format.say("options.clearerTriedInPart", { ...values, part: nameTried(first, format) })];
}

/** What the part is called that an option of the author is limited to. */
function nameTried({ part }: NotedResult, { say }: Format): string {
  return part ?? say("options.onePart");
}

function sayStanding({ standing }: StudyRanking, format: Format): string {
  return standing === null ? "" : describePlace(standing, format);
}

/** The drawings of the author's other options: file names in the study's folder, with their texts. */
export function listTriedDrawings({
  ranking,
}: StudyResult): readonly { readonly file: string; readonly drawing: string }[] {
  return (ranking?.noted ?? []).map((noted, index) => ({
    file: triedFile(noted, index),
    drawing: noted.drawing,
  }));
}

/** The colour with the best option first; last those of which no change has a place. */
function presentByColour(
  { comparison }: StudyResult,
  ranking: StudyRanking,
  format: Format,
): readonly ColourView[] {
  const { options, vanishing, shades } = ranking.report;
  const ranked = groupByColour(options);
  const without = vanishing.filter(
    ({ id }, at) =>
      ranked.every((other) => other.id !== id) && vanishing.findIndex((other) => other.id === id) === at,
  );
  const identify = (id: string, hex: Swatch["hex"], share01: number) => ({
    id,
    hex,
    name: shades.find((shade) => shade.id === id)?.name ?? hex,
    share: format.share(share01),
  });
  const hasFocus = comparison.before.focus.source !== "none";
  return [
    ...ranked.map((colour) => {
      const view = identify(colour.id, colour.hex, colour.share);
      return { ...view, best: presentBest(colour, ranking, hasFocus, format) };
    }),
    ...without.map(({ id, replace, share }) => ({ ...identify(id, replace, share), best: undefined })),
  ];
}

function presentBest(
  { id, hex, best, equals }: ColourOptions,
  { report, matrix }: StudyRanking,
  hasFocus: boolean,
  format: Format,
): BestView {
  const move = roundMark(best.clarity) - roundMark(report.clarity ?? 0);
  const row = matrix?.rows.find((one) => one.id === id);
  return {
    hex: best.with,
    name: best.name,
    cell: hasCell(matrix, hex, best.with) ? `#${changeId(hex, best.with)}` : undefined,
    short: move > 0 ? undefined : format.say(move === 0 ? "options.noneLevel" : "options.noneNearest"),
    equals: describeBeside(best, equals, row, move <= 0, format),
    clarity: [format.percent(report.clarity), format.percent(best.clarity)],
    focus: hasFocus ? [format.percent(report.focusClarity), format.percent(best.focusClarity)] : undefined,
    worse: describeWorse(best, format),
  };
}

/** What the row of the matrix has beside the best: what is level with it, and what the author tried that is clearer. */
function describeBeside(
  best: ColourOptions["best"],
  equals: ColourOptions["equals"],
  row: MatrixRow | undefined,
  isShort: boolean,
  format: Format,
): string | undefined {
  const mark = format.percent(best.clarity);
  const cells = (row?.cells ?? []).filter(
    (cell): cell is MatrixCell => cell?.isRanked === true && cell.with !== best.with,
  );
  const level = cells.filter((cell) => format.percent(cell.clarity) === mark);
  const [clearer] = cells.filter((cell) => roundMark(cell.clarity) > roundMark(best.clarity));
  const said = [
    describeEquals(best, [...equals, ...level], format, isShort),
    clearer &&
      format.say("options.triedHas", { name: clearer.name, clarity: format.percent(clearer.clarity) }),
  ].filter((text) => text !== undefined);
  return said.length === 0 ? undefined : said.join(format.say("list.semicolon"));
}

function presentNoted(
  noted: NotedResult,
  index: number,
  number: number,
  result: StudyResult,
  link: Linker,
  format: Format,
): NotedView {
  const { study, comparison } = result;
  const paint = comparison.before.colours.find((colour) => colour.hex === noted.replace);
  const before: Swatch = { hex: noted.replace, name: paint === undefined ? noted.replace : nameWhole(paint) };
  const after: Swatch = { hex: noted.with, name: noted.name };
  const { say } = format;
  const names = { was: before.name, is: after.name };
  const change =
    noted.only === undefined
      ? say("verdict.change", { before: before.name, after: after.name })
      : say("options.changeInPart", {
          before: before.name,
          after: after.name,
          part: nameTried(noted, format),
        });
  const clarity = format.percent(noted.clarity);
  const src = link(`${formatStudyPath(study.slug)}${triedFile(noted, index)}`);
  return {
    id: notedId(index),
    number,
    plate: {
      ...presentPlate(say("options.option"), src, comparison.before, format),
      alt:
        noted.only === undefined
          ? say("options.triedAlt", names)
          : say("options.triedAltInPart", { ...names, part: nameTried(noted, format) }),
    },
    swatches: [before, after],
    change: capitalise(change),
    clause: change,
    figures:
      comparison.before.focus.source === "none"
        ? say("options.figure", { clarity })
        : say("options.figureAndFocus", { clarity, focus: format.percent(noted.focusClarity) }),
    verdict: sayVerdict(noted, result.ranking?.report, format),
    note: noted.note,
  };
}

/** The verdict with what decides it: strength where clarity is level, then what gets worse. */
function sayVerdict(
  { verdict, clarity, strength, price }: NotedResult,
  report: StudyRanking["report"] | undefined,
  format: Format,
): string {
  const isLevel = roundMark(clarity ?? 0) === roundMark(report?.clarity ?? 0);
  const [was, is] = [roundMark(report?.strength ?? 0), roundMark(strength ?? 0)];
  const beyond =
    !isLevel || was === is || verdict === "no gain"
      ? []
      : [
          format.say(is > was ? "options.strengthRises" : "options.strengthFalls", {
            was: format.percent(was),
            is: format.percent(is),
          }),
        ];
  const said = [...beyond, ...(price.length === 0 ? [] : [describePrice(price, format)])];
  const word = format.say(verdictIds[verdict]);
  return said.length === 0
    ? format.say("options.verdict", { verdict: word })
    : format.say("options.verdictWhy", { verdict: word, why: said.join(format.say("list.semicolon")) });
}

function triedFile(noted: { readonly replace: string; readonly with: string }, index: number): string {
  return `${notedId(index)}-${noted.replace.slice(1)}-${noted.with.slice(1)}.svg`;
}
