// Floor 6. A single change as a reader names it, `black to orange`, among those that the matrix of a study shows.
import type { Hex } from "../../colour/colour.ts";
import type { StudyAnswer } from "../../content/study/study.ts";
import { type Problem, report } from "../../problem/problem.ts";
import { quoteText } from "../../problem/quote.ts";
import type { Matrix, MatrixCell, MatrixRow } from "./optionmatrix.ts";

/** A change of the matrix; `name` is what pages call it. */
export interface NamedChange {
  readonly replace: Hex;
  readonly with: Hex;
  readonly name: string;
}

/** Returns the change that `text` names, by the names or the hexes of its two colours with `to` or an arrow between them. */
export function findNamedChange(text: string, matrix: Matrix | undefined): NamedChange | undefined {
  const [replaced, put] = text
    .trim()
    .toLowerCase()
    .split(/ (?:to|→|->) /, 2);
  return list(matrix).find(
    ([row, cell]) => isCalled(replaced, row.name, row.hex) && isCalled(put, cell.name, cell.with),
  )?.[2];
}

/**
 * Returns a warning for each answer about a change that was not tried, or is not shown.
 *
 * Problems: warning study/answer-option.
 */
export function checkAnsweredChanges(
  answers: readonly StudyAnswer[] = [],
  matrix: Matrix | undefined,
): readonly Problem[] {
  return answers.flatMap(({ option, at }) => {
    if (option === undefined || findNamedChange(option, matrix) !== undefined) return [];
    const [first] = list(matrix);
    return report(
      "study/answer-option",
      { file: at.file },
      {
        reason: `Among the other single changes is no ${quoteText(option)}, so the answer stands with the study as a whole.`,
        hint: `Name both colours as the page of the changes does${first ? `, for example: option: ${first[2].name}` : ""}`,
      },
      "warning",
    );
  });
}

function list(matrix: Matrix | undefined): readonly (readonly [MatrixRow, MatrixCell, NamedChange])[] {
  return (matrix?.rows ?? []).flatMap((row) =>
    row.cells.flatMap((cell) =>
      cell === null
        ? []
        : [[row, cell, { replace: row.hex, with: cell.with, name: `${row.name} to ${cell.name}` }] as const],
    ),
  );
}

function isCalled(text: string | undefined, name: string, hex: Hex): boolean {
  return text === name.toLowerCase() || text === hex;
}
