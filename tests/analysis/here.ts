// A line whose jobs are done in this process.
import { runners } from "../../src/analysis/jobs/job.ts";
import { nameAnswer } from "../../src/analysis/jobs/nameanswer.ts";
import type { Line } from "../../src/analysis/jobs/pool.ts";

export const here: Line = {
  run: async (kind, file, input) => nameAnswer(kind, file, await runners[kind](input)),
};
