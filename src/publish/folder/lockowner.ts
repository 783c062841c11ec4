// Floor 9. Who holds a lock: the name of a process that no other process has, and whether that process still runs.
import { createHash, randomBytes } from "node:crypto";
import { readFile, readlink } from "node:fs/promises";
import { hostname } from "node:os";

/** One build. Its name holds everything, so that it is whole as soon as it can be seen. */
export interface Holder {
  readonly pid: number;
  /** When the process began, in ticks since the system did; 0 where the system does not say. */
  readonly began: number;
  /** Eight digits for the machine, its present run and the set of processes in which `pid` counts. */
  readonly place: string;
  readonly host: string;
  /** Sets two builds of one process apart. */
  readonly id: string;
}

const beginning = "lock.";

export async function nameSelf(): Promise<Holder> {
  return {
    pid: process.pid,
    began: await findBeginning(process.pid),
    place: await findPlace(),
    host:
      hostname()
        .replace(/[^\w-]+/g, "-")
        .slice(0, 40) || "unnamed",
    id: randomBytes(6).toString("hex"),
  };
}

export function formatHolder({ pid, began, place, host, id }: Holder): string {
  return `${beginning}${pid}.${began}.${place}.${host}.${id}`;
}

/** Returns undefined for the name of a file that is no lock. */
export function parseHolder(name: string): Holder | undefined {
  const [, pid, began, place, host, id] =
    /^lock\.(\d+)\.(\d+)\.([0-9a-f]{8})\.([\w-]+)\.([0-9a-f]{12})$/.exec(name) ?? [];
  if (pid === undefined || began === undefined || place === undefined) return undefined;
  if (host === undefined || id === undefined) return undefined;
  return { pid: Number(pid), began: Number(began), place, host, id };
}

/**
 * Returns whether the holder runs, as far as it can be known: `unknown` for one on another machine or in another
 * container, and for a process of the same number where the system does not say when it began.
 */
export async function lookAtHolder(holder: Holder): Promise<"runs" | "gone" | "unknown"> {
  if (holder.place !== (await findPlace())) return "unknown";
  if (!isThere(holder.pid)) return "gone";
  const began = await findBeginning(holder.pid);
  if (began === 0 || holder.began === 0) return "unknown";
  return began === holder.began ? "runs" : "gone";
}

function isThere(pid: number): boolean {
  try {
    // Signal 0 asks and does nothing. A process of somebody else is there too: EPERM.
    return process.kill(pid, 0);
  } catch (error) {
    return error instanceof Error && "code" in error && error.code === "EPERM";
  }
}

/** Field 22 of /proc/PID/stat; the second, a name in brackets, may hold blanks and brackets. Source: proc(5). */
async function findBeginning(pid: number): Promise<number> {
  const stat = await readFile(`/proc/${pid}/stat`, "utf8").catch(() => "");
  const fields = stat.slice(stat.lastIndexOf(")") + 2).split(" ");
  // A zombie has ended: only its parent has not looked yet.
  if (fields[0] === "Z" || fields[0] === "X") return -1;
  return Number(fields[19] ?? 0) || 0;
}

let place: Promise<string> | undefined;

function findPlace(): Promise<string> {
  place ??= (async () => {
    const boot = await readFile("/proc/sys/kernel/random/boot_id", "utf8").catch(() => "");
    const processes = await readlink("/proc/self/ns/pid").catch(() => "");
    return createHash("sha256").update(`${hostname()}\n${boot}\n${processes}`).digest("hex").slice(0, 8);
  })();
  return place;
}
