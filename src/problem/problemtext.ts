// Floor 0. Turns problems into the text a person reads: where, what, the line itself with a caret, what to type.
import { locate } from "./locate.ts";
import { compareProblems, type Place, type Problem } from "./problem.ts";
import { showText } from "./quote.ts";
import { measureColumns, splitCharacters } from "./width.ts";

/** Widest piece of a source line that is shown, in columns. */
const widest = 100;

const indent = "    ";

/**
 * Returns the report of one problem, without a newline at its end:
 *
 * ```
 * content/studies/ferry/study.md:3:1  error  There is no key “orignal”.  study/unknown-key
 *     orignal: original.svg
 *     ^^^^^^^
 *     Type “original”.
 * ```
 *
 * Control and direction characters of untrusted text never reach the output.
 */
export function formatProblem(problem: Problem): string {
  const { place, sourceLine, lineOffset = 0, hint } = problem;
  const where = place ? `${problem.file}:${place.line}:${place.column}` : problem.file;
  const lines = [[where, problem.severity, problem.reason, problem.rule].map(showText).join("  ")];
  if (place && sourceLine?.trim())
    lines.push(...frameLine(sourceLine, { ...place, column: place.column - lineOffset }));
  if (hint !== undefined) for (const line of hint.split("\n")) lines.push(indent + showText(line));
  return lines.join("\n");
}

/** Returns the reports of all `problems`, sorted by file then place, a blank line between two; "" if there are none. */
export function formatProblems(problems: readonly Problem[]): string {
  return [...problems].sort(compareProblems).map(formatProblem).join("\n\n");
}

/** Returns the source line, cut to 100 columns around the place, and under it the line with the carets. */
function frameLine(line: string, { column, length }: Place): string[] {
  const { sourceLine, lineOffset = 0 } = locate(line, { line: 1, column });
  const start = Math.max(0, Math.min(column - 1 - lineOffset, sourceLine.length));
  const end = Math.min(sourceLine.length, start + Math.max(1, length ?? 1));
  const before = splitCharacters(showText(sourceLine.slice(0, start)));
  const marked = showText(sourceLine.slice(start, end));
  const after = splitCharacters(showText(sourceLine.slice(end)));

  const rest = measureColumns(marked) + columnsOf(after);
  const head = cut(before.reverse(), Math.max(widest / 2, widest - rest)).reverse();
  const middle = cut(splitCharacters(marked), widest - columnsOf(head));
  const tail = cut(after, widest - columnsOf(head) - columnsOf(middle));
  const shown = `${indent}${[...head, ...middle, ...tail].join("")}`.trimEnd();
  const caret = " ".repeat(columnsOf(head)) + "^".repeat(Math.max(1, columnsOf(middle)));
  return [shown, indent + caret];
}

/** Returns the first characters of `characters` that fit into `columns`; the last one is … where something was cut. */
function cut(characters: readonly string[], columns: number): string[] {
  if (columnsOf(characters) <= columns) return [...characters];
  const kept: string[] = [];
  let room = columns - 1;
  for (const character of characters) {
    room -= measureColumns(character);
    if (room < 0) break;
    kept.push(character);
  }
  return [...kept, "…"];
}

function columnsOf(characters: readonly string[]): number {
  return characters.reduce((sum, character) => sum + measureColumns(character), 0);
}
