// Floor 11. The options that say how a drawing is looked at → what is asked of the one who looks.
import { numberOf } from "./arguments.ts";
import type { Given } from "./command.ts";
import type { Looking } from "./drawingjob.ts";

/** Returns how the drawing is looked at. Throws UsageError for a distance outside the range. */
export function readLooking(given: Given): Looking {
  const { focus } = given.values;
  return { distance: numberOf(given, "distance", [0, 1000], 40), ...(focus === undefined ? {} : { focus }) };
}
