import { spawn } from "node:child_process";
import { readFileSync } from "node:fs";
import { expect, test, vi } from "vitest";
import { measureResident } from "../../../src/analysis/jobs/childmemory.ts";

/** What the system calls the resident set of a process, in MB: VmRSS in /proc/…/status is in kB. */
function residentOf(pid: number): number {
  const [, kilobytes] = /VmRSS:\s+(\d+) kB/.exec(readFileSync(`/proc/${pid}/status`, "utf8")) ?? [];
  return Number(kilobytes) / 1024;
}

test.runIf(process.platform === "linux")("says what the system says", async () => {
  const child = spawn(process.execPath, ["-e", "setInterval(() => {}, 1000)"], { stdio: "ignore" });
  try {
    const pid = child.pid ?? Number.NaN;
    await vi.waitFor(() => expect(residentOf(pid)).toBeGreaterThan(20), { timeout: 10_000 });
    // It may still be starting: what lies between two looks at it, and a hundredth.
    const before = residentOf(pid);
    const measured = measureResident(pid);
    const after = residentOf(pid);
    expect(measured).toBeGreaterThan(0.99 * Math.min(before, after));
    expect(measured).toBeLessThan(1.01 * Math.max(before, after));
  } finally {
    child.kill("SIGKILL");
  }
});

test.runIf(process.platform === "linux")("memory that is filled shows", () => {
  const before = measureResident(process.pid);
  const filled = Buffer.alloc(256 * 2 ** 20, 1);
  expect(measureResident(process.pid) - before).toBeGreaterThan(48);
  expect(filled[filled.length - 1]).toBe(1);
});

test("nobody holds nothing: no process, or one that is gone", () => {
  expect(measureResident(undefined)).toBe(0);
  // Above the largest number that Linux gives to a process (2²²).
  expect(measureResident(2 ** 22 + 1)).toBe(0);
});
