// Floor 2, part of step 2. Lists of numbers that make the geometry: path data, points, transforms and viewBoxes, read by
// their grammar to the last character and written in one way, since programs differ in what they make of an error.

import type { ViewBox } from "../tree.ts";
import { limit } from "./drawinglimit.ts";
import { remember } from "./remember.ts";

/** What is written; where there is an error instead, `at` is its offset in the text. */
export type Reading = { readonly text: string } | { readonly at: number };

/** How many numbers stand behind a command; a repetition has as many again (SVG 2, section 9.3.9). */
const counts: Readonly<Record<string, number>> = {
  m: 2,
  l: 2,
  h: 1,
  v: 1,
  c: 6,
  s: 4,
  q: 4,
  t: 2,
  a: 7,
  z: 0,
};

/** How many numbers stand in the brackets of a function (SVG 1.1, section 7.6). */
const functions: Readonly<Record<string, readonly number[]>> = {
  matrix: [6],
  translate: [1, 2],
  scale: [1, 2],
  rotate: [1, 3],
  skewX: [1],
  skewY: [1],
};

/** Goes along a text by the tokens that all these lists share. */
class Scanner {
  private readonly text: string;
  at = 0;

  constructor(text: string) {
    this.text = text;
  }

  get isDone(): boolean {
    return this.at >= this.text.length;
  }

  /** Takes what `pattern`, which is sticky, finds here. */
  take(pattern: RegExp): string | undefined {
    pattern.lastIndex = this.at;
    const found = pattern.exec(this.text)?.[0];
    if (found !== undefined) this.at += found.length;
    return found;
  }

  blanks(): void {
    this.take(/[ \t\n\r\f]*/y);
  }

  /** Takes what may part two values: blanks with one comma at most. */
  parting(): void {
    this.blanks();
    if (this.take(/,/y) !== undefined) this.blanks();
  }

  /**
   * Takes values as long as there are some, `count` at a time; undefined, at the first that is not right, where that is not
   * so. `isFlag` says which of them are 0 or 1 without a sign.
   */
  values(count: number, isFlag: (index: number) => boolean = () => false): readonly string[] | undefined {
    const values: string[] = [];
    for (;;) {
      const start = this.at;
      const found = this.take(isFlag(values.length % count) ? flag : number)?.replace(/^[ \t\n\r\f,]+/, "");
      const isFirst = values.length === 0;
      if (found !== undefined && isPlain(found) && !(isFirst && this.text.startsWith(",", start)))
        values.push(found.startsWith("+") ? found.slice(1) : found);
      else {
        this.at = start;
        if (!isFirst && found === undefined && values.length % count === 0) return values;
        if (isFirst) this.blanks();
        else this.parting();
        return undefined;
      }
    }
  }
}

/** Behind what parts it from the value before: blanks with one comma at most (SVG 2, section 9.3.9). */
const number = /[ \t\n\r\f]*(?:,[ \t\n\r\f]*)?[+-]?(?:\d+(?:\.\d+)?|\.\d+)(?:[eE][+-]?\d+)?/y;
const flag = /[ \t\n\r\f]*(?:,[ \t\n\r\f]*)?[01]/y;

/** Whether a number is one that every program can hold. */
function isPlain(digits: string): boolean {
  return digits.length <= 60 && !/[eE][+-]?(?:[1-9]\d{2}|\d{4})/.test(digits);
}

/** Reads path data; `none` is nothing. */
export const readPath = remember((text: string): Reading => {
  const scanner = new Scanner(text);
  let written = "";
  scanner.blanks();
  if (scanner.take(/none[ \t\n\r\f]*$/y) !== undefined) return { text: "" };
  while (!scanner.isDone) {
    const command = scanner.take(written === "" ? /[Mm]/y : /[MmZzLlHhVvCcSsQqTtAa]/y);
    scanner.blanks();
    const values = command === undefined ? undefined : readArguments(scanner, command.toLowerCase());
    if (values === undefined) return { at: scanner.at };
    written += `${command}${joinNumbers(values)}`;
    scanner.blanks();
  }
  return { text: written };
});

/** The smallest radius of an arc that is none: below it one renderer draws a line, where another makes the arc larger. */
const leastRadius = 1e-4;

function readArguments(scanner: Scanner, command: string): readonly string[] | undefined {
  const count = counts[command] ?? 0;
  if (count === 0) return [];
  const values = scanner.values(count, (index) => command === "a" && (index === 3 || index === 4));
  const isVanishing = (value: string, index: number): boolean =>
    index % count < 2 && Number(value) !== 0 && Math.abs(Number(value)) < leastRadius;
  return command === "a" && values?.some(isVanishing) ? undefined : values;
}

/** Reads points; there may be none. */
export function readPoints(text: string): Reading {
  const scanner = new Scanner(text);
  scanner.blanks();
  if (scanner.isDone) return { text: "" };
  const values = scanner.values(2);
  scanner.blanks();
  // The measuring renderer draws nothing where two numbers stand without a blank: "0-100".
  return values !== undefined && scanner.isDone ? { text: values.join(" ") } : { at: scanner.at };
}

/** Writes numbers with a blank between two only where they would run together: a path must not grow beyond its limit. */
function joinNumbers(values: readonly string[]): string {
  let written = values[0] ?? "";
  for (let index = 1; index < values.length; index += 1) {
    const [before, next] = [values[index - 1] as string, values[index] as string];
    const isApart = next.startsWith("-") || (next.startsWith(".") && before.includes("."));
    written += isApart ? next : ` ${next}`;
  }
  return written;
}

/** Returns the numbers in what is written so. */
export function splitNumbers(text: string): readonly number[] {
  return (text.match(/-?(?:\d+(?:\.\d+)?|\.\d+)(?:[eE][+-]?\d+)?/g) ?? []).map(Number);
}

/** Reads a list of transform functions, each with as many numbers as it takes; there may be none. */
export function readTransform(text: string): Reading {
  const scanner = new Scanner(text);
  const written: string[] = [];
  scanner.blanks();
  while (!scanner.isDone) {
    const start = scanner.at;
    const name = scanner.take(/(?:matrix|translate|scale|rotate|skew[XY])/y) ?? "";
    scanner.blanks();
    if (scanner.take(/\([ \t\n\r\f]*/y) === undefined) return { at: start };
    const values = scanner.values(1);
    scanner.blanks();
    if (values === undefined || scanner.take(/\)/y) === undefined) return { at: scanner.at };
    if (functions[name]?.includes(values.length) !== true) return { at: start };
    if (/^(?:rotate|skew.)$/.test(name) && Math.abs(Number(values[0])) > limit.angle) return { at: start };
    written.push(`${name}(${values.join(" ")})`);
    const end = scanner.at;
    scanner.parting();
    if (scanner.isDone && text.slice(end).includes(",")) return { at: end };
  }
  return { text: written.join(" ") };
}

/** Returns four finite numbers as a rectangle, or undefined. */
export function readViewBox(text: string): ViewBox | undefined {
  const scanner = new Scanner(text);
  scanner.blanks();
  const values = scanner.values(4);
  scanner.blanks();
  if (values?.length !== 4 || !scanner.isDone) return undefined;
  const [x = 0, y = 0, width = 0, height = 0] = values.map(Number);
  return { x, y, width, height };
}
