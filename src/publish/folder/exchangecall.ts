// Floor 9. Two folders get each other's name in one step, so that nobody finds either name without a folder. The system
// can do it and Node cannot ask it to: a small program that comes with the system asks.
import { execFile } from "node:child_process";
import { statOf } from "../../content/disk/pathkind.ts";

type Program = readonly [name: string, ...words: string[]];

/**
 * The numbers of the call in Perl. Sources: renameat2(2) and RENAME_EXCHANGE = 2 since Linux 3.15, its number in the
 * kernel's tables, 316 on x86-64 and 276 in asm-generic/unistd.h; renameatx_np and RENAME_SWAP = 2 in the headers of
 * macOS (sys/syscall.h: 488, sys/stdio.h). AT_FDCWD is −100 on Linux and −2 on macOS.
 */
const calls: Readonly<Record<string, readonly [call: number, here: number]>> = {
  "linux x64": [316, -100],
  "linux arm64": [276, -100],
  "linux riscv64": [276, -100],
  "darwin x64": [488, -2],
  "darwin arm64": [488, -2],
};

/** The programs that can do it on this system, in the order in which they are tried. */
export function listPrograms(platform: string, arch: string): readonly Program[] {
  const found = calls[`${platform} ${arch}`];
  const [call, here] = found ?? [0, 0];
  const script = `exit(syscall(${call}, ${here}, $ARGV[0], ${here}, $ARGV[1], 2) == 0 ? 0 : 1)`;
  return [
    // GNU coreutils 9.5 and later; an earlier one does not know the word and does nothing.
    ...(platform === "linux" ? [["mv", "--exchange", "--no-target-directory", "--"] as const] : []),
    ...(found === undefined ? [] : [["perl", "-e", script, "--"] as const]),
  ];
}

/** Longest time for one program, in milliseconds: renaming takes none. */
const longest = 10_000;

/**
 * Exchanges the folders at two absolute paths of one file system. What came of it is looked up and not believed.
 *
 * Throws an error with the code ENOTSUP where no program could do it; both folders are as they were then.
 */
export async function exchangeFolders(a: string, b: string): Promise<void> {
  const before = await statOf(a);
  for (const [name, ...words] of listPrograms(process.platform, process.arch)) {
    await runProgram(name, [...words, a, b]);
    const after = await statOf(b);
    if (before !== undefined && after?.ino === before.ino && after.dev === before.dev) return;
  }
  throw Object.assign(new Error(`no program on this system exchanges ${a} and ${b}`), { code: "ENOTSUP" });
}

/** Resolves when the program has ended, or was not there. */
function runProgram(name: string, words: readonly string[]): Promise<void> {
  return new Promise((resolve) => {
    execFile(name, words, { timeout: longest, killSignal: "SIGKILL", windowsHide: true }, () => resolve());
  });
}
