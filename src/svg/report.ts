// Floor 2. Collects the problems of one drawing, each with its place and its source line.
import type { Place, Problem, Severity } from "../problem/problem.ts";
import { limit } from "./limit.ts";

/** Thrown inside floor 2 to leave a drawing that cannot be read any further; never leaves the floor. */
export class Refusal extends Error {}

export interface Reporter {
  readonly file: string;
  readonly lines: readonly string[];
  readonly problems: Problem[];
  error(rule: string, place: Place | undefined, reason: string, hint?: string): void;
  warn(rule: string, place: Place | undefined, reason: string, hint?: string): void;
}

/** Said of what was removed and might be missed. */
const removedHint = "If the flag looks right without it, there is nothing to do.";

/** Returns a reporter for `file` whose text is split into `lines`. */
export function createReporter(file: string, lines: readonly string[]): Reporter {
  const problems: Problem[] = [];
  let warnings = 0;
  const add =
    (severity: Severity) => (rule: string, place: Place | undefined, reason: string, hint?: string) => {
      const sourceLine = place === undefined ? undefined : lines[place.line - 1];
      problems.push({
        rule,
        severity,
        file,
        reason,
        ...(place === undefined ? {} : { place }),
        ...(sourceLine === undefined ? {} : { sourceLine }),
        ...(hint === undefined ? {} : { hint }),
      });
    };
  const warn = add("warning");
  const hintOf = (rule: string, hint: string | undefined) =>
    hint ?? (rule === "svg/removed" ? removedHint : undefined);
  return {
    file,
    lines,
    problems,
    error: add("error"),
    warn: (rule, place, reason, hint) => {
      warnings += 1;
      if (warnings <= limit.warnings) warn(rule, place, reason, hintOf(rule, hint));
      else if (warnings === limit.warnings + 1)
        warn(
          "svg/more",
          place,
          `There are more than ${limit.warnings} warnings; the others are not listed.`,
          "Save the drawing as a plain SVG.",
        );
    },
  };
}
