import { expect, test } from "vitest";
import { createReporter } from "../../../src/svg/gate/drawingreport.ts";

test("problems carry file, place and the line they stand on", () => {
  const reporter = createReporter("a.svg", ["<svg>", "  <g/>"]);
  reporter.error("svg/a", { line: 2, column: 3 }, "Reason.", "Hint.");
  reporter.warn("svg/b", undefined, "Reason.");
  expect(reporter.problems).toEqual([
    {
      rule: "svg/a",
      severity: "error",
      file: "a.svg",
      place: { line: 2, column: 3 },
      sourceLine: "  <g/>",
      reason: "Reason.",
      hint: "Hint.",
    },
    { rule: "svg/b", severity: "warning", file: "a.svg", reason: "Reason." },
  ]);
});

test("a place behind the end of the file has no line", () => {
  const reporter = createReporter("a.svg", ["<svg>"]);
  reporter.error("svg/a", { line: 9, column: 1 }, "Reason.");
  expect(reporter.problems[0]).not.toHaveProperty("sourceLine");
});
