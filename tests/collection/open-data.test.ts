// Two open collections of real drawings, flag-icons (4x3) and svg-country-flags, through the whole pipeline: all are read,
// every sixteenth is measured here, and every one by `npm run proof`. Nothing is said of any one of them: only what must hold
// for every drawing.
import { readFile } from "node:fs/promises";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { inspectDrawing } from "../../src/analysis/drawing/inspect.ts";
import { tellLost } from "../../src/analysis/drawing/unmeasured.ts";
import { defaultCloth } from "../../src/colour/cloth.ts";
import { measureLooks } from "../../src/measure/measurelooks.ts";
import type { Measure } from "../../src/measure/measurement.ts";
import { readDrawing } from "../../src/svg/gate/sanitise.ts";
import { resolveDrawing } from "../../src/svg/instance.ts";
import { listCollection } from "./files.ts";

interface Row {
  readonly name: string;
  readonly measure: Measure | undefined;
  readonly problems: readonly string[];
  /** Flat colours that show where they are not measured. */
  readonly lost: readonly string[];
  /** Share of the pixels of its label picture that are exact codes. */
  readonly exactShare: number;
  readonly milliseconds: number;
}

const files = listCollection().filter(({ name }) => !name.includes("/1x1/"));
const step = process.env.EVERY_DRAWING === undefined ? 16 : 1;
const tried = files.filter((_, index) => index % step === 0);
const rows: Row[] = [];

/** What `measureDrawing` does, step by step, so that the label map can be looked at on the way. */
async function measureFile(name: string, path: string): Promise<Row> {
  const bytes = await readFile(path);
  const start = performance.now();
  const { value: drawing, problems } = readDrawing(name, bytes);
  const said = problems.map(({ rule }) => rule);
  if (drawing === undefined)
    return {
      name,
      measure: undefined,
      problems: said,
      lost: [],
      exactShare: 0,
      milliseconds: 0,
    };
  const { table, looks, map, proportions, warnings, ground } = await inspectDrawing(resolveDrawing(drawing), {
    distance: 0,
  });
  const measure = measureLooks(
    { file: name, proportions, distance: 0, warnings },
    table,
    looks,
    defaultCloth,
  );
  return {
    name,
    measure,
    problems: said,
    lost: ground.scene.lost.map((each) => tellLost(name, each).reason),
    exactShare: map.exactShare,
    milliseconds: performance.now() - start,
  };
}

const measured = (): readonly (Row & { readonly measure: Measure })[] =>
  rows.flatMap((row) => (row.measure === undefined ? [] : [{ ...row, measure: row.measure }]));

/** Names of the drawings for which `holds` is false. */
const failing = (holds: (measure: Measure, row: Row) => boolean): readonly string[] =>
  measured()
    .filter((row) => !holds(row.measure, row))
    .map(({ name }) => name);

beforeAll(async () => {
  for (const { name, path } of tried) rows.push(await measureFile(name, path));
}, 240_000);

afterAll(() => {
  const times = rows.map(({ milliseconds }) => milliseconds).sort((a, b) => a - b);
  const at = (share: number): string =>
    `${Math.round(times[Math.floor(share * (times.length - 1))] ?? 0)} ms`;
  const lines = [
    ["drawings", rows.length],
    ["measured", measured().length],
    ["at least 99.8 % exact", measured().filter(({ exactShare }) => exactShare >= 0.998).length],
    ["at least 98 % exact", measured().filter(({ exactShare }) => exactShare >= 0.98).length],
    [
      "with a warning",
      measured().filter(({ problems, measure }) => problems.length + measure.warnings.length > 0).length,
    ],
    [
      "with an uneven paint",
      measured().filter(({ measure }) => measure.colours.some(({ uneven }) => uneven !== null)).length,
    ],
    ["median time", at(0.5)],
    ["longest time", at(1)],
  ] as const;
  process.stdout.write(
    `${lines.map(([what, figure]) => `  ${what.padEnd(24)}${String(figure).padStart(8)}`).join("\n")}\n`,
  );
});

describe("every drawing of both collections", () => {
  test("there are over 500 of them, and all are accepted", async () => {
    expect(files.length).toBeGreaterThan(500);
    const refused: string[] = [];
    for (const { name, path } of files)
      if (readDrawing(name, await readFile(path)).value === undefined) refused.push(name);
    expect(refused).toEqual([]);
  });

  test("is measured", () => {
    expect(rows).toHaveLength(Math.ceil(files.length / step));
    expect(
      rows
        .filter(({ measure }) => measure === undefined)
        .map(({ name, problems }) => `${name}: ${problems.join(" ")}`),
    ).toEqual([]);
  });

  test("shows no colour where another is measured", () => {
    expect(failing((_, { lost }) => lost.length === 0)).toEqual([]);
  });

  test("has labels that are exact codes in at least 98 % of the pixels, save one in two hundred", () => {
    const blurred = failing((_, { exactShare }) => exactShare >= 0.98);
    expect(blurred.length).toBeLessThanOrEqual(rows.length / 200);
  });

  test("says so where they are not", () => {
    expect(
      failing(
        (measure, { exactShare }) =>
          exactShare >= 0.98 || measure.warnings.some((warning) => warning.about === "inexact"),
      ),
    ).toEqual([]);
  });

  test("has shares that add up to 1, none of them 0, the largest first", () => {
    expect(
      failing(({ colours }) => {
        const shares = colours.map(({ share }) => share);
        return (
          Math.abs(shares.reduce((sum, share) => sum + share, 0) - 1) < 1e-9 &&
          shares.every((share, index) => share > 0 && share <= (shares[index - 1] ?? 1))
        );
      }),
    ).toEqual([]);
  });

  test("has no figure that is not a number", () => {
    // JSON writes NaN and infinities as null; here only what may be null is.
    const mayBeNull = new Set([
      "clearEdgeShare",
      "clarity",
      "strength",
      "weakestEdge",
      "outlineClear",
      "lastsTo",
      "uneven",
      "tincture",
    ]);
    const isSound = (value: unknown, key: string): boolean => {
      if (typeof value === "number") return Number.isFinite(value);
      if (value === null) return mayBeNull.has(key);
      return (
        typeof value !== "object" || Object.entries(value).every(([inner, part]) => isSound(part, inner))
      );
    };
    expect(failing((measure) => isSound(measure, ""))).toEqual([]);
  });

  test("has figures within their limits", () => {
    const between = (value: number, least: number, most: number): boolean => value >= least && value <= most;
    expect(
      failing(
        ({ edges, clarity, clearEdgeShare, colours }) =>
          edges.every(
            ({ length, contrast, contrastRatio, deltaE00, a, b }) =>
              length >= 0 &&
              between(contrast, 0, 100) &&
              between(contrastRatio, 1, 21) &&
              between(deltaE00, 0, 130) &&
              a !== b,
          ) &&
          colours.every(({ reflectance }) => between(reflectance, 5, 85)) &&
          (clarity === null || between(clarity, 0, 100)) &&
          (clearEdgeShare === null || between(clearEdgeShare, 0, 1)),
      ),
    ).toEqual([]);
  });

  test("has figures of the whole exactly where there is an edge", () => {
    expect(
      failing(({ edges, clarity, strength, clearEdgeShare, weakestEdge }) =>
        [clarity, strength, clearEdgeShare, weakestEdge].every(
          (figure) => (figure === null) === (edges.length === 0),
        ),
      ),
    ).toEqual([]);
  });

  test("has edges between colours of its table, each pair once", () => {
    expect(
      failing(({ colours, edges }) => {
        const ids = new Set(colours.map(({ id }) => id));
        return (
          ids.size === colours.length &&
          edges.every(({ a, b }) => ids.has(a) && ids.has(b)) &&
          new Set(edges.map(({ a, b }) => [a, b].sort().join())).size === edges.length
        );
      }),
    ).toEqual([]);
  });
});
