// Floor 6. Plain data → a short name that no other data have: what measurements are kept under.
import { createHash, type Hash } from "node:crypto";

/**
 * Returns 64 hex digits. Equal values have equal fingerprints, in whatever order the keys of an object were set; a key that
 * is undefined counts as absent. The order of arrays and of maps matters.
 *
 * Throws RangeError for what is no plain data, such as a function.
 */
export function fingerprint(value: unknown): string {
  const hash = createHash("sha256");
  visit(hash, value);
  return hash.digest("hex");
}

/** Kind and length before each value, so that two different ones never run together to the same text. */
function visit(hash: Hash, value: unknown): void {
  if (typeof value === "string") hash.update(`s${value.length}:${value}`);
  else if (typeof value === "number") hash.update(`n${Object.is(value, -0) ? "-0" : value};`);
  else if (typeof value === "boolean" || value === null || value === undefined) hash.update(`${value};`);
  else if (value instanceof Uint8Array) hash.update(`b${value.length}:`).update(value);
  else if (value instanceof Map) visitAll(hash, "m", [...value].flat());
  else if (Array.isArray(value)) visitAll(hash, "a", value);
  else if (typeof value === "object") {
    const fields = Object.entries(value).filter(([, inner]) => inner !== undefined);
    visitAll(hash, "o", fields.sort(([a], [b]) => (a < b ? -1 : 1)).flat());
  } else throw new RangeError(`a ${typeof value} has no fingerprint`);
}

function visitAll(hash: Hash, kind: string, values: readonly unknown[]): void {
  hash.update(`${kind}${values.length}:`);
  for (const value of values) visit(hash, value);
}
