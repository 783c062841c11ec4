// Floor 6. How much memory a child process holds, where the system says so. Reads /proc and nothing else.
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
