// Floor 5. Says in an author's words what is wrong with the YAML, and what to type instead.
import type { ErrorCode, LineCounter, YAMLError } from "yaml";
import type { Advice, Place, Problem } from "../../problem/problem.ts";
import { quoteText } from "../../problem/quote.ts";
import { reportIn, type Source } from "../text/textsource.ts";
import { findHyphen, findSlip, type Slip } from "./brokenline.ts";
import { findInnerQuote, quoteAnew, quoteValue } from "./innerquote.ts";
import { findMissingComma } from "./missingcomma.ts";

/** Most lines with an error that are looked at. */
const mostLines = 40;

/** Returns a problem for the first error on each line, at most ten, but for what is a consequence of those before. */
export function describeSyntax(
  source: Source,
  errors: readonly YAMLError[],
  lineCounter: LineCounter,
): Problem[] {
  const seen = new Set<number>();
  const problems: Problem[] = [];
  for (const error of errors) {
    const { line, col } = lineCounter.linePos(error.pos[0]);
    if (seen.has(line) || problems.length === 10 || seen.size === mostLines) continue;
    seen.add(line);
    const place = { line: Math.max(1, line), column: Math.max(1, col) };
    const found = describeError(source, place, error);
    // Behind a bracket or a quote too many YAML stumbles over every line.
    const isNext = problems.at(-1)?.place?.line === line - 1;
    const isConsequence =
      found.isVague && problems.length > 0 && (isNext || error.code === "UNEXPECTED_TOKEN");
    if (!isConsequence) problems.push(found.problem);
    if (error.code === "RESOURCE_EXHAUSTION") break;
  }
  return problems;
}

/** A sign that was mistyped says more than where YAML stumbled over it, and has a place of its own. */
function describeError(
  source: Source,
  place: Place,
  error: YAMLError,
): { readonly problem: Problem; readonly isVague: boolean } {
  const rule = "study/yaml-syntax";
  const slip = unexplained.has(error.code) ? undefined : findSlipAt(source, place);
  if (slip === undefined) {
    if (isBeforeIndented(source, place, error)) place = { line: place.line + 1, column: 1 };
    const said = explain(error, source, place);
    const advice = isEcho(source, said.hint) ? typeAgain : said;
    return { problem: reportIn(rule, [source, place], advice), isVague: true };
  }
  return { problem: reportIn(rule, [source, place], slip), isVague: false };
}

/** A line indented under one that has a value: YAML stumbles over the value. */
function isBeforeIndented(source: Source, { line }: Place, error: YAMLError): boolean {
  const [own = "", next = ""] = [source.lines[line - 1], source.lines[line]];
  const [lead, under] = [own, next].map((text) => text.search(/\S/));
  const isKey = /^\s*[\w-]+:(?:\s|$)/.test(next) && !hasTwoColons(own);
  return error.code === "BLOCK_AS_IMPLICIT_KEY" && isKey && (under ?? 0) > (lead ?? 0);
}

function hasTwoColons(line: string): boolean {
  return (line.match(/:\s/g)?.length ?? 0) > 1;
}

/** Errors that say themselves what is wrong. */
const unexplained: ReadonlySet<string> = new Set([
  "RESOURCE_EXHAUSTION",
  "BAD_SCALAR_START",
  "BAD_DQ_ESCAPE",
]);

/** What is said where the line that we would propose stands there already. */
const typeAgain: Advice = {
  reason: "YAML cannot read this line where it stands.",
  hint: "Type it again by hand, as key: value, and look at the line above it too.",
};

/** Looks in the line of the error, and in the one before, as YAML notices some signs late. */
function findSlipAt(source: Source, { line, column }: Place): Slip | undefined {
  const [before = "", own = ""] = [source.lines[line - 2], source.lines[line - 1]];
  const comma = findMissingComma(source.lines, line);
  if (comma !== undefined) return comma;
  const here = findInnerQuote(own, column) ?? findSlip(own);
  if (here !== undefined) return { ...here, line };
  const late = findSlip(before);
  // A space before a colon may stand in a text of several lines, where it is right.
  const isFrame = late !== undefined && /^\s*$|[:\w-]$/.test(before.slice(0, late.column - 1));
  const isText = late !== undefined && /^\s*:/.test(before.slice(late.column));
  return late === undefined || !isFrame || isText || findHyphen(before)
    ? undefined
    : { ...late, line: line - 1 };
}

/** Returns whether a hint asks to type lines that stand there already, as they are. */
function isEcho(source: Source, hint: string): boolean {
  const [first = "", ...more] = hint.split("\n");
  if (more.length > 0) return `\n${source.lines.join("\n")}\n`.includes(`\n${more.join("\n")}\n`);
  const typed = /^(?:Type|If it is meant as text, put it in quotes|Close it): (.*)$/.exec(first)?.[1];
  return typed !== undefined && source.lines.some((line) => line.trim() === typed);
}

const nestedDeep: Advice = {
  reason: "Lists and maps are nested too deeply.",
  hint: "No key needs more than three levels.",
};

/** Returns the problem of YAML that is nested so deep that nobody can say where: it stands at the longest line. */
export function tooDeep(source: Source): Problem {
  const longest = Math.max(...source.lines.map((line) => line.length));
  const line = source.lines.findIndex(({ length }) => length === longest) + 1;
  return reportIn("study/yaml-syntax", [source, { line, column: 1 }], nestedDeep);
}

/** Shows the line under the one before it, both beginning in the same column. */
function explainIndentation(source: Source, { line }: Place): Advice {
  const reason = "The spaces before this line do not fit the lines around it.";
  const before = source.lines.slice(0, line - 1).findLast((text) => text.trim() !== "") ?? "";
  const [, lead, rest] = /^( *)(\S.*)$/.exec(before) ?? [];
  const own = (source.lines[line - 1] ?? "").trim();
  if (lead === undefined || rest === undefined || rest === "---")
    return { reason, hint: "Begin keys and list items that belong together in the same column." };
  const inner = rest.endsWith(":") ? `${lead}  ` : lead;
  const hint = `If it belongs to the line before it, type:\n${lead}${rest}\n${inner}${own}`;
  return { reason, hint };
}

/** Puts quotes round the value that begins in a column: up to the end of the line, or of its place in a list. */
function quoteFrom(line: string, column: number): string {
  const [before, rest] = [line.slice(0, column - 1), line.slice(column - 1)];
  const isInside = /[[{][^[{\]}]*$/.test(before);
  const value = (isInside ? /^[^,\]}]*/.exec(rest)?.[0] : rest)?.trimEnd() ?? rest;
  return `Type: ${before.trimStart()}${JSON.stringify(value)}${rest.slice(value.length)}`;
}

/** Looks at one line for one mistake: what it is, or undefined. `column` from 1, where YAML stumbled. */
type Detector = (line: string, place: Place, source: Source) => Advice | undefined;

const isIndented: Detector = (_, place, source) => explainIndentation(source, place);

/** By the code of YAML's error, the mistakes that come to it; the first that is found is told. */
const detectors: Readonly<Partial<Record<ErrorCode, readonly Detector[]>>> = {
  RESOURCE_EXHAUSTION: [() => nestedDeep],
  BAD_SCALAR_START: [
    (line, { column }) => ({
      reason: `A value that begins with ${quoteText(line[column - 1] ?? "")} needs quotes.`,
      hint: quoteFrom(line, column),
    }),
  ],
  BAD_DQ_ESCAPE: [
    () => ({
      reason: "In double quotes a backslash begins an escape, and YAML does not know this one.",
      hint: "Write the backslash twice, or leave it out.",
    }),
  ],
  BLOCK_AS_IMPLICIT_KEY: [explainTwoColons, isIndented],
  BAD_INDENT: [explainOpening, explainBracket, explainLine, isIndented],
  MISSING_CHAR: [explainOpening, explainBracket, explainLine, isIndented],
  MULTILINE_IMPLICIT_KEY: [explainOpening, explainBracket, explainLine, isIndented],
};

function explain({ code }: YAMLError, source: Source, place: Place): Advice {
  const line = source.lines[place.line - 1] ?? "";
  for (const detect of detectors[code] ?? [explainBracket, explainLine]) {
    const advice = detect(line, place, source);
    if (advice !== undefined) return advice;
  }
  return { reason: "YAML cannot read the line from here on.", hint: proposeQuotes(line) };
}

function proposeQuotes(line: string): string {
  const otherwise = /:\s+"/.test(line) ? typeAgain.hint : "Put the value in double quotes.";
  return quoteValue(line) ?? otherwise;
}

function explainTwoColons(line: string): Advice | undefined {
  if (!hasTwoColons(line)) return undefined;
  const reason = "A colon with a space behind it begins a new value, and this line has two of them.";
  return { reason, hint: proposeQuotes(line) };
}

/** Explains a bracket that opens in the text of a value which is itself in brackets. */
function explainOpening(line: string, { column }: Place): Advice | undefined {
  const sign = line.charAt(column - 1);
  const start = /(?:[[{,]|:\s)\s*([^\s[\]{},"'][^[\]{},]*)$/.exec(
    line.slice(Math.max(0, column - 300), column - 1),
  )?.[1]?.length;
  if (!/[[{]/.test(sign) || start === undefined) return undefined;
  let [depth, end] = [0, column - 1];
  for (; end < line.length; end += 1) {
    const each = line.charAt(end);
    if (/[[{]/.test(each)) depth += 1;
    if (/[\]}]/.test(each)) depth -= 1;
    if (depth < 0 || (depth === 0 && each === ",")) break;
  }
  const from = column - 1 - start;
  const value = line.slice(from, end).trimEnd();
  const typed = `${line.slice(0, from)}${quoteAnew(value)}${line.slice(from + value.length)}`;
  return { reason: `The bracket ${sign} stands in a text without quotes.`, hint: `Type: ${typed.trim()}` };
}

/** Explains a bracket too many: where it stands itself, or where it has closed what goes on behind it. */
function explainBracket(line: string, { column }: Place): Advice | undefined {
  const isHere = /[\]}]/.test(line.charAt(column - 1));
  const isBefore = /[\]}]/.test(line.charAt(column - 2)) && /[\]}]/.test(line.slice(column - 1));
  if (!isHere && !isBefore) return undefined;
  const at = isHere ? column - 1 : column - 2;
  const [before, behind] = [line.slice(0, at), line.slice(at + 1)];
  const without = behind.trim() === "" ? before.trim() : `${before}${behind}`.trim();
  const reason = isHere
    ? `The bracket ${line.charAt(at)} closes nothing that is open.`
    : `The bracket ${line.charAt(at)} closes what goes on behind it.`;
  return { reason, hint: isHere ? `Type: ${without}` : `If it is not meant to, type: ${without}` };
}

/** Explains a line that is no `key: value`, or returns undefined where it is one. */
function explainLine(line: string): Advice | undefined {
  if (/^- /.test(line)) {
    return {
      reason: "A list item stands here without the key it belongs to.",
      hint: "Indent it under its key, or delete it.",
    };
  }
  const [, crowdedKey, crowded] = /^\s*([A-Za-z]+):([^\s:/].*)$/.exec(line) ?? [];
  if (crowdedKey !== undefined) {
    return { reason: "After the colon of a key comes a space.", hint: `Type: ${crowdedKey}: ${crowded}` };
  }
  const [, key, value] = /^\s*([A-Za-z]+)(?:\s*=\s*|\s+)([^:\s][^:]*)$/.exec(line) ?? [];
  if (key === undefined) return undefined;
  return {
    reason: "The line has no colon, so it is no “key: value”.",
    hint: `Type: ${key}: ${value?.trim()}`,
  };
}
