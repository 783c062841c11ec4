// Floor 5. What the computer refuses while work goes on, such as one more open file: no fault of a drawing nor of the program,
// and no reason to publish a gallery without a study.
import { type Advice, type Problem, report } from "../../problem/problem.ts";
import { quoteText } from "../../problem/quote.ts";

/** The system's word for it, `ENOSPC`, and at which file, where it says so. */
export interface Refusal {
  readonly code: string;
  readonly path?: string;
}

const words: Readonly<Record<string, readonly [reason: string, hint: string]>> = {
  ENOSPC: ["the disk is full", "Free some space; files of the moment go to the folder that TMPDIR names."],
  EDQUOT: ["your share of the disk is used up", "Free some space; TMPDIR may name a folder elsewhere."],
  EMFILE: ["too many files are open", "Raise the limit, as with: ulimit -n 4096"],
  ENFILE: ["too many files are open", "Close other programs, and type it again."],
  ENOMEM: ["there is no memory left", "Close other programs, and type it again."],
  EAGAIN: ["no further process may be started", "Close other programs, and type it again."],
  EACCES: ["that is not permitted", "Give yourself permission there; TMPDIR may name another folder."],
  EROFS: ["the disk can be read and not written", "Let TMPDIR name a folder that can be written."],
  ENOENT: ["there is no such file or folder", "Where it is the folder of TMPDIR, make it or name another."],
};

/** Returns what the system refused, where `error` is its own and of no library. */
export function findRefusal(error: unknown): Refusal | undefined {
  if (!(error instanceof Error) || !("code" in error) || !("syscall" in error)) return undefined;
  const { code } = error;
  if (typeof code !== "string" || !/^E[A-Z0-9]+$/.test(code)) return undefined;
  return { code, ...("path" in error && typeof error.path === "string" ? { path: error.path } : {}) };
}

/** Whether a file that cannot be read is so for want of something that the computer has for all files together. */
export function isScarce(code: string): boolean {
  return /^(?:EMFILE|ENFILE|ENOMEM)$/.test(code);
}

/** Returns it in words: what, and what to do. */
export function describeRefusal({ code, path }: Refusal): Advice {
  const [why, hint] = words[code] ?? ["the system refused it", "Mend that, and type it again."];
  const at = path === undefined ? code : `${code} at ${quoteText(path)}`;
  return { reason: `The computer could not do the work: ${why} (${at}).`, hint };
}

/** Returns the problem `study/machine` of the file that was worked on. */
export function refusalProblem(file: string, refusal: Refusal): Problem {
  return report("study/machine", file, describeRefusal(refusal));
}
