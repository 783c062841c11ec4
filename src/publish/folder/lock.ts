// Floor 9. One build at a time on one folder. Every build writes a file of its own name and goes on only if it sees no
// other: of two that see each other both step back, so never do both go on. A file of a build that ended is removed.
import { rm, writeFile } from "node:fs/promises";
import path from "node:path";
import { setTimeout as sleep } from "node:timers/promises";
import { signText } from "../../analysis/store/signature.ts";
import { kindOf, readFolder, readRegular } from "../../content/disk/readfile.ts";
import { formatHolder, type Holder, lookAtHolder, nameSelf, parseHolder } from "./lockowner.ts";

export interface LockOptions {
  /** Signs the name of a lock: a file that somebody else named like one is none. */
  readonly secret: Uint8Array;
  /** Makes the folder of the lock where it is not there: the build before may have cleared it away. */
  readonly prepare: () => Promise<void>;
  /** Writes the file of a lock. Rejects where that cannot be done. */
  readonly write: (file: string, text: string) => Promise<void>;
  /** Hears once whom we wait for. */
  readonly onWait?: (holder: Holder) => void;
  /** Longest time to wait, in milliseconds; default ten minutes. */
  readonly longest?: number;
  /** A holder of whom nothing can be known counts as ended after so many milliseconds without a sign; default 30 s. */
  readonly silence?: number;
  /** How often to look whether it is free, in milliseconds; default 150. */
  readonly look?: number;
}

export interface Lock {
  /** Whether it is still ours: one that gave no sign for long may have been taken over. */
  isHeld(): Promise<boolean>;
  release(): Promise<void>;
}

/** Another build holds the lock, and went on holding it. */
export class LockedError extends Error {
  readonly holder: Holder;

  constructor(holder: Holder) {
    super(`process ${holder.pid} on ${holder.host} holds the lock`);
    this.holder = holder;
  }
}

/** How often a holder gives a sign, in milliseconds. */
const sign = 2_000;

/** Returns the name of the file of a lock: who holds it, and a mark that nobody makes without the secret. */
export function nameLock(holder: Holder, secret: Uint8Array): string {
  const name = formatHolder(holder);
  return `${name}.${signText(secret, name).slice(0, 16)}`;
}

/** Takes the lock in `folder`, waiting for whoever has it. Throws LockedError when that takes too long. */
export async function takeLock(folder: string, options: LockOptions): Promise<Lock> {
  const { longest = 600_000, silence = 30_000, look = 150 } = options;
  const file = path.join(folder, nameLock(await nameSelf(), options.secret));
  const watch = new Watch(folder, silence, options.secret);
  const began = performance.now();
  let isTold = false;
  let vanished = 0;
  for (;;) {
    let other = await watch.findOther(file);
    // Of two that begin together both step back, and one goes first a moment later: of that there is nothing to say.
    if (other !== undefined && !isTold) options.onWait?.(other);
    isTold ||= other !== undefined;
    if (other === undefined) {
      await options.prepare();
      await writeOrRetry(options, file);
      other = await watch.findOther(file);
      if (other === undefined && (await exists(file))) return hold(file);
      if (other === undefined) vanished += 1;
      // Whoever cleared the folder away did so once or twice, not again and again.
      if (vanished > 20) throw new Error(`${file} vanishes whenever it is written`);
      await rm(file, { force: true });
    }
    if (other !== undefined && performance.now() - began > longest) throw new LockedError(other);
    await sleep(look + Math.random() * look);
  }
}

/** The folder may have been cleared away between its making and now. */
async function writeOrRetry({ prepare, write }: LockOptions, file: string): Promise<void> {
  try {
    await write(file, "0\n");
  } catch (error) {
    if (!(error instanceof Error) || !("code" in error) || error.code !== "ENOENT") throw error;
    await prepare();
    await write(file, "0\n");
  }
}

function hold(file: string): Lock {
  let signs = 0;
  const timer = setInterval(() => {
    signs += 1;
    // r+: one that was taken over must not come back.
    writeFile(file, `${signs}\n`, { flag: "r+" }).catch(() => undefined);
  }, sign);
  timer.unref();
  return {
    isHeld: () => exists(file),
    async release() {
      clearInterval(timer);
      await rm(file, { force: true }).catch(() => undefined);
    },
  };
}

/** Looks at the other locks in a folder, and remembers since when each gave no sign: by our own clock alone. */
class Watch {
  private readonly folder: string;
  private readonly silence: number;
  private readonly secret: Uint8Array;
  private readonly seen = new Map<string, { readonly text: string; readonly since: number }>();

  constructor(folder: string, silence: number, secret: Uint8Array) {
    this.folder = folder;
    this.silence = silence;
    this.secret = secret;
  }

  /** Returns a holder besides `own` that runs, or may; removes those that have ended. */
  async findOther(own: string): Promise<Holder | undefined> {
    const entries = await readFolder(this.folder);
    let found: Holder | undefined;
    for (const { name, kind } of "kind" in entries ? [] : entries) {
      // A lock is a file: a folder, a pipe or a link of such a name is none, whoever put it there.
      const holder = kind === "file" ? this.parse(name) : undefined;
      const file = path.join(this.folder, name);
      if (holder === undefined || file === own) continue;
      const state = await lookAtHolder(holder);
      if (state === "gone" || (state === "unknown" && (await this.isSilent(name)))) {
        await rm(file, { force: true });
        continue;
      }
      // It may have been released since the folder was read.
      if (await exists(file)) found ??= holder;
    }
    return found;
  }

  private parse(name: string): Holder | undefined {
    const holder = parseHolder(name.replace(/\.[0-9a-f]{16}$/, ""));
    return holder !== undefined && nameLock(holder, this.secret) === name ? holder : undefined;
  }

  private async isSilent(name: string): Promise<boolean> {
    const read = await readRegular(this.folder, name, 100);
    const text = "bytes" in read ? Buffer.from(read.bytes).toString("latin1") : "";
    const now = performance.now();
    const before = this.seen.get(name);
    if (before === undefined || before.text !== text) this.seen.set(name, { text, since: now });
    return before !== undefined && before.text === text && now - before.since > this.silence;
  }
}

async function exists(file: string): Promise<boolean> {
  return (await kindOf(file)) === "file";
}
