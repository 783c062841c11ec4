// Floor 11. Problems as a table in Markdown, to paste into a reply: whatever a stranger wrote stands in it as mere text.
import { compareProblems, type Problem } from "../../problem/problem.ts";
import { showText } from "../../problem/quote.ts";

/**
 * Returns a table of `problems`: where, what is wrong, what to type. Words that Markdown or a web site could take for more
 * than words (a mention, a link, an image, HTML) stand in code spans.
 *
 * Source: CommonMark 0.31, section 6.1 (code spans); GitHub Flavored Markdown, section 4.10 (tables).
 */
export function formatMarkdown(problems: readonly Problem[]): string {
  if (problems.length === 0) return "No problem was found.";
  const rows = [...problems]
    .sort(compareProblems)
    .map((problem) => [formatPlace(problem), formatReason(problem), formatHint(problem.hint)]);
  return [["Where", "What is wrong", "What to type"], ["---", "---", "---"], ...rows]
    .map((cells) => `| ${cells.join(" | ")} |`)
    .join("\n");
}

function formatPlace({ file, place }: Problem): string {
  return formatCode(place === undefined ? file : `${file}:${place.line}:${place.column}`);
}

function formatReason({ severity, reason }: Problem): string {
  const words = formatWords(reason);
  return severity === "warning" ? `(warning) ${words}` : words;
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
  /^(?![“‘(]?(?:[a-z]+-\d|[\da-f]{7}))[“‘(]?[\p{L}\p{N}]+(?:['’-][\p{L}\p{N}]+)*[”’)]?[.,;:?]?$|^[/→–%]$/iu;

/** Runs of words that may be more than words become one code span, without the quotes and stops around them. */
function formatWords(text: string): string {
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
function formatCode(text: string): string {
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
