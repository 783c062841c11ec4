import { mkdtemp, readdir, readFile, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import { expect, test } from "vitest";
import { drawingFiles, markUnofficial, writeDrawings } from "../../src/site/drawings.ts";
import { studyResult } from "./sample.ts";

test("every redesign says that it is unofficial, and no original does", async () => {
  const folder = await mkdtemp(path.join(tmpdir(), "counterchange-drawings-"));
  try {
    await writeDrawings(studyResult, folder);
    const written = path.join(folder, "studies", "a-square");
    expect((await readdir(written)).sort()).toEqual([...drawingFiles].sort());
    for (const file of drawingFiles) {
      const text = await readFile(path.join(written, file), "utf8");
      expect(text.includes("Unofficial study"), file).toBe(file.includes("redesign"));
    }
  } finally {
    await rm(folder, { recursive: true });
  }
});

test("the sentence stands after an XML declaration, which must come first", () => {
  expect(markUnofficial('<?xml version="1.0"?>\n<svg/>')).toMatch(
    /^<\?xml version="1.0"\?>\n<!-- Unofficial .* -->\n<svg\/>$/,
  );
  expect(markUnofficial("<svg/>")).toMatch(/^<!-- Unofficial .* -->\n<svg\/>$/);
});

test("a slug that could leave its folder is refused", async () => {
  const bad = { ...studyResult, study: { ...studyResult.study, slug: "../a" } };
  await expect(writeDrawings(bad, "/nowhere")).rejects.toThrow(RangeError);
});
