// A few drawings of both collections; npm run truth takes all of them, and looks at their focus at twice the height.
import { expect, test } from "vitest";
import { checkJudgements } from "./judgement.ts";

test("what is said of real drawings agrees with their marks, and with their redesigns' own files", async () => {
  const found = await checkJudgements(120, 13, false);
  expect(found.files).toBeGreaterThan(5);
  expect(found.compared).toBeGreaterThan(10);
  expect(found.wrongExclusions).toEqual([]);
  expect(found.wrongOptions).toEqual([]);
  expect(found.wrongVerdicts).toEqual([]);
  expect(found.disagreements).toEqual([]);
}, 240_000);
