import { mkdtemp, readdir, readFile, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import { expect, test } from "vitest";
import { drawingFiles, writeDrawings } from "../../src/site/drawings.ts";
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
