// Floor 2. Cuts ranges out of a text and puts others in, by offset; the rest stays letter for letter.

/** Returns `text` without the ranges of `cuts`. */
export function cut(text: string, cuts: readonly { readonly start: number; readonly end: number }[]): string {
  let result = "";
  let from = 0;
  for (const range of [...cuts].sort((a, b) => a.start - b.start)) {
    if (range.start > from) result += text.slice(from, range.start);
    from = Math.max(from, range.end);
  }
  return result + text.slice(from);
}

/** A range of a text (offsets from 0) and what is to stand there. */
export interface Splice {
  readonly start: number;
  readonly end: number;
  readonly text: string;
}

/** Returns `text` with every splice applied; splices may come in any order but must not overlap. */
export function splice(text: string, splices: readonly Splice[]): string {
  let result = text;
  for (const { start, end, text: next } of [...splices].sort((a, b) => b.start - a.start)) {
    result = result.slice(0, start) + next + result.slice(end);
  }
  return result;
}
