// Benchmark: what measuring a drawing costs, as a ratio to one bare rendering of it, over a whole open collection.
import { readdirSync, readFileSync } from "node:fs";
import { inspectDrawing } from "../../src/analysis/drawing/inspect.ts";
import { defaultCloth } from "../../src/colour/cloth.ts";
import { measureLooks } from "../../src/measure/measurelooks.ts";
import { limitThreads, measuringSize, renderSvg } from "../../src/regions/raster.ts";
import { readDrawing } from "../../src/svg/gate/sanitise.ts";
import { resolveDrawing } from "../../src/svg/instance.ts";
import { writeSized } from "../../src/svg/writesvg.ts";

const folder = "node_modules/svg-country-flags/svg";
const rounds = 5;

export interface Ratio {
  readonly median: number;
  readonly p90: number;
}

export interface MeasureBench {
  readonly files: number;
  /** Milliseconds of one bare rendering, median over the files. */
  readonly bareMilliseconds: number;
  /** Whole measurement ÷ bare rendering: the label rendering, and the true one that every drawing is checked against. */
  readonly whole: Ratio;
  /** The same without how far the focus reads and what is near the limit of sight. */
  readonly core: Ratio;
  /** Each part ÷ bare rendering; `labels` and `colours` render once each. */
  readonly parts: Readonly<Record<string, Ratio>>;
}

/** Measures every `every`th file; bare rendering and measurement interleaved, best of five each, one thread. */
export async function benchMeasure(every = 1): Promise<MeasureBench> {
  limitThreads(1);
  const files = readdirSync(folder)
    .filter((name) => name.endsWith(".svg"))
    .filter((_, index) => index % every === 0);
  const bare: number[] = [];
  const whole: number[] = [];
  const parts = new Map<string, number[]>();
  const core: number[] = [];
  for (const name of files) {
    const best = await benchFile(readFileSync(`${folder}/${name}`));
    bare.push(best.bare);
    let sum = 0;
    for (const [part, milliseconds] of best.parts) {
      parts.set(part, [...(parts.get(part) ?? []), milliseconds / best.bare]);
      sum += milliseconds;
    }
    whole.push(sum / best.bare);
    core.push((sum - (best.parts.get("reads to") ?? 0) - (best.parts.get("near limit") ?? 0)) / best.bare);
  }
  return {
    files: files.length,
    bareMilliseconds: quantile(bare, 0.5),
    whole: ratioOf(whole),
    core: ratioOf(core),
    parts: Object.fromEntries([...parts].map(([part, ratios]) => [part, ratioOf(ratios)])),
  };
}

async function benchFile(
  bytes: Uint8Array,
): Promise<{ readonly bare: number; readonly parts: ReadonlyMap<string, number> }> {
  let bare = Number.POSITIVE_INFINITY;
  let parts = new Map<string, number>();
  let total = Number.POSITIVE_INFINITY;
  for (let round = 0; round < rounds; round += 1) {
    const drawn = readDrawing("bench.svg", bytes).value;
    if (drawn === undefined) throw new Error("a drawing of the collection was refused");
    const { width, height } = measuringSize(drawn.viewBox.width, drawn.viewBox.height);
    const svg = writeSized(drawn, width, height);
    const start = performance.now();
    await renderSvg(svg);
    bare = Math.min(bare, performance.now() - start);
    const timed = await timeParts(bytes);
    const sum = [...timed.values()].reduce((a, b) => a + b, 0);
    if (sum < total) {
      total = sum;
      parts = timed;
    }
  }
  return { bare, parts };
}

async function timeParts(bytes: Uint8Array): Promise<Map<string, number>> {
  const parts = new Map<string, number>();
  let last = performance.now();
  const lap = (part: string): void => {
    const now = performance.now();
    parts.set(part, (parts.get(part) ?? 0) + now - last);
    last = now;
  };
  const drawing = readDrawing("bench.svg", bytes).value;
  if (drawing === undefined) throw new Error("a drawing of the collection was refused");
  const resolved = resolveDrawing(drawing);
  lap("read");
  const { table, looks, proportions, warnings } = await inspectDrawing(resolved, { distance: 40, lap });
  measureLooks({ file: "", proportions, distance: 40, warnings }, table, looks, defaultCloth);
  lap("figures and colour vision");
  return parts;
}

function ratioOf(values: readonly number[]): Ratio {
  return { median: quantile(values, 0.5), p90: quantile(values, 0.9) };
}

export function quantile(values: readonly number[], at: number): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(at * sorted.length))] ?? Number.NaN;
}

export interface GrowthBench {
  /** Height in pixels → milliseconds of measuring (rendering of the labels included) for a million pixels, median. */
  readonly perMegapixel: Readonly<Record<number, number>>;
  /** Resident memory in MB after measuring a part of the collection once and ten times. */
  readonly residentOnce: number;
  readonly residentTenTimes: number;
}

/** Whether time grows with the pixels and memory does not grow with the files. */
export async function benchGrowth(every = 8): Promise<GrowthBench> {
  const files = readdirSync(folder)
    .filter((name) => name.endsWith(".svg"))
    .filter((_, index) => index % every === 0)
    .map((name) => readFileSync(`${folder}/${name}`));
  const perMegapixel: Record<number, number> = {};
  for (const heightPixels of [360, 720, 1440]) {
    const times: number[] = [];
    for (const bytes of files) times.push(await timeAt(bytes, heightPixels));
    perMegapixel[heightPixels] = quantile(times, 0.5);
  }
  const run = async (times: number): Promise<number> => {
    for (let round = 0; round < times; round += 1) for (const bytes of files) await timeAt(bytes, 720);
    globalThis.gc?.();
    return process.memoryUsage().rss / 2 ** 20;
  };
  const residentOnce = await run(1);
  return { perMegapixel, residentOnce, residentTenTimes: await run(10) };
}

async function timeAt(bytes: Uint8Array, heightPixels: number): Promise<number> {
  const drawing = readDrawing("bench.svg", bytes).value;
  if (drawing === undefined) throw new Error("a drawing of the collection was refused");
  const resolved = resolveDrawing(drawing);
  const start = performance.now();
  const { map } = await inspectDrawing(resolved, { distance: 40, heightPixels });
  return (1e6 * (performance.now() - start)) / (map.width * map.height);
}
