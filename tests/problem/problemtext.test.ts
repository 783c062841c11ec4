import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Place, Problem } from "../../src/problem/problem.ts";
import { formatProblem, formatProblems } from "../../src/problem/problemtext.ts";
import { measureColumns } from "../../src/problem/width.ts";

const problem: Problem = {
  rule: "study/unknown-key",
  severity: "error",
  file: "ferry/study.md",
  place: { line: 3, column: 1, length: 7 },
  sourceLine: "orignal: original.svg",
  reason: "A study has no key “orignal”.",
  hint: "Type “original”.",
};

describe("formatProblem", () => {
  test("place, severity, reason and rule, the line with its caret, the hint", () => {
    expect(formatProblem(problem)).toBe(`\
ferry/study.md:3:1  error  A study has no key “orignal”.  study/unknown-key
    orignal: original.svg
    ^^^^^^^
    Type “original”.`);
  });

  test("a problem without a place has no line and no caret", () => {
    const { place: _, sourceLine: __, ...rest } = problem;
    expect(formatProblem(rest)).toBe(`\
ferry/study.md  error  A study has no key “orignal”.  study/unknown-key
    Type “original”.`);
  });

  test("an empty line is not shown", () => {
    expect(formatProblem({ ...problem, sourceLine: "  " }).split("\n")).toHaveLength(2);
  });

  test("a hint of two lines is indented twice", () => {
    expect(formatProblem({ ...problem, hint: "One.\nTwo." })).toMatch(/\n {4}One\.\n {4}Two\.$/);
  });

  test.each<[string, string, Place, string, string]>([
    ["a tab", "\ttitle: x", { line: 1, column: 2, length: 5 }, "     title: x", "     ^^^^^"],
    ["wide characters", "旗: の色 x", { line: 1, column: 4, length: 2 }, "    旗: の色 x", "        ^^^^"],
    ["an accent of its own", "e\u0301e: x", { line: 1, column: 3 }, "    e\u0301e: x", "     ^"],
    ["an emoji", "🏴 x", { line: 1, column: 4 }, "    🏴 x", "       ^"],
    ["a direction control", "a\u202eb c", { line: 1, column: 5 }, "    a\\u202eb c", "             ^"],
    ["a place behind the end", "abc", { line: 1, column: 9 }, "    abc", "       ^"],
  ])("the caret stands right after %s", (_, sourceLine, place, line, caret) => {
    expect(
      formatProblem({ ...problem, sourceLine, place })
        .split("\n")
        .slice(1, 3),
    ).toEqual([line, caret]);
  });

  test("a long line is cut around the caret", () => {
    const sourceLine = `${"a".repeat(300)}HERE${"b".repeat(300)}`;
    const place = { line: 1, column: 301, length: 4 };
    const [, line, caret] = formatProblem({ ...problem, sourceLine, place }).split("\n");
    expect(line).toBe(`    …${"a".repeat(49)}HERE${"b".repeat(45)}…`);
    expect(caret).toBe(`    ${" ".repeat(50)}^^^^`);
  });

  test("a line of 100 columns is shown whole, wherever the caret", () => {
    const sourceLine = `${"a".repeat(99)}b`;
    const [, line, caret] = formatProblem({ ...problem, sourceLine, place: { line: 1, column: 100 } }).split(
      "\n",
    );
    expect(line).toBe(`    ${sourceLine}`);
    expect(caret).toBe(`${" ".repeat(103)}^`);
  });

  // A caret behind the end of a line of 100 columns stands in column 101.
  test("whatever the line, it stays within 100 columns and the caret under it", () => {
    const text = fc.string({
      unit: fc.constantFrom("a", " ", "\t", "旗", "e\u0301", "🏴", "\u0007"),
      maxLength: 300,
      size: "max",
    });
    fc.assert(
      fc.property(text, fc.nat(400), fc.nat(400), (sourceLine, column, length) => {
        const place = { line: 1, column: column + 1, length };
        const lines = formatProblem({ ...problem, sourceLine, place })
          .split("\n")
          .slice(1, -1);
        for (const line of lines) expect(measureColumns(line)).toBeLessThanOrEqual(4 + 101);
      }),
      { numRuns: 50 },
    );
  });
});

test("formatProblems sorts and puts an empty line between two", () => {
  const first = { ...problem, file: "a.md" };
  expect(formatProblems([problem, first])).toBe(`${formatProblem(first)}\n\n${formatProblem(problem)}`);
  expect(formatProblems([])).toBe("");
});
