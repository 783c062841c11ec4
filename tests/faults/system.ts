// Test support. The system's own calls with something wrong: for what goes past publish/folder/writedisk.ts, as the cache, the lock's signs,
// the reading of the content and the command begin.
import { promises as fs } from "node:fs";
import { syncBuiltinESMExports } from "node:module";
import path from "node:path";
import { systemError } from "./disk.ts";

/** What the sources call, by the names of node:fs/promises; `handle.` before what is called on an open file. */
const names = [
  "open",
  "readFile",
  "writeFile",
  "mkdir",
  "rename",
  "rm",
  "rmdir",
  "readdir",
  "lstat",
  "stat",
  "link",
  "symlink",
  "readlink",
  "copyFile",
  "chmod",
  "utimes",
  "realpath",
] as const;
const handleNames = ["read", "readFile", "writeFile", "stat", "sync", "chmod", "utimes"] as const;

export type SystemCall = (typeof names)[number] | `handle.${(typeof handleNames)[number]}`;

/** Calls that put something on the disk; a full one or one that cannot be written fails in these. */
export const writingCalls: readonly SystemCall[] = [
  "writeFile",
  "mkdir",
  "rename",
  "link",
  "symlink",
  "copyFile",
  "chmod",
  "handle.writeFile",
  "handle.chmod",
  "handle.sync",
];

type Before = (call: SystemCall, path: string) => void;
type Call = (...words: readonly unknown[]) => Promise<unknown>;

/** What there is to watch: the paths in `within`, and what hears of each call before it is done and may throw. */
interface Watched {
  readonly within: string;
  readonly before: Before;
}

/**
 * Does `work` while `before` hears of every call of this process to the files in `within`; what it throws, the call rejects
 * with. A write that is refused has written the first half, as on a disk that is full. Throws what `work` throws.
 */
export async function watchSystem<T>({ within, before }: Watched, work: () => Promise<T>): Promise<T> {
  const original = { ...fs };
  const open = new Map<string, string>();
  const watch = (name: SystemCall, call: Call, at?: string): Call => {
    return async (...words) => {
      const named = typeof words[0] === "string" ? path.resolve(words[0]) : undefined;
      const file = at ?? open.get(named ?? "") ?? named;
      if (file === undefined || !`${file}/`.startsWith(`${within}/`)) return call(...words);
      try {
        before(name, file);
      } catch (error) {
        if (name.endsWith("writeFile")) await call(...halve(words, at === undefined ? 1 : 0)).catch(() => 0);
        throw error;
      }
      const result = await call(...words);
      if (name === "open") watchHandle(result as object, file);
      return result;
    };
  };
  const watchHandle = (handle: object, file: string): void => {
    open.set(`/proc/self/fd/${Reflect.get(handle, "fd")}`, file);
    for (const name of handleNames) {
      const call = methodOf(handle, name);
      Object.defineProperty(handle, name, { value: watch(`handle.${name}`, call, file) });
    }
  };
  try {
    for (const name of names) Object.assign(fs, { [name]: watch(name, methodOf(original, name)) });
    syncBuiltinESMExports();
    return await work();
  } finally {
    Object.assign(fs, original);
    syncBuiltinESMExports();
  }
}

/** Fails with `code` at call number `at` (from 1) and, with `forGood`, at all after it, of those in `calls`. */
export async function failSystem<T>(
  options: {
    readonly within: string;
    readonly at: number;
    readonly code: string;
    readonly forGood?: boolean;
    readonly calls?: readonly SystemCall[];
    /** Only these files. */
    readonly isMeant?: (file: string) => boolean;
    /** Hears of each call that fails. */
    readonly onFail?: (call: SystemCall) => void;
  },
  work: () => Promise<T>,
): Promise<{ readonly count: number; readonly value?: T; readonly error?: unknown }> {
  const { within, at, code, forGood = false, calls, isMeant, onFail } = options;
  let count = 0;
  const before: Before = (call, file) => {
    if ((calls !== undefined && !calls.includes(call)) || isMeant?.(file) === false) return;
    count += 1;
    if (count !== at && !(forGood && count > at)) return;
    onFail?.(call);
    throw systemError(code, call, file);
  };
  try {
    const value = await watchSystem({ within, before }, work);
    return { count, value };
  } catch (error) {
    return { count, error };
  }
}

function halve(words: readonly unknown[], at: number): readonly unknown[] {
  return words.map((word, n) =>
    n === at && (typeof word === "string" || word instanceof Uint8Array)
      ? word.slice(0, Math.floor(word.length / 2))
      : word,
  );
}

function methodOf(owner: object, name: string): Call {
  const found: unknown = Reflect.get(owner, name);
  if (typeof found !== "function") throw new Error(`node has no ${name}`);
  return (...words) => Reflect.apply(found, owner, words);
}
