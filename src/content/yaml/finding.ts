// Floor 5. What is wrong with a value, before it has a place: schema issues and our own rules look alike from here on.
import type { Place, Problem, Severity } from "../../problem/problem.ts";
import { quoteText } from "../../problem/quote.ts";
import { reportIn, type Source } from "../text/textsource.ts";
import type { YamlData } from "./readyaml.ts";

/** Something wrong at a dotted path. `on` says what the caret goes under; a missing key is shown at its parent. */
export interface Finding {
  readonly rule: string;
  readonly path: string;
  readonly on: "key" | "value" | "parent";
  readonly severity?: Severity;
  readonly reason: string;
  readonly hint?: string;
  /** The path of the key that a mistyped one most likely stands for. */
  readonly meant?: string;
  /** Paths that need no message of their own once this is mended. */
  readonly settles?: readonly string[];
  /** It says all there is to say of its path: other findings there are its consequences and are left out. */
  readonly isWhole?: boolean;
}

/** Returns the finding of `rule` at the value of `path`, an error, unless `more` says otherwise. */
export function wrong(
  rule: string,
  path: string,
  advice: Pick<Finding, "reason" | "hint">,
  more: Partial<Omit<Finding, "rule" | "path" | "reason" | "hint">> = {},
): Finding[] {
  return [{ rule, path, on: "value", ...more, ...advice }];
}

/** What is known about the keys of a file. */
export interface KeyGuide {
  /** How the file is called in a message: `A study`, `gallery.yaml`. */
  readonly whole: string;
  /** Dotted path with `*` for places in a list → a line that would be right. */
  readonly examples: Readonly<Record<string, string>>;
}

/** Returns `findings` as problems with their places. Paths that already have a problem are left out. */
export function placeFindings(
  source: Source,
  data: YamlData,
  lastLine: number,
  findings: readonly Finding[],
): Problem[] {
  const end: Place = {
    line: lastLine,
    column: 1,
    length: Math.max(1, (source.lines[lastLine - 1] ?? "").length),
  };
  const told = new Set(findings.filter(({ isWhole }) => isWhole).map(({ path }) => path));
  return findings
    .filter((finding) => !isUnread(data, finding.path) && (finding.isWhole || !told.has(finding.path)))
    .map(({ path, on, rule, severity, reason, hint }) => {
      const parent = path.includes(".") ? path.slice(0, path.lastIndexOf(".")) : "";
      const shown = on === "parent" ? parent : path;
      const value = shown === "" ? undefined : data.places.get(shown);
      const key = shown === "" ? undefined : data.keyPlaces.get(shown);
      const place = (on === "value" ? (value ?? key) : (key ?? value)) ?? end;
      return reportIn(rule, [source, place], hint === undefined ? { reason } : { reason, hint }, severity);
    });
}

function isUnread(data: YamlData, path: string): boolean {
  return [...data.unread].some((unread) => path === unread || path.startsWith(`${unread}.`));
}

/** Returns how a message calls the value at `path`: “title”, or: item 2 of “authors”. */
export function labelOf(path: string): string {
  const parts = path.split(".");
  const last = parts.at(-1) ?? "";
  return /^\d+$/.test(last)
    ? `item ${Number(last) + 1} of ${quoteText(parts.at(-2) ?? "")}`
    : quoteText(last);
}

/** Returns the example of `path`, or undefined. */
export function exampleOf(guide: KeyGuide, path: string): string | undefined {
  return guide.examples[path.replace(/(^|\.)\d+(?=\.|$)/g, "$1*")];
}

/** Returns the keys that may stand directly under `parent`, in the order of the guide. */
export function keysUnder(guide: KeyGuide, parent: string): string[] {
  const prefix = parent === "" ? "" : `${parent.replace(/(^|\.)\d+(?=\.|$)/g, "$1*")}.`;
  return Object.keys(guide.examples)
    .filter((path) => path.startsWith(prefix))
    .map((path) => path.slice(prefix.length))
    .filter((name) => !name.includes(".") && name !== "*" && name !== "");
}

/** Returns `text` with a capital first letter, to begin a sentence. */
export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
