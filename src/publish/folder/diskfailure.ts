// Floor 9. What the system says when publishing cannot go on → what, where, and what to do, for somebody who knows flags.
import type { Disk } from "./writedisk.ts";

/** The folder cannot be used. The message says why and where; `hint` what to do. Nothing that was published has changed. */
export class OutputError extends Error {
  readonly hint: string;
  /** The system's word for it, `ENOSPC`, where it was the system. */
  readonly code: string | undefined;

  constructor(reason: string, hint: string, cause?: { readonly code?: string | undefined }) {
    super(reason, cause === undefined ? {} : { cause });
    this.hint = hint;
    this.code = cause?.code;
  }
}

export const elsewhere = "Type, for example: --out my-site";

const words: Readonly<Record<string, readonly [reason: string, hint: string]>> = {
  ENOSPC: [
    "the disk is full",
    "Free some space and publish again, or name a folder on another disk with --out.",
  ],
  EDQUOT: [
    "your share of the disk is used up",
    "Free some space and publish again, or name another folder with --out.",
  ],
  EACCES: [
    "you have no permission to write there",
    "Give yourself permission, or name another folder with --out.",
  ],
  EPERM: ["writing there is not permitted", "Change that, or name another folder with --out."],
  EROFS: ["the disk can be read and not written", "Name a folder on another disk with --out."],
  EIO: ["the disk reports a fault", "Look after the disk; name a folder on another one with --out."],
  EMFILE: [
    "too many files are open",
    "Close other programs, or raise the limit (ulimit -n 4096), and publish again.",
  ],
  ENFILE: ["too many files are open", "Close other programs and publish again."],
  EBUSY: [
    "another program uses it, or a disk is mounted on it",
    "Name a folder inside it, or another one, with --out.",
  ],
  EXDEV: ["it is a disk of its own", "Name a folder inside it with --out."],
  ENOTEMPTY: ["files came there meanwhile", "Look what they are, then publish again."],
  EEXIST: ["files came there meanwhile", "Look what they are, then publish again."],
  ENOENT: ["a folder vanished meanwhile", "Publish again."],
  ENOTDIR: ["a folder on the way there is a file", elsewhere],
  ELOOP: ["links on the way there lead in a circle", elsewhere],
  ENAMETOOLONG: ["the path is too long for this disk", "Name a shorter one with --out."],
};

/**
 * Returns what came of `error`, an error of the system, for the site at `out`; or `error` itself where it is none.
 * `file` is the path that was to be written.
 */
export function explainFailure(error: unknown, out: string, file: string): unknown {
  if (!(error instanceof Error) || !("code" in error) || typeof error.code !== "string") return error;
  if (error instanceof OutputError) return error;
  const { code } = error;
  const [why, hint] = words[code] ?? [
    `the system says ${code}`,
    "Mend that, or name another folder with --out.",
  ];
  return new OutputError(
    `The site cannot be written to ${out}: ${why} (${code} at ${file}). What is published is as it was.`,
    hint,
    {
      code,
    },
  );
}

/** Returns the same disk with its errors explained. */
export function explainAll(disk: Disk, out: string): Disk {
  const explain =
    <A extends readonly [string, ...unknown[]], R>(call: (...words: A) => Promise<R>, at: 0 | 1 = 0) =>
    async (...given: A): Promise<R> => {
      try {
        return await call(...given);
      } catch (error) {
        const named = given[at];
        throw explainFailure(error, out, typeof named === "string" ? named : given[0]);
      }
    };
  return {
    makeFolder: explain((folder: string) => disk.makeFolder(folder)),
    write: explain((file: string, bytes: string | Uint8Array) => disk.write(file, bytes)),
    read: explain((file: string) => disk.read(file)),
    flush: explain((path: string) => disk.flush(path)),
    rename: explain((from: string, to: string) => disk.rename(from, to), 1),
    exchange: explain((a: string, b: string) => disk.exchange(a, b), 1),
    link: explain((to: string, at: string) => disk.link(to, at), 1),
    remove: explain((path: string) => disk.remove(path)),
  };
}
