import { expect, test } from "vitest";
import { analyseGallery } from "../../../src/analysis/analysegallery.ts";
import { budget, folderOfStudies, keepWithin, outOfTime } from "../../../src/content/folder/gallerybudget.ts";
import type { Entry } from "../../../src/content/folder/listing.ts";
import { writeStudy } from "../../analysis/fixture.ts";
import { drawing, makeFolder } from "../folder.ts";

const entries = (count: number): readonly Entry[] =>
  Array.from({ length: count }, (_, index) => ({
    name: `a${String(count - index).padStart(5, "0")}`,
    kind: "folder" as const,
  }));

test("beyond the budget of a folder the first entries by name are kept, and it is told once", () => {
  const { entries: kept, problems } = keepWithin("content/studies", entries(budget.folders + 2), "folders");
  expect([kept.length, kept[0]?.name, kept.at(-1)?.name]).toEqual([5000, "a00001", "a05000"]);
  expect(problems).toMatchObject([
    {
      rule: "study/too-many-folders",
      severity: "error",
      file: "content/studies",
      hint: "Move 2 of them elsewhere.",
    },
  ]);
  expect(problems[0]?.reason).toContain(
    "5002 files and folders here; at most 5000 are read, the first by name",
  );
  const whole = entries(budget.folders);
  expect(keepWithin("content/studies", whole, "folders")).toEqual({ entries: whole, problems: [] });
});

test("a study with too many files is left out; a folder of drawings is read in part, with a warning", () => {
  const study = keepWithin("studies/a", entries(budget.files + 1), "files").problems;
  expect(study[0]).toMatchObject({ rule: "study/too-many-files", severity: "error" });
  expect(study[0]?.reason).toContain("so the study is left out");
  const [flags] = keepWithin("flags", entries(budget.drawings + 1), "drawings").problems;
  expect(flags).toMatchObject({ rule: "study/too-many-files", severity: "warning" });
});

test("studies that were not begun in time are counted, and the first is named", () => {
  const folder = folderOfStudies("content/studies/b/study.md");
  const problem = outOfTime(folder, ["b", "a"], "measuring");
  expect(problem.file).toBe("content/studies");
  expect(problem.reason).toBe(
    "The time for measuring, 60 minutes, was over: 2 studies were not begun and left out, the first by name “a”.",
  );
  expect(outOfTime(folder, ["b"], "drawing").reason).toMatch(/^The time for drawing.* 1 study was not begun/);
});

test("a gallery whose time is over leaves the rest out and ends", async () => {
  const folder = await makeFolder({
    "gallery.yaml": "title: A\naddress: https://flags.example/\n",
    "studies/ferry/study.md": writeStudy(),
    "studies/ferry/original.svg": drawing,
    "flags/late.svg": drawing,
  });
  const { studies, leftOut, problems } = await analyseGallery(folder, { minutes: 0 });
  expect([studies, leftOut]).toEqual([[], ["ferry"]]);
  const told = problems.filter(({ rule }) => rule === "study/out-of-time");
  expect(told.map(({ severity, reason }) => [severity, /“.*”/.exec(reason)?.[0]]).sort()).toEqual([
    ["error", "“ferry”"],
    ["warning", "“late.svg”"],
  ]);
});
