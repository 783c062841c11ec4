// Floor 11. What problems come to: an exit status, and a number in words.
import { hasError, type Problem } from "../../problem/problem.ts";
import { countSeverity } from "../../problem/tally.ts";

/**
 * Returns the exit status of what was found: 2 where what was named on the command line is not there, or is no file, for
 * what the computer refused, and for a fault of ours; 1 for any other error, and with `isStrict` for any warning.
 */
export function statusOf(problems: readonly Problem[], isStrict = false): number {
  const isWrongUse = ({ rule, place }: Problem) =>
    rule === "study/content-missing" ||
    rule === "study/folder-named" ||
    rule === "study/fault" ||
    rule === "study/machine" ||
    (rule === "study/drawing-missing" && place === undefined);
  if (problems.some(isWrongUse)) return 2;
  return hasError(problems) || (isStrict && problems.length > 0) ? 1 : 0;
}

/** The same for a gallery, in which a fault of ours leaves out one study as any other error does. */
export function statusOfGallery(problems: readonly Problem[], isStrict = false): number {
  const others = problems.filter(({ rule }) => rule !== "study/fault");
  return Math.max(statusOf(others, isStrict), others.length < problems.length ? 1 : 0);
}

/** Returns the numbers of errors and warnings in words: `2 errors, 1 warning`. */
export function countProblems(problems: readonly Problem[]): string {
  const [errors, warnings] = [countSeverity(problems, "error"), countSeverity(problems, "warning")];
  return `${count(errors, "error", "errors")}, ${count(warnings, "warning", "warnings")}`;
}

/** Returns a number with its noun: `1 study`, `3 studies`. */
export function count(number: number, one: string, many: string): string {
  return `${number} ${number === 1 ? one : many}`;
}
