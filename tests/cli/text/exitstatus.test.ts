import { expect, test } from "vitest";
import { count, countProblems, statusOf, statusOfGallery } from "../../../src/cli/text/exitstatus.ts";
import type { Problem } from "../../../src/problem/problem.ts";

const error: Problem = { rule: "study/unknown-key", severity: "error", file: "a", reason: "" };
const warning: Problem = { ...error, severity: "warning" };

test("the exit status", () => {
  expect(statusOf([])).toBe(0);
  expect(statusOf([warning])).toBe(0);
  expect(statusOf([warning, error])).toBe(1);
  expect(statusOf([error, { ...error, rule: "study/content-missing" }])).toBe(2);
});

test("a drawing that was named to the command and is not there is wrong use, one that a study names is wrong content", () => {
  const missing = { ...error, rule: "study/drawing-missing" };
  expect(statusOf([missing])).toBe(2);
  expect(statusOf([{ ...missing, place: { line: 3, column: 11 } }])).toBe(1);
});

test("a fault of ours is an error of one study in a gallery, and ends a command on one drawing", () => {
  const fault = { ...error, rule: "study/fault" };
  expect([statusOf([fault]), statusOfGallery([fault]), statusOfGallery([fault, warning])]).toEqual([2, 1, 1]);
  expect(statusOfGallery([fault, { ...error, rule: "study/content-missing" }])).toBe(2);
  expect([statusOfGallery([]), statusOfGallery([warning]), statusOfGallery([warning], true)]).toEqual([
    0, 0, 1,
  ]);
});

test("numbers in words", () => {
  expect(countProblems([])).toBe("0 errors, 0 warnings");
  expect(countProblems([error, warning, error])).toBe("2 errors, 1 warning");
  expect(count(1, "study", "studies")).toBe("1 study");
});
