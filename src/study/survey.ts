// Floor 5. Many drawings at once: each with its clarity, its weakest edge and the change that would help most.
import type { Hex } from "../colour/colour.ts";
import { measureLooks } from "../measure/figures.ts";
import type { Measure } from "../measure/measure.ts";
import type { Option } from "../measure/options.ts";
import { hasError, type Outcome, type Problem } from "../problem/problem.ts";
import { openDrawing } from "./open.ts";
import { type OptionsReport, rankOpened, type TryOptions } from "./options.ts";

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
  /** A distance step in flag heights; 320 stands for 320 or more. */
  readonly readsTo: number | null;
}

/** What `survey --json` prints: least clear first, flags without an edge last, then by file name. */
export interface Survey {
  readonly flags: readonly SurveyedFlag[];
  readonly failed: readonly {
    readonly file: string;
    readonly problem: Problem;
  }[];
}

/** A drawing to survey. `file` is its name in the result. */
export interface SurveyInput {
  readonly file: string;
  readonly bytes: Uint8Array;
}

/** Surveys one drawing. Never throws for what is in it. Problems: those of openDrawing; study/not-drawable. */
export async function surveyFile(
  file: string,
  bytes: Uint8Array,
  options: TryOptions,
): Promise<Outcome<SurveyedFlag>> {
  try {
    const opened = await openDrawing(file, bytes, options);
    if (opened.value === undefined) return { value: undefined, problems: opened.problems };
    const { inspection, viewing } = opened.value;
    const { table, looks, proportions, warnings } = inspection;
    const measure = measureLooks(
      { file, proportions, distance: viewing.distance, warnings },
      table,
      looks,
      options.cloth,
    );
    return {
      value: describeFlag(measure, await rankOpened(opened.value, { ...options, draw: 0 })),
      problems: opened.problems,
    };
  } catch (error) {
    const cause = error instanceof Error ? error.message.trim() : String(error);
    const hint = "Simplify it in a drawing program and export it again.";
    return {
      value: undefined,
      problems: [
        {
          rule: "study/not-drawable",
          severity: "error",
          file,
          reason: `The drawing could not be measured: ${cause}.`,
          hint,
        },
      ],
    };
  }
}

/**
 * Surveys drawings one after another; a broken one is listed and the rest go on. `onProgress` hears how many are done,
 * of how many, after each.
 */
export async function surveyFiles(
  files: readonly SurveyInput[],
  options: TryOptions,
  onProgress: (done: number, total: number) => void = () => undefined,
): Promise<Survey> {
  const surveyed: { file: string; outcome: Outcome<SurveyedFlag> }[] = [];
  for (const { file, bytes } of files) {
    surveyed.push({ file, outcome: await surveyFile(file, bytes, options) });
    onProgress(surveyed.length, files.length);
  }
  return collectSurvey(surveyed);
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

function describeFlag(measure: Measure, report: OptionsReport): SurveyedFlag {
  const { file, clarity, clearEdgeShare, weakestEdge, edges, focus } = measure;
  const names = edges.find((edge) => edge.a === weakestEdge?.a && edge.b === weakestEdge?.b)?.names;
  const best = report.options.find(
    (option) => report.changeFirst?.some(({ id }) => id === option.id) === true,
  );
  return {
    file,
    clarity,
    clearEdgeShare,
    weakestEdge: weakestEdge === null || names === undefined ? null : { ...weakestEdge, names },
    changeFirst: report.changeFirst,
    bestOption: best ?? null,
    readsTo: focus.readsTo,
  };
}

/** Clarity, and past every clarity where there is none. */
function rankOf({ clarity }: SurveyedFlag): number {
  return clarity ?? Number.MAX_VALUE;
}

function compareText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
