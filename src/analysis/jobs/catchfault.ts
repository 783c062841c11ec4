// Floor 6. A fault of ours met in one drawing, as a problem with a name, so that the work on the others goes on.

import { findRefusal, refusalProblem } from "../../content/disk/machinelimit.ts";
import { type Outcome, type Problem, report } from "../../problem/problem.ts";

/** Most lines of a trace that are shown. */
const mostLines = 6;

/** Returns what `work` returns; where it throws, the problem `study/machine` where the system refused something, else `study/fault` with the beginning of the trace. */
export async function catchFault<T>(file: string, work: () => Promise<Outcome<T>>): Promise<Outcome<T>> {
  try {
    return await work();
  } catch (error) {
    return { value: undefined, problems: [describeFault(file, error)] };
  }
}

function describeFault(file: string, error: unknown): Problem {
  const refusal = findRefusal(error);
  if (refusal !== undefined) return refusalProblem(file, refusal);
  const trace = error instanceof Error ? (error.stack ?? error.message) : String(error);
  const lines = trace.split("\n", mostLines).map((line) => line.trim());
  return report("study/fault", file, {
    reason: "Counterchange failed on this drawing: a fault of the program, not of the drawing.",
    hint: ["Please report it with the drawing and these lines:", ...lines].join("\n"),
  });
}
