// Floor 5. What a gallery may take as a whole, in folders, files and minutes, and what is said where it would take more: the
// rest is left out and named, and what is within the budget is published.
import { compareText, type Problem, report } from "../../problem/problem.ts";
import type { Entry } from "./listing.ts";

/** Our own judgement: over ten times the largest gallery we can think of. */
export const budget = {
  /** Entries of `studies/`. */
  folders: 5000,
  /** Entries of one study's folder. */
  files: 500,
  /** Entries of `flags/`, or of the folder that is compared with. */
  drawings: 20_000,
  /** For measuring all studies and flags, and once more for drawing all studies. */
  minutes: 60,
} as const;

type Counted = "folders" | "files" | "drawings";

/**
 * Returns the entries of a folder that are within the budget, the first by name, and what is wrong where there are more.
 *
 * Problems: `study/too-many-folders`, `study/too-many-files`.
 */
export function keepWithin(
  folder: string,
  entries: readonly Entry[],
  what: Counted,
): { readonly entries: readonly Entry[]; readonly problems: readonly Problem[] } {
  const most = budget[what];
  if (entries.length <= most) return { entries, problems: [] };
  const sorted = [...entries].sort((a, b) => compareText(a.name, b.name));
  const rule = what === "folders" ? "study/too-many-folders" : "study/too-many-files";
  const problem: Problem = report(
    rule,
    folder,
    {
      reason: `There are ${entries.length} files and folders here; at most ${most} are read${what === "files" && !/\/(?:series|answers|votes(?:\/[^/]+)?)$/.test(folder) ? ", so the study is left out" : ", the first by name"}.`,
      hint: `Move ${entries.length - most} of them elsewhere.`,
    },
    what === "drawings" ? "warning" : "error",
  );
  return { entries: sorted.slice(0, most), problems: [problem] };
}

/** The moment, of `performance.now()`, at which a time of `minutes` that begins now is over. */
export function endOf(minutes: number = budget.minutes): number {
  return performance.now() + 60_000 * minutes;
}

/** Returns the problem `study/out-of-time`: the time was over before the studies, or flags, called `late` were begun. */
export function outOfTime(
  folder: string,
  late: readonly string[],
  work: "measuring" | "drawing",
  of: readonly [one: string, more: string] = ["study", "studies"],
): Problem {
  const [first] = [...late].sort(compareText);
  const count = late.length === 1 ? `1 ${of[0]} was` : `${late.length} ${of[1]} were`;
  return report("study/out-of-time", folder, {
    reason: `The time for ${work}, ${budget.minutes} minutes, was over: ${count} not begun and left out, the first by name “${first}”.`,
    hint: "Type the same command again: what is done is kept, and it goes on from there.",
  });
}

/** `content/studies`, from the study file of one of them. */
export function folderOfStudies(file: string): string {
  return file.replace(/\/[^/]*\/[^/]*$/, "");
}
