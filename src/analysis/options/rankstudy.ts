// Floor 6. A study among all it could have chosen: the ranked options, where its own change stands, the author's others.
import type { Hex } from "../../colour/colour.ts";
import type { Change } from "../../content/study/study.ts";
import type { Comparison } from "../../measure/comparison.ts";
import type { RankedOption } from "../../measure/options/rank.ts";
import { findStanding } from "../../measure/options/standing.ts";
import type { Outcome, Problem } from "../../problem/problem.ts";
import { compareDrawing, compareOpened } from "../analyse.ts";
import { type AnalyseOptions, type OpenedDrawing, openDrawing } from "../drawing/opendrawing.ts";
import { settleNames } from "../settlename.ts";
import { drawMatrix } from "./optionmatrix.ts";
import { measureChanges, rankOpened, readPalette } from "./rankoptions.ts";
import type { CountedStanding, NotedResult, StudyRanking } from "./studyranking.ts";

/** A study that is measured: its comparison, and the author's other `options:`. */
export interface RankedStudy {
  readonly comparison: Comparison;
  readonly tried: readonly Change[];
}

/** One of the author's options before it is known where it stands. */
interface LookedNote {
  readonly noted: Omit<NotedResult, "standing">;
  readonly comparison: Comparison;
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
  const looked: LookedNote[] = [];
  for (const [index, option] of tried.entries()) {
    const measured = await measureNoted({ bytes, opened: opened.value }, option, index, options);
    problems.push(...measured.problems);
    if (measured.value !== undefined) looked.push(measured.value);
  }
  const author = measureChanges(
    opened.value,
    listAuthors(
      comparison,
      looked.map(({ noted }) => noted),
    ),
    options.cloth,
  );
  const all = [...report.options, ...author.options.filter((one) => !isAmong(one, report.options))];
  const standing = placeComparison(comparison, all);
  const noted = looked.map((one) => ({ ...one.noted, standing: placeComparison(one.comparison, all) }));
  const matrix = await drawMatrix(opened.value, report, readPalette(options.palette), author);
  return {
    value: { report, ...(matrix === undefined ? {} : { matrix }), standing, noted },
    problems,
  };
}

/** The study's own change and the author's others, where they change a paint everywhere. */
function listAuthors(
  { change, after }: Comparison,
  noted: readonly LookedNote["noted"][],
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
): Promise<Outcome<LookedNote>> {
  const { value, problems } = callsAnew(opened, option, options)
    ? await compareDrawing("", bytes, option, options)
    : await compareOpened(opened, option, options);
  const own = problems.flatMap((problem): readonly Problem[] => {
    const [part, key] = problem.at?.split(".") ?? [];
    if (part === "change") return [{ ...problem, at: `options.${index}.${key}` }];
    // A redesign that is too long is told of the drawing.
    if (problem.rule === "svg/written") return [problem];
    return value === undefined && problem.severity === "error"
      ? [{ ...problem, at: `options.${index}.with` }]
      : [];
  });
  if (value === undefined) return { value: undefined, problems: own };
  const { comparison, change, name, redesign } = value;
  const noted: LookedNote["noted"] = {
    index,
    ...change,
    name,
    clarity: comparison.clarity[1],
    strength: comparison.strength[1],
    focusClarity: comparison.after.focus.clarity,
    verdict: comparison.verdict,
    price: comparison.price,
    drawing: redesign,
  };
  return { value: { noted, comparison }, problems: own };
}

/** Whether the palette's word that an option uses is what a colour of the flag is called from then on. */
function callsAnew({ inspection }: OpenedDrawing, option: Change, options: AnalyseOptions): boolean {
  const names = settleNames(option, options);
  return inspection.looks.some(({ hex }) => names.has(hex) && !options.names?.has(hex));
}

function isAmong(one: RankedOption, others: readonly RankedOption[]): boolean {
  return others.some((other) => other.id === one.id && other.with === one.with);
}

/** Among all that the matrix shows with a place: the computed options and the author's. */
function placeComparison(comparison: Comparison, all: readonly RankedOption[]): CountedStanding | null {
  const [, clarity] = comparison.clarity;
  if (clarity === null) return null;
  const { replace, with: next, only } = comparison.change;
  const standing = findStanding({ replace, with: next, isPart: only !== undefined, clarity }, all);
  const lost = comparison.edges.filter(({ outcome }) => outcome === "lost" || outcome === "merged").length;
  return { ...standing, lost };
}
