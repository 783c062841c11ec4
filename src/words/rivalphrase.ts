// Floor 7. What is said of studies that propose a change for one and the same flag.
import type { Format } from "./format.ts";

/** `two proposals for one flag`; where a page shows some, `80 proposals for one flag, the first 24 shown`. */
export function countRivals(shown: number, all: number, { say, number }: Format): string {
  if (all < 2) return say(all === 0 ? "proposal.none" : "proposal.only");
  const count = say("proposal.count", { count: all });
  return shown === all ? count : say("proposal.countShown", { count, shown: number(shown, 0) });
}

/** `one of two proposals for it`, said beside the name of the flag. */
export function describeRival(count: number, { say }: Format): string {
  return say("proposal.oneOf", { count });
}
