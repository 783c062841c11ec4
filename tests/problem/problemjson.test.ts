import { expect, test } from "vitest";
import { plainProblem } from "../../src/problem/problemjson.ts";

test("what there is none of is null, and nothing else is in it", () => {
  const base = { rule: "study/link", severity: "error", file: "a", reason: "b" } as const;
  expect(plainProblem(base)).toEqual({ ...base, line: null, column: null, hint: null });
  expect(
    plainProblem({ ...base, place: { line: 3, column: 2, length: 9 }, sourceLine: "x", hint: "c" }),
  ).toEqual({
    ...base,
    line: 3,
    column: 2,
    hint: "c",
  });
});
