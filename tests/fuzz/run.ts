// npm run fuzz -- [--runs N] [--seed N]: more mutants than the tests try. Prints the seeds of all faults; 1 if any.
// npm run fuzz -- --large [--seconds N]: every file of the largest size. Prints the slowest, and what is stuck; 1 if any.
// npm run fuzz -- --alike N [--seed N]: so many random drawings in a browser and by the measuring renderer. Prints those that
// differ over more than 0.5 % of the flag; 1 if any.
import { parseArgs } from "node:util";
import { findUnlike } from "./alike.ts";
import { fuzz } from "./fuzz.ts";
import { type Passed, sendLarge } from "./passing.ts";

const { values } = parseArgs({
  options: {
    runs: { type: "string", default: "100000" },
    seed: { type: "string", default: "1" },
    alike: { type: "string" },
    large: { type: "boolean", default: false },
    seconds: { type: "string", default: "20" },
  },
});

async function runMutants(): Promise<number> {
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
  return faults;
}

async function runLarge(): Promise<number> {
  const { passed, stuck } = await sendLarge(0, 1, Number(values.seconds));
  const list = (title: string, by: (one: Passed) => number): void => {
    process.stdout.write(`${title}\n`);
    for (const one of [...passed].sort((a, b) => by(b) - by(a)).slice(0, 20))
      process.stdout.write(
        `  ${(one.milliseconds / 1000).toFixed(2)} s  ${one.bytes} bytes  ${one.size} said  ${one.name}\n`,
      );
  };
  list("slowest", ({ milliseconds }) => milliseconds);
  list("most said", ({ size }) => size);
  for (const name of stuck) process.stdout.write(`stuck: ${name}\n`);
  process.stdout.write(`${passed.length} files, ${stuck.length} stuck\n`);
  return stuck.length;
}

async function runAlike(count: number, seed: number): Promise<number> {
  if (!Number.isInteger(count) || count < 1 || !Number.isInteger(seed))
    throw new RangeError("--alike and --seed are whole numbers");
  const unlike = await findUnlike(seed, count);
  for (const { seed: which, text, share } of unlike)
    process.stdout.write(`seed ${which}: ${(100 * share).toFixed(2)} % differs\n  ${text}\n`);
  process.stdout.write(`${count} accepted drawings of seed ${seed}, ${unlike.length} drawn in two ways\n`);
  return unlike.length;
}

const runChosen = (): Promise<number> => {
  if (values.alike !== undefined) return runAlike(Number(values.alike), Number(values.seed));
  return values.large ? runLarge() : runMutants();
};

process.exitCode = (await runChosen()) === 0 ? 0 : 1;
