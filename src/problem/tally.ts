// Floor 0. Problems of one kind in one file, or of files in one folder: the first are told, the others counted.
import { compareProblems, type Problem, type Severity } from "./problem.ts";

/** Most problems of one rule that are told of one file, or of the files in one folder as wholes. */
const mostOfKind = 20;

/** Longest reason, and longest hint, in characters. A hint may propose a line of a few hundred. */
const longest = 2000;

/**
 * Takes problems one by one. `problems` has the first 20 of each kind and file, and one that counts the others; of those
 * without a place, which say something of a file as a whole, the first 20 of each kind and folder. What is longer than 2,000 characters in them is cut.
 */
export class Tally {
  readonly problems: Problem[] = [];
  private readonly kinds = new Map<string, { told: number; more: number; at: number }>();

  add(problem: Problem): void {
    const { rule, severity, place, more } = problem;
    const folder = place === undefined && more === undefined ? folderOf(problem.file) : undefined;
    const file = folder ?? problem.file;
    const key = JSON.stringify([rule, severity, file]);
    const kind = this.kinds.get(key) ?? { told: 0, more: 0, at: -1 };
    this.kinds.set(key, kind);
    if (more === undefined && kind.told < mostOfKind) {
      kind.told += 1;
      this.problems.push(shorten(problem));
      return;
    }
    kind.more += more ?? 1;
    if (kind.more === (more ?? 1)) kind.at = this.problems.length;
    const words =
      folder === undefined
        ? `And 0 more of this kind, ${rule}.`
        : `0 more of this kind, ${rule}, are in this folder.`;
    const reason = (more === undefined ? words : problem.reason).replace(/\d+/, String(kind.more));
    this.problems[kind.at] = { rule, severity, file, reason, more: kind.more };
  }
}

function folderOf(file: string): string | undefined {
  const end = file.lastIndexOf("/");
  return end > 0 ? file.slice(0, end) : undefined;
}

function shorten(problem: Problem): Problem {
  const { reason, hint = "" } = problem;
  if (reason.length <= longest && hint.length <= longest) return problem;
  return { ...problem, reason: cut(reason), ...(problem.hint === undefined ? {} : { hint: cut(hint) }) };
}

function cut(text: string): string {
  return text.length <= longest ? text : `${text.slice(0, longest - 1)}…`;
}

/** Returns `problems` in their order, of each kind in a file the first 20 and one that counts the others. */
export function limitProblems(problems: readonly Problem[]): Problem[] {
  const tally = new Tally();
  for (const problem of [...problems].sort(compareProblems)) tally.add(problem);
  return tally.problems.sort(compareProblems);
}

/** Returns how many of `problems` are of a severity, with those that are counted only. */
export function countSeverity(problems: readonly Problem[], severity: Severity): number {
  return problems.reduce((sum, one) => sum + (one.severity === severity ? (one.more ?? 1) : 0), 0);
}
