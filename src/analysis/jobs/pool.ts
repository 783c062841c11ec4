// Floor 6. A small pool of child processes: jobs stand in line, and each goes to the next child that is free.
import { availableParallelism } from "node:os";
import type { Outcome } from "../../problem/problem.ts";
import type { Store } from "../store/resultstore.ts";
import { Child, type ChildLimits, type Waiting } from "./childprocess.ts";
import type { JobKind, Jobs } from "./job.ts";
import { nameAnswer } from "./nameanswer.ts";
import { Overruns } from "./overrun.ts";

export interface PoolLimits extends ChildLimits {
  /** Child processes at once. */
  readonly size: number;
  /** Child processes that are kept free for studies: somebody is looking at a page and waits. */
  readonly reserved: number;
  /** Jobs that may stand in line before another child is started: it takes the time of some to start. */
  readonly patience: number;
}

export const defaultLimits: PoolLimits = {
  size: Math.min(4, availableParallelism()),
  seconds: 15,
  megabytes: 768,
  reserved: 0,
  // A start takes 0.2 s of a processor, and one job alone may be done sooner by a child that has started.
  patience: 1,
};

/** Where work on drawings is handed in. */
export type Line = Pick<Pool, "run">;

/**
 * Runs jobs in child processes, which are started when first needed and must be closed. Studies go first, then pictures.
 * With a store, what was done before is not done again, but for pictures: whoever asks for them keeps each by itself. A
 * drawing that ran over its time or memory is not tried again.
 */
export class Pool {
  private readonly idle: Child[] = [];
  private readonly all = new Set<Child>();
  private readonly queue: Waiting[] = [];
  private readonly overruns = new Overruns();
  private isClosed = false;
  private readonly limits: PoolLimits;
  private readonly store: Store | undefined;
  // Whoever ends this process early, as a reader that closes the pipe, must not leave a stuck renderer behind.
  private readonly killAll = (): void => {
    for (const child of this.all) child.kill();
  };

  constructor(limits: Partial<PoolLimits> = {}, store?: Store) {
    this.limits = { ...defaultLimits, ...limits };
    this.store = store;
    process.on("exit", this.killAll);
  }

  /**
   * Does a job. `file` names the drawing, in messages and in the answer. Rejects only for faults of our own, and when the pool is closed.
   *
   * Problems: those of the job; study/too-slow, study/too-much-memory, study/crashed.
   */
  async run<K extends JobKind>(
    kind: K,
    file: string,
    input: Jobs[K]["input"],
  ): Promise<Outcome<Jobs[K]["output"]>> {
    const work = () => this.queueUp(kind, file, input);
    const isKept = this.store !== undefined && kind !== "publish";
    return nameAnswer(kind, file, await (isKept ? this.store.recall({ kind, input }, work) : work()));
  }

  /** Starts child processes up to `count`, default all, so that the first jobs need not wait for them. */
  warm(count = this.limits.size): void {
    while (this.all.size < count && !this.isClosed) this.idle.push(this.start());
  }

  /** Forgets the jobs that wait in line, but for pictures, which a page may wait for: they are rejected. */
  clear(): void {
    for (const waiting of this.queue.splice(0)) {
      if (waiting.request.kind === "publish") this.queue.push(waiting);
      else waiting.fail(new Error(`${waiting.file}: nobody waits for it any more`));
    }
  }

  /** Ends all child processes; jobs that are not done are rejected. */
  close(): void {
    this.isClosed = true;
    this.killAll();
    process.off("exit", this.killAll);
    for (const { fail, file } of this.queue.splice(0)) fail(new Error(`${file}: the pool was closed`));
  }

  private queueUp<K extends JobKind>(
    kind: K,
    file: string,
    input: Jobs[K]["input"],
  ): Promise<Outcome<Jobs[K]["output"]>> {
    return new Promise((resolve, reject) => {
      // The child answers a job of kind K with an outcome of kind K: see worker.ts.
      const settle = (outcome: Outcome<unknown>): void => {
        this.overruns.note(request, outcome);
        resolve(outcome as Outcome<Jobs[K]["output"]>);
      };
      const request = { kind, input };
      this.queue.push({ request, file, settle, fail: reject });
      this.next();
    });
  }

  private next(): void {
    const next = this.isClosed ? undefined : this.findNext();
    if (next === undefined) return;
    const problem = this.overruns.find(next.request, next.file);
    const child = problem === undefined ? this.findFree() : undefined;
    if (problem === undefined && child === undefined) return;
    this.queue.splice(this.queue.indexOf(next), 1);
    if (problem !== undefined) next.settle({ value: undefined, problems: [problem] });
    else child?.give(next);
    this.next();
  }

  /** Returns the job that is next, the first study before all else, or undefined where none may begin. */
  private findNext(): Waiting | undefined {
    const working = [...this.all].flatMap(({ request }) => request ?? []);
    const ready = this.queue.filter(({ request }) => !this.overruns.mustWait(request, working));
    const find = (kind: JobKind) => ready.find(({ request }) => request.kind === kind);
    const study = find("study");
    if (study !== undefined) return study;
    const others = working.filter(({ kind }) => kind !== "study").length;
    return others < this.limits.size - this.limits.reserved ? (find("publish") ?? ready[0]) : undefined;
  }

  private findFree(): Child | undefined {
    const started = this.idle.findIndex((child) => child.isReady);
    const [child] = this.idle.splice(Math.max(0, started), 1);
    const { size, patience } = this.limits;
    const isWorthwhile = this.all.size === 0 || this.queue.length > patience;
    return child ?? (isWorthwhile && this.all.size < size ? this.start() : undefined);
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
