// Floor 6. A job without anything that does not matter to measuring, and the way back: what the child never sees cannot
// get into its answer, so an answer that was kept is right for everyone who asks the same.

import type { Gallery, Study } from "../../content/study/study.ts";
import type { Comparison } from "../../measure/comparison.ts";
import type { Outcome, Problem } from "../../problem/problem.ts";
import type { StudyRanking } from "../options/studyranking.ts";
import type { StudyResult } from "../result.ts";
import type { JobKind, Jobs } from "./job.ts";

/** A job as the child gets it, and how its answer becomes one about what was asked: names, places, notes are put back. */
export interface BareJob<K extends JobKind> {
  readonly input: Jobs[K]["input"];
  restore(outcome: Outcome<Jobs[K]["output"]>): Outcome<Jobs[K]["output"]>;
}

type Strip<K extends JobKind> = (input: Jobs[K]["input"]) => BareJob<K>;

/** Stand for the names of files. No path, and no text that an author can write, holds a NUL. */
const drawingName = "\u0000drawing";
const studyName = "\u0000study";

const strips: { readonly [K in JobKind]: Strip<K> } = {
  measure: stripDrawing,
  compare: stripDrawing,
  options: stripDrawing,
  survey: stripDrawing,
  sift: stripDrawing,
  flag: stripDrawing,
  grid: stripDrawing,
  publish: (input) => ({ input, restore: (outcome) => outcome }),
  pages: (input) => ({ input, restore: (outcome) => outcome }),
  study: ({ study, bytes, gallery }) => ({
    input: {
      study: bareStudy(study, /^(?:original$|(?:change|focus|names)\.)/, []),
      bytes,
      gallery: bareGallery(gallery),
    },
    restore: ({ value, problems }) => {
      const whole = value === undefined ? undefined : restoreNames(withoutStudy(value), study.originalFile);
      return {
        value: whole === undefined ? undefined : { ...whole, study },
        problems: problems.map((problem) => restoreProblem(problem, study)),
      };
    },
  }),
  rank: ({ study, comparison, bytes, gallery }) => ({
    input: {
      study: bareStudy(study, /^(?:change|focus|names|options)\./, study.options),
      comparison: bareComparison(comparison),
      bytes,
      gallery: bareGallery(gallery),
    },
    restore: ({ value, problems }) => ({
      value: value === undefined ? undefined : restoreNotes(restoreNames(value, study.originalFile), study),
      problems: problems.map((problem) => restoreProblem(problem, study)),
    }),
  }),
};

/** Strips a job of names, places, prose and all else that changes no figure. */
export function bareJob<K extends JobKind>(kind: K, input: Jobs[K]["input"]): BareJob<K> {
  return strips[kind](input);
}

function stripDrawing<T, I extends { readonly file: string }>(input: I) {
  return {
    input: { ...input, file: drawingName },
    restore: (outcome: Outcome<T>): Outcome<T> => restoreNames(outcome, input.file),
  };
}

/** The study with what is measured. Places of the values that are read are numbered, with the path as their line. */
function bareStudy(study: Study, placed: RegExp, options: Study["options"]): Study {
  const paths = [...study.places.keys()].filter((path) => placed.test(path) && !path.endsWith(".note"));
  const { change, focus, names } = study;
  return {
    slug: "",
    file: studyName,
    title: "",
    originalFile: drawingName,
    originalPath: "",
    original: "",
    change,
    ...(focus === undefined ? {} : { focus }),
    ...(names === undefined ? {} : { names }),
    status: "open",
    authors: [],
    tags: [],
    options: options.map(({ note: _, ...option }, index) => ({ ...option, note: String(index) })),
    body: "",
    bodyLine: 1,
    places: new Map(
      paths.sort().map((path, index) => [path, { place: { line: index + 1, column: 1 }, sourceLine: path }]),
    ),
  };
}

function bareGallery({ viewingDistance, cloth, palette }: Gallery): Gallery {
  return { title: "", description: "", address: "", language: "", viewingDistance, cloth, palette };
}

function bareComparison(comparison: Comparison): Comparison {
  const { before, after } = comparison;
  return {
    ...comparison,
    before: { ...before, file: drawingName },
    after: { ...after, file: drawingName },
  };
}

function withoutStudy({ study: _, ...rest }: StudyResult): Omit<StudyResult, "study"> {
  return rest;
}

/** A problem that stands in study.md has the path of its value for a source line. */
function restoreProblem(problem: Problem, study: Study): Problem {
  if (problem.file === drawingName) return { ...problem, file: study.originalFile };
  if (problem.file !== studyName) return problem;
  const { place: _, sourceLine: path, ...rest } = problem;
  return { ...rest, file: study.file, ...(path === undefined ? {} : study.places.get(path)) };
}

/** The note of each of the author's options is its number, which says whose it is. */
function restoreNotes(ranking: StudyRanking, { options }: Study): StudyRanking {
  const noted = ranking.noted.map(({ note: index, ...one }) => {
    const note = options[Number(index)]?.note;
    return note === undefined ? one : { ...one, note };
  });
  return { ...ranking, noted };
}

/** Puts the drawing's name back wherever it stands. */
function restoreNames<T>(value: T, file: string): T {
  const visit = (one: unknown): unknown => {
    if (one === drawingName) return file;
    if (Array.isArray(one)) return one.map(visit);
    if (typeof one !== "object" || one === null || Object.getPrototypeOf(one) !== Object.prototype)
      return one;
    return Object.fromEntries(Object.entries(one).map(([key, inner]) => [key, visit(inner)]));
  };
  // The same shape: only text was exchanged for text.
  return visit(value) as T;
}
