// Floor 0. A place with what a message shows of its line. A drawing may be one line of 512 KB: nobody walks or sends it whole.
import type { Located, Place } from "./problem.ts";

/** A line longer than this is cut, in characters; and what is kept of it before the place. A message shows 100 columns. */
const [longest, before] = [1000, 400] as const;

/** Returns `place` with `line`, or with the 1,000 characters of it around the place. */
export function locate(line: string, place: Place): Located {
  if (line.length <= longest) return { place, sourceLine: line };
  const from = Math.max(0, Math.min(place.column - 1 - before, line.length - longest));
  const sourceLine = line.slice(from, from + longest);
  return from === 0 ? { place, sourceLine } : { place, sourceLine, lineOffset: from };
}
