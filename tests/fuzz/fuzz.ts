// One run of the fuzzer: mutants of hostile and real drawings through the gate, the writer, the labels and, for some,
// the renderer. Returns what was counted and the first fault of every kind, with the seed that makes it again.
import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { renderSvg } from "../../src/regions/raster.ts";
import { readDrawing } from "../../src/svg/gate/sanitise.ts";
import { resolveDrawing } from "../../src/svg/instance.ts";
import { writeLabels } from "../../src/svg/labeldrawing.ts";
import { findPaints } from "../../src/svg/paint.ts";
import type { Drawing } from "../../src/svg/tree.ts";
import { writeDrawing, writeSized } from "../../src/svg/writesvg.ts";
import { listCollection } from "../collection/files.ts";
import { findActive } from "../hostile/active.ts";
import { createRandom, mutate } from "./mutate.ts";

export interface Fault {
  readonly seed: number;
  readonly what: string;
}

export interface Report {
  readonly runs: number;
  readonly accepted: number;
  readonly rendered: number;
  /** Renderings that librsvg refused with an error, which is an answer and no fault. */
  readonly refused: number;
  readonly slowestMilliseconds: number;
  readonly slowestSeed: number;
  readonly faults: readonly Fault[];
}

const hangMilliseconds = 5000;

/** Returns the files that are mutated: all hostile drawings, and every eighth real one. */
export function readCorpus(): readonly Buffer[] {
  const folder = fileURLToPath(new URL("../hostile/svg/", import.meta.url));
  const hostile = readdirSync(folder).map((name) => readFileSync(folder + name));
  const real = listCollection().flatMap(({ path }, index) => (index % 8 === 0 ? [readFileSync(path)] : []));
  // Small files are the better half of the corpus: a mutation hits something in them.
  return [...hostile, ...hostile, ...real.filter(({ length }) => length < 20_000), ...real];
}

/** Runs the seeds from `first` on. Up to `renderings` mutants that passed are rendered, evenly spread. */
export async function fuzz(first: number, runs: number, renderings: number): Promise<Report> {
  const corpus = readCorpus();
  const faults: Fault[] = [];
  const counted = {
    accepted: 0,
    rendered: 0,
    refused: 0,
    slowestMilliseconds: 0,
    slowestSeed: first,
  };
  for (let seed = first; seed < first + runs; seed += 1) {
    const bytes = mutate(corpus, createRandom(seed));
    const start = performance.now();
    const { drawing, fault } = tryDrawing(bytes);
    if (fault !== undefined) faults.push({ seed, what: fault });
    if (drawing !== undefined) {
      counted.accepted += 1;
      if (counted.rendered < (renderings * (seed - first + 1)) / runs) {
        counted.rendered += 1;
        if (!(await isDrawable(drawing))) counted.refused += 1;
      }
    }
    const milliseconds = performance.now() - start;
    if (milliseconds > hangMilliseconds) faults.push({ seed, what: `took ${Math.round(milliseconds)} ms` });
    if (milliseconds > counted.slowestMilliseconds)
      Object.assign(counted, {
        slowestMilliseconds: milliseconds,
        slowestSeed: seed,
      });
  }
  return { runs, faults, ...counted };
}

/** Reads and writes one file. `fault` says what should not have happened. */
export function tryDrawing(bytes: Uint8Array): {
  readonly drawing?: Drawing;
  readonly fault?: string;
} {
  try {
    const { value, problems } = readDrawing("mutant.svg", bytes);
    if (value === undefined) {
      return problems.some(({ severity }) => severity === "error")
        ? {}
        : { fault: "refused without an error" };
    }
    const written = writeDrawing(value);
    const active = findActive(written);
    if (active !== undefined) return { fault: `active content: ${active}` };
    const again = readDrawing("mutant.svg", Buffer.from(written));
    if (again.value === undefined)
      return {
        fault: `refuses its own output: ${again.problems.find(({ severity }) => severity === "error")?.reason}`,
      };
    if (writeDrawing(again.value) !== written) return { fault: "writes its own output otherwise" };
    const labels = writeLabels(findPaints(resolveDrawing(value)), 90, 60);
    const activeLabel = findActive(labels);
    return activeLabel === undefined
      ? { drawing: value }
      : { fault: `active content in labels: ${activeLabel}` };
  } catch (error) {
    return {
      fault: error instanceof Error ? (error.stack ?? error.message) : String(error),
    };
  }
}

async function isDrawable(drawing: Drawing): Promise<boolean> {
  try {
    await renderSvg(writeSized(drawing, 180, 120));
    return true;
  } catch {
    return false;
  }
}
