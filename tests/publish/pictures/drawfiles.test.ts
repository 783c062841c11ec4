// The wall round what is drawn, taken down on purpose: whatever a renderer does for one study, the others are published.
import { mkdtemp, readdir, readFile, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import { pathToFileURL } from "node:url";
import { afterAll, afterEach, beforeAll, describe, expect, test, vi } from "vitest";
import type { Pool, PoolLimits } from "../../../src/analysis/jobs/pool.ts";
import type { GalleryResult, StudyResult } from "../../../src/analysis/result.ts";
import { withOutput } from "../../../src/publish/folder/output.ts";
import { drawFiles, drawStudies, openPool } from "../../../src/publish/pictures/drawfiles.ts";
import { listDrawn } from "../../../src/publish/pictures/drawingrecipe.ts";
import { publishTo } from "../../../src/publish/publishgallery.ts";
import { listWorkers } from "../../analysis/children.ts";
import { translateModules } from "../../faults/child.ts";
import { misdeeds } from "../publisher.ts";
import { makeRoom } from "../room.ts";
import { gallery, study, studyResult } from "../sample.ts";

vi.setConfig({ testTimeout: 240_000 });

/** A study whose original has an id. */
const named = (slug: string, id = slug) => ({
  ...studyResult,
  study: { ...study, slug, file: `content/studies/${slug}/study.md` },
  drawings: {
    ...studyResult.drawings,
    original: studyResult.drawings.original.replace("<path ", `<path id="${id}" `),
  },
});

const galleryOf = (studies: readonly StudyResult[]): GalleryResult & { leftOut: readonly string[] } => ({
  gallery,
  studies,
  problems: [],
  leftOut: [],
});

/** The bad renderer as a child process reads it. */
let programs = "";
beforeAll(async () => {
  programs = await mkdtemp(path.join(tmpdir(), "counterchange-test-"));
  await translateModules(programs, ["publisher"], path.join(import.meta.dirname, ".."));
});
afterAll(() => rm(programs, { recursive: true, force: true }));

const pools: Pool[] = [];
function open(limits: Partial<PoolLimits> = {}): Pool {
  const publisher = pathToFileURL(path.join(programs, "publisher.mjs")).href;
  // All files of a study may take four times as long.
  const pool = openPool({ publisher, size: 2, seconds: 1, megabytes: 600, ...limits });
  pools.push(pool);
  return pool;
}
afterEach(async () => {
  for (const pool of pools.splice(0)) pool.close();
  await vi.waitFor(() => expect(listWorkers()).toEqual([]), { timeout: 10_000 });
});

test("renderers that throw, hang, eat memory, end or refuse: each study is named, the others are published", async () => {
  const studies = [named("first"), ...misdeeds.map((misdeed) => named(misdeed)), named("last")];
  const site = path.join(await makeRoom(), "site");
  const { result } = await withOutput(site, { keepOut: [] }, (output) =>
    publishTo(output, galleryOf(studies), { line: open() }),
  );
  expect(result.problems.map(({ rule, file }) => `${file.split("/")[2]}: ${rule}`).sort()).toEqual([
    "eats: study/too-much-memory",
    "ends: study/crashed",
    "hangs: study/too-slow",
    "refused: study/not-published",
    "throws: study/fault",
  ]);
  for (const { severity, reason } of result.problems) {
    expect(severity).toBe("error");
    expect(reason).toMatch(/\.$/);
  }
  expect(result.leftOut).toEqual([...misdeeds].sort());
  expect((await readdir(path.join(site, "studies"))).sort()).toEqual(["first", "last"]);
  expect((await readdir(path.join(site, "studies/last"))).sort()).toContain("redesign-2000.png");
  const front = await readFile(path.join(site, "index.html"), "utf8");
  expect(front).toContain("studies/first/");
  expect(front).not.toContain("studies/hangs/");
});

test("a trial says of each study what publishing says", async () => {
  const studies = [named("first"), named("throws"), named("refused")];
  const line = open();
  const { problems } = await drawStudies(galleryOf(studies), { line });
  expect(problems.map(({ rule }) => rule).sort()).toEqual(["study/fault", "study/not-published"]);
});

test("thirty studies of one drawing that hangs cost one child", async () => {
  const studies = Array.from({ length: 30 }, (_, index) => named(`study-${index}`, "hangs"));
  const line = open({ seconds: 0.1 });
  const { studies: left, problems } = await drawStudies(galleryOf(studies), { line });
  expect(left).toEqual([]);
  expect(new Set(problems.map(({ rule, file }) => `${rule} ${file}`)).size).toBe(30);
  // Killed, and none started in its place.
  expect(listWorkers()).toEqual([]);
});

describe("files", () => {
  test("come back under their paths, in their order", async () => {
    const files = listDrawn(studyResult, gallery).filter(({ recipe }) => recipe.kind !== "link");
    const subject = { file: "a", drawing: studyResult.drawings.original };
    const { value } = await drawFiles({ line: open() }, subject, files);
    expect(value?.map((file) => file.path)).toEqual(files.map((file) => file.path));
    expect(value?.[0]?.bytes).toBe(studyResult.drawings.original);
    for (const { bytes } of value ?? []) expect(bytes.length).toBeGreaterThan(0);
  });
});

test("studies whose turn to be drawn comes too late are left out, and told once", async () => {
  const late = galleryOf([named("later"), named("late")]);
  const { studies, leftOut, problems } = await drawStudies(late, { line: open(), minutes: 0 });
  expect([studies, leftOut]).toEqual([[], ["late", "later"]]);
  expect(problems).toMatchObject([{ rule: "study/out-of-time", severity: "error", file: "content/studies" }]);
  expect(problems[0]?.reason).toMatch(
    /^The time for drawing, 60 minutes, was over: 2 studies were .*“late”\.$/,
  );
});
