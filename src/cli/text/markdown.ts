// Floor 11. Problems as a table in Markdown, to paste into a reply: whatever a stranger wrote stands in it as mere text.
import { findWay } from "../../content/disk/pathname.ts";
import { anchorOf, ruleChapters } from "../../content/rules/catalogue.ts";
import { compareProblems, type Problem } from "../../problem/problem.ts";
import { showText } from "../../problem/quote.ts";
import { countSeverity } from "../../problem/tally.ts";
import { formatCanonical } from "../../views/address.ts";
import { count } from "./exitstatus.ts";

/** Most places that are told of problems of one kind. */
const mostPlaces = 3;

/** Where a gallery lies, and its address: empty where it has none. */
export interface ReplyTo {
  readonly content: string;
  readonly address: string;
}

/**
 * Returns a table of `problems`, errors first, those of one rule in one row: how many, where, what is wrong with the first, what to
 * type. Words that Markdown or a web site could take for more than words (a mention, a link, an image, HTML) stand in code spans.
 *
 * Source: CommonMark 0.31, section 6.1 (code spans); GitHub Flavored Markdown, section 4.10 (tables).
 */
export function formatMarkdown(
  problems: readonly Problem[],
  to: ReplyTo = { content: "", address: "" },
): string {
  if (problems.length === 0) return "No problem was found.";
  const groups = new Map<string, Problem[]>();
  for (const problem of [...problems].sort(compareProblems)) {
    const key = `${problem.severity} ${problem.rule}`;
    groups.set(key, [...(groups.get(key) ?? []), problem]);
  }
  const all = [...groups.values()];
  const ordered = ["error", "warning"].flatMap((kind) => all.filter(([one]) => one?.severity === kind));
  const rows = ordered.map((group) => formatGroup(group, to));
  return [["Rule", "Where", "What is wrong", "What to type"], ["---", "---", "---", "---"], ...rows]
    .map((cells) => `| ${cells.join(" | ")} |`)
    .join("\n");
}

function formatGroup(group: readonly Problem[], to: ReplyTo): readonly string[] {
  const first = group.find(({ more }) => more === undefined) ?? group[0];
  if (first === undefined) return [];
  const { rule, severity, reason, hint } = first;
  const isListed = ruleChapters.some(({ rules }) => rules.some(({ id }) => id === rule));
  const code = formatCode(rule);
  const name = (isListed && formatLink(code, to.address, `/rules/#${anchorOf(rule)}`)) || code;
  const all = countSeverity(group, severity);
  const told = group.filter(({ more }) => more === undefined).slice(0, mostPlaces);
  const places = (told.length === 0 ? [first] : told).map((one) => formatPlace(one, to.content));
  const rest = all - places.length;
  return [
    `${name} ${count(all, severity, `${severity}s`)}`,
    `${places.join(", ")}${rest > 0 ? ` and ${rest} more` : ""}`,
    `${formatWords(reason)}${all > 1 ? " (the first)" : ""}`,
    formatHint(hint),
  ];
}

/** The path is that from the gallery, wherever the command was called. */
function formatPlace({ file, place }: Problem, content: string): string {
  const path = findWay(file, content) || file;
  return formatCode(place === undefined ? path : `${path}:${place.line}:${place.column}`);
}

/**
 * Returns a link with words of ours to a path of the site; undefined where the gallery has no address on the web. What could end a link or
 * a cell is percent-encoded.
 */
export function formatLink(text: string, address: string, path: string): string | undefined {
  const whole = formatCanonical(address, path);
  if (whole === undefined || !/^https?:$/.test(new URL(whole).protocol)) return undefined;
  const encode = (sign: string) => `%${sign.charCodeAt(0).toString(16).toUpperCase().padStart(2, "0")}`;
  return `[${text}](${new URL(whole).href.replace(/[^\w:/?#.~%&=+,;-]/g, encode)})`;
}

/** What is to be typed is copied from here, so that a whole line is one code span. */
function formatHint(hint: string | undefined): string {
  return (hint ?? "")
    .split("\n")
    .filter((line) => line.trim() !== "")
    .map(formatCode)
    .join(" ");
}

/**
 * Letters and digits, with quotes and a stop around them: nothing that Markdown or a site reads. `GH-1` and `ABC-1` are
 * issues there, seven digits of hex or more a commit.
 *
 * Source: GitHub's documentation, autolinked references and URLs.
 */
const plain =
  /^(?![“‘(]?(?:[a-z]+-\d|[\da-f]{7}))[“‘(]?[\p{L}\p{N}]+(?:['’-][\p{L}\p{N}]+)*[”’)]?[.,;:?]?$|^[/→–]$|^%[.,;]?$/iu;

/** Runs of words that may be more than words become one code span, without the quotes and stops around them. */
export function formatWords(text: string): string {
  const words = showText(text)
    .split(/\s+/)
    .filter((word) => word !== "");
  const parts: string[] = [];
  let odd: string[] = [];
  const close = (): void => {
    if (odd.length > 0) parts.push(formatOdd(odd.join(" ")));
    odd = [];
  };
  for (const word of words) {
    if (!plain.test(word)) {
      odd.push(word);
      continue;
    }
    close();
    parts.push(word);
  }
  close();
  return parts.join(" ");
}

function formatOdd(text: string): string {
  const [before = ""] = /^[“‘]*/u.exec(text) ?? [];
  const [after = ""] = /(?<![”’])[”’]*[.,;:?]?$/u.exec(text.slice(before.length)) ?? [];
  const inner = text.slice(before.length, text.length - after.length);
  return inner === "" ? formatCode(text) : `${before}${formatCode(inner)}${after}`;
}

/** Returns `text` as a code span that may stand in a cell of a table. */
export function formatCode(text: string): string {
  const line = showText(text).trim();
  const runs = line.match(/`+/g) ?? [];
  const longest = Math.max(0, ...runs.map((run) => run.length));
  const fence = "`".repeat(longest + 1);
  const space = line.startsWith("`") || line.endsWith("`") || line === "" ? " " : "";
  return `${fence}${space}${escapePipes(line)}${space}${fence}`;
}

/** A pipe ends a cell unless an odd number of backslashes stands before it, even in a code span. */
function escapePipes(text: string): string {
  return text.replace(
    /(?<!\\)(\\*)\|/g,
    (_, slashes: string) => `${slashes}${slashes.length % 2 === 0 ? "\\" : "\\\\"}|`,
  );
}
