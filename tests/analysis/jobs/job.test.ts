// A job is the function it names, and what it returns can travel between processes as it is.
import { describe, expect, test } from "vitest";
import { compareDrawing, measureDrawing } from "../../../src/analysis/analyse.ts";
import { runners } from "../../../src/analysis/jobs/job.ts";
import type { Line } from "../../../src/analysis/jobs/pool.ts";
import { measureStudy, rankChanges } from "../../../src/analysis/jobs/studyjob.ts";
import { defaultCloth } from "../../../src/colour/cloth.ts";
import { loadGallery, readOriginal } from "../../../src/content/folder/loadgallery.ts";
import { harbour, makeFolder } from "../../content/folder.ts";
import { here } from "../here.ts";
import { disc, draw, field, red, white, yellow } from "../sight.ts";

const options = { cloth: defaultCloth, distance: 40, palette: new Map<string, string>() };
const bytes = draw(field(white) + disc(150, 100, 50, red));

const travelling: Line = {
  run: async (kind, file, input) => {
    const outcome = await here.run(kind, file, structuredClone(input));
    expect(structuredClone(outcome)).toStrictEqual(outcome);
    return outcome;
  },
};

describe("runners", () => {
  test("measure", async () => {
    const outcome = await runners.measure({ bytes, options });
    expect(outcome.value?.colours.map(({ hex }) => hex)).toEqual([white, red]);
    expect(outcome).toEqual(await measureDrawing("", bytes, options));
    expect(structuredClone(outcome)).toStrictEqual(outcome);
  });

  test("compare", async () => {
    const change = { replace: red, with: yellow };
    const outcome = await runners.compare({ bytes, change, options });
    expect(outcome.value?.comparison.edges.map((edge) => edge.outcome)).toEqual(["lost"]);
    expect(outcome).toEqual(await compareDrawing("", bytes, change, options));
    expect(structuredClone(outcome)).toStrictEqual(outcome);
  });

  test("a focus as typed is a colour or a selector, as the drawing has it", async () => {
    const sourceOf = async (focus: string) => (await runners.measure({ bytes, options, focus })).value?.focus;
    // A disc of radius 50 in 300 × 200, by its colour and by its id.
    for (const focus of [red, "#d"]) {
      const seen = await sourceOf(focus);
      expect(seen?.source).toBe("named");
      expect(Math.abs((seen?.share ?? 0) - (Math.PI * 2500) / 60_000)).toBeLessThan(0.002);
    }
    expect((await sourceOf(white))?.share).toBeGreaterThan(0.8);
  });

  test("sift: the drawing as we write it, or its problems", async () => {
    const { value, problems } = await runners.sift({ bytes });
    expect(problems).toEqual([]);
    expect(value).toContain("<circle");
    expect((await runners.sift({ bytes: new TextEncoder().encode("<svg") })).value).toBeUndefined();
  });

  test("study: the input travels too, with its palette", async () => {
    const { gallery, studies } = await loadGallery(await makeFolder(harbour));
    const [study] = studies;
    if (study === undefined) throw new Error("the harbour has a study");
    const drawn = await readOriginal(study);
    const outcome = await measureStudy(travelling, study, drawn, gallery);
    expect(outcome.problems).toEqual([]);
    // Yellow #f4c430 for the dark ground behind a white wheel.
    expect(outcome.value?.change).toEqual({ replace: "#7a1020", with: "#f4c430" });
    expect(outcome.value?.comparison.edges.map((edge) => edge.outcome)).toEqual(["lost"]);
    if (outcome.value === undefined) throw new Error("the harbour can be computed");
    const ranked = await rankChanges(travelling, outcome.value, drawn, gallery);
    expect(ranked.value?.matrix).toBeDefined();
    expect(ranked.value?.report.options.some((option) => "drawing" in option)).toBe(false);
  });

  test("problems come back as problems", async () => {
    const outcome = await runners.measure({ bytes: new TextEncoder().encode("<svg"), options });
    expect(outcome).toMatchObject({
      value: undefined,
      problems: [{ rule: "svg/not-well-formed", file: "" }],
    });
  });

  test("options, survey and clean", async () => {
    const ranked = await runners.options({ bytes, options });
    expect(ranked.value).toMatchObject({ changeFirst: null });
    expect(ranked.value?.clarity).toBeCloseTo(100, 9);
    const flag = await runners.survey({ bytes, options });
    expect(flag.value).toMatchObject({ clarity: 100, weakestEdge: { names: ["white", "red"] } });
    const clean = await runners.sift({ bytes });
    expect(clean.value).toMatch(/^<svg /);
    for (const outcome of [ranked, flag, clean]) expect(structuredClone(outcome)).toStrictEqual(outcome);
  });

  test("flag and grid: for the survey and for likeness", async () => {
    const flag = await runners.flag({ bytes, options });
    expect(flag.value?.flag).toMatchObject({ clarity: 100 });
    expect(flag.value?.drawing).toContain("<circle");
    // 300 × 200 in 24 × 16 cells; the disc of radius 50 covers the middle and no corner.
    const grid = await runners.grid({ bytes, cloth: defaultCloth });
    expect(grid.value?.cells).toHaveLength(24 * 16);
    expect(grid.value?.cells[8 * 24 + 12]).not.toBe(grid.value?.cells[0]);
    for (const outcome of [flag, grid]) expect(structuredClone(outcome)).toStrictEqual(outcome);
  });

  test("a focus as typed", async () => {
    const { value } = await runners.measure({ bytes, options, focus: red });
    expect(value?.focus.source).toBe("named");
  });
});
