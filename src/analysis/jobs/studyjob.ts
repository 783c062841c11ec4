// Floor 6. What a child is asked of a study, nothing that changes no figure; and its answer, about the study as it stands.
import type { Gallery, Study } from "../../content/study/study.ts";
import type { Outcome, Problem } from "../../problem/problem.ts";
import type { StudyRanking } from "../options/studyranking.ts";
import type { StudyResult } from "../result.ts";
import type { Jobs } from "./job.ts";
import { nameComparison } from "./nameanswer.ts";
import type { Line } from "./pool.ts";

/** Measures a study. Problems: those of `analyseStudy`, placed in study.md where they come from it. */
export async function measureStudy(
  line: Line,
  study: Study,
  bytes: Uint8Array,
  gallery: Gallery,
): Promise<Outcome<StudyResult>> {
  const { value, problems } = await line.run("study", study.file, inputOf(study, bytes, gallery));
  const named = value && {
    ...value,
    comparison: nameComparison(value.comparison, study.originalFile),
    study,
  };
  return { value: named, problems: problems.map((problem) => placeProblem(problem, study)) };
}

/** Ranks the changes of a measured study. Problems: those of `rankStudy`, placed in study.md. */
export async function rankChanges(
  line: Line,
  { study, comparison }: Pick<StudyResult, "study" | "comparison">,
  bytes: Uint8Array,
  gallery: Gallery,
): Promise<Outcome<StudyRanking>> {
  const { value, problems } = await line.run("rank", study.file, {
    ...inputOf(study, bytes, gallery),
    comparison: nameComparison(comparison, ""),
    tried: study.options.map(({ note: _, ...change }) => change),
  });
  const named = value && {
    ...value,
    report: { ...value.report, file: study.originalFile },
    noted: value.noted.map((one) => {
      const note = study.options[one.index]?.note;
      return note === undefined ? one : { ...one, note };
    }),
  };
  return { value: named, problems: problems.map((problem) => placeProblem(problem, study)) };
}

function inputOf(
  { change, focus, names }: Study,
  bytes: Uint8Array,
  { cloth, viewingDistance: distance, palette }: Gallery,
): Jobs["study"]["input"] {
  const written = { ...(focus === undefined ? {} : { focus }), ...(names === undefined ? {} : { names }) };
  return { bytes, change, options: { cloth, distance, palette, ...written } };
}

/** What a child says of a value in study.md has its path, what it says of the drawing no file; the rest is the pool's. */
function placeProblem({ at, ...problem }: Problem, study: Study): Problem {
  if (at !== undefined) return { ...problem, file: study.file, ...study.places.get(at) };
  return problem.file === "" ? { ...problem, file: study.originalFile } : problem;
}
