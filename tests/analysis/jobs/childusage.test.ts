import { spawn } from "node:child_process";
import { once } from "node:events";
import { readFileSync } from "node:fs";
import { expect, test, vi } from "vitest";
import { measureProcessor, measureResident } from "../../../src/analysis/jobs/childusage.ts";

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

// In a process of its own: this one may give back as much at the same time as it takes.
test.runIf(process.platform === "linux")("memory that is filled shows", async () => {
  const fill = "globalThis.filled = Buffer.alloc(2 ** 28, 1); setInterval(() => {}, 1000); console.log()";
  const child = spawn(process.execPath, ["-e", fill], { stdio: ["ignore", "pipe", "ignore"] });
  try {
    await once(child.stdout, "data");
    expect(measureResident(child.pid)).toBeGreaterThan(256);
  } finally {
    child.kill("SIGKILL");
  }
});

test("nobody holds nothing: no process, or one that is gone", () => {
  expect(measureResident(undefined)).toBe(0);
  // Above the largest number that Linux gives to a process (2²²).
  expect(measureResident(2 ** 22 + 1)).toBe(0);
});

test.runIf(process.platform === "linux")("the processor's time is what Node says of itself", () => {
  const { user, system } = process.cpuUsage();
  for (const end = performance.now() + 200; performance.now() < end; );
  const said = (user + system) / 1e6;
  const measured = measureProcessor(process.pid) ?? Number.NaN;
  const after = process.cpuUsage();
  // Ticks are a hundredth of a second each.
  expect(measured).toBeGreaterThan(said - 0.03);
  expect(measured).toBeLessThan((after.user + after.system) / 1e6 + 0.03);
  expect(measureProcessor(undefined)).toBeUndefined();
  expect(measureProcessor(2 ** 22 + 1)).toBeUndefined();
});
