// 8,000 mutants of hostile and real drawings: none crashes, hangs or comes out with active content. #security
import { expect, test } from "vitest";
import { fuzz } from "./fuzz.ts";

test("mutants of hostile and real drawings", { timeout: 240_000 }, async () => {
  const report = await fuzz(1, 8_000, 80);
  process.stdout.write(
    `fuzz: ${report.runs} mutants, ${report.accepted} accepted, ${report.rendered} rendered, slowest ${Math.round(report.slowestMilliseconds)} ms\n`,
  );
  expect(report.faults).toEqual([]);
  expect(report.rendered).toBeGreaterThanOrEqual(80);
  // A corpus of which nothing passes would test the first step only.
  expect(report.accepted).toBeGreaterThan(500);
});
