// Slices of a small gallery, without children: who has which study, whatever is broken, and what is told.
import { cp, rm, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { expect, test, vi } from "vitest";
import { analyseSlice } from "../../src/analysis/analyseslice.ts";
import type { JobKind, Jobs } from "../../src/analysis/jobs/job.ts";
import type { Line } from "../../src/analysis/jobs/pool.ts";
import { fingerprint } from "../../src/analysis/store/fingerprint.ts";
import { type Outcome, report } from "../../src/problem/problem.ts";
import { makeFolder } from "../content/folder.ts";
import { makeDivided } from "../slices/gallery.ts";
import { here } from "./here.ts";

vi.setConfig({ testTimeout: 60_000 });

/** Each job is done once for all tests. */
const done = new Map<string, Promise<Outcome<unknown>>>();
const once: Line = {
  run: async <K extends JobKind>(kind: K, file: string, input: Jobs[K]["input"]) => {
    const key = fingerprint([kind, file.split("/").slice(-3), input]);
    const answer = done.get(key) ?? here.run(kind, file, input);
    done.set(key, answer);
    return answer as Promise<Outcome<Jobs[K]["output"]>>;
  },
};

/** The slices of `count`: the studies of each, the jobs it asks for, and the rules of its problems with their files. */
async function divide(content: string, count: number, drafts = false) {
  const slices = [];
  for (let index = 1; index <= count; index += 1) {
    const [slugs, jobs]: [string[], string[]] = [[], []];
    const line: Line = {
      run: (kind, file, input) => {
        jobs.push(`${kind} ${file.replace(/^.*\/(?=[^/]+\/[^/]+$)/, "")}`);
        return once.run(kind, file, input);
      },
    };
    const use = async ({ study }: { readonly study: { readonly slug: string } }) => {
      slugs.push(study.slug);
      return [];
    };
    const { studies, flags, problems } = await analyseSlice(content, { index, count }, { line, drafts, use });
    expect(studies).toBe(slugs.length);
    const told = problems.map(({ rule, file }) => `${rule} ${file.slice(content.length + 1)}`);
    slices.push({ slugs: slugs.sort(), flags, jobs, told });
  }
  return slices;
}

const content = () => makeFolder(makeDivided()).then((root) => join(root, "content"));

test("every third folder by name; the broken one counts, and is told in its slice alone", async () => {
  const slices = await divide(await content(), 3);
  expect(slices.map(({ slugs }) => slugs)).toEqual([["study-0"], ["study-1", "study-4"], []]);
  expect(slices.map(({ told }) => told)).toEqual([[], [], ["study/colour-absent studies/study-2/study.md"]]);
});

test("flags are divided by their own lists, without those that a study shows", async () => {
  const slices = await divide(await content(), 2);
  const ofFlags = slices.map(({ jobs }) => jobs.filter((job) => !job.includes("study-")).sort());
  // Study 4 shows a flag of flags/.
  expect(ofFlags).toEqual([
    [
      "flag flags/buoy.svg",
      "flag flags/spar.svg",
      "grid elsewhere/far.svg",
      "grid flags/buoy.svg",
      "grid flags/shared.svg",
      "grid flags/shared.svg",
      "grid flags/spar.svg",
    ],
    ["grid elsewhere/near.svg"],
  ]);
  expect(slices.map(({ flags }) => flags)).toEqual([3, 1]);
});

test("the same study is in the same slice, whatever else is broken or a draft", async () => {
  const [whole, worse] = [await content(), await content()];
  await writeFile(join(worse, "studies/study-0/study.md"), "---\nstatus: x\n---\n");
  await rm(join(worse, "studies/study-2"), { recursive: true });
  await cp(join(whole, "studies/study-3"), join(worse, "studies/study-2"), { recursive: true });
  const slugsOf = async (folder: string) => (await divide(folder, 4)).map(({ slugs }) => slugs.join(" "));
  expect(await slugsOf(whole)).toEqual(["study-0 study-4", "study-1", "", ""]);
  expect(await slugsOf(worse)).toEqual(["study-4", "study-1", "", ""]);
});

test("drafts where they are asked for; of more slices than studies some are empty", async () => {
  const slices = await divide(await content(), 6, true);
  const slugs = ["study-0", "study-1", "", "study-3", "study-4", ""];
  expect(slices.map((one) => one.slugs.join(" "))).toEqual(slugs);
});

test("what is wrong when a study is used is wrong in the slice, and the study does not count", async () => {
  const used = report("study/fault", "c/studies/study-0/study.md", { reason: "no", hint: "no" });
  const slice = { index: 1, count: 5 };
  const { studies, problems } = await analyseSlice(await content(), slice, {
    line: once,
    use: async () => [used],
  });
  expect([studies, problems]).toEqual([0, [used]]);
});

test("a folder that is none", async () => {
  const { studies, problems } = await analyseSlice(
    "no/where",
    { index: 1, count: 2 },
    { line: once, use: async () => [] },
  );
  expect([studies, problems.map(({ rule }) => rule)]).toEqual([0, ["study/content-missing"]]);
});
