// Floor 6. What is said of a drawing that passed every check and still gave no picture to measure.
import { type Problem, report } from "../../problem/problem.ts";

/** Returns the error `study/nothing-drawn` for a drawing whose picture is empty. */
export function nothingDrawn(file: string): Problem {
  return report("study/nothing-drawn", file, {
    reason: "The drawing shows nothing.",
    hint: "Check that its shapes have a fill and lie inside the viewBox.",
  });
}

/** Returns the error `study/not-drawable` for a fault of ours at a drawing. `done`: what could not be. */
export function notDrawable(file: string, fault: unknown, done: "rendered" | "measured"): Problem {
  const cause = fault instanceof Error ? fault.message.trim() : String(fault);
  return report("study/not-drawable", file, {
    reason: `The drawing could not be ${done}: ${cause}.`,
    hint: "Simplify it in a drawing program and export it again.",
  });
}
