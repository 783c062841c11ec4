// Floor 2. Collects the problems of one drawing, each with its place and its source line.
import { locate } from "../../problem/locate.ts";
import type { Place, Problem, Severity } from "../../problem/problem.ts";
import { Tally } from "../../problem/tally.ts";

/** Thrown inside floor 2 to leave a drawing that cannot be read any further; never leaves the floor. */
export class Refusal extends Error {}

export interface Reporter {
  readonly file: string;
  readonly lines: readonly string[];
  readonly problems: readonly Problem[];
  error(rule: string, place: Place | undefined, reason: string, hint?: string): void;
  warn(rule: string, place: Place | undefined, reason: string, hint?: string): void;
}

/** Said of what was removed and might be missed. */
const removedHint = "If the flag looks right without it, there is nothing to do.";

/** Returns a reporter for `file` whose text is split into `lines`. */
export function createReporter(file: string, lines: readonly string[]): Reporter {
  const tally = new Tally();
  const add =
    (severity: Severity) => (rule: string, place: Place | undefined, reason: string, hint?: string) => {
      const said = hint ?? (rule === "svg/removed" ? removedHint : undefined);
      const line = place === undefined ? undefined : lines[place.line - 1];
      tally.add({
        rule,
        severity,
        file,
        reason,
        ...(place === undefined ? {} : line === undefined ? { place } : locate(line, place)),
        ...(said === undefined ? {} : { hint: said }),
      });
    };
  return { file, lines, problems: tally.problems, error: add("error"), warn: add("warning") };
}
