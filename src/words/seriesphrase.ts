// Floor 7. What is said of a series: how much it holds, and where a study stands in it.
import type { Format } from "./format.ts";

/** `6 studies and 1 flag without a study`. */
export function countEntries(studies: number, flags: number, { say, list }: Format): string {
  return list([
    ...(studies === 0 ? [] : [say("proposal.studies", { count: studies })]),
    ...(flags === 0 ? [] : [say("proposal.flags", { count: flags })]),
  ]);
}

/** `3 of 8 in`, before the title of the series. */
export function describePlace(number: number, of: number, format: Format): string {
  return format.say("proposal.place", { number: format.number(number, 0), all: format.number(of, 0) });
}
