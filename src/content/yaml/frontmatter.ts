// Floor 5. The keys and the prose of a study: one file split at its two fences, plain lines of three hyphens, or two files.
import type { Advice, Outcome, Problem } from "../../problem/problem.ts";
import { quoteText } from "../../problem/quote.ts";
import { reportIn, type Source } from "../text/textsource.ts";

/** Largest front matter, in bytes. */
const frontMatterBytes = 8 * 1024;

/** Where the first line of three hyphens stands. */
const fence = { line: 1, column: 1, length: 3 };

export interface FrontMatter {
  /** The YAML, with an empty line in place of the opening fence, so that lines count as in the file. */
  readonly yaml: string;
  /** Line of the closing fence, or the last line of keys, from 1. */
  readonly closingLine: number;
  readonly body: string;
  /** The file that holds the body. */
  readonly bodySource: Source;
  /** Line on which the body begins, from 1. */
  readonly bodyLine: number;
}

const studyKeys =
  'title: A lighter ferry wheel\noriginal: original.svg\nchange: { replace: "#7a1020", with: "#f4c430" }';

/**
 * Splits `source` into front matter and body. `keys` are lines that may begin it, of what is called `whole`.
 *
 * Problems: `study/front-matter-missing`, `study/front-matter-language` (`---js` and the like, which other tools
 * run as code), `study/front-matter-unclosed`, `study/front-matter-size` over 8 KB.
 */
export function splitFrontMatter(source: Source, keys = studyKeys, whole = "a study"): Outcome<FrontMatter> {
  const fail = (problem: Problem): Outcome<FrontMatter> => ({ value: undefined, problems: [problem] });
  const first = (source.lines[0] ?? "").trimEnd();
  if (first !== "---") return fail(wrongOpening(source, first, keys, whole));

  const closing = source.lines.findIndex((line, index) => index > 0 && line.trimEnd() === "---");
  if (closing === -1) return fail(unclosed(source));

  const yaml = ["", ...source.lines.slice(1, closing), ""].join("\n");
  const tooLong = checkSize(source, yaml, "The front matter", "below the second ---, into the prose");
  if (tooLong) return fail(tooLong);
  const body = source.lines.slice(closing + 1).join("\n");
  const value = { yaml, closingLine: closing + 1, body, bodySource: source, bodyLine: closing + 2 };
  return { value, problems: [] };
}

/**
 * Takes study.yaml for the front matter and prose.md for the body; without one there is no prose.
 *
 * Problems: `study/front-matter-size` over 8 KB, `study/prose-front-matter` where prose.md begins with keys of its own.
 */
export function joinFiles(source: Source, prose: Source | undefined): Outcome<FrontMatter> {
  const fail = (problem: Problem): Outcome<FrontMatter> => ({ value: undefined, problems: [problem] });
  const tooLong = checkSize(source, source.text, "study.yaml", "into prose.md, beside it");
  if (tooLong) return fail(tooLong);
  if (prose && /^---\s*$/.test(prose.lines[0] ?? "")) {
    const reason = "prose.md begins with front matter, and the keys of this study are in study.yaml.";
    const hint = "Move the keys to study.yaml, and delete the lines down to the second ---.";
    return fail(reportIn("study/prose-front-matter", [prose, fence], { reason, hint }));
  }
  const closingLine = Math.max(1, source.text.trimEnd().split("\n").length);
  const body = prose?.text ?? "";
  const value = { yaml: source.text, closingLine, body, bodySource: prose ?? source, bodyLine: 1 };
  return { value, problems: [] };
}

function checkSize(source: Source, yaml: string, whole: string, where: string): Problem | undefined {
  const size = new TextEncoder().encode(yaml).length;
  if (size <= frontMatterBytes) return undefined;
  return reportIn("study/front-matter-size", [source, fence], {
    reason: `${whole} has ${Math.ceil(size / 1024)} KB; it may have 8 KB.`,
    hint: `Move long texts ${where}.`,
  });
}

function wrongOpening(source: Source, first: string, keys: string, whole: string): Problem {
  const opening = source.lines.findIndex((line) => line.trim() !== "");
  if ((source.lines[opening] ?? "").trim() === "---") return lateOpening(source, opening);
  const place = { line: 1, column: 1, length: Math.max(1, first.length) };
  if (/^---\s*[a-z]/i.test(first)) {
    return reportIn("study/front-matter-language", [source, place], {
      reason: `The first line is ${quoteText(first)}, but front matter is plain YAML and names no language.`,
      hint: "Make the first line three hyphens and nothing else: ---",
    });
  }
  return reportIn("study/front-matter-missing", [source, place], describeOpening(first, keys, whole));
}

/** The first line of three hyphens is there, below blank lines or behind spaces. */
function lateOpening(source: Source, index: number): Problem {
  const length = (source.lines[index] ?? "").trimEnd().length;
  const lines = index === 1 ? "a blank line, and a study" : `${index} blank lines, and a study`;
  const what =
    index === 0
      ? { reason: "The three hyphens are indented.", hint: "Type, at the beginning of the line: ---" }
      : {
          reason: `The file begins with ${lines} begins with three hyphens.`,
          hint: `Delete the blank ${index === 1 ? "line" : "lines"} above ---.`,
        };
  return reportIn("study/front-matter-missing", [source, { line: index + 1, column: 1, length }], what);
}

/** A file that begins with a key lacks one line; any other lacks all of them. */
function describeOpening(first: string, keys: string, whole: string): Advice {
  if (/^[A-Za-z]+:(?:\s|$)/.test(first)) {
    return {
      reason: `The keys of ${whole} stand between two lines of three hyphens, and the first of the two is not there.`,
      hint: `Put it above this line:\n---\n${first}`,
    };
  }
  const dashes = /^[-–—]{1,}$/.test(first);
  return {
    reason: dashes
      ? `The first line is ${quoteText(first)}; it must be three hyphens.`
      : `The file does not begin with the keys of ${whole}, between two lines of three hyphens.`,
    hint: dashes ? "Type: ---" : `Begin it like this:\n---\n${keys}\n---`,
  };
}

/** Where a line nearly is the closing fence, it is named; dashes are what word processors make of hyphens. */
function unclosed(source: Source): Problem {
  const near = source.lines.findIndex((line, index) => index > 0 && /^\s*[-–—]{1,6}\s*$/.test(line));
  const rule = "study/front-matter-unclosed";
  if (near > 0) {
    const line = source.lines[near] ?? "";
    const reason = `The keys end with a line of three hyphens, and this is ${quoteText(line)}.`;
    const place = { line: near + 1, column: 1, length: line.length };
    return reportIn(rule, [source, place], { reason, hint: "Type: ---" });
  }
  return reportIn(rule, [source, fence], {
    reason: "The keys that begin below this line never end: there is no second line of three hyphens.",
    hint: "Type --- on a line of its own, below the last key and above the prose.",
  });
}
