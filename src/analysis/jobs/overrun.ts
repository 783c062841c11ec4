// Floor 6. Drawings that ran over their time or memory, known by their bytes: none is tried again in the same run.
import { createHash } from "node:crypto";
import type { Outcome, Problem } from "../../problem/problem.ts";
import type { JobKind } from "./job.ts";

/** A job as far as it matters here. */
interface Tried {
  readonly kind: JobKind;
  readonly input: object;
}

/** Jobs that rank options: one of them may take long where everything else is quick. */
const ranking: ReadonlySet<JobKind> = new Set(["rank", "options", "survey", "flag"]);

/**
 * What became of drawings in this run. Not kept for the next one: what ran over may have done so because the machine was
 * busy. The first job of a kind on a drawing goes alone, so that a drawing that runs over does so once.
 */
export class Overruns {
  private readonly found = new Map<string, Problem>();
  private readonly done = new Set<string>();
  private readonly names = new WeakMap<object, string>();

  /** Returns the problem, for `file`, of a job that would run over as one did before; else undefined. */
  find(job: Tried, file: string): Problem | undefined {
    const name = this.nameOf(job);
    const problem =
      this.found.get(name) ?? (ranking.has(job.kind) ? this.found.get(`${name} ranking`) : undefined);
    if (problem === undefined || problem.file === file) return problem;
    const reason = `${problem.reason} That was in ${problem.file}: the same drawing was not tried again.`;
    return { ...problem, file, reason };
  }

  /** Whether `job` should wait until one of `working` has shown whether the drawing runs over. */
  mustWait(job: Tried, working: readonly Tried[]): boolean {
    const name = this.nameOf(job);
    if (name === "" || this.done.has(`${name} ${job.kind}`)) return false;
    return working.some((other) => other.kind === job.kind && this.nameOf(other) === name);
  }

  /** Remembers what came of a job. */
  note(job: Tried, { value, problems }: Outcome<unknown>): void {
    const name = this.nameOf(job);
    const over = problems.find(({ rule }) => rule === "study/too-slow" || rule === "study/too-much-memory");
    if (name === "") return;
    if (value !== undefined || over === undefined) this.done.add(`${name} ${job.kind}`);
    else this.found.set(ranking.has(job.kind) ? `${name} ranking` : name, over);
  }

  /** A digest of the drawing that a job is about, empty where it is about none. */
  private nameOf({ input }: Tried): string {
    const known = this.names.get(input);
    if (known !== undefined) return known;
    const bytes = "bytes" in input && input.bytes instanceof Uint8Array ? input.bytes : undefined;
    const name = bytes === undefined ? "" : createHash("sha256").update(bytes).digest("hex");
    this.names.set(input, name);
    return name;
  }
}
