// The child processes of this process, as the system lists them. What they are called tells workers from others.
import { readdirSync, readFileSync } from "node:fs";

/** Ids of the running children that work for a pool. */
export function listWorkers(): readonly number[] {
  return readdirSync("/proc/self/task")
    .flatMap((task) => readSafely(`/proc/self/task/${task}/children`).trim().split(" "))
    .filter((pid) => /\/worker\.m?[jt]s\0/.test(`${readSafely(`/proc/${pid}/cmdline`)}\0`))
    .map(Number);
}

/** A process may be gone by the time it is looked at. */
function readSafely(path: string): string {
  try {
    return readFileSync(path, "utf8");
  } catch {
    return "";
  }
}
