// Floor 6. Which drawings of a gallery are one flag: those with just the same text.
import { pathOfOriginal } from "../../content/study/original.ts";
import type { StudyResult } from "../result.ts";
import { fingerprint } from "../store/fingerprint.ts";
import type { FlagOutcome } from "./surveyflags.ts";

/** The path of each study's original, or that of the first study with just the same drawing: `new` copies it for each. */
export function findHomes(studies: readonly StudyResult[]): ReadonlyMap<StudyResult, string> {
  const first = new Map<string, string>();
  return new Map(
    studies.map((result) => {
      const text = fingerprint(result.drawings.original);
      const home = first.get(text) ?? pathOfOriginal(result.study);
      first.set(text, home);
      return [result, home] as const;
    }),
  );
}

/** Returns `flags` without those whose drawing is just that of a study's original: that flag is there as the study's. */
export function leaveOriginals(
  flags: readonly FlagOutcome[],
  studies: readonly StudyResult[],
): readonly FlagOutcome[] {
  const originals = new Set(studies.map(({ drawings }) => drawings.original));
  return flags.filter(({ outcome: { value } }) => value === undefined || !originals.has(value.drawing));
}
