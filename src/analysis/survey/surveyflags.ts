// Floor 6. Many drawings at once: each with its clarity, its weakest edge and the change that would help most.
import type { Hex } from "../../colour/colour.ts";
import { measureLooks } from "../../measure/measurelooks.ts";
import type { Measure, MeasuredFocus } from "../../measure/measurement.ts";
import type { Option } from "../../measure/options/tryoptions.ts";
import { compareText, hasError, type Outcome, type Problem } from "../../problem/problem.ts";
import { writeDrawing } from "../../svg/writesvg.ts";
import { notDrawable } from "../drawing/norendering.ts";
import { type AnalyseOptions, openDrawing } from "../drawing/opendrawing.ts";
import { type OptionsReport, rankOpened } from "../options/rankoptions.ts";
import type { TriedPart } from "../options/subject.ts";

/** The weakest edge with the names of its paints, for a list in which no colours table stands beside it. */
export interface SurveyedEdge {
  readonly a: string;
  readonly b: string;
  readonly names: readonly [string, string];
  readonly contrast: number;
}

/** One flag of a survey. Clarity in percent and clear-edge share 0 to 1, null where there is no edge. */
export interface SurveyedFlag {
  readonly file: string;
  readonly clarity: number | null;
  readonly clearEdgeShare: number | null;
  readonly weakestEdge: SurveyedEdge | null;
  readonly changeFirst:
    | readonly {
        readonly id: string;
        readonly hex: Hex;
        readonly name: string;
      }[]
    | null;
  /** The best option of the colour to change first; null where there is none. */
  readonly bestOption: Option | null;
  /** What has to be seen; `lastsTo` in flag heights, 320 stands for 320 or more, null where it lasts to no step. */
  readonly focus: Pick<MeasuredFocus, "source" | "clarity" | "lastsTo">;
  /** Where not all flat colours were tried for the best option, but only the largest. */
  readonly tried?: TriedPart;
}

/** What `survey --json` prints: least clear first, flags without an edge last, then by file name. */
export interface Survey {
  readonly flags: readonly SurveyedFlag[];
  readonly failed: readonly {
    readonly file: string;
    readonly problem: Problem;
  }[];
}

/** A file of `flags/`, by its path in the content folder, and what became of it. */
export interface FlagOutcome {
  readonly file: string;
  readonly outcome: Outcome<SurveyedDrawing>;
}

/** One flag with what a page shows of it: all its measures, and the drawing as SVG text that we wrote. */
export interface SurveyedDrawing {
  readonly flag: SurveyedFlag;
  readonly measure: Measure;
  readonly drawing: string;
}

/** Surveys one drawing. Never throws for what is in it. Problems: those of openDrawing; study/not-drawable. */
export async function surveyFile(
  file: string,
  bytes: Uint8Array,
  options: AnalyseOptions,
): Promise<Outcome<SurveyedFlag>> {
  const { value, problems } = await surveyDrawing(file, bytes, options);
  return { value: value?.flag, problems };
}

/** Surveys one drawing for a page. Never throws for what is in it. Problems: those of surveyFile. */
export async function surveyDrawing(
  file: string,
  bytes: Uint8Array,
  options: AnalyseOptions,
): Promise<Outcome<SurveyedDrawing>> {
  try {
    const opened = await openDrawing(file, bytes, { ...options, isBrief: true });
    if (opened.value === undefined) return { value: undefined, problems: opened.problems };
    const { inspection, viewing, drawing } = opened.value;
    const { table, looks, proportions, warnings } = inspection;
    const frame = { file, proportions, distance: viewing.distance, warnings };
    const measure = measureLooks(frame, table, looks, options.cloth);
    const report = rankOpened(opened.value, options);
    const flag = describeFlag(file, measure, report);
    return { value: { flag, measure, drawing: writeDrawing(drawing) }, problems: opened.problems };
  } catch (error) {
    return { value: undefined, problems: [notDrawable(file, error, "measured")] };
  }
}

/** Puts surveyed drawings in order, whatever the order they were done in. */
export function collectSurvey(
  surveyed: readonly {
    readonly file: string;
    readonly outcome: Outcome<SurveyedFlag>;
  }[],
): Survey {
  const flags = surveyed.flatMap(({ outcome }) => (outcome.value === undefined ? [] : [outcome.value]));
  const failed = surveyed.flatMap(({ file, outcome: { value, problems } }) => {
    const problem = problems.find((each) => hasError([each])) ?? problems[0];
    return value !== undefined || problem === undefined ? [] : [{ file, problem }];
  });
  return {
    flags: flags.sort((one, other) => rankOf(one) - rankOf(other) || compareText(one.file, other.file)),
    failed: failed.sort((one, other) => compareText(one.file, other.file)),
  };
}

/**
 * Returns the line of a flag in a survey. `report` are its ranked options, undefined where there are none to be had; it may
 * have been made apart from `measure`, whose paints can be parted by a change that is measured with them.
 */
export function describeFlag(
  file: string,
  { clarity, clearEdgeShare, weakestEdge, edges, focus }: Measure,
  report: OptionsReport | undefined,
): SurveyedFlag {
  const names = edges.find((edge) => edge.a === weakestEdge?.a && edge.b === weakestEdge?.b)?.names;
  const first = report?.changeFirst ?? null;
  const best = report?.options.find((option) => first?.some(({ id }) => id === option.id) === true);
  return {
    file,
    clarity,
    clearEdgeShare,
    weakestEdge: weakestEdge === null || names === undefined ? null : { ...weakestEdge, names },
    changeFirst: first,
    bestOption: best ?? null,
    focus: { source: focus.source, clarity: focus.clarity, lastsTo: focus.lastsTo },
    ...(report?.tried === undefined ? {} : { tried: report.tried }),
  };
}

/** Clarity, and past every clarity where there is none. */
function rankOf({ clarity }: SurveyedFlag): number {
  return clarity ?? Number.MAX_VALUE;
}
