import { describe, expect, test } from "vitest";
import { locate } from "../../src/problem/locate.ts";
import { formatProblem } from "../../src/problem/problemtext.ts";

const problem = { rule: "svg/a", severity: "error", file: "a.svg", reason: "Reason." } as const;

test("a line that anyone writes is kept whole", () => {
  const place = { line: 3, column: 990 };
  expect(locate("a".repeat(1000), place)).toEqual({ place, sourceLine: "a".repeat(1000) });
});

describe("of a line of 512 KB", () => {
  const line = `${"a".repeat(300_000)}<text/>${"b".repeat(223_000)}`;
  test.each([
    ["the middle", 300_001, 299_600],
    ["the beginning", 1, undefined],
    ["the end", line.length, line.length - 1000],
    ["beyond its end", 2 * line.length, line.length - 1000],
  ])("a thousand characters are kept, with the place in %s", (_, column, offset) => {
    const located = locate(line, { line: 1, column });
    expect(located.sourceLine).toBe(line.slice(offset ?? 0, (offset ?? 0) + 1000));
    expect(located.lineOffset).toBe(offset);
  });

  test("the caret stands under what is meant, as in the whole line", () => {
    const place = { line: 1, column: 300_001, length: 7 };
    const shown = formatProblem({ ...problem, ...locate(line, place) });
    expect(shown).toBe(formatProblem({ ...problem, place, sourceLine: line }));
    const [where, text = "", caret = ""] = shown.split("\n");
    expect(where).toContain("a.svg:1:300001  error");
    expect(text.slice(caret.indexOf("^"), caret.lastIndexOf("^") + 1)).toBe("<text/>");
  });
});
