// The short form of npm run faults. Nothing may be lost.
import { expect, test, vi } from "vitest";
import { manifestName } from "../../src/publish/folder/manifest.ts";
import { disk } from "../../src/publish/folder/writedisk.ts";
import { findKept, openKept } from "../kept.ts";
import { makeRoom } from "../publish/room.ts";
import { runAsked } from "./asked.ts";
import { failingDisk } from "./disk.ts";
import { runExchanged, runExchangedAt } from "./exchanged.ts";
import { runFollowed } from "./followed.ts";
import { runInputs } from "./inputs.ts";
import { runDamages, runEdits } from "./kept.ts";
import { judgeEnd, runKills } from "./kills.ts";
import { layingAlone, runLaid } from "./laid.ts";
import { runNth } from "./nth.ts";
import { runSigns } from "./signs.ts";
import { runUnreadable } from "./unreadable.ts";
import { checkWhole } from "./whole.ts";

// Whole builds in processes of their own, on a machine that may have other work.
vi.setConfig({ testTimeout: 240_000 });

test("the Nth call to the disk fails once, for every N, or for good, for every third N", async () => {
  const common = { codes: ["ENOSPC"], files: 2 };
  const once = await runNth({ ...common, room: await makeRoom(), ways: ["exchange"], lasting: [false] });
  const lasting = await runNth({
    ...common,
    room: await makeRoom(),
    ways: ["exchange", "link", "move"],
    lasting: [true],
    step: 3,
  });
  expect([...once.lost, ...lasting.lost]).toEqual([]);
  expect(once.tried).toBeGreaterThan(12);
  expect(lasting.tried).toBeGreaterThan(12);
});

test("every tenth call to the system fails, past the disk: the lock, the cache, a new study", async () => {
  for (const tally of [
    await runSigns(await makeRoom(), ["EIO"], 10),
    await runAsked(await makeRoom(), ["ENOSPC"], 10),
    await runLaid(await makeRoom(), layingAlone, ["ENOSPC"], 10),
  ])
    expect(tally.lost).toEqual([]);
});

test("a study that cannot be read is named, and the others are published", async () => {
  const tally = await runUnreadable(await makeRoom(), ["studies/low-tide"], await openKept());
  expect(tally.lost).toEqual([]);
  expect(tally.tried).toBe(2);
});

test("a folder is exchanged with a link to one outside while it is read", async () => {
  for (const tally of [
    await runExchangedAt(await makeRoom(), [2], ["studies/low-tide"]),
    await runExchanged(await makeRoom(), 9),
  ])
    expect(tally.lost).toEqual([]);
});

test("builds are killed while the site is read", async () => {
  const tally = await runKills({ room: await makeRoom(), kills: 2, seed: 3, cache: findKept() });
  expect(tally.lost).toEqual([]);
  expect(tally.tried).toBe(2);
});

test("inputs vanish, entries of the cache are damaged, and edits are built on", async () => {
  // One room: the edits begin with what the damages left in the cache.
  const room = await makeRoom();
  const sound = await openKept();
  for (const tally of [
    await runInputs(room, 1, 3, sound),
    await runDamages(room, 1, 3, sound),
    await runEdits(room, 1, 3, undefined, sound),
  ])
    expect(tally.lost).toEqual([]);
});

test("the checks can fail: a build that ended by itself was not killed", () => {
  expect(judgeEnd({ status: null, signal: "SIGKILL" }, "writing")).toBeUndefined();
  expect(judgeEnd({ status: 0, signal: null }, "done")).toBeUndefined();
  expect(judgeEnd({ status: 1, signal: null }, "writing")).toMatch(/by itself with status 1/);
  expect(judgeEnd({ status: 1, signal: null }, "done")).toMatch(/status 1/);
  expect(judgeEnd({ status: 0, signal: null }, "swapping")).toMatch(/status 0/);
  expect(judgeEnd({ status: null, signal: "SIGSEGV" }, "writing")).toMatch(/the signal SIGSEGV/);
});

test("the checks can fail: a file that is missing, changed or too many, and a disk that fails once", async () => {
  const room = await makeRoom();
  const sha256 = "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad";
  const file = `${room}/a.txt`;
  await disk.write(
    `${room}/${manifestName}`,
    JSON.stringify({ files: [{ path: "a.txt", size: 3, sha256 }] }),
  );
  expect(() => checkWhole(room)).toThrow("ENOENT");
  await disk.write(file, "abd");
  expect(() => checkWhole(room)).toThrow("a.txt is not as listed");
  await disk.remove(file);
  await disk.write(file, "abc");
  checkWhole(room);
  await disk.write(`${room}/b.txt`, "");
  expect(() => checkWhole(room)).toThrow("b.txt is not listed");
  const failing = failingDisk(2, "EIO", { calls: ["read"] });
  await failing.disk.read(file);
  await expect(failing.disk.read(file)).rejects.toMatchObject({ code: "EIO" });
  await failing.disk.read(file);
  expect(failing.count()).toBe(3);
});

test("every address of an earlier site is followed in later ones, over random edits", async () => {
  const tally = await runFollowed(await makeRoom(), 2, 7, await openKept());
  expect(tally.lost).toEqual([]);
  expect(tally.tried).toBe(2);
});
