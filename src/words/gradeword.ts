// Floor 7. The messages of grades and outcomes, which many pages say.
import type { Grade } from "../colour/contrast.ts";
import type { Outcome } from "../measure/comparison.ts";
import type { WordId } from "./en/all.ts";

export const gradeIds = {
  weak: "grade.weak",
  soft: "grade.soft",
  clear: "grade.clear",
  strong: "grade.strong",
} as const satisfies Record<Grade, WordId>;

export const outcomeIds = {
  gained: "outcome.gained",
  lost: "outcome.lost",
  better: "outcome.better",
  worse: "outcome.worse",
  same: "outcome.same",
  merged: "outcome.merged",
  parted: "outcome.parted",
} as const satisfies Record<Outcome, WordId>;
