// Floor 6. How much memory and processor time a child process has, where the system says so. Reads /proc and nothing else.
import { readFileSync } from "node:fs";

const pageBytes = 4096;

/** Returns the resident memory of a process in MB, or 0 where the system does not tell (it is then not limited). */
export function measureResident(pid: number | undefined): number {
  if (pid === undefined || process.platform !== "linux") return 0;
  try {
    const [, resident] = readFileSync(`/proc/${pid}/statm`, "latin1").split(" ");
    return (Number(resident) * pageBytes) / 2 ** 20;
  } catch {
    return 0;
  }
}

/** Clock ticks that /proc counts for a second: `getconf CLK_TCK` is 100 on every machine that Node runs on. Source: proc(5). */
const ticksPerSecond = 100;

/**
 * Returns the seconds that all processors together have worked for a process, or undefined where the system does not tell.
 *
 * Source: proc(5), /proc/pid/stat, fields 14 (utime) and 15 (stime); the name, field 2, ends with the last bracket.
 */
export function measureProcessor(pid: number | undefined): number | undefined {
  if (pid === undefined || process.platform !== "linux") return undefined;
  try {
    const text = readFileSync(`/proc/${pid}/stat`, "latin1");
    const fields = text.slice(text.lastIndexOf(")") + 2).split(" ");
    return (Number(fields[11]) + Number(fields[12])) / ticksPerSecond;
  } catch {
    return undefined;
  }
}
