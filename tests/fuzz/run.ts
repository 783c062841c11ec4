// npm run fuzz -- [--runs N] [--seed N]: more mutants than the tests try. Prints the seeds of all faults; 1 if any.
import { parseArgs } from "node:util";
import { fuzz } from "./fuzz.ts";

const { values } = parseArgs({
  options: {
    runs: { type: "string", default: "100000" },
    seed: { type: "string", default: "1" },
  },
});
const runs = Number(values.runs);
const first = Number(values.seed);
if (!Number.isInteger(runs) || runs < 1 || !Number.isInteger(first))
  throw new RangeError("--runs and --seed are whole numbers");

const chunk = 10_000;
let faults = 0;
for (let start = first; start < first + runs; start += chunk) {
  const report = await fuzz(start, Math.min(chunk, first + runs - start), 100);
  faults += report.faults.length;
  process.stdout.write(
    `seeds ${start} to ${start + report.runs - 1}: ${report.accepted} accepted, ${report.faults.length} faults, slowest ${Math.round(report.slowestMilliseconds)} ms (seed ${report.slowestSeed})\n`,
  );
  for (const { seed, what } of report.faults) process.stdout.write(`  seed ${seed}: ${what}\n`);
}
process.stdout.write(`${runs} runs, ${faults} faults\n`);
process.exitCode = faults === 0 ? 0 : 1;
