// What becomes of many real drawings: accepted, accepted with a warning, or refused, and why, as a table.
import { readFile } from "node:fs/promises";
import { openDrawing } from "../../src/analysis/drawing/opendrawing.ts";
import type { Problem } from "../../src/problem/problem.ts";
import type { CollectionFile } from "./files.ts";

export interface Verdict {
  readonly name: string;
  readonly kind: "accepted" | "warned" | "refused";
  /** Rule and reason of the error, or of each kind of warning. */
  readonly why: readonly string[];
}

/** Reads and measures a file as the commands do. */
export async function judgeFile({ name, path }: CollectionFile): Promise<Verdict> {
  const bytes = await readFile(path);
  const { value, problems } = await openDrawing(name, bytes, {
    distance: 40,
    isBrief: true,
    followsFocus: false,
  });
  const kind = value === undefined ? "refused" : problems.length > 0 ? "warned" : "accepted";
  const told =
    kind === "refused" ? problems.filter(({ severity }) => severity === "error").slice(0, 1) : problems;
  return { name, kind, why: [...new Set(told.map(tellKind))] };
}

/** The same for all drawings that have the same fault. */
function tellKind({ rule, reason }: Problem): string {
  return `${rule}: ${reason
    .replace(/"[^"]*"/g, "…")
    .replace(/#[\w-]+/g, "#…")
    .replace(/\d[\d.]*/g, "N")}`.slice(0, 100);
}

/** Returns the table; at most `shown` names of each kind. */
export function formatVerdicts(verdicts: readonly Verdict[], shown = 4): string {
  const lines: string[] = [];
  for (const kind of ["accepted", "warned", "refused"] as const) {
    const these = verdicts.filter((verdict) => verdict.kind === kind);
    const share = (100 * these.length) / Math.max(1, verdicts.length);
    lines.push(`${kind.padEnd(10)}${String(these.length).padStart(6)}${share.toFixed(1).padStart(7)} %`);
    const names = new Map<string, string[]>();
    for (const { name, why } of these)
      for (const each of why) names.set(each, [...(names.get(each) ?? []), name]);
    for (const [why, all] of [...names].sort((a, b) => b[1].length - a[1].length))
      lines.push(
        `${String(all.length).padStart(16)}  ${why}`,
        `${" ".repeat(18)}${all.slice(0, shown).join(" ")}`,
      );
  }
  return lines.join("\n");
}

/** Share of real drawings, 0 to 1, that are to be accepted, with or without a warning. */
export const leastAccepted = 0.995;
