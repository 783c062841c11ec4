// Floor 5. A small pool of child processes. A drawing that takes too long or too much memory is stopped by killing its
// process (nothing else stops a renderer that is stuck); the drawing becomes a problem with a name and the work goes on.
import { type ChildProcess, fork } from "node:child_process";
import { createRequire } from "node:module";
import { availableParallelism } from "node:os";
import { fileURLToPath, pathToFileURL } from "node:url";
import type { Outcome } from "../problem/problem.ts";
import type { JobKind, Jobs } from "./job.ts";
import { measureResident } from "./memory.ts";
import type { Request } from "./worker.ts";

export interface PoolLimits {
  /** Child processes at once. */
  readonly size: number;
  /** Longest time for one job. */
  readonly seconds: number;
  /** Most memory for one child, resident. Watched on Linux; elsewhere only JavaScript's own memory is limited. */
  readonly megabytes: number;
}

export const defaultLimits: PoolLimits = {
  size: Math.min(4, availableParallelism()),
  seconds: 15,
  megabytes: 768,
};

interface Waiting {
  readonly request: Omit<Request, "id">;
  readonly file: string;
  readonly settle: (outcome: Outcome<unknown>) => void;
  readonly fail: (error: Error) => void;
}

interface Answer {
  readonly id: number;
  readonly outcome?: Outcome<unknown>;
  readonly error?: string;
}

/** Runs jobs in child processes, which are started when first needed and must be closed. */
export class Pool {
  private readonly idle: ChildProcess[] = [];
  private readonly all = new Set<ChildProcess>();
  private readonly queue: Waiting[] = [];
  private jobs = 0;
  private readonly limits: PoolLimits;

  constructor(limits: Partial<PoolLimits> = {}) {
    this.limits = { ...defaultLimits, ...limits };
  }

  /**
   * Does a job. `file` names the drawing in messages. Rejects only for faults of our own.
   *
   * Problems: those of the job; study/too-slow, study/too-much-memory, study/crashed.
   */
  run<K extends JobKind>(
    kind: K,
    file: string,
    input: Jobs[K]["input"],
  ): Promise<Outcome<Jobs[K]["output"]>> {
    return new Promise((resolve, reject) => {
      // The child answers a job of kind K with an outcome of kind K: see worker.ts.
      const settle = (outcome: Outcome<unknown>): void => resolve(outcome as Outcome<Jobs[K]["output"]>);
      this.queue.push({ request: { kind, input }, file, settle, fail: reject });
      this.next();
    });
  }

  /** Ends all child processes. */
  close(): void {
    for (const child of this.all) child.kill("SIGKILL");
    this.all.clear();
    this.idle.length = 0;
  }

  private next(): void {
    const waiting = this.queue[0];
    if (waiting === undefined) return;
    const child = this.idle.pop() ?? (this.all.size < this.limits.size ? this.start() : undefined);
    if (child === undefined) return;
    this.queue.shift();
    this.give(child, waiting);
  }

  private start(): ChildProcess {
    const loader = pathToFileURL(createRequire(import.meta.url).resolve("tsx")).href;
    const child = fork(fileURLToPath(new URL("./worker.ts", import.meta.url)), [], {
      serialization: "advanced",
      stdio: ["ignore", "ignore", "inherit", "ipc"],
      execArgv: ["--import", loader, `--max-old-space-size=${this.limits.megabytes}`],
    });
    child.setMaxListeners(0);
    this.all.add(child);
    return child;
  }

  private give(child: ChildProcess, waiting: Waiting): void {
    this.jobs += 1;
    const id = this.jobs;
    const started = performance.now();
    let reason: "study/too-slow" | "study/too-much-memory" | "study/crashed" = "study/crashed";
    const watch = setInterval(() => {
      if (performance.now() - started > 1000 * this.limits.seconds) reason = "study/too-slow";
      else if (measureResident(child.pid) > this.limits.megabytes) reason = "study/too-much-memory";
      else return;
      child.kill("SIGKILL");
    }, 100);
    const done = (): void => {
      clearInterval(watch);
      child.off("message", onMessage);
      child.off("exit", onExit);
    };
    const onMessage = (answer: Answer): void => {
      if (answer.id !== id) return;
      done();
      this.idle.push(child);
      if (answer.outcome !== undefined) waiting.settle(answer.outcome);
      else waiting.fail(new Error(`${waiting.file}: ${answer.error}`));
      this.next();
    };
    const onExit = (): void => {
      done();
      this.all.delete(child);
      waiting.settle({ value: undefined, problems: [this.describe(reason, waiting.file)] });
      this.next();
    };
    child.on("message", onMessage);
    child.on("exit", onExit);
    child.send({ ...waiting.request, id });
  }

  private describe(rule: string, file: string) {
    const reasons: Record<string, string> = {
      "study/too-slow": `The drawing was not measured within ${this.limits.seconds} seconds and was stopped.`,
      "study/too-much-memory": `The drawing needed more than ${this.limits.megabytes} MB of memory and was stopped.`,
      "study/crashed": "The process that measured the drawing ended unexpectedly.",
    };
    return {
      rule,
      severity: "error" as const,
      file,
      reason: reasons[rule] ?? rule,
      hint: "Simplify the drawing: fewer points, fewer repetitions, no patterns within patterns.",
    };
  }
}
