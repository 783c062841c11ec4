// Floor 11. What gets worse by a change, as the command and the text that it begins a study with say it.
import type { PaintPair } from "../../measure/options/candidate.ts";
import type { Option } from "../../measure/options/tryoptions.ts";
import { plainFormat } from "../../words/format.ts";

/**
 * Returns what gets worse by a change, or nothing.
 *
 * Example: `lost beside white; worse beside green, red; merges with blue (8 % of the outline merges)`.
 */
export function listLosses({
  id,
  lost,
  worse,
  merged,
  mergedOutline,
}: Pick<Option, "id" | "lost" | "worse" | "merged" | "mergedOutline">): string {
  const outline = mergedOutline > 0 ? ` (${plainFormat.share(mergedOutline)} of the outline merges)` : "";
  return [
    ...(lost.length === 0 ? [] : [`lost beside ${nameNeighbours(id, lost)}`]),
    ...(worse.length === 0 ? [] : [`worse beside ${nameNeighbours(id, worse)}`]),
    ...(merged.length === 0 ? [] : [`merges with ${nameNeighbours(id, merged)}${outline}`]),
  ].join("; ");
}

/** Names what the paint `id` meets in `pairs`: every edge that a change touches has the changed paint on one side. */
export function nameNeighbours(id: string, pairs: readonly PaintPair[]): string {
  return pairs.map(({ a, names }) => names[a === id ? 1 : 0]).join(", ");
}
