import { expect, test } from "vitest";
import type { Problem } from "../../src/problem/problem.ts";
import { formatProblem } from "../../src/problem/problemtext.ts";
import { countSeverity, limitProblems, Tally } from "../../src/problem/tally.ts";

const make = (line: number, rule = "svg/removed", file = "a.svg"): Problem => ({
  rule,
  severity: rule === "svg/id" ? "error" : "warning",
  file,
  place: { line, column: 1 },
  reason: "It was removed.",
});
const many = (count: number, rule?: string, file?: string): readonly Problem[] =>
  Array.from({ length: count }, (_, index) => make(index + 1, rule, file));

test("of 200 of a kind the first 20 are told and 180 are counted", () => {
  const limited = limitProblems([...many(200)].reverse());
  expect(limited.slice(0, 20)).toEqual(many(20));
  expect(limited.slice(20).map(formatProblem)).toEqual([
    "a.svg  warning  And 180 more of this kind, svg/removed.  svg/removed",
  ]);
});

test("twenty are told as they are", () => {
  expect(limitProblems(many(20))).toEqual(many(20));
});

test("kinds, severities and files are counted apart, and what counts others stands last in its file", () => {
  const all = [...many(21), ...many(22, "svg/id"), ...many(23, "svg/removed", "b.svg"), make(99, "svg/text")];
  const limited = limitProblems(all);
  expect(limited.flatMap(({ file, rule, more }, index) => (more ? [[index, file, rule, more]] : []))).toEqual(
    [
      [41, "a.svg", "svg/id", 2],
      [42, "a.svg", "svg/removed", 1],
      [63, "b.svg", "svg/removed", 3],
    ],
  );
  expect(countSeverity(limited, "warning")).toBe(21 + 23 + 1);
  expect(countSeverity(limited, "error")).toBe(22);
});

test("what was counted before is added, so that a second time changes nothing", () => {
  const once = limitProblems(many(200));
  expect(limitProblems(once)).toEqual(once);
  expect(countSeverity(limitProblems([...once, ...once]), "warning")).toBe(400);
});

test("of files in one folder that are wrong as wholes 20 are told", () => {
  const stray = (folder: string, index: number): Problem => ({
    rule: "study/unexpected-file",
    severity: "error",
    file: `${folder}/stray-${String(index).padStart(4, "0")}`,
    reason: "It does not belong here.",
  });
  const strays = Array.from({ length: 5000 }, (_, index) => stray("studies/a", index));
  const limited = limitProblems([...strays, stray("studies/b", 1)]);
  expect(limited).toHaveLength(22);
  expect(limited.filter(({ more }) => more).map(formatProblem)).toEqual([
    "studies/a  error  4980 more of this kind, study/unexpected-file, are in this folder.  study/unexpected-file",
  ]);
  expect(countSeverity(limited, "error")).toBe(5001);
  expect(countSeverity(limitProblems(limited), "error")).toBe(5001);
  expect(limitProblems(limited)).toEqual(limited);
});

test("what is told is cut at 2,000 characters", () => {
  const [long] = limitProblems([{ ...make(1), reason: "a".repeat(500_000), hint: "b".repeat(2001) }]);
  expect(long?.reason).toBe(`${"a".repeat(1999)}…`);
  expect(long?.hint).toBe(`${"b".repeat(1999)}…`);
  const [short] = limitProblems([{ ...make(1), reason: "a".repeat(2000) }]);
  expect(short).toEqual({ ...make(1), reason: "a".repeat(2000) });
});

test("one by one they are told as they come", () => {
  const tally = new Tally();
  for (const problem of [...many(25), make(7, "svg/text")]) tally.add(problem);
  expect(tally.problems).toHaveLength(22);
  expect(tally.problems[20]?.more).toBe(5);
});
