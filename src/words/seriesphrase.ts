// Floor 7. What is said of a series: how much it holds.
import type { Format } from "./format.ts";

/** `6 studies and 1 flag without a study`. */
export function countEntries(studies: number, flags: number, format: Format): string {
  const parts = [
    ...(studies === 0 ? [] : [`${format.number(studies, 0)} ${studies === 1 ? "study" : "studies"}`]),
    ...(flags === 0 ? [] : [`${format.number(flags, 0)} ${flags === 1 ? "flag" : "flags"} without a study`]),
  ];
  return format.list(parts);
}
