// Floor 5. Work on one drawing that is done in a child process: what goes in and what comes back, as plain data.

import type { Measure } from "../measure/measure.ts";
import type { Outcome } from "../problem/problem.ts";
import {
  type AnalyseOptions,
  analyseStudy,
  compareDrawing,
  type DrawnComparison,
  measureDrawing,
} from "./analyse.ts";
import type { StudyResult } from "./result.ts";
import type { Change, Gallery, Study } from "./study.ts";

type Options = Omit<AnalyseOptions, "locate">;

/** Every kind of job with what it needs and what it returns. */
export interface Jobs {
  readonly measure: {
    readonly input: { readonly file: string; readonly bytes: Uint8Array; readonly options: Options };
    readonly output: Measure;
  };
  readonly compare: {
    readonly input: {
      readonly file: string;
      readonly bytes: Uint8Array;
      readonly change: Change;
      readonly options: Options;
    };
    readonly output: DrawnComparison;
  };
  readonly study: {
    readonly input: { readonly study: Study; readonly bytes: Uint8Array; readonly gallery: Gallery };
    readonly output: StudyResult;
  };
}

export type JobKind = keyof Jobs;

type Runners = { readonly [K in JobKind]: (input: Jobs[K]["input"]) => Promise<Outcome<Jobs[K]["output"]>> };

/** Does a job in this process. */
export const runners: Runners = {
  measure: ({ file, bytes, options }) => measureDrawing(file, bytes, options),
  compare: ({ file, bytes, change, options }) => compareDrawing(file, bytes, change, options),
  study: ({ study, bytes, gallery }) => analyseStudy(study, bytes, gallery),
};
