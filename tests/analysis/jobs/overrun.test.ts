// What ran over is not tried again. With real children: how many were started says how often.
import { afterEach, describe, expect, test, vi } from "vitest";
import type { JobKind } from "../../../src/analysis/jobs/job.ts";
import { Overruns } from "../../../src/analysis/jobs/overrun.ts";
import { Pool } from "../../../src/analysis/jobs/pool.ts";
import { defaultCloth } from "../../../src/colour/cloth.ts";
import { listWorkers } from "../children.ts";
import { disc, draw, field, red, white } from "../sight.ts";

const job = (kind: JobKind, text: string) => ({ kind, input: { bytes: Buffer.from(text) } });
const slow = { rule: "study/too-slow", severity: "error", file: "a.svg", reason: "Too slow." } as const;
const over = { value: undefined, problems: [slow] };
const done = { value: 1, problems: [] };

describe("what is remembered", () => {
  test("a drawing by its bytes, whatever the file and the job; no other drawing", () => {
    const overruns = new Overruns();
    overruns.note(job("study", "one"), over);
    expect(overruns.find(job("study", "one"), "a.svg")).toEqual(slow);
    expect(overruns.find(job("grid", "one"), "b.svg")).toMatchObject({ rule: slow.rule, file: "b.svg" });
    expect(overruns.find(job("grid", "one"), "b.svg")?.reason).toMatch(/^Too slow\. That was in a\.svg:/);
    expect(overruns.find(job("study", "other"), "b.svg")).toBeUndefined();
  });

  test("options that ran over stop no measurement, but all that ranks options", () => {
    const overruns = new Overruns();
    overruns.note(job("rank", "one"), over);
    expect(overruns.find(job("study", "one"), "a.svg")).toBeUndefined();
    for (const kind of ["rank", "flag", "options", "survey"] as const)
      expect(overruns.find(job(kind, "one"), "a.svg")).toBeDefined();
  });

  test("no other problem, and nothing of a job without a drawing", () => {
    const overruns = new Overruns();
    overruns.note(job("study", "one"), { value: undefined, problems: [{ ...slow, rule: "study/crashed" }] });
    overruns.note({ kind: "study", input: {} }, over);
    expect(overruns.find(job("study", "one"), "a.svg")).toBeUndefined();
    expect(overruns.find({ kind: "study", input: {} }, "a.svg")).toBeUndefined();
  });

  test("the first job of a kind on a drawing goes alone, until one is done", () => {
    const overruns = new Overruns();
    const working = [job("study", "one")];
    expect(overruns.mustWait(job("study", "one"), working)).toBe(true);
    expect(overruns.mustWait(job("study", "one"), [])).toBe(false);
    expect(overruns.mustWait(job("study", "other"), working)).toBe(false);
    expect(overruns.mustWait(job("grid", "one"), working)).toBe(false);
    overruns.note(job("study", "one"), done);
    expect(overruns.mustWait(job("study", "one"), working)).toBe(false);
  });
});

describe("thirty jobs on one drawing that runs over", { timeout: 120_000 }, () => {
  const options = { cloth: defaultCloth, distance: 40, palette: new Map<string, string>() };
  const bytes = draw(field(white) + disc(150, 100, 50, red));
  const other = draw(field(white) + disc(150, 100, 40, red));
  const pool = new Pool({ size: 2, seconds: 0.5 });
  const measure = (file: string, drawing: Uint8Array) =>
    pool.run("measure", file, { bytes: drawing, options });
  afterEach(async () => {
    pool.close();
    await vi.waitFor(() => expect(listWorkers()).toEqual([]), { timeout: 10_000 });
  });

  test("cost one child, and are told of each file", async () => {
    await measure("warm.svg", other);
    const [stuck = 0] = listWorkers();
    expect(listWorkers()).toHaveLength(1);
    process.kill(stuck, "SIGSTOP");
    const asked = Array.from({ length: 30 }, (_, index) => measure(`${index}.svg`, bytes));
    const outcomes = await Promise.all(asked);
    expect(outcomes.map(({ problems }) => problems.map(({ rule, file }) => `${rule} ${file}`))).toEqual(
      outcomes.map((_, index) => [`study/too-slow ${index}.svg`]),
    );
    // The one that was stopped is gone, and none was needed in its place.
    expect(listWorkers()).toEqual([]);
    expect((await measure("next.svg", other)).value?.file).toBe("next.svg");
  });
});
