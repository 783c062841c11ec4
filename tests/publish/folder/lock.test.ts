import { fork } from "node:child_process";
import { mkdir, readdir, readFile, rm, utimes, writeFile } from "node:fs/promises";
import path from "node:path";
import { setTimeout as sleep } from "node:timers/promises";
import { expect, test, vi } from "vitest";
import { LockedError, type LockOptions, nameLock, takeLock } from "../../../src/publish/folder/lock.ts";
import { formatHolder, type Holder, nameSelf } from "../../../src/publish/folder/lockowner.ts";
import { makeRoom } from "../room.ts";

const secret = new Uint8Array(32);
const optionsFor = (folder: string, more: Partial<LockOptions> = {}): LockOptions => ({
  secret,
  prepare: async () => void (await mkdir(folder, { recursive: true })),
  write: (file, text) => writeFile(file, text, { flag: "wx" }),
  ...more,
});

test("twelve at once: one at a time has it, and each gets it", async () => {
  const folder = path.join(await makeRoom(), "workshop");
  let inside = 0;
  let most = 0;
  let had = 0;
  const work = async () => {
    const lock = await takeLock(folder, optionsFor(folder));
    inside += 1;
    most = Math.max(most, inside);
    await sleep(20);
    had += 1;
    inside -= 1;
    await lock.release();
  };
  await Promise.all(Array.from({ length: 12 }, work));
  expect([most, had]).toEqual([1, 12]);
  expect(await readdir(folder)).toEqual([]);
});

test("whoever has it is named, and not waited for without end", async () => {
  const folder = await makeRoom();
  const lock = await takeLock(folder, optionsFor(folder));
  const heard: Holder[] = [];
  const second = takeLock(
    folder,
    optionsFor(folder, { longest: 300, onWait: (holder) => heard.push(holder) }),
  );
  await expect(second).rejects.toThrow(LockedError);
  expect(heard.map(({ pid }) => pid)).toEqual([process.pid]);
  expect(await lock.isHeld()).toBe(true);
  await lock.release();
  expect(await lock.isHeld()).toBe(false);
});

test("a process that was killed has it no longer", async () => {
  const folder = await makeRoom();
  const child = fork(path.join(import.meta.dirname, "../lockholder.ts"), [folder], {
    execArgv: ["--import", "tsx"],
  });
  await new Promise((resolve) => child.once("message", resolve));
  expect(await readdir(folder)).toHaveLength(1);
  child.kill("SIGKILL");
  await new Promise((resolve) => child.once("exit", resolve));
  const lock = await takeLock(folder, optionsFor(folder, { longest: 5_000 }));
  expect(await readdir(folder)).toHaveLength(1);
  await lock.release();
});

async function leave(folder: string, changed: Partial<Holder>): Promise<string> {
  const file = path.join(folder, nameLock({ ...(await nameSelf()), ...changed }, secret));
  await writeFile(file, "0\n");
  return file;
}

test("one on another machine that gives no sign is taken over, whatever its date says", async () => {
  const folder = await makeRoom();
  const file = await leave(folder, { place: "00000000" });
  const future = new Date(Date.now() + 86_400_000);
  await utimes(file, future, future);
  const began = performance.now();
  const lock = await takeLock(folder, optionsFor(folder, { silence: 500 }));
  expect(performance.now() - began).toBeGreaterThan(450);
  await lock.release();
});

test("one on another machine that gives signs is not", async () => {
  const folder = await makeRoom();
  const file = await leave(folder, { place: "00000000" });
  let signs = 0;
  const timer = setInterval(() => {
    signs += 1;
    writeFile(file, `${signs}\n`).catch(() => undefined);
  }, 100);
  try {
    const second = takeLock(folder, optionsFor(folder, { silence: 900, longest: 1_500 }));
    await expect(second).rejects.toThrow(LockedError);
  } finally {
    clearInterval(timer);
  }
});

test("a holder gives signs, and knows when it was taken over", async () => {
  const folder = await makeRoom();
  vi.useFakeTimers({ toFake: ["setInterval", "clearInterval"] });
  try {
    const lock = await takeLock(folder, optionsFor(folder));
    const [name = ""] = await readdir(folder);
    const read = () => readFile(path.join(folder, name), "utf8");
    vi.advanceTimersByTime(1_900);
    await sleep(50);
    expect(await read()).toBe("0\n");
    vi.advanceTimersByTime(200);
    await expect.poll(read).toBe("1\n");
    await rm(path.join(folder, name));
    vi.advanceTimersByTime(2_000);
    // As long as a sign may take that would make the file again.
    await sleep(100);
    expect(await lock.isHeld()).toBe(false);
    await lock.release();
  } finally {
    vi.useRealTimers();
  }
});

test("where it cannot be written, that is said", async () => {
  const folder = await makeRoom();
  const write = async () => {
    throw Object.assign(new Error("full"), { code: "ENOSPC" });
  };
  await expect(takeLock(folder, optionsFor(folder, { write }))).rejects.toThrow("full");
  await expect(
    takeLock(folder, optionsFor(folder, { look: 5, write: async () => undefined })),
  ).rejects.toThrow(/vanishes/);
});

test("what somebody else named like a lock is none, and holds nobody up", async () => {
  const folder = await makeRoom();
  const self = await nameSelf();
  for (let pid = 1; pid <= 25; pid += 1) {
    const forged = { ...self, pid, began: 0, place: "0000abcd" };
    await writeFile(path.join(folder, formatHolder(forged)), "0\n");
    await writeFile(path.join(folder, nameLock(forged, new Uint8Array(32).fill(1))), "0\n");
  }
  const onWait = () => {
    throw new Error("it waited");
  };
  const lock = await takeLock(folder, optionsFor(folder, { onWait, longest: 0 }));
  await lock.release();
  expect(await readdir(folder)).toHaveLength(50);
});

test("many that give no sign are waited for together, not one after the other", async () => {
  const folder = await makeRoom();
  const self = await nameSelf();
  for (let pid = 1; pid <= 25; pid += 1)
    await writeFile(path.join(folder, nameLock({ ...self, pid, place: "0000abcd" }, secret)), "0\n");
  const lock = await takeLock(folder, optionsFor(folder, { silence: 500, longest: 5000 }));
  await lock.release();
});
