// Floor 6. The name of a drawing, which no child is told, in what a child answers.
import type { Comparison } from "../../measure/comparison.ts";
import type { Outcome } from "../../problem/problem.ts";
import type { JobKind, Jobs } from "./job.ts";

type Name<K extends JobKind> = (value: Jobs[K]["output"], file: string) => Jobs[K]["output"];

/** What is about a study is named by studyjob.ts, what is published by its recipes. */
const names: { readonly [K in JobKind]?: Name<K> } = {
  measure: (value, file) => ({ ...value, file }),
  compare: (value, file) => ({ ...value, comparison: nameComparison(value.comparison, file) }),
  options: (value, file) => ({ ...value, file }),
  survey: (value, file) => ({ ...value, file }),
  sift: (value) => value,
  logo: (value) => value,
  flag: (value, file) => ({ ...value, flag: { ...value.flag, file }, measure: { ...value.measure, file } }),
  grid: (value) => value,
};

/** Returns an answer about the drawing `file`, which is the place of all its problems too. */
export function nameAnswer<K extends JobKind>(
  kind: K,
  file: string,
  { value, problems }: Outcome<Jobs[K]["output"]>,
): Outcome<Jobs[K]["output"]> {
  const name: Name<K> | undefined = names[kind];
  if (name === undefined) return { value, problems };
  return {
    value: value === undefined ? undefined : name(value, file),
    problems: problems.map(({ at: _, ...problem }) => ({ ...problem, file })),
  };
}

/** Returns a comparison of the drawing `file`. */
export function nameComparison(comparison: Comparison, file: string): Comparison {
  const { before, after } = comparison;
  return { ...comparison, before: { ...before, file }, after: { ...after, file } };
}
