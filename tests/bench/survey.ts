// Benchmark: what a flag costs in a survey, as a ratio to what measuring it costs, over an open collection.
import { readdirSync, readFileSync } from "node:fs";
import { measureDrawing } from "../../src/analysis/analyse.ts";
import { surveyFile } from "../../src/analysis/survey/surveyflags.ts";
import { defaultCloth } from "../../src/colour/cloth.ts";
import { defaultPalette } from "../../src/content/gallery/palette.ts";
import { limitThreads } from "../../src/regions/raster.ts";
import { quantile, type Ratio } from "./measure.ts";

const folder = "node_modules/svg-country-flags/svg";
const rounds = 3;

export interface SurveyBench {
  readonly files: number;
  /** Survey ÷ measuring, flag by flag, and all flags together. */
  readonly each: Ratio;
  readonly together: number;
  /** Milliseconds of a flag in a survey, mean: what a long list costs. */
  readonly meanMilliseconds: number;
}

/** Surveys and measures every `every`th file; interleaved, best of three each, one thread. */
export async function benchSurvey(every = 4): Promise<SurveyBench> {
  limitThreads(1);
  const options = { cloth: defaultCloth, palette: defaultPalette, distance: 40 };
  const files = readdirSync(folder)
    .filter((name) => name.endsWith(".svg"))
    .filter((_, index) => index % every === 0)
    .map((name) => readFileSync(`${folder}/${name}`));
  const measured: number[] = [];
  const surveyed: number[] = [];
  for (const bytes of files) {
    let measure = Number.POSITIVE_INFINITY;
    let survey = Number.POSITIVE_INFINITY;
    for (let round = 0; round < rounds; round += 1) {
      measure = Math.min(measure, await time(() => measureDrawing("bench.svg", bytes, options)));
      survey = Math.min(survey, await time(() => surveyFile("bench.svg", bytes, options)));
    }
    measured.push(measure);
    surveyed.push(survey);
  }
  const ratios = surveyed.map((milliseconds, index) => milliseconds / (measured[index] ?? Number.NaN));
  return {
    files: files.length,
    each: { median: quantile(ratios, 0.5), p90: quantile(ratios, 0.9) },
    together: sum(surveyed) / sum(measured),
    meanMilliseconds: sum(surveyed) / files.length,
  };
}

async function time(work: () => Promise<{ readonly value: unknown }>): Promise<number> {
  const start = performance.now();
  const { value } = await work();
  if (value === undefined) throw new Error("a drawing of the collection was refused");
  return performance.now() - start;
}

function sum(values: readonly number[]): number {
  return values.reduce((a, b) => a + b, 0);
}
