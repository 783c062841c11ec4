// Floor 5. A small pool of child processes. A drawing that takes too long or too much memory is stopped by killing its
// process (nothing else stops a renderer that is stuck); the drawing becomes a problem with a name and the work goes on.
import { type ChildProcess, fork } from "node:child_process";
import { createRequire } from "node:module";
import { availableParallelism } from "node:os";
import { fileURLToPath, pathToFileURL } from "node:url";
import type { Outcome, Problem } from "../problem/problem.ts";
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
  /** 0 says that the child has started. */
  readonly id: number;
  readonly outcome?: Outcome<unknown>;
  readonly error?: string;
}

/** Runs jobs in child processes, which are started when first needed and must be closed. */
export class Pool {
  private readonly idle: Child[] = [];
  private readonly all = new Set<Child>();
  private readonly queue: Waiting[] = [];
  private isClosed = false;
  private readonly limits: PoolLimits;
  // Whoever ends this process early, as a reader that closes the pipe, must not leave a stuck renderer behind.
  private readonly killAll = (): void => {
    for (const child of this.all) child.kill();
  };

  constructor(limits: Partial<PoolLimits> = {}) {
    this.limits = { ...defaultLimits, ...limits };
    process.on("exit", this.killAll);
  }

  /**
   * Does a job. `file` names the drawing in messages. Rejects only for faults of our own, and when the pool is closed.
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

  /** Ends all child processes; jobs that are not done are rejected. */
  close(): void {
    this.isClosed = true;
    this.killAll();
    process.off("exit", this.killAll);
    for (const { fail, file } of this.queue.splice(0)) fail(new Error(`${file}: the pool was closed`));
  }

  private next(): void {
    const [waiting] = this.queue;
    if (waiting === undefined || this.isClosed) return;
    const child = this.idle.pop() ?? (this.all.size < this.limits.size ? this.start() : undefined);
    if (child === undefined) return;
    this.queue.shift();
    child.give(waiting);
  }

  private start(): Child {
    const child = new Child(this.limits, {
      free: () => {
        this.idle.push(child);
        this.next();
      },
      gone: () => {
        this.all.delete(child);
        const at = this.idle.indexOf(child);
        if (at >= 0) this.idle.splice(at, 1);
        this.next();
      },
    });
    this.all.add(child);
    return child;
  }
}

type Reason = "study/too-slow" | "study/too-much-memory" | "study/crashed";

/** One child process with at most one job. Its clock runs from when it has started and has the job. */
class Child {
  private readonly child: ChildProcess;
  private readonly limits: PoolLimits;
  private readonly tell: { readonly free: () => void; readonly gone: () => void };
  private isReady = false;
  private job: { readonly id: number; readonly waiting: Waiting; started: number } | undefined;
  private jobs = 0;
  private reason: Reason = "study/crashed";
  private watch: NodeJS.Timeout | undefined;

  constructor(limits: PoolLimits, tell: { readonly free: () => void; readonly gone: () => void }) {
    this.limits = limits;
    this.tell = tell;
    const loader = pathToFileURL(createRequire(import.meta.url).resolve("tsx")).href;
    this.child = fork(fileURLToPath(new URL("./worker.ts", import.meta.url)), [], {
      serialization: "advanced",
      stdio: ["ignore", "ignore", "inherit", "ipc"],
      execArgv: ["--import", loader, `--max-old-space-size=${limits.megabytes}`],
    });
    this.child.on("message", (answer: Answer) => this.hear(answer));
    this.child.on("exit", () => this.end());
    this.child.on("error", () => this.end());
  }

  kill(): void {
    this.child.kill("SIGKILL");
  }

  give(waiting: Waiting): void {
    this.jobs += 1;
    this.job = { id: this.jobs, waiting, started: performance.now() };
    this.watch = setInterval(() => this.check(), 100);
    if (this.isReady) this.send();
  }

  private send(): void {
    if (this.job === undefined) return;
    this.job.started = performance.now();
    this.child.send({ ...this.job.waiting.request, id: this.job.id }, (error) => {
      if (error !== null) this.kill();
    });
    // A small drawing is done before the clock first strikes.
    this.check();
  }

  private check(): void {
    if (this.job === undefined || !this.isReady) return;
    if (performance.now() - this.job.started > 1000 * this.limits.seconds) this.reason = "study/too-slow";
    else if (measureResident(this.child.pid) > this.limits.megabytes) this.reason = "study/too-much-memory";
    else return;
    this.kill();
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
    else job.waiting.fail(new Error(`${job.waiting.file}: ${answer.error}`));
    this.tell.free();
  }

  private end(): void {
    clearInterval(this.watch);
    const { job } = this;
    this.job = undefined;
    if (job !== undefined) {
      job.waiting.settle({
        value: undefined,
        problems: [describe(this.reason, job.waiting.file, this.limits)],
      });
    }
    this.tell.gone();
  }
}

function describe(rule: Reason, file: string, { seconds, megabytes }: PoolLimits): Problem {
  const reasons: Readonly<Record<Reason, string>> = {
    "study/too-slow": `The drawing was not measured within ${seconds} seconds and was stopped.`,
    "study/too-much-memory": `The drawing needed more than ${megabytes} MB of memory and was stopped.`,
    "study/crashed": "The process that measured the drawing ended unexpectedly.",
  };
  const hint = "Simplify the drawing: fewer points, fewer repetitions, no patterns within patterns.";
  return { rule, severity: "error", file, reason: reasons[rule], hint };
}
