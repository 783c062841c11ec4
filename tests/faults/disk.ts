// Test support. The disk with something wrong: one that fails at its Nth call, and one that cannot do all of it.
import { type Disk, disk } from "../../src/publish/folder/writedisk.ts";

export type Call = keyof Disk;

/** The error of the system with a code, as Node makes it. */
export function systemError(code: string, call: string, path: string): NodeJS.ErrnoException {
  return Object.assign(new Error(`${code}: made by a test, ${call} '${path}'`), {
    code,
    syscall: call,
    path,
  });
}

/** Calls `before` with the kind of every call before it is done; what it throws, the call rejects with. */
export function watchDisk(before: (call: Call, path: string) => void | Promise<void>, on: Disk = disk): Disk {
  const tell =
    <A extends readonly [string, ...unknown[]], R>(name: Call, call: (...given: A) => Promise<R>) =>
    async (...given: A): Promise<R> => {
      await before(name, given[0]);
      return call(...given);
    };
  return {
    makeFolder: tell("makeFolder", (folder: string) => on.makeFolder(folder)),
    write: tell("write", (file: string, bytes: string | Uint8Array) => on.write(file, bytes)),
    read: tell("read", (file: string) => on.read(file)),
    flush: tell("flush", (path: string) => on.flush(path)),
    rename: tell("rename", (from: string, to: string) => on.rename(from, to)),
    exchange: tell("exchange", (a: string, b: string) => on.exchange(a, b)),
    link: tell("link", (to: string, at: string) => on.link(to, at)),
    remove: tell("remove", (path: string) => on.remove(path)),
  };
}

/** Fails with `code` at call number `at` (from 1) and, with `forGood`, at all after it, of those in `calls`. */
export function failingDisk(
  at: number,
  code: string,
  { calls, forGood = false, on = disk }: { calls?: readonly Call[]; forGood?: boolean; on?: Disk } = {},
): { readonly disk: Disk; readonly count: () => number } {
  let count = 0;
  const failing = watchDisk((call, path) => {
    if (calls !== undefined && !calls.includes(call)) return;
    count += 1;
    if (count === at || (forGood && count > at)) throw systemError(code, call, path);
  }, on);
  return { disk: failing, count: () => count };
}

/** Ways to swap: in one step, by a link, and by two renames, as where neither of the others is possible. */
export const disks = {
  exchange: disk,
  link: lacking(["exchange"]),
  move: lacking(["exchange", "link"]),
} as const satisfies Readonly<Record<string, Disk>>;

function lacking(calls: readonly Call[]): Disk {
  return watchDisk((call, path) => {
    if (calls.includes(call)) throw systemError("ENOTSUP", call, path);
  });
}
