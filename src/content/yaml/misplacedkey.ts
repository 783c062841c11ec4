// Floor 5. Keys that stand at the top of a study and belong under another key: one finding for all of them.
import { findNearest } from "../../problem/knownword.ts";
import { quoteText } from "../../problem/quote.ts";
import { type Finding, type KeyGuide, keysUnder } from "./finding.ts";

/** A key as it was typed, and where it belongs: `with` under `change`. */
export interface Homeless {
  readonly typed: string;
  readonly parent: string;
  readonly key: string;
}

/** Returns where a key at the top belongs, or undefined where the top has one like it or no other place has. */
export function findHome(typed: string, guide: KeyGuide): Homeless | undefined {
  if (findNearest(typed, keysUnder(guide, "")) !== undefined) return undefined;
  const inner = Object.keys(guide.examples).filter((path) => /^[^.]+\.[^.*]+$/.test(path));
  const leaf = findNearest(
    typed,
    inner.map((path) => path.split(".")[1] ?? ""),
  );
  const [parent, key] = inner.find((path) => path.endsWith(`.${leaf}`))?.split(".") ?? [];
  return parent === undefined || key === undefined ? undefined : { typed, parent, key };
}

/** Returns a finding for each key that others belong under, with the lines as they should be typed. */
export function describeHomeless(
  homeless: readonly Homeless[],
  raw: Readonly<Record<string, unknown>>,
): Finding[] {
  const parents = [...new Set(homeless.map(({ parent }) => parent))];
  return parents.map((parent) => {
    const own = homeless.filter((each) => each.parent === parent);
    const names = own.map(({ typed }) => quoteText(typed));
    const lines = own.map(({ typed, key }) => `  ${key}: ${writeValue(raw[typed])}`);
    const isThere = typeof raw[parent] === "object" && raw[parent] !== null;
    return {
      rule: "study/unknown-key",
      path: own[0]?.typed ?? "",
      on: "key",
      reason: `${joinNames(names)} ${names.length === 1 ? "belongs" : "belong"} under ${quoteText(parent)}.`,
      hint: isThere
        ? `Move it there and type: ${lines.map((line) => line.trim()).join(", ")}`
        : [`Type, with two spaces before what belongs to it:`, `${parent}:`, ...lines].join("\n"),
      meant: parent,
    };
  });
}

/** Returns a plain value as it may stand in YAML; … for anything else. */
export function writeValue(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(writeValue).join(", ")}]`;
  if (typeof value === "number" || typeof value === "boolean") return String(value);
  if (typeof value !== "string") return "…";
  return /^\p{L}[\p{L}\p{M}\p{N} ._/-]*$/u.test(value) ? value : JSON.stringify(value);
}

function joinNames(names: readonly string[]): string {
  const last = names.at(-1) ?? "";
  return names.length < 2 ? last : `${names.slice(0, -1).join(", ")} and ${last}`;
}
