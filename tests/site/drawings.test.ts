import { mkdtemp, readdir, readFile, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import { expect, test } from "vitest";
import { cropDrawing, drawingFiles, writeCrops, writeDrawings } from "../../src/site/drawings.ts";
import { analyseStudy } from "../../src/study/analyse.ts";
import { gallery, study, studyResult } from "./sample.ts";

test("every published redesign says that it is unofficial, and no original does", async () => {
  const folder = await mkdtemp(path.join(tmpdir(), "counterchange-drawings-"));
  try {
    const { value } = await analyseStudy(study, Buffer.from(studyResult.drawings.original), gallery);
    if (value === undefined) throw new Error("the sample can be analysed");
    await writeDrawings(value, folder);
    const written = path.join(folder, "studies", "a-square");
    expect((await readdir(written)).sort()).toEqual([...drawingFiles].sort());
    for (const file of drawingFiles) {
      const text = await readFile(path.join(written, file), "utf8");
      expect(/<metadata>Unofficial study/.test(text), file).toBe(file.includes("redesign"));
    }
  } finally {
    await rm(folder, { recursive: true });
  }
});

test("a slug that could leave its folder is refused", async () => {
  const bad = { ...studyResult, study: { ...studyResult.study, slug: "../a" } };
  await expect(writeDrawings(bad, "/nowhere")).rejects.toThrow(RangeError);
});

test("each edge has its detail before and after, and that of a redesign says what it is", async () => {
  const folder = await mkdtemp(path.join(tmpdir(), "counterchange-crops-"));
  try {
    const { value } = await analyseStudy(study, Buffer.from(studyResult.drawings.original), gallery);
    if (value === undefined) throw new Error("the sample can be analysed");
    await writeCrops(value, folder);
    const edges = path.join(folder, "studies", "a-square", "edges");
    expect((await readdir(edges)).sort()).toEqual(["12235c-c8202f", "12235c-ffffff"]);
    const redesign = await readFile(path.join(edges, "12235c-c8202f", "redesign.svg"), "utf8");
    expect(redesign).toContain("<metadata>Unofficial study");
    expect(redesign).toContain('fill="#f4c430"');
  } finally {
    await rm(folder, { recursive: true });
  }
});

test("a detail is the same drawing through a smaller window, wherever its own begins", () => {
  const svg = '<svg xmlns="http://www.w3.org/2000/svg" viewBox="-10 20 60 40"><path d="M0 20h9v9z"/></svg>';
  const detail = cropDrawing(svg, { x: 0.5, y: 0.25, width: 0.6, height: 0.4 });
  expect(detail).toContain('viewBox="10 30 24 16"');
  expect(detail).toContain('d="M0 20h9v9z"');
});
