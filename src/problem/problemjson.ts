// Floor 0. A problem as JSON has it.
import type { Problem } from "./problem.ts";

/** Returns a problem as the contract has it. What there is none of is null. */
export function plainProblem({ rule, severity, file, place, reason, hint }: Problem) {
  return {
    rule,
    severity,
    file,
    line: place?.line ?? null,
    column: place?.column ?? null,
    reason,
    hint: hint ?? null,
  };
}
