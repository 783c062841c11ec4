import { describe, expect, test } from "vitest";
import type { AnalyseOptions } from "../../../src/analysis/drawing/opendrawing.ts";
import { collectSurvey, surveyFile } from "../../../src/analysis/survey/surveyflags.ts";
import { defaultPalette } from "../../../src/content/gallery/palette.ts";
import { bytesOf, disc, drawing, field, stripes } from "../drawing.ts";

const options: AnalyseOptions = { cloth: { black: 5, white: 85 }, distance: 40, palette: defaultPalette };
const files = [
  { file: "clear.svg", bytes: drawing(field("#ffffff") + disc("#12235c")) },
  { file: "broken.svg", bytes: bytesOf("<svg") },
  { file: "plain.svg", bytes: drawing(field("#c8202f")) },
  { file: "dark.svg", bytes: drawing(field("#141414") + disc("#c8202f")) },
  { file: "another-clear.svg", bytes: drawing(stripes("#ffffff", "#12235c")) },
  { file: "empty.svg", bytes: drawing("") },
];

async function surveyFiles(given: typeof files) {
  const outcomes = given.map(async ({ file, bytes }) => ({
    file,
    outcome: await surveyFile(file, bytes, options),
  }));
  return collectSurvey(await Promise.all(outcomes));
}

describe("collectSurvey", () => {
  test("least clear first, then by file name, flags without an edge last; broken files listed", async () => {
    const survey = await surveyFiles(files);
    expect(survey.flags.map(({ file }) => file)).toEqual([
      "dark.svg",
      "another-clear.svg",
      "clear.svg",
      "plain.svg",
    ]);
    expect(survey.failed.map(({ file, problem }) => `${file} ${problem.severity}`)).toEqual([
      "broken.svg error",
      "empty.svg error",
    ]);
  });

  test("the order of the files changes nothing", async () => {
    expect(await surveyFiles([...files].reverse())).toEqual(await surveyFiles(files));
  });

  test("no files, an empty survey", async () => {
    expect(await surveyFiles([])).toEqual({ flags: [], failed: [] });
  });
});

describe("surveyFile", () => {
  test("a flag with everything there is to say", async () => {
    const { value } = await surveyFile("dark.svg", drawing(field("#141414") + disc("#c8202f")), options);
    expect(value).toMatchObject({
      file: "dark.svg",
      clearEdgeShare: 0,
      weakestEdge: { a: "p1", b: "p2", names: ["black", "red"] },
      // White does for either as much.
      changeFirst: [{ name: "red" }, { name: "black" }],
      bestOption: { clearEdgeShare: 1, mergedOutline: 0 },
      // The disc is 0.6 heights across: past the last step, dark as it is.
      focus: { source: "found", lastsTo: 320 },
    });
    expect(value?.bestOption?.id).toBe(value?.changeFirst?.[0]?.id);
    expect(value?.bestOption).not.toHaveProperty("drawing");
  });

  test("a clear flag needs no change, and says how far its charge lasts", async () => {
    const { value } = await surveyFile("clear.svg", drawing(field("#ffffff") + disc("#12235c")), options);
    // A disc 0.6 heights across is gone from 0.6 / tan(1′) = 2063 heights, past the last step.
    expect(value).toMatchObject({
      clarity: 100,
      clearEdgeShare: 1,
      changeFirst: null,
      bestOption: null,
      focus: { source: "found", clarity: 100, lastsTo: 320 },
    });
  });

  test("one colour: nulls", async () => {
    const { value } = await surveyFile("plain.svg", drawing(field("#c8202f")), options);
    expect(value).toEqual({
      file: "plain.svg",
      clarity: null,
      clearEdgeShare: null,
      weakestEdge: null,
      changeFirst: null,
      bestOption: null,
      focus: { source: "none", clarity: null, lastsTo: null },
    });
  });

  test("never throws, also for a fault of our own", async () => {
    const faulty = { ...options, cloth: { black: 90, white: 10 } };
    const { value, problems } = await surveyFile(
      "dark.svg",
      drawing(field("#141414") + disc("#c8202f")),
      faulty,
    );
    expect(value).toBeUndefined();
    expect(problems).toMatchObject([{ rule: "study/not-drawable", severity: "error", file: "dark.svg" }]);
  });
});

test("collectSurvey names the error of a file, not a warning before it", () => {
  const problemOf = (severity: "error" | "warning") => ({
    rule: `study/${severity}`,
    severity,
    file: "a.svg",
    reason: "…",
  });
  const { failed } = collectSurvey([
    { file: "a.svg", outcome: { value: undefined, problems: [problemOf("warning"), problemOf("error")] } },
  ]);
  expect(failed).toEqual([{ file: "a.svg", problem: problemOf("error") }]);
});
