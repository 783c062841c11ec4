// Floor 0. What is wrong, where, and how to mend it: problems are plain data and never print themselves.

/** A position in a text file. `line` and `column` count from 1; `length` is in characters (at least 1). */
export interface Place {
  readonly line: number;
  readonly column: number;
  readonly length?: number;
}

export type Severity = "error" | "warning";

/**
 * One thing that is wrong with what an author gave us.
 *
 * `rule` is a permanent id of the form `floor/thing`. `reason` says in one sentence what happened and why, and
 * quotes the value. `hint` says what to type instead. `more` is there where it stands for so many others of its kind. `at` is
 * the dotted path (`change.with`) of a value whose text is not at hand: who has the text puts the place there instead.
 */
export interface Problem extends Partial<Located> {
  readonly rule: string;
  readonly severity: Severity;
  readonly file: string;
  readonly reason: string;
  readonly hint?: string;
  readonly more?: number;
  readonly at?: string;
}

/** What happened and why, in one sentence, and what to type instead. */
export interface Advice {
  readonly reason: string;
  readonly hint: string;
}

/**
 * A place with the text of its line; of a long line with a piece around it, before which the line has `lineOffset`
 * characters.
 */
export interface Located {
  readonly place: Place;
  readonly sourceLine: string;
  readonly lineOffset?: number;
}

/** A value, where there is one, with everything that was noticed on the way to it. */
export interface Outcome<T> {
  readonly value: T | undefined;
  readonly problems: readonly Problem[];
}

/**
 * Returns the problem of `rule`, which is all that makes one. `at` is a file, or a file with the place in it; without a
 * `hint` there is nothing to type.
 */
export function report(
  rule: string,
  at: string | ({ readonly file: string; readonly at?: string } & Partial<Located>),
  { reason, hint }: Pick<Advice, "reason"> & Partial<Advice>,
  severity: Severity = "error",
): Problem {
  const where = typeof at === "string" ? { file: at } : at;
  return { rule, severity, ...where, reason, ...(hint === undefined ? {} : { hint }) };
}

/** Returns whether any of `problems` is an error (a warning lets the work go on). */
export function hasError(problems: readonly Problem[]): boolean {
  return problems.some((problem) => problem.severity === "error");
}

/**
 * Orders problems by file, then place, then rule, by code unit, so that the order is the same on every machine. Those that
 * stand for others come last in their file.
 */
export function compareProblems(a: Problem, b: Problem): number {
  return (
    compareText(a.file, b.file) ||
    Math.sign(a.more ?? 0) - Math.sign(b.more ?? 0) ||
    (a.place?.line ?? 0) - (b.place?.line ?? 0) ||
    (a.place?.column ?? 0) - (b.place?.column ?? 0) ||
    compareText(a.rule, b.rule)
  );
}

/** Orders text by code unit, so that the order is the same on every machine. */
export function compareText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
