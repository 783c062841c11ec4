// Floor 11. Problems as GitHub Actions shows them beside the line, and text from a stranger that must not steer it.
import path, { type PlatformPath } from "node:path";
import { findWay, withSlashes } from "../../content/disk/pathname.ts";
import { compareProblems, type Problem } from "../../problem/problem.ts";
import { showText } from "../../problem/quote.ts";

type Env = Readonly<Record<string, string | undefined>>;

/** Returns whether we run on GitHub Actions. Source: its documentation, default environment variables. */
export function isOnActions(env: Env): boolean {
  return env["GITHUB_ACTIONS"] === "true";
}

/**
 * Returns one workflow command a line for `problems`: `::error file=…,line=…,col=…,endColumn=…,title=…::reason and hint`.
 * Paths are relative to the workspace where they lie in it.
 *
 * Source: GitHub's documentation, workflow commands for GitHub Actions; escapes as actions/toolkit does them
 * (packages/core/src/command.ts).
 */
export function formatAnnotations(
  problems: readonly Problem[],
  env: Env,
  folder = process.cwd(),
  flavour: PlatformPath = path,
): string {
  return [...problems]
    .sort(compareProblems)
    .map((problem) => formatAnnotation(problem, env, folder, flavour))
    .join("\n");
}

/**
 * Returns `text` so that the runner takes none of its lines for a command: where one could be, commands are stopped before
 * it and started again after it, or, in JSON, which has to stay JSON, its sign is written as an escape. `token` must be a
 * word nobody can guess.
 *
 * Source: GitHub's documentation, workflow commands for GitHub Actions, “Stopping and starting workflow commands”.
 */
export function guardText(text: string, token: string): string {
  // The second form, older and no longer documented, may begin anywhere in a line (from memory).
  const isCommand = (line: string) => line.trimStart().startsWith("::") || line.includes("##[");
  if (isJson(text)) return text.replaceAll("##[", "#\\u0023[");
  return text.split(/[\r\n]/).some(isCommand) ? `::stop-commands::${token}\n${text}\n::${token}::` : text;
}

function isJson(text: string): boolean {
  if (!/^[{[]/.test(text)) return false;
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
}

function formatAnnotation(
  { rule, severity, file, place, reason, hint }: Problem,
  env: Env,
  folder: string,
  flavour: PlatformPath,
): string {
  const end = place?.length === undefined ? undefined : place.column + place.length - 1;
  const properties = {
    file: showText(nameFrom(env["GITHUB_WORKSPACE"] ?? folder, flavour.resolve(folder, file), flavour)),
    line: place?.line,
    col: place?.column,
    endColumn: end,
    title: rule,
  };
  const listed = Object.entries(properties)
    .filter(([, value]) => value !== undefined)
    .map(([name, value]) => `${name}=${escapeProperty(String(value))}`);
  const message = [reason, ...(hint?.split("\n") ?? [])].map(showText).join("\n");
  return `::${severity} ${listed.join(",")}::${escapeData(message)}`;
}

function nameFrom(workspace: string, file: string, flavour: PlatformPath): string {
  return findWay(file, workspace, flavour) ?? withSlashes(file, flavour);
}

function escapeData(text: string): string {
  return text.replace(/%/g, "%25").replace(/\r/g, "%0D").replace(/\n/g, "%0A");
}

function escapeProperty(text: string): string {
  return escapeData(text).replace(/:/g, "%3A").replace(/,/g, "%2C");
}
