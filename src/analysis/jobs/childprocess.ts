// Floor 6. One child process that does jobs. A drawing that takes too long or too much memory is stopped by killing its
// process (nothing else stops a renderer that is stuck); the drawing becomes a problem with a name and the work goes on.
import { type ChildProcess, fork } from "node:child_process";
import { join } from "node:path";
import { findRefusal, type Refusal, refusalProblem } from "../../content/disk/machinelimit.ts";
import { programFolder } from "../../content/disk/packagefile.ts";
import { type Outcome, type Problem, report } from "../../problem/problem.ts";
import { measureProcessor, measureResident } from "./childusage.ts";
import type { JobKind } from "./job.ts";
import type { Request } from "./worker.ts";

export interface ChildLimits {
  /** Longest time for one job; on a busy machine, where it has less than half of the processor, up to four times as long. */
  readonly seconds: number;
  /** Most memory for one child, resident. Watched on Linux; elsewhere only JavaScript's own memory is limited. */
  readonly megabytes: number;
  /** The module, as a URL, that does the jobs `publish` and `pages`: see worker.ts. Without it there are none. */
  readonly publisher?: string;
}

/** A job in line, and who hears of it. `file` names the drawing in messages. */
export interface Waiting {
  readonly request: Omit<Request, "id">;
  readonly file: string;
  readonly settle: (outcome: Outcome<unknown>) => void;
  readonly fail: (error: Error) => void;
}

interface Answer {
  /** 0 says that the child has started. */
  readonly id: number;
  readonly outcome?: Outcome<unknown>;
  readonly error?: string;
  /** Where the error is one of the system. */
  readonly refusal?: Refusal | undefined;
}

const worker = join(programFolder, "children/worker.js");

type Reason = "study/too-slow" | "study/too-much-memory" | "study/crashed";

/** One child process with at most one job. Its clock runs from when it has started and has the job. */
export class Child {
  private readonly child: ChildProcess;
  private readonly limits: ChildLimits;
  private readonly tell: { readonly free: () => void; readonly gone: () => void };
  /** Whether it has started. */
  isReady = false;
  private job:
    | { readonly id: number; readonly waiting: Waiting; started: number; worked: number }
    | undefined;
  private jobs = 0;
  private reason: Reason = "study/crashed";
  private watch: NodeJS.Timeout | undefined;

  constructor(limits: ChildLimits, tell: { readonly free: () => void; readonly gone: () => void }) {
    this.limits = limits;
    this.tell = tell;
    this.child = fork(worker, limits.publisher === undefined ? [] : [limits.publisher], {
      serialization: "advanced",
      stdio: ["ignore", "ignore", "inherit", "ipc"],
      execArgv: [`--max-old-space-size=${limits.megabytes}`],
    });
    this.child.on("message", (answer: Answer) => this.hear(answer));
    this.child.on("exit", () => this.end());
    this.child.on("error", (error) => this.end(findRefusal(error)));
  }

  /** What it does at the moment. */
  get request(): Waiting["request"] | undefined {
    return this.job?.waiting.request;
  }

  /** One that is idle tidies up and ends when it is let go; one that is at work may be stuck. */
  kill(): void {
    if (this.isReady && this.job === undefined && this.child.connected) this.child.disconnect();
    else this.child.kill("SIGKILL");
  }

  give(waiting: Waiting): void {
    this.jobs += 1;
    this.job = { id: this.jobs, waiting, started: performance.now(), worked: 0 };
    this.watch = setInterval(() => this.check(), 100);
    if (this.isReady) this.send();
  }

  private send(): void {
    if (this.job === undefined) return;
    this.job.started = performance.now();
    this.job.worked = measureProcessor(this.child.pid) ?? 0;
    const { waiting, id } = this.job;
    try {
      this.child.send({ ...waiting.request, id }, (error) => {
        if (error !== null) this.kill();
      });
    } catch (error) {
      // A fault of ours: what was asked holds what no other process can be given.
      this.job = undefined;
      clearInterval(this.watch);
      waiting.fail(error instanceof Error ? error : new Error(`${waiting.file}: ${error}`));
      this.tell.free();
      return;
    }
    // A small drawing is done before the clock first strikes.
    this.check();
  }

  private check(): void {
    if (this.job === undefined || !this.isReady) return;
    if (this.isLate(this.job)) this.reason = "study/too-slow";
    else if (measureResident(this.child.pid) > this.limits.megabytes) this.reason = "study/too-much-memory";
    else return;
    this.kill();
  }

  private isLate({ started, worked, waiting }: NonNullable<typeof this.job>): boolean {
    const seconds = secondsFor(waiting.request.kind, this.limits);
    const passed = (performance.now() - started) / 1000;
    if (passed <= seconds) return false;
    const own = measureProcessor(this.child.pid);
    return own === undefined || own - worked > seconds / 2 || passed > 4 * seconds;
  }

  private hear(answer: Answer): void {
    if (answer.id === 0) {
      this.isReady = true;
      this.send();
      return;
    }
    const { job } = this;
    if (job === undefined || answer.id !== job.id) return;
    this.job = undefined;
    clearInterval(this.watch);
    if (answer.outcome !== undefined) job.waiting.settle(answer.outcome);
    else if (answer.refusal !== undefined) job.waiting.settle(refuse(job.waiting, answer.refusal));
    else job.waiting.fail(new Error(`${job.waiting.file}: ${answer.error}`));
    this.tell.free();
  }

  private end(refusal?: Refusal): void {
    clearInterval(this.watch);
    const { job } = this;
    this.job = undefined;
    if (job !== undefined && refusal !== undefined) job.waiting.settle(refuse(job.waiting, refusal));
    else if (job !== undefined) {
      job.waiting.settle({
        value: undefined,
        problems: [describe(this.reason, job.waiting, this.limits)],
      });
    }
    this.tell.gone();
  }
}

/** Longest time for a job: for all files of a study it is longer than for one look at a drawing. */
function secondsFor(kind: JobKind, { seconds }: ChildLimits): number {
  return kind === "publish" ? 4 * seconds : seconds;
}

function refuse({ file }: Waiting, refusal: Refusal): Outcome<never> {
  return { value: undefined, problems: [refusalProblem(file, refusal)] };
}

function describe(rule: Reason, { request: { kind }, file }: Waiting, limits: ChildLimits): Problem {
  const isPublished = kind === "publish";
  const done = isPublished ? "published" : "measured";
  const reasons: Readonly<Record<Reason, string>> = {
    "study/too-slow": `The drawing was not ${done} within ${secondsFor(kind, limits)} seconds and was stopped.`,
    "study/too-much-memory": `The drawing needed more than ${limits.megabytes} MB of memory and was stopped.`,
    "study/crashed": `The process that ${isPublished ? "made the pictures of" : "measured"} the drawing ended unexpectedly.`,
  };
  const hint = "Simplify the drawing: fewer points, fewer repetitions, no patterns within patterns.";
  return report(rule, file, { reason: reasons[rule], hint });
}
