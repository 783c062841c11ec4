// Test support. Publishing while the Nth call to the system fails, also of those that do not go through publish/folder/writedisk.ts: the
// lock's files and signs, the looks at folders, the clearing of what is empty.
import { mkdir, readdir, readFile, rm } from "node:fs/promises";
import path from "node:path";
import { setTimeout as sleep } from "node:timers/promises";
import { OutputError } from "../../src/publish/folder/diskfailure.ts";
import { withOutput } from "../../src/publish/folder/output.ts";
import { fileOf } from "../../src/publish/folder/sitefile.ts";
import { failSystem } from "./system.ts";
import { message, type Tally } from "./tally.ts";
import { checkWhole } from "./whole.ts";

/** What the system's error may be, besides explained. */
const madeByTest = /^E[A-Z]+: made by a test/;

/**
 * Fails call after call, or every `step`th, until one is not reached: the first site must stand whole where it was refused,
 * and the second where it was not; a third is published after it. Then all signs of a lock fail, for good: that costs nothing.
 */
export async function runSigns(room: string, codes: readonly string[], step = 1): Promise<Tally> {
  const lost: string[] = [];
  const counts = { tried: 0, refused: 0, bare: 0 };
  for (const code of codes) {
    for (let at = 1; ; at += step) {
      const found = await tryOnce(room, code, at);
      if (!found.wasReached) break;
      counts.tried += 1;
      if (found.error !== undefined) counts.refused += 1;
      if (found.error !== undefined && !(found.error instanceof OutputError)) counts.bare += 1;
      lost.push(...found.lost.map((line) => `${code} at call ${at} (${found.call}): ${line}`));
    }
    counts.tried += 1;
    lost.push(...(await failSigns(room, code)).map((line) => `${code} at all signs: ${line}`));
    counts.tried += 1;
    lost.push(...(await failClearing(room, code)).map((line) => `${code} at the clearing: ${line}`));
  }
  if (counts.tried < (60 * codes.length) / step) lost.push(`only ${counts.tried} calls were there to fail`);
  const note = `${counts.refused} refused with the old site whole, ${counts.bare} of them in the bare words of the system; ${counts.tried - counts.refused} published all the same`;
  return { name: "publishing, and the Nth call to the system fails", tried: counts.tried, lost, note };
}

const siteIn = (room: string): string => path.join(room, "inner/_site");

async function publish(room: string, mark: string, work?: () => Promise<void>): Promise<void> {
  const files = ["a.html", "b/c.html"].map((file) =>
    fileOf(file, async () => {
      await work?.();
      return mark;
    }),
  );
  await withOutput(siteIn(room), { keepOut: [] }, (output) => output.publish(files));
}

/** Empties the room and publishes the first site. */
async function reset(room: string): Promise<void> {
  for (const name of await readdir(room)) await rm(path.join(room, name), { recursive: true, force: true });
  await mkdir(path.join(room, "inner"));
  await publish(room, "first");
}

async function tryOnce(room: string, code: string, at: number) {
  await reset(room);
  let call = "";
  const onFail = (name: string) => {
    call = name;
  };
  const { count, error } = await failSystem({ within: room, at, code, onFail }, () =>
    publish(room, "second"),
  );
  const lost = await look(room, error === undefined ? "second" : "first");
  if (error !== undefined && !(error instanceof OutputError) && !madeByTest.test(message(error)))
    lost.push(message(error));
  await endLocks(room);
  await publish(room, "third").catch((failure: unknown) => lost.push(message(failure)));
  lost.push(...(await look(room, "third")));
  return { wasReached: count >= at, call, error, lost };
}

/** A lock that could not be removed counts for nothing once its process has ended: as if it had. */
async function endLocks(room: string): Promise<void> {
  const workshop = path.join(room, "inner/.counterchange-_site");
  for (const name of await readdir(workshop).catch(() => []))
    if (name.startsWith("lock.")) await rm(path.join(workshop, name));
}

/** Making a file takes until the first sign was tried, some two seconds. */
async function failSigns(room: string, code: string): Promise<string[]> {
  await reset(room);
  let signs = 0;
  const wait = async () => {
    for (let n = 0; signs === 0 && n < 100; n += 1) await sleep(50);
  };
  const { error } = await failSystem(
    {
      within: room,
      at: 1,
      code,
      forGood: true,
      calls: ["writeFile"],
      onFail: () => {
        signs += 1;
      },
    },
    () => publish(room, "second", wait),
  );
  return [
    ...(signs === 0 ? ["no sign was tried"] : []),
    ...(error === undefined ? [] : [message(error)]),
    ...(await look(room, "second")),
  ];
}

/** A first build fails by itself, and the workshop, empty then, cannot be removed: only the first is told. */
async function failClearing(room: string, code: string): Promise<string[]> {
  await reset(room);
  await rm(path.join(room, "inner"), { recursive: true });
  const { count, error } = await failSystem({ within: room, at: 1, code, calls: ["rmdir"] }, () =>
    publish(room, "second", async () => {
      throw new Error("no file");
    }),
  );
  const lost = [...(count === 0 ? ["nothing was removed"] : [])];
  if (message(error) !== "no file") lost.push(message(error));
  await publish(room, "third");
  return [...lost, ...(await look(room, "third"))];
}

async function look(room: string, expected: string): Promise<string[]> {
  try {
    checkWhole(siteIn(room));
    const found = await readFile(path.join(siteIn(room), "a.html"), "utf8");
    return found === expected ? [] : [`“${found}” stands where “${expected}” should`];
  } catch (error) {
    return [message(error)];
  }
}
