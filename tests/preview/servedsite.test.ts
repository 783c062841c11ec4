// One served site without a server: which version is there when. Edits are told in start.test.ts.
import { expect, onTestFinished, test, vi } from "vitest";
import { type JobKind, type Jobs, runners } from "../../src/analysis/jobs/job.ts";
import { ServedSite } from "../../src/preview/servedsite.ts";
import { templatesDir } from "../../src/publish/renderpages.ts";
import { writeStudy } from "../analysis/fixture.ts";
import { drawing, harbour, makeFolder } from "../content/folder.ts";

vi.setConfig({ testTimeout: 60_000 });

test("a page that is asked for before it is there is answered by the first version that has it", async () => {
  const contentDir = await makeFolder({
    ...harbour,
    "studies/anchor/study.md": writeStudy("title: Anchor"),
    "studies/anchor/original.svg": drawing,
  });
  const told: (readonly [number, boolean])[] = [];
  const site = new ServedSite({
    contentDir,
    templatesDir,
    line: { run: <K extends JobKind>(kind: K, _: string, input: Jobs[K]["input"]) => runners[kind](input) },
    onVersion: (version, problems) => told.push([version.countStudies(), problems !== undefined]),
  });
  onTestFinished(() => site.close());
  const asked = site.askFor("studies/ferry/index.html");
  const front = site.askFor("index.html");
  const missing = site.askFor("studies/none/index.html");
  await site.start();
  expect((await asked).renderPage("studies/ferry/index.html")).toContain("A lighter ferry wheel");
  // What is no page of one study waits for all of them.
  expect((await front).countStudies()).toBe(2);
  expect((await missing).hasPage("studies/none/index.html")).toBe(false);
  await vi.waitUntil(() => told.some(([, isComplete]) => isComplete), { timeout: 30_000 });
  expect(told.at(-1)).toEqual([2, true]);
});
