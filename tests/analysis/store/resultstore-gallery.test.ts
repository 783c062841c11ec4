// Whole galleries with and without what was kept: nothing but the time may differ.
import { cp, mkdir, mkdtemp, readdir, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { afterAll, beforeAll, describe, expect, test, vi } from "vitest";
import { analyseGallery } from "../../../src/analysis/analysegallery.ts";
import { Pool, type PoolLimits } from "../../../src/analysis/jobs/pool.ts";
import { openStore } from "../../../src/analysis/store/resultstore.ts";
import { drawing, harbour, makeFolder } from "../../content/folder.ts";
import { copyDemo } from "../../demo.ts";
import { writeStudy } from "../fixture.ts";
import { here } from "../here.ts";

vi.setConfig({ testTimeout: 120_000 });

/** Computes a gallery with what is kept in `kept`, within limits, and says which jobs a child had to do. */
async function analyse(content: string, kept: string, limits: Partial<PoolLimits> = { size: 1 }) {
  const store = await openStore({ folder: join(kept, "entries"), secretFile: join(kept, "key") });
  if (store === undefined) throw new Error("no store");
  const jobs: string[] = [];
  const recall = store.recall.bind(store);
  vi.spyOn(store, "recall").mockImplementation((question, work) =>
    recall(question, () => {
      jobs.push((question as { kind: string }).kind);
      return work();
    }),
  );
  const line = new Pool(limits, store);
  const result = await analyseGallery(content, { line }).finally(() => line.close());
  await store.close();
  return { result, jobs: jobs.sort() };
}

describe("a small gallery", () => {
  const files = { ...harbour, "flags/pale.svg": drawing.replace("#7a1020", "#fcfcd0") };
  const study = "studies/ferry/study.md";
  const settings = "gallery.yaml";
  const grids = ["grid", "grid", "grid"];

  /** What is kept of the gallery before any edit. */
  let filled = "";
  beforeAll(async () => {
    filled = await mkdtemp(join(tmpdir(), "counterchange-test-"));
    const content = join(filled, "content");
    for (const [path, text] of Object.entries(files)) {
      await mkdir(dirname(join(content, path)), { recursive: true });
      await writeFile(join(content, path), text);
    }
    expect((await analyse(content, filled)).jobs).toEqual(["flag", ...grids, "rank", "study"]);
  });
  afterAll(() => rm(filled, { recursive: true, force: true }));

  test.each<[string, string, (text: string) => string, readonly string[]]>([
    ["the prose", study, (text) => text.replace("dark.", "much too dark."), []],
    ["the title, a line more", study, (text) => text.replace("title: A", "# note\ntitle: No"), []],
    ["the status", study, (text) => text.replace("---\n", "---\nstatus: withdrawn\n"), []],
    ["the gallery's title", settings, (text) => text.replace("Sound", "Bay"), []],
    ["the change", study, (text) => text.replace("#f4c430", "#f4c431"), ["grid", "rank", "study"]],
    [
      "the focus",
      study,
      (text) => text.replace("---\n", '---\nfocus: { select: "#wheel" }\n'),
      ["rank", "study"],
    ],
    [
      "an option",
      study,
      (text) => text.replace("---\n", '---\noptions: [{ replace: "#ffffff", with: "#000" }]\n'),
      ["rank"],
    ],
    ["the viewing distance", settings, (text) => `${text}viewingDistance: 60\n`, ["flag", "rank", "study"]],
    [
      "the cloth",
      settings,
      (text) => `${text}cloth: { black: 4, white: 80 }\n`,
      ["flag", ...grids, "rank", "study"],
    ],
    ["the palette", settings, (text) => `${text}palette: { gold: "#f4c430" }\n`, ["flag", "rank", "study"]],
    ["a flag", "flags/pale.svg", (text) => text.replace("#fcfcd0", "#fcfcd1"), ["flag", "grid"]],
  ])("an edit of %s", async (_, file, edit, expected) => {
    const [content, kept] = [await makeFolder(files), await makeFolder({})];
    await cp(filled, kept, { recursive: true });
    const path = join(content, file);
    const before = await readFile(path, "utf8");
    const after = edit(before);
    expect(after).not.toBe(before);
    await writeFile(path, after);
    const { result, jobs } = await analyse(content, kept);
    expect(jobs).toEqual(expected);
    expect(result.studies).toHaveLength(1);
    // What is new was measured a moment ago; what is kept must be as if it were.
    if (jobs.length === 0) expect(result).toEqual(await analyseGallery(content, { line: here }));
  });

  test("a warning stands where the value stands now", async () => {
    const kept = await makeFolder({});
    const warned = { ...harbour, [study]: writeStudy('change: { replace: "#7a1021", with: "#f4c430" }') };
    const content = await makeFolder(warned);
    const place = ({ result }: Awaited<ReturnType<typeof analyse>>) =>
      result.problems.map((one) => one.place?.line);
    expect(place(await analyse(content, kept))).toEqual([4]);
    await writeFile(join(content, study), warned[study]?.replace("---\n", "---\n# a\n# b\n") ?? "");
    const again = await analyse(content, kept);
    expect([place(again), again.jobs]).toEqual([[6], []]);
    expect(again.result.problems[0]?.sourceLine).toContain("#7a1021");
  });

  test("a study that was stopped is not kept so", async () => {
    const [content, kept] = [await makeFolder(harbour), await makeFolder({})];
    const { result } = await analyse(content, kept, { seconds: 0 });
    expect([result.studies, result.problems.map(({ rule }) => rule)]).toEqual([[], ["study/too-slow"]]);
    expect((await analyse(content, kept)).result.studies).toHaveLength(1);
  });
});

test("two studies of the demo are the same from what was kept, and with every second entry gone", async () => {
  const [content, kept] = [await makeFolder({}), await makeFolder({})];
  await copyDemo(content, ["fourwells", "lockmouth"]);
  const cold = await analyse(content, kept);
  expect(cold.result.studies).toHaveLength(2);
  const warm = await analyse(content, kept);
  expect(warm.jobs).toEqual([]);
  expect(warm.result).toEqual(cold.result);
  const entries = (await readdir(kept, { recursive: true })).filter((name) => name.endsWith(".entry"));
  for (const [index, name] of entries.sort().entries())
    if (index % 2 === 0) await writeFile(join(kept, name), "");
  const half = await analyse(content, kept);
  expect(half.jobs).toHaveLength(Math.ceil(entries.length / 2));
  expect(half.result).toEqual(cold.result);
});
