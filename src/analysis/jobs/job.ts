// Floor 6. Work on one drawing that is done in a child process: what goes in and what comes back, as plain data.
import type { Cloth } from "../../colour/cloth.ts";
import type { Change, Gallery, Logo } from "../../content/study/study.ts";
import type { FlagGrid } from "../../measure/gridlikeness.ts";
import type { Measure } from "../../measure/measurement.ts";
import type { Outcome } from "../../problem/problem.ts";
import { writeDrawing } from "../../svg/writesvg.ts";
import { analyseStudy, compareDrawing, type DrawnComparison, measureDrawing } from "../analyse.ts";
import { type AnalyseOptions, readShown } from "../drawing/opendrawing.ts";
import { openLogo } from "../drawing/openlogo.ts";
import { readTypedFocus } from "../drawing/typedfocus.ts";
import { gridOf } from "../likeness/likenessreport.ts";
import { type OptionsReport, optionsOf } from "../options/rankoptions.ts";
import { type RankedStudy, rankStudy } from "../options/rankstudy.ts";
import type { StudyRanking } from "../options/studyranking.ts";
import type { MeasuredStudy } from "../result.ts";
import { type SurveyedDrawing, type SurveyedFlag, surveyDrawing, surveyFile } from "../survey/surveyflags.ts";

/**
 * A drawing to look at, without its name, which is in no problem and no answer of a child: one that was kept is right for
 * all who ask the same. `focus` as typed: the drawing decides whether it is a colour or a selector.
 */
interface DrawingInput {
  readonly bytes: Uint8Array;
  readonly options: Omit<AnalyseOptions, "focus">;
  readonly focus?: string;
}

/** What of a study its figures come from. */
interface StudyInput {
  readonly bytes: Uint8Array;
  readonly change: Change;
  readonly options: AnalyseOptions;
}

/** Every kind of job with what it needs and what it returns. */
export interface Jobs {
  readonly measure: { readonly input: DrawingInput; readonly output: Measure };
  readonly compare: {
    readonly input: DrawingInput & { readonly change: Change };
    readonly output: DrawnComparison;
  };
  readonly options: { readonly input: DrawingInput; readonly output: OptionsReport };
  readonly survey: { readonly input: DrawingInput; readonly output: SurveyedFlag };
  /** The drawing as SVG text that we wrote. */
  readonly sift: { readonly input: Pick<DrawingInput, "bytes">; readonly output: string };
  readonly logo: { readonly input: Pick<DrawingInput, "bytes">; readonly output: Logo };
  readonly study: {
    readonly input: StudyInput;
    readonly output: MeasuredStudy;
  };
  /** Apart from the study, so that options that take too long cost no study. */
  readonly rank: {
    readonly input: StudyInput & RankedStudy;
    readonly output: StudyRanking;
  };
  /** A flag for the gallery's survey. */
  readonly flag: { readonly input: DrawingInput; readonly output: SurveyedDrawing };
  readonly grid: {
    readonly input: Pick<DrawingInput, "bytes"> & { readonly cloth: Cloth };
    readonly output: FlagGrid;
  };
  /**
   * Published files from recipes, which only the floor that publishes can read: see worker.ts. `bytes` is the
   * drawing that they show.
   */
  readonly publish: {
    readonly input: Pick<DrawingInput, "bytes"> & {
      readonly file: string;
      readonly recipes: readonly unknown[];
      /** Whether all that can fail for the drawing's sake is done, and nothing comes back. */
      readonly isTrial: boolean;
    };
    readonly output: readonly (string | Uint8Array)[];
  };
  /** Pages of a view, by the same floor. */
  readonly pages: {
    readonly input: { readonly view: object; readonly gallery: Pick<Gallery, "language" | "words"> };
    readonly output: readonly { readonly path: string; readonly text: string }[];
  };
}

export type JobKind = keyof Jobs;

/** How jobs are done. */
export type Runners = {
  readonly [K in JobKind]: (input: Jobs[K]["input"]) => Promise<Outcome<Jobs[K]["output"]>>;
};

/** Does a job in this process; files are published by the floor above alone. */
export const runners: Runners = {
  measure: (input) => measureDrawing("", input.bytes, optionsFor(input)),
  compare: (input) => compareDrawing("", input.bytes, input.change, optionsFor(input)),
  options: (input) => optionsOf("", input.bytes, optionsFor(input)),
  survey: (input) => surveyFile("", input.bytes, optionsFor(input)),
  sift: async ({ bytes }) => {
    const { value, problems } = await readShown("", bytes);
    return { value: value && writeDrawing(value), problems };
  },
  logo: ({ bytes }) => openLogo("", bytes),
  study: ({ bytes, change, options }) => analyseStudy(bytes, change, options),
  rank: ({ bytes, change, options, ...study }) => rankStudy(bytes, change, options, study),
  flag: (input) => surveyDrawing("", input.bytes, optionsFor(input)),
  grid: ({ bytes, cloth }) => gridOf("", bytes, cloth),
  publish: async ({ file }) => {
    throw new Error(`${file}: this process publishes nothing`);
  },
  pages: async () => {
    throw new Error("this process publishes nothing");
  },
};

function optionsFor({ bytes, options, focus }: DrawingInput): AnalyseOptions {
  return focus === undefined ? options : { ...options, focus: readTypedFocus(bytes, focus) };
}
