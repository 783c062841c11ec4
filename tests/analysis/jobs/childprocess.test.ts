// One child process by itself: its limits. What a pool does with several is told in pool.test.ts.
import { afterEach, expect, test, vi } from "vitest";
import { Child } from "../../../src/analysis/jobs/childprocess.ts";
import type { Outcome } from "../../../src/problem/problem.ts";
import { drawing } from "../../content/folder.ts";
import { listWorkers } from "../children.ts";

vi.setConfig({ testTimeout: 60_000 });

let child: Child | undefined;
afterEach(async () => {
  child?.kill();
  await vi.waitFor(() => expect(listWorkers()).toEqual([]), { timeout: 10_000 });
});

test("does a job that it got before it had started, says when it is free, and when it is gone", async () => {
  const told: string[] = [];
  child = new Child(
    { seconds: 15, megabytes: 768 },
    { free: () => void told.push("free"), gone: () => void told.push("gone") },
  );
  expect([child.isReady, child.request?.kind]).toEqual([false, undefined]);
  const bytes = new TextEncoder().encode(drawing);
  const outcome = new Promise<Outcome<unknown>>((settle, fail) => {
    child?.give({ request: { kind: "sift", input: { file: "a.svg", bytes } }, file: "a.svg", settle, fail });
  });
  expect(child.request?.kind).toBe("sift");
  expect((await outcome).value).toContain("<svg");
  expect([child.isReady, child.request?.kind, told]).toEqual([true, undefined, ["free"]]);
  child.kill();
  await vi.waitFor(() => expect(told).toEqual(["free", "gone"]), { timeout: 10_000 });
});
