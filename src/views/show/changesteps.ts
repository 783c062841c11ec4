// Floor 8. The steps about what else could change: every colour of the flag by every other, and what its author tried.
import type { Format } from "../../words/format.ts";
import type { CellView, MatrixView } from "../study/matrixview.ts";
import type { NotedView } from "../study/optionsview.ts";
import { type Ground, type Told, tellStep } from "./step.ts";

/** Rows and columns of the matrix that are read from the last row of a room (our own judgement); the study's page has all. */
const most = { rows: 5, columns: 10 };

/** The matrix, as far as a projector can show it, then the author's own options one by one. */
export function tellChanges({ result, format, options }: Ground): readonly Told[] {
  if (options === undefined) return [];
  const { ranking } = result;
  const picture = ranking?.matrix?.picture;
  const matrix = options.matrix && narrow(options.matrix);
  const isRanked = matrix?.rows.some(({ cells }) =>
    cells.some((cell) => cell && cell.unranked === undefined),
  );
  return [
    ...(isRanked && matrix && picture !== undefined
      ? [
          tellStep(
            "the-colours",
            format.say("show.colours"),
            { kind: "matrix", matrix, picture },
            describeMatrix(matrix, ranking?.report.clarity ?? null, format),
            options.first,
          ),
        ]
      : []),
    ...options.noted.map((noted) => tellTried(noted, format)),
  ];
}

/** The first rows; of the columns those of the study, of what its author tried and of what is best, then the others. */
function narrow(matrix: MatrixView): MatrixView {
  const rows = matrix.rows.slice(0, most.rows);
  const columnOf = (at: number) => rows.flatMap(({ cells }) => cells[at] ?? []);
  const weigh = (at: number) => Math.min(3, ...columnOf(at).map(weighCell));
  const kept = [...matrix.columns.keys()]
    .filter((at) => columnOf(at).length > 0)
    .sort((one, other) => weigh(one) - weigh(other) || one - other)
    .slice(0, most.columns)
    .sort((one, other) => one - other);
  const pick = <T>(all: readonly T[]): readonly T[] => kept.map((at) => all[at] as T);
  return {
    ...matrix,
    columns: pick(matrix.columns),
    rows: rows.map((row) => ({ ...row, cells: pick(row.cells) })),
  };
}

function weighCell({ isOwn, notes, isBest }: CellView): number {
  return isOwn || notes.length > 0 ? 0 : isBest ? 1 : 2;
}

function describeMatrix({ rows }: MatrixView, clarity: number | null, format: Format): string {
  const cells = rows.flatMap((row) => row.cells.flatMap((cell) => cell ?? []));
  const hasOwn = cells.some(({ isOwn }) => isOwn);
  return format.say(hasOwn ? "show.coloursKeyOwn" : "show.coloursKey", { clarity: format.percent(clarity) });
}

function tellTried(
  { id, change, clause, plate, figures, verdict, note = "" }: NotedView,
  { say }: Format,
): Told {
  const says = say("show.tried", { figures, note }).trim();
  const speech = say("show.triedSaid", { change: clause, verdict, figures });
  return tellStep(id, change, { kind: "flag", plate }, says, speech);
}
