// The pool with real child processes, stopped by real signals (Linux: children are found in /proc).
import { existsSync } from "node:fs";
import { afterEach, describe, expect, test, vi } from "vitest";
import { defaultLimits, Pool, type PoolLimits } from "../../../src/analysis/jobs/pool.ts";
import { measureStudy } from "../../../src/analysis/jobs/studyjob.ts";
import { defaultCloth } from "../../../src/colour/cloth.ts";
import { defaultGallery } from "../../../src/content/gallery/galleryfile.ts";
import { drawing } from "../../content/folder.ts";
import { listWorkers } from "../children.ts";
import { parseText, writeStudy } from "../fixture.ts";
import { disc, draw, field, red, white } from "../sight.ts";

const options = { cloth: defaultCloth, distance: 40, palette: new Map<string, string>() };
const flag = draw(field(white) + disc(150, 100, 50, red));

const pools: Pool[] = [];

/** A pool that is closed after the test, whatever happens in it. */
function open(limits: Partial<PoolLimits> = {}): Pool {
  const pool = new Pool(limits);
  pools.push(pool);
  return pool;
}

afterEach(async () => {
  for (const pool of pools.splice(0)) pool.close();
  await vi.waitFor(() => expect(listWorkers()).toEqual([]), { timeout: 10_000 });
});

const measure = (pool: Pool, file: string, bytes = flag) => pool.run("measure", file, { bytes, options });

/** An input that no caller with types could give: the child throws on it. */
const impossible: Parameters<typeof Pool.prototype.run<"measure">>[2] = JSON.parse("{}");

const rulesOf = ({
  problems,
}: {
  readonly problems: readonly { readonly rule: string }[];
}): readonly string[] => problems.map(({ rule }) => rule);

/** The one worker that runs. */
function onlyWorker(): number {
  const workers = listWorkers();
  expect(workers).toHaveLength(1);
  return workers[0] ?? Number.NaN;
}

describe("Pool", { timeout: 60_000 }, () => {
  test("does a job in a child and gives back what the job gives", async () => {
    const { value, problems } = await measure(open({ size: 1 }), "a.svg");
    expect(problems).toEqual([]);
    expect(value?.colours.map(({ hex }) => hex)).toEqual([white, red]);
    expect(value?.focus).toMatchObject({ source: "found", lastsTo: 320 });
  });

  test("starts no child before there is a job, no more than it may, and uses them again", async () => {
    const pool = open({ size: 2 });
    expect(listWorkers()).toEqual([]);
    await measure(pool, "a.svg");
    const first = onlyWorker();
    await Promise.all(["b", "c", "d", "e", "f"].map((file) => measure(pool, file)));
    const workers = listWorkers();
    expect(workers).toHaveLength(2);
    expect(workers).toContain(first);
    await measure(pool, "g.svg");
    expect([...listWorkers()].sort()).toEqual([...workers].sort());
  });

  test("each job gets its own answer; with one child they end in the order in which they came", async () => {
    const pool = open({ size: 1 });
    const ended: string[] = [];
    const files = Array.from({ length: 4 }, (_, index) => `${index}.svg`);
    const outcomes = await Promise.all(
      files.map(async (file, index) => {
        const outcome = await measure(pool, file, draw(field(white) + disc(150, 100, 20 * (index + 1), red)));
        ended.push(file);
        return outcome;
      }),
    );
    expect(outcomes.map(({ value }) => value?.file)).toEqual(files);
    expect(ended).toEqual(files);
    // π r² of 60,000.
    for (const [index, { value }] of outcomes.entries()) {
      const share = (Math.PI * (20 * (index + 1)) ** 2) / 60_000;
      expect(Math.abs((value?.colours.find(({ hex }) => hex === red)?.share ?? 0) - share)).toBeLessThan(
        0.002,
      );
    }
  });

  test("with several children each job still gets its own answer", async () => {
    const pool = open({ size: 3 });
    const files = Array.from({ length: 6 }, (_, index) => `${index}.svg`);
    const outcomes = await Promise.all(files.map((file) => measure(pool, file)));
    expect(outcomes.map(({ value }) => value?.file)).toEqual(files);
  });

  test("problems of a drawing come back as they are", async () => {
    const outcome = await measure(open({ size: 1 }), "a.svg", new TextEncoder().encode("<svg"));
    expect(outcome.value).toBeUndefined();
    expect(rulesOf(outcome)).toEqual(["svg/not-well-formed"]);
  });

  test("a child that is stuck is killed, the job is named too slow, the next go on", async () => {
    const pool = open({ size: 1, seconds: 1 });
    await measure(pool, "first.svg");
    const stuck = onlyWorker();
    process.kill(stuck, "SIGSTOP");
    const started = performance.now();
    // The others wait longer than they may take, and are still done: time is counted for each job by itself.
    const [slow, next, last] = await Promise.all([
      measure(pool, "slow.svg"),
      measure(pool, "next.svg", draw(field(white) + disc(150, 100, 40, red))),
      measure(pool, "last.svg", draw(field(white) + disc(150, 100, 30, red))),
    ]);
    expect(slow.value).toBeUndefined();
    expect(slow.problems).toEqual([
      {
        rule: "study/too-slow",
        severity: "error",
        file: "slow.svg",
        reason: expect.stringContaining("1 second"),
        hint: expect.any(String),
      },
    ]);
    expect([next.value?.file, last.value?.file]).toEqual(["next.svg", "last.svg"]);
    expect(performance.now() - started).toBeGreaterThan(1000);
    expect(listWorkers()).not.toContain(stuck);
  });

  test("a child that holds too much memory is killed; every job gets its answer", async () => {
    // A bare Node process with a renderer in it holds more than 30 MB.
    const outcomes = await (async () => {
      const pool = open({ size: 1, megabytes: 30 });
      return Promise.all([measure(pool, "a.svg"), measure(pool, "b.svg")]);
    })();
    expect(outcomes.map(rulesOf)).toEqual([["study/too-much-memory"], ["study/too-much-memory"]]);
    expect(outcomes.map(({ problems }) => problems[0]?.file)).toEqual(["a.svg", "b.svg"]);
    expect(outcomes[0]?.problems[0]?.reason).toContain("30 MB");
  });

  test("a child that dies at work: its job is named, the next go on in a new one", async () => {
    const pool = open({ size: 1 });
    await measure(pool, "first.svg");
    const worker = onlyWorker();
    // Stopped first, so that it cannot finish before it dies.
    process.kill(worker, "SIGSTOP");
    const [crashed, next] = [measure(pool, "crashed.svg"), measure(pool, "next.svg")];
    process.kill(worker, "SIGKILL");
    expect(rulesOf(await crashed)).toEqual(["study/crashed"]);
    expect((await crashed).problems[0]).toMatchObject({ file: "crashed.svg", severity: "error" });
    expect((await next).value?.file).toBe("next.svg");
    expect(onlyWorker()).not.toBe(worker);
  });

  test("a child that dies while it has nothing to do is replaced", { timeout: 20_000 }, async () => {
    const pool = open({ size: 1 });
    await measure(pool, "first.svg");
    const worker = onlyWorker();
    process.kill(worker, "SIGKILL");
    // Gone from the list of processes: its parent has been told.
    await vi.waitFor(() => expect(existsSync(`/proc/${worker}`)).toBe(false), { timeout: 10_000 });
    const { value, problems } = await measure(pool, "next.svg");
    expect(problems).toEqual([]);
    expect(value?.file).toBe("next.svg");
  });

  test("an exception in the child is a fault of ours: the job is rejected with the file, the next go on", async () => {
    const pool = open({ size: 1 });
    await measure(pool, "first.svg");
    const worker = onlyWorker();
    const odd = pool.run("measure", "odd.svg", impossible);
    const next = measure(pool, "next.svg");
    await expect(odd).rejects.toThrow(/odd\.svg/);
    expect((await next).value?.file).toBe("next.svg");
    expect(onlyWorker()).toBe(worker);
  });

  test("what no process can be given is a fault of ours: the job is rejected, the next go on", async () => {
    const pool = open({ size: 1 });
    const view = { say: () => "a function" };
    await expect(pool.run("pages", "a", { view, gallery: { language: "en" } })).rejects.toThrow(
      "could not be cloned",
    );
    expect((await measure(pool, "b")).problems).toEqual([]);
  });

  test("children can be started before there is a job, and are used", async () => {
    const pool = open({ size: 2 });
    pool.warm();
    const workers = listWorkers();
    expect(workers).toHaveLength(2);
    await measure(pool, "a.svg");
    expect([...listWorkers()].sort()).toEqual([...workers].sort());
  });

  test("another child is started only for more jobs in line than are worth its start", async () => {
    const pool = open({ size: 2, patience: 3 });
    pool.warm(1);
    const [first] = listWorkers();
    await Promise.all(["a", "b", "c", "d"].map((file) => measure(pool, file)));
    expect(listWorkers()).toEqual([first]);
    await Promise.all(["a", "b", "c", "d", "e"].map((file) => measure(pool, file)));
    expect(listWorkers()).toHaveLength(2);
  });

  test("jobs in line are forgotten when they are cleared; the one at work is done, and so are later ones", async () => {
    const pool = open({ size: 1 });
    await measure(pool, "first.svg");
    const jobs = ["a", "b", "c"].map((file) => measure(pool, file).then(rulesOf, () => ["rejected"]));
    pool.clear();
    expect(await Promise.all(jobs)).toEqual([[], ["rejected"], ["rejected"]]);
    expect((await measure(pool, "d")).value?.file).toBe("d");
  });

  test("a study goes before all else, and finds a child that was kept free for it", async () => {
    const pool = open({ size: 2, reserved: 1, patience: 0 });
    const ended: string[] = [];
    const others = Array.from({ length: 16 }, (_, index) => `${index}.svg`);
    const study = parseText(writeStudy()).value;
    if (study === undefined) throw new Error("no study");
    const bytes = new TextEncoder().encode(drawing);
    const look = () => measureStudy(pool, study, bytes, defaultGallery);
    // Both have started.
    await Promise.all([measure(pool, "first"), look()]);
    const jobs = [
      ...others.map((file) => measure(pool, file).then(() => ended.push(file))),
      look().then(() => ended.push("study")),
    ];
    await Promise.all(jobs);
    // In its turn it would be the last. The others take their turns one by one.
    expect(ended.indexOf("study")).toBeLessThan(others.length / 2);
    expect(ended.filter((file) => file !== "study")).toEqual(others);
  });

  test("closing ends every child", async () => {
    const pool = open({ size: 2 });
    await Promise.all(["a", "b", "c", "d"].map((file) => measure(pool, file)));
    expect(listWorkers()).toHaveLength(2);
    pool.close();
    await vi.waitFor(() => expect(listWorkers()).toEqual([]), { timeout: 10_000 });
  });

  test("closing with jobs at work and in line ends every child, starts none, and leaves no job without an answer", async () => {
    const pool = open({ size: 1 });
    await measure(pool, "first.svg");
    const first = onlyWorker();
    process.kill(first, "SIGSTOP");
    const jobs = ["a", "b", "c"].map((file) => measure(pool, file).then(rulesOf, () => ["rejected"]));
    pool.close();
    const answers = await Promise.all(jobs);
    // None of them was measured.
    for (const answer of answers) expect(answer).toHaveLength(1);
    await vi.waitFor(() => expect(listWorkers()).toEqual([]), { timeout: 10_000 });
  });
});

test("by default a job has 15 seconds and 768 MB, and there are one to four children", () => {
  expect(defaultLimits).toMatchObject({ seconds: 15, megabytes: 768 });
  expect(defaultLimits.size).toBeGreaterThanOrEqual(1);
  expect(defaultLimits.size).toBeLessThanOrEqual(4);
});
