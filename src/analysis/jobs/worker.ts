// Floor 6. The child process of the pool: takes one job at a time and answers it. It ends when its parent does.

import { findRefusal } from "../../content/disk/machinelimit.ts";
import { type JobKind, type Jobs, type Runners, runners } from "./job.ts";

/** The module that publishes, named by whoever started the pool: it is of a floor above, and loaded when it is needed. */
const [publisher = ""] = process.argv.slice(2);

/** What that module has to have. */
interface Publisher {
  readonly makeFiles: Runners["publish"];
  readonly makePages: Runners["pages"];
}

const all: Runners = {
  ...runners,
  publish: async (input) => ((await import(publisher)) as Publisher).makeFiles(input),
  pages: async (input) => ((await import(publisher)) as Publisher).makePages(input),
};

/** A job on its way to the child. */
export interface Request<K extends JobKind = JobKind> {
  readonly id: number;
  readonly kind: K;
  readonly input: Jobs[K]["input"];
}

process.on("message", (request: Request) => {
  answer(request).catch((error: unknown) =>
    tell({
      id: request.id,
      refusal: findRefusal(error),
      error: error instanceof Error ? (error.stack ?? error.message) : String(error),
    }),
  );
});
// A plain exit would wait for a renderer that is stuck; what is to be tidied up at the end is done first.
process.on("disconnect", () => {
  process.emit("exit", 0);
  process.kill(process.pid, "SIGKILL");
});
// Started: from here on a job takes its own time, not that of loading.
tell({ id: 0 });

/** A parent that was killed hears nothing any more; nor is anyone to hear of that. */
function tell(message: object): void {
  process.send?.(message, undefined, undefined, () => undefined);
}

async function answer<K extends JobKind>({ id, kind, input }: Request<K>): Promise<void> {
  // The request carries the input of its own kind: it was made by the pool from a typed call.
  const run = all[kind] as (input: Jobs[K]["input"]) => Promise<unknown>;
  tell({ id, outcome: await run(input) });
}
