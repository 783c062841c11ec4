// Sends large files through the program in a process that is ended where one of them takes too long.
import { fork } from "node:child_process";
import { join } from "node:path";

/** A file that came through. `size` is that of all that is said of it, in characters. */
export interface Passed {
  readonly name: string;
  readonly bytes: number;
  readonly milliseconds: number;
  readonly size: number;
  readonly problems: number;
}

export interface Passing {
  readonly passed: readonly Passed[];
  /** Names of the files that ended the process or were not through in time. */
  readonly stuck: readonly string[];
}

/** Sends every `step`th file, beginning with number `from`; one that takes more than `seconds` is stuck. */
export async function sendLarge(from: number, step: number, seconds: number): Promise<Passing> {
  const passed: Passed[] = [];
  const stuck: string[] = [];
  for (let next: number | undefined = from; next !== undefined; ) {
    const last = await send(next, step, seconds, passed);
    if (last !== undefined) stuck.push(last.name);
    next = last === undefined ? undefined : last.index + step;
  }
  return { passed, stuck };
}

interface Begun {
  readonly index: number;
  readonly name: string;
}

/** Returns the file on which the process stayed, or undefined where all came through. */
function send(from: number, step: number, seconds: number, passed: Passed[]): Promise<Begun | undefined> {
  return new Promise((resolve) => {
    const child = fork(join(import.meta.dirname, "passage.ts"), [String(from), String(step)], {
      execArgv: ["--import", "tsx"],
      stdio: "ignore",
    });
    let begun: Begun | undefined;
    const end = (): boolean => child.kill("SIGKILL");
    let timer = setTimeout(end, 60_000);
    child.on("message", (message: Begun | (Begun & Passed)) => {
      // What was said before the end came counts no more.
      if (child.killed) return;
      clearTimeout(timer);
      if (seconds > 0) timer = setTimeout(end, seconds * 1000);
      else end();
      begun = "bytes" in message ? undefined : message;
      if ("bytes" in message) passed.push(message);
    });
    child.on("exit", () => {
      clearTimeout(timer);
      resolve(begun);
    });
  });
}
