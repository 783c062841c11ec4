// Floor 5. Lines of a file of ballots → votes with their places: rows of a table, or one line for a whole ballot.
import type { Place } from "../../problem/problem.ts";
import type { RawVote } from "./ballot.ts";

/** A vote, and where each of its values stands. */
export interface PlacedVote {
  readonly raw: RawVote;
  readonly places: Readonly<Record<keyof RawVote, Place>>;
}

/** The columns of a table of ballots, in their order. */
export const columns = ["ballot", "series", "study", "choice", "why"] as const;

/** Reads one line, number `line` from 1; undefined where it cannot be read. */
export type RowReader = (text: string, line: number) => readonly PlacedVote[] | undefined;

interface Cell {
  readonly text: string;
  readonly place: Place;
}

/**
 * Returns what reads the rows of a table that begins with the line `first`, with commas, semicolons or tabs, as spreadsheets
 * of several countries write it. Undefined where that does not name the columns.
 *
 * Source: RFC 4180 for commas and quotes.
 */
export function findTableReader(first: string): RowReader | undefined {
  const separator = /[,;\t]/.exec(first)?.[0];
  if (separator === undefined) return undefined;
  const heads = splitRow(first, 1, separator)?.map(({ text }) => text.trim());
  return heads?.join() === columns.join() ? (text, line) => readRow(text, line, separator) : undefined;
}

function readRow(text: string, line: number, separator: string): readonly PlacedVote[] | undefined {
  const cells = splitRow(text, line, separator);
  const [ballot, series, study, choice, why] = cells ?? [];
  if (!ballot || !series || !study || !choice || !why || cells?.length !== columns.length) return undefined;
  return [join({ ballot, series, study, choice, why })];
}

/** Whether a line is meant as a ballot, or as a part of one that a mail program broke. Marks of a quoted mail may stand before it. */
export function isBallotLine(text: string): boolean {
  return /^[>\s]*ballot [0-9a-z]/.test(text) || /\S=(?:original|redesign|neither)(?!\S)/.test(text);
}

/** Reads a line `ballot ID SERIES STUDY=CHOICE "WHY" …`, as a whole ballot. */
export function readLine(text: string, line: number): readonly PlacedVote[] | undefined {
  const [head, marks = "", id = "", slug = ""] = /^([>\s]*)ballot (\S+) (\S+)(?= |$)/.exec(text) ?? [];
  if (head === undefined) return undefined;
  const cell = (value: string, at: number): Cell => ({
    text: value,
    place: { line, column: at + 1, length: Math.max(1, value.length) },
  });
  const [ballot, series] = [cell(id, marks.length + 7), cell(slug, marks.length + 8 + id.length)];
  const one = / ([^ ="]+)=([^ ="]+)(?: ("(?:[^"\\]|\\.)*"))?/y;
  const votes: PlacedVote[] = [];
  one.lastIndex = head.length;
  let end = head.length;
  for (let found = one.exec(text); found !== null; found = one.exec(text)) {
    const [whole, study = "", choice = "", quoted = '""'] = found;
    const why = unquote(quoted);
    if (why === undefined) return undefined;
    const at = found.index + 1;
    const [studyCell, choiceCell] = [cell(study, at), cell(choice, at + study.length + 1)];
    votes.push(join({ ballot, series, study: studyCell, choice: choiceCell, why: cell(why, at) }));
    end = found.index + whole.length;
  }
  return votes.length === 0 || text.slice(end).trim() !== "" ? undefined : votes;
}

function unquote(text: string): string | undefined {
  try {
    return String(JSON.parse(text));
  } catch {
    return undefined;
  }
}

function join(cells: Readonly<Record<keyof RawVote, Cell>>): PlacedVote {
  const { ballot, series, study, choice, why } = cells;
  return {
    raw: { ballot: ballot.text, series: series.text, study: study.text, choice: choice.text, why: why.text },
    places: {
      ballot: ballot.place,
      series: series.place,
      study: study.place,
      choice: choice.place,
      why: why.place,
    },
  };
}

/** Returns the cells of one row, or undefined where a quote is not closed or stands inside a bare cell. */
function splitRow(text: string, line: number, separator: string): readonly Cell[] | undefined {
  const cells: Cell[] = [];
  const cell = separator === "\t" ? /"((?:[^"]|"")*)"|([^"\t]*)/y : /"((?:[^"]|"")*)"|([^",;]*)/y;
  let at = 0;
  while (at <= text.length) {
    cell.lastIndex = at;
    const [whole = "", quoted, bare = ""] = cell.exec(text) ?? [];
    const value = quoted?.replaceAll('""', '"') ?? bare;
    cells.push({ text: value, place: { line, column: at + 1, length: Math.max(1, whole.length) } });
    at += whole.length;
    if (at < text.length && text[at] !== separator) return undefined;
    at += 1;
  }
  return cells;
}
