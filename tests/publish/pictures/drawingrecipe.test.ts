import { expect, test } from "vitest";
import { measureStudy } from "../../../src/analysis/jobs/studyjob.ts";
import type { StudyResult } from "../../../src/analysis/result.ts";
import { drawingFiles, listDrawn } from "../../../src/publish/pictures/drawingrecipe.ts";
import { cropDrawing, Easel } from "../../../src/publish/pictures/renderdrawing.ts";
import { here } from "../../analysis/here.ts";
import { makeAll } from "../making.ts";
import { gallery, study, studyResult } from "../sample.ts";

const listKind = (result: StudyResult, kind: string) =>
  listDrawn(result, gallery).filter(({ recipe }) => recipe.kind === kind);

async function analyseSample() {
  const { value } = await measureStudy(here, study, Buffer.from(studyResult.drawings.original), gallery);
  if (value === undefined) throw new Error("the sample can be analysed");
  return value;
}

test("every published redesign says that it is unofficial, and no original does", async () => {
  const made = await makeAll(listKind(await analyseSample(), "drawing"));
  expect([...made.keys()]).toEqual(drawingFiles.map((file) => `studies/a-square/${file}`));
  for (const [file, bytes] of made)
    expect(/<metadata>Unofficial study/.test(bytes.toString()), file).toBe(file.includes("redesign"));
});

test("a slug that could leave its folder is refused", () => {
  const bad = { ...studyResult, study: { ...studyResult.study, slug: "../a" } };
  expect(() => listDrawn(bad, gallery)).toThrow(RangeError);
});

test("each edge has its detail before and after, and that of a redesign says what it is", async () => {
  const made = await makeAll(listKind(await analyseSample(), "crop"));
  const edges = "studies/a-square/edges";
  expect([...made.keys()].sort()).toEqual([
    `${edges}/12235c-c8202f/original.svg`,
    `${edges}/12235c-c8202f/redesign.svg`,
    `${edges}/12235c-ffffff/original.svg`,
    `${edges}/12235c-ffffff/redesign.svg`,
  ]);
  const redesign = made.get(`${edges}/12235c-c8202f/redesign.svg`)?.toString();
  expect(redesign).toContain("<metadata>Unofficial study");
  expect(redesign).toContain('fill="#f4c430"');
});

test("a detail is the same drawing through a smaller window, wherever its own begins", () => {
  const svg = '<svg xmlns="http://www.w3.org/2000/svg" viewBox="-10 20 60 40"><path d="M0 20h9v9z"/></svg>';
  const detail = cropDrawing(new Easel().read(svg), { x: 0.5, y: 0.25, width: 0.6, height: 0.4 });
  expect(detail).toContain('viewBox="10 30 24 16"');
  expect(detail).toContain('d="M0 20h9v9z"');
});

test("the label drawing has a code colour for each paint, and none of the flag's own", async () => {
  const [labels] = [...(await makeAll(listKind(studyResult, "labels"))).values()].map(String);
  const fills = (svg = "") => new Set(svg.match(/#[0-9a-f]{6}/g));
  expect(fills(labels).size).toBe(3);
  for (const hex of fills(studyResult.drawings.original)) expect(labels).not.toContain(hex);
});
