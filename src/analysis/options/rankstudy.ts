// Floor 6. A study among all it could have chosen: the ranked options, where its own change stands, the author's others.
import type { Hex } from "../../colour/colour.ts";
import type { Change } from "../../content/study/study.ts";
import type { Comparison } from "../../measure/comparison.ts";
import { findStanding } from "../../measure/options/standing.ts";
import type { Outcome, Problem } from "../../problem/problem.ts";
import { compareDrawing, compareOpened } from "../analyse.ts";
import { type AnalyseOptions, type OpenedDrawing, openDrawing } from "../drawing/opendrawing.ts";
import { settleNames } from "../settlename.ts";
import { drawMatrix } from "./optionmatrix.ts";
import { measureChanges, type OptionsReport, rankOpened, readPalette } from "./rankoptions.ts";
import type { CountedStanding, NotedResult, StudyRanking } from "./studyranking.ts";

/** A study that is measured: its comparison, and the author's other `options:`. */
export interface RankedStudy {
  readonly comparison: Comparison;
  readonly tried: readonly Change[];
}

/**
 * Ranks the options of a study's original, draws them all small, and says where its change and each of the
 * author's own `options:` stand. One of those that cannot be measured is left out and its problem returned.
 *
 * Problems: those of compareDrawing that come from an option, by its dotted path. What is to be said of the drawing and
 * the focus, analyseStudy has said.
 */
export async function rankStudy(
  bytes: Uint8Array,
  change: Change,
  given: AnalyseOptions,
  { comparison, tried }: RankedStudy,
): Promise<Outcome<StudyRanking>> {
  const options = { ...given, names: settleNames(change, given) };
  const opened = await openDrawing("", bytes, { ...options, followsFocus: false });
  if (opened.value === undefined) return { value: undefined, problems: opened.problems };
  const report = rankOpened(opened.value, options);
  const problems: Problem[] = [];
  const noted: NotedResult[] = [];
  for (const [index, option] of tried.entries()) {
    const measured = await measureNoted({ bytes, opened: opened.value }, option, index, options, report);
    problems.push(...measured.problems);
    if (measured.value !== undefined) noted.push(measured.value);
  }
  const standing = placeComparison(comparison, report);
  const author = measureChanges(opened.value, listAuthors(comparison, noted), options.cloth);
  const matrix = await drawMatrix(opened.value, report, readPalette(options.palette), author);
  return {
    value: { report, ...(matrix === undefined ? {} : { matrix }), standing, noted },
    problems,
  };
}

/** The study's own change and the author's others, where they change a paint everywhere. */
function listAuthors(
  { change, after }: Comparison,
  noted: readonly NotedResult[],
): readonly { readonly replace: string; readonly with: Hex; readonly name: string }[] {
  const own = after.colours.flatMap(({ hex, name }) =>
    hex === change.with ? [{ ...change, with: hex, name }] : [],
  );
  return [...own.slice(0, 1), ...noted].filter(({ only }) => only === undefined);
}

async function measureNoted(
  { bytes, opened }: { readonly bytes: Uint8Array; readonly opened: OpenedDrawing },
  option: Change,
  index: number,
  options: AnalyseOptions,
  report: OptionsReport,
): Promise<Outcome<NotedResult>> {
  const { value, problems } = callsAnew(opened, option, options)
    ? await compareDrawing("", bytes, option, options)
    : await compareOpened(opened, option, options);
  const own = problems.flatMap((problem): readonly Problem[] => {
    const [part, key] = problem.at?.split(".") ?? [];
    if (part === "change") return [{ ...problem, at: `options.${index}.${key}` }];
    // A redesign that is too long is told of the drawing.
    return problem.rule === "svg/written" ? [problem] : [];
  });
  if (value === undefined) return { value: undefined, problems: own };
  const { comparison, change, name, redesign } = value;
  const noted: NotedResult = {
    index,
    ...change,
    name,
    clarity: comparison.clarity[1],
    strength: comparison.strength[1],
    focusClarity: comparison.after.focus.clarity,
    verdict: comparison.verdict,
    price: comparison.price,
    standing: placeComparison(comparison, report),
    drawing: redesign,
  };
  return { value: noted, problems: own };
}

/** Whether the palette's word that an option uses is what a colour of the flag is called from then on. */
function callsAnew({ inspection }: OpenedDrawing, option: Change, options: AnalyseOptions): boolean {
  const names = settleNames(option, options);
  return inspection.looks.some(({ hex }) => names.has(hex) && !options.names?.has(hex));
}

function placeComparison(comparison: Comparison, report: OptionsReport): CountedStanding | null {
  const [, clarity] = comparison.clarity;
  if (clarity === null) return null;
  const { replace, with: next, only } = comparison.change;
  const standing = findStanding({ replace, with: next, isPart: only !== undefined, clarity }, report.options);
  const lost = comparison.edges.filter(({ outcome }) => outcome === "lost" || outcome === "merged").length;
  return { ...standing, lost };
}
