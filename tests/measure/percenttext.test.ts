import { describe, expect, test } from "vitest";
import { formatRow } from "../../src/analysis/survey/csv.ts";
import {
  formatContrast,
  formatDifference,
  formatLimit,
  formatPercent,
  formatShare,
  isWhole,
} from "../../src/measure/percenttext.ts";
import { createFormat, plainFormat } from "../../src/words/format.ts";

/** Where a grade, none or the whole begins: the published steps, written here a second time. */
const lines = [0, 30, 45, 60, 100];
const near = lines
  .flatMap((line) =>
    Array.from({ length: 220 }, (_, index) => 10 ** (-index / 28)).flatMap((gap) => [line - gap, line + gap]),
  )
  .filter((value) => value >= 0 && value <= 100);
const halves = Array.from({ length: 2000 }, (_, index) => index / 20);
const rest = 10_000 - near.length - halves.length - lines.length;
const even = Array.from({ length: rest }, (_, index) => (100 * (index + 0.5)) / rest);
/** 10,000 numbers in percent, rising: even steps, halves, and ever nearer to each line from both sides. */
const sweep = [...near, ...halves, ...lines, ...even].sort((a, b) => a - b);

const english = createFormat("en");
const german = createFormat("de");
const read = (text: string) => Number(text.replace(",", ".").replace(/\s?%$/, ""));
const stepOf = (value: number) => [30, 45, 60].filter((step) => value >= step).length;
const endOf = (value: number) => (value === 0 ? "none" : value === 100 ? "whole" : "part");

type Print = (percent: number) => string;

const contrasts: readonly (readonly [string, Print])[] = [
  ["contrast, whole", (value) => formatContrast(value, 0)],
  ["contrast, command", (value) => formatContrast(value)],
  ["contrast, two decimals", (value) => formatContrast(value, 2)],
  ["contrast, page", (value) => english.contrast(value)],
  ["contrast, German page", (value) => german.contrast(value, 1)],
  ["contrast, CSV", (value) => formatRow([value])],
  ["contrast, sentence", (value) => plainFormat.contrast(value)],
];
const parts: readonly (readonly [string, Print])[] = [
  ["clarity, whole", (value) => formatPercent(value, 0)],
  ["clarity, command", (value) => formatPercent(value)],
  ["clarity, page", (value) => english.percent(value)],
  ["clarity, German page", (value) => german.percent(value, 1)],
  ["share, whole", (value) => formatShare(value / 100, 0)],
  ["share, command", (value) => formatShare(value / 100)],
  ["share, page", (value) => english.share(value / 100)],
  ["share, CSV", (value) => String(100 * Number(formatRow([value / 100])))],
  ["share, sentence", (value) => plainFormat.share(value / 100)],
];

describe("of 10,000 numbers", () => {
  test("there are 10,000", () => expect(sweep).toHaveLength(10_000));

  test.each([...contrasts, ...parts])("%s: 0 and 100 only where it is that, rising, near", (_, print) => {
    let last = -1;
    for (const value of sweep) {
      const printed = read(print(value));
      if (endOf(printed) !== endOf(value)) throw new Error(`${value} → ${print(value)}`);
      if (printed < last) throw new Error(`${value} → ${print(value)}, after ${last}`);
      if (Math.abs(printed - value) > 0.5 + 1e-9) throw new Error(`${value} → ${print(value)}`);
      last = printed;
    }
    expect(last).toBe(100);
  });

  test.each(contrasts)("%s: the grade of the unrounded number", (_, print) => {
    const wrong = sweep.filter((value) => stepOf(read(print(value))) !== stepOf(value));
    expect(wrong.map((value) => `${value} → ${print(value)}`)).toEqual([]);
  });

  test("a limit that is printed keeps the limit", () => {
    const wrong = sweep.filter(
      (value) =>
        read(formatLimit(value, "at least")) < value - 1e-9 ||
        read(formatLimit(value, "at most")) > value + 1e-9,
    );
    expect(wrong).toEqual([]);
  });
});

test.each([
  [58.3, "58 %"],
  [58.5, "59 %"],
  [99.4, "99 %"],
  [99.9, "99.9 %"],
  [99.97, "99.97 %"],
  [99.9996, "99.99 %"],
  [0.4, "0.4 %"],
  [0.6, "1 %"],
  [0.004, "0.01 %"],
  [null, "none"],
])("%j percent is %s", (percent, text) => expect(formatPercent(percent, 0)).toBe(text));

test.each([
  [0.6249, "62.5 %"],
  [0.99961, "99.96 %"],
  [1, "100.0 %"],
  [0, "0.0 %"],
  [null, "none"],
])("the share %j is %s", (share, text) => expect(formatShare(share)).toBe(text));

test.each([
  [45.94, "45.9 %"],
  [44.96, "44.96 %"],
  [44.999, "44.99 %"],
  [45.04, "45.0 %"],
])("the contrast %j is %s", (contrast, text) => expect(formatContrast(contrast)).toBe(text));

test("a difference stays on its side of the limit", () => {
  expect([7.94, 7.96, 8, 8.04].map((value) => formatDifference(value, 8))).toEqual([
    "7.9",
    "7.96",
    "8.0",
    "8.0",
  ]);
  expect(formatDifference(7.9999, 8)).toBe("7.99");
});

test("what arithmetic leaves of a sum is no part", () => {
  // Three times a tenth: 0.30000000000000004 of 0.3.
  expect([formatShare(0.3 / (0.1 + 0.2), 0), isWhole(0.3 / (0.1 + 0.2))]).toEqual(["100 %", true]);
  expect([isWhole(0.999), isWhole(0.999999)]).toEqual([false, false]);
});
