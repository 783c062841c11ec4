// Floor 7. What is said of a series: how much it holds, and where a study stands in it.
import type { Format } from "./format.ts";

/** `6 studies and 1 flag without a study`. */
export function countEntries(studies: number, flags: number, format: Format): string {
  const parts = [
    ...(studies === 0 ? [] : [`${format.number(studies, 0)} ${studies === 1 ? "study" : "studies"}`]),
    ...(flags === 0 ? [] : [`${format.number(flags, 0)} ${flags === 1 ? "flag" : "flags"} without a study`]),
  ];
  return format.list(parts);
}

/** `3 of 8 in`, before the title of the series. */
export function describePlace(number: number, of: number, format: Format): string {
  return `${format.number(number, 0)} of ${format.number(of, 0)} in`;
}
