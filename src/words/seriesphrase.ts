// Floor 7. What is said of a series: how much it holds.
import type { Format } from "./format.ts";

/** `6 studies and 1 flag without a study`. */
export function countEntries(studies: number, flags: number, { say, list }: Format): string {
  return list([
    ...(studies === 0 ? [] : [say("proposal.studies", { count: studies })]),
    ...(flags === 0 ? [] : [say("proposal.flags", { count: flags })]),
  ]);
}
