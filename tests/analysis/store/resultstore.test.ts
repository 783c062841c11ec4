// What is kept, and what becomes of it when the folder is damaged: the answer must be the same each time.
import { execFileSync } from "node:child_process";
import {
  chmod,
  mkdir,
  readdir,
  readFile,
  rm,
  stat,
  symlink,
  truncate,
  utimes,
  writeFile,
} from "node:fs/promises";
import { join } from "node:path";
import fc from "fast-check";
import { describe, expect, test, vi } from "vitest";
import { openStore, type Store, type StoreOptions } from "../../../src/analysis/store/resultstore.ts";
import type { Outcome } from "../../../src/problem/problem.ts";
import { makeFolder } from "../../content/folder.ts";

const answer: Outcome<unknown> = {
  value: { clarity: 71.2, cells: Int16Array.of(1, -1), names: new Map([["red", "#f00"]]), none: null },
  problems: [{ rule: "svg/text", severity: "warning", file: "a.svg", reason: "There is text." }],
};
const question = { kind: "measure", bytes: new Uint8Array([1, 2, 3]) };

async function open(folder: string, options: Partial<StoreOptions> = {}): Promise<Store> {
  const place = { folder: join(folder, "kept"), secretFile: join(folder, "key") };
  const store = await openStore({ ...place, ...options });
  if (store === undefined) throw new Error("no store");
  return store;
}

/** Asks as a new process would, and says whether the work had to be done. */
async function ask(folder: string, asked: unknown = question, options: Partial<StoreOptions> = {}) {
  const store = await open(folder, options);
  let worked = false;
  const outcome = await store.recall(asked, async () => {
    worked = true;
    return answer;
  });
  await store.close();
  return { outcome, worked };
}

async function listEntries(folder: string): Promise<readonly string[]> {
  const names = await readdir(join(folder, "kept"), { recursive: true }).catch(() => []);
  return names.filter((name) => name.endsWith(".entry")).map((name) => join(folder, "kept", name));
}

async function onlyEntry(folder: string): Promise<string> {
  const [entry, ...more] = await listEntries(folder);
  if (entry === undefined || more.length > 0) throw new Error("not one entry");
  return entry;
}

test("the second time the answer is there, equal to the first", async () => {
  const folder = await makeFolder({});
  expect(await ask(folder)).toEqual({ outcome: answer, worked: true });
  expect(await ask(folder)).toEqual({ outcome: answer, worked: false });
});

test("of two who ask the same at once one has it answered; where that fails, the other asks for itself", async () => {
  const store = await open(await makeFolder({}));
  const works: string[] = [];
  const askFor = (name: string, outcome: Outcome<unknown>) =>
    store.recall(question, async () => {
      works.push(name);
      await new Promise((resolve) => setImmediate(resolve));
      return outcome;
    });
  const slow: Outcome<unknown> = { value: undefined, problems: [] };
  expect(await Promise.all([askFor("slow", slow), askFor("after it", answer)])).toEqual([slow, answer]);
  expect(works).toEqual(["slow", "after it"]);
  const other = { ...question, bytes: new Uint8Array([9]) };
  const count = { worked: 0 };
  const work = async () => {
    count.worked += 1;
    return answer;
  };
  expect(await Promise.all([store.recall(other, work), store.recall(other, work)])).toEqual([answer, answer]);
  expect(count.worked).toBe(1);
  await store.close();
});

test("another question has another answer", async () => {
  const folder = await makeFolder({});
  await ask(folder);
  expect((await ask(folder, { ...question, bytes: new Uint8Array([1, 2, 4]) })).worked).toBe(true);
  expect((await ask(folder, { ...question, kind: "survey" })).worked).toBe(true);
  expect(await listEntries(folder)).toHaveLength(3);
});

test("what failed is asked again", async () => {
  const store = await open(await makeFolder({}));
  const slow: Outcome<string> = {
    value: undefined,
    problems: [{ rule: "study/too-slow", severity: "error", file: "a.svg", reason: "Too slow." }],
  };
  expect(await store.recall(question, async () => slow)).toEqual(slow);
  await store.close();
  expect(await store.recall(question, async () => answer)).toEqual(answer);
  await store.close();
});

test("a fault of the work is passed on, and nothing is kept", async () => {
  const folder = await makeFolder({});
  const store = await open(folder);
  const work = async () => Promise.reject(new Error("a fault"));
  await expect(store.recall(question, work)).rejects.toThrow("a fault");
  await store.close();
  expect(await listEntries(folder)).toEqual([]);
});

test("read only, it answers and keeps nothing", async () => {
  const folder = await makeFolder({});
  await ask(folder);
  expect((await ask(folder, question, { isReadOnly: true })).worked).toBe(false);
  expect((await ask(folder, "other", { isReadOnly: true })).worked).toBe(true);
  expect(await listEntries(folder)).toHaveLength(1);
});

test("an entry from a folder with another secret is not believed", async () => {
  const [folder, strange] = [await makeFolder({}), await makeFolder({})];
  await ask(strange);
  expect((await ask(folder, question, { folder: join(strange, "kept") })).worked).toBe(true);
});

describe("damage", () => {
  const damages: Readonly<Record<string, (entry: string, folder: string) => Promise<unknown>>> = {
    "cut off": (entry) => truncate(entry, 60),
    "cut off in its head": (entry) => truncate(entry, 5),
    emptied: (entry) => truncate(entry, 0),
    "drawn out": (entry) => truncate(entry, 100_000),
    deleted: (entry) => rm(entry),
    "its folder deleted": (entry) => rm(join(entry, ".."), { recursive: true }),
    "all deleted": (_, folder) => rm(join(folder, "kept"), { recursive: true }),
    "the secret deleted": (_, folder) => rm(join(folder, "key")),
    "a folder in its place": (entry) => rm(entry).then(() => mkdir(join(entry, "x"), { recursive: true })),
    "a file in place of its folder": (entry) =>
      rm(join(entry, ".."), { recursive: true }).then(() => writeFile(join(entry, ".."), "x")),
    "a file in place of all": (_, folder) =>
      rm(join(folder, "kept"), { recursive: true }).then(() => writeFile(join(folder, "kept"), "x")),
    "an endless file behind a link": (entry) => rm(entry).then(() => symlink("/dev/zero", entry)),
    "a link to itself": (entry) => rm(entry).then(() => symlink(entry, entry)),
    "a pipe that nobody writes to": (entry) => rm(entry).then(() => execFileSync("mkfifo", [entry])),
    "may not be read": (entry) => chmod(entry, 0),
    "text of somebody else": (entry) => writeFile(entry, JSON.stringify(answer)),
    "much too large": (entry) => truncate(entry, 40 * 1024 * 1024),
  };
  test.each(Object.entries(damages))("%s: the same answer, now and the next time", async (_, damage) => {
    const folder = await makeFolder({});
    await ask(folder);
    await damage(await onlyEntry(folder), folder);
    expect((await ask(folder)).outcome).toEqual(answer);
    expect((await ask(folder)).outcome).toEqual(answer);
  });

  test("any bytes changed: it is measured anew, and then kept again", async () => {
    const folder = await makeFolder({});
    await ask(folder);
    const entry = await onlyEntry(folder);
    const whole = await readFile(entry);
    const change = fc.record({ at: fc.nat(whole.length - 1), by: fc.integer({ min: 1, max: 255 }) });
    await fc.assert(
      fc.asyncProperty(change, async ({ at, by }) => {
        const changed = Buffer.from(whole);
        changed[at] = (changed[at] ?? 0) ^ by;
        await writeFile(entry, changed);
        expect(await ask(folder)).toEqual({ outcome: answer, worked: true });
        expect(await ask(folder)).toEqual({ outcome: answer, worked: false });
      }),
      { numRuns: 100 },
    );
  });

  test("an entry under the name of another is not its answer", async () => {
    const folder = await makeFolder({});
    await ask(folder);
    const one = await onlyEntry(folder);
    await ask(folder, "other");
    const other = (await listEntries(folder)).find((entry) => entry !== one) ?? "";
    await writeFile(other, await readFile(one));
    expect((await ask(folder, "other")).worked).toBe(true);
  });
});

test("where nothing can be written all is answered, and soon nothing more is tried", async () => {
  const folder = await makeFolder({ kept: "a file where the folder should be" });
  const store = await open(folder);
  for (let index = 0; index < 50; index += 1)
    expect(await store.recall(index, async () => answer)).toBe(answer);
  await store.close();
  expect(await readFile(join(folder, "kept"), "utf8")).toBe("a file where the folder should be");
});

test("without a place for the secret there is no store", async () => {
  const folder = await makeFolder({ file: "x" });
  const place = { folder: join(folder, "kept"), secretFile: join(folder, "file/key") };
  expect(await openStore(place)).toBeUndefined();
});

test("many writers of the same entries at once: each gets its answer, and each entry opens", async () => {
  const folder = await makeFolder({});
  await ask(folder, "so that there is a secret");
  const stores = await Promise.all(Array.from({ length: 4 }, () => open(folder)));
  await Promise.all(
    stores.flatMap((store) =>
      Array.from({ length: 25 }, async (_, index) => {
        const outcome = { value: index, problems: [] };
        expect(await store.recall(index, async () => outcome)).toEqual(outcome);
      }),
    ),
  );
  await Promise.all(stores.map((store) => store.close()));
  expect(await listEntries(folder)).toHaveLength(26);
  const names = await readdir(join(folder, "kept"), { recursive: true });
  expect(names.filter((name) => name.endsWith(".tmp"))).toEqual([]);
  const reader = await open(folder);
  for (let index = 0; index < 25; index += 1) {
    const again = () => Promise.reject(new Error("was not kept"));
    expect(await reader.recall(index, again)).toEqual({ value: index, problems: [] });
  }
});

test("the folder stays under its size; what was used last stays", async () => {
  const folder = await makeFolder({});
  const large = { value: "x".repeat(10_000), problems: [] };
  const most = 55_000;
  for (let index = 0; index < 8; index += 1) {
    const store = await open(folder, { most });
    await store.recall(index, async () => large);
    await store.close();
    // As if each were a minute older than the next; what is read again that day keeps its date.
    for (const entry of await listEntries(folder)) {
      const { mtimeMs } = await stat(entry);
      await utimes(entry, mtimeMs / 1000 - 60, mtimeMs / 1000 - 60);
    }
  }
  const left = await listEntries(folder);
  expect(left.length).toBeGreaterThanOrEqual(4);
  expect(left.length).toBeLessThanOrEqual(5);
  expect((await ask(folder, 7, { most })).worked).toBe(false);
  expect((await ask(folder, 0, { most })).worked).toBe(true);
});

test("what one run used stays, though it is over the size; the next that uses less makes room", async () => {
  const folder = await makeFolder({});
  const large = { value: "x".repeat(10_000), problems: [] };
  const most = 25_000;
  const askAll = async (count: number) => {
    const store = await open(folder, { most });
    for (let index = 0; index < count; index += 1) await store.recall(index, async () => large);
    await store.recall(`new ${count}`, async () => large);
    await store.close();
    return (await listEntries(folder)).length;
  };
  expect(await askAll(6)).toBe(7);
  // Six that were there, and a new one.
  expect(await askAll(6)).toBe(7);
  expect(await askAll(7)).toBe(9);
  expect(await askAll(0)).toBeLessThan(3);
});

test("the folder is made before anything is kept, if it can be; what could not be written is counted", async () => {
  const folder = await makeFolder({});
  const store = await open(folder);
  expect(await store.prepare()).toBe(true);
  expect([store.folder, store.lost]).toEqual([join(folder, "kept"), 0]);
  expect(await readdir(store.folder)).toEqual(["seal"]);
  const nowhere = await open(await makeFolder({ kept: "a file" }));
  expect(await nowhere.prepare()).toBe(false);
  for (let index = 0; index < 12; index += 1)
    await nowhere.recall(index, async () => ({ value: index, problems: [] }));
  await nowhere.close();
  expect(nowhere.lost).toBe(12);
});

test("an entry that is used again gets a new date", async () => {
  const folder = await makeFolder({});
  await ask(folder);
  const entry = await onlyEntry(folder);
  await utimes(entry, 1_000_000, 1_000_000);
  await ask(folder, question, { isReadOnly: true });
  expect((await stat(entry)).mtimeMs).toBe(1_000_000_000);
  await ask(folder);
  expect((await stat(entry)).mtimeMs).toBeGreaterThan(Date.now() - 600_000);
});

describe("a folder that came with a checkout", () => {
  const answer = { value: "answer", problems: [] };
  const keepOne = async (folder: string, secretFile: string) => {
    const asides: string[] = [];
    const store = await openStore({ folder, secretFile, onAside: (aside) => asides.push(aside) });
    await store?.recall("question", async () => answer);
    await store?.close();
    return { store, asides };
  };

  test.each(["an entry in it", "a link in it", "a link"])("is put aside and named: %s", async (what) => {
    const root = await makeFolder({ "outside/keep": "x" });
    const folder = join(root, "kept");
    if (what === "a link") await symlink(join(root, "outside"), folder);
    else await mkdir(join(folder, "aa"), { recursive: true });
    if (what === "a link in it") await symlink(join(root, "outside"), join(folder, "bb"));
    const { asides } = await keepOne(folder, join(root, "home/key"));
    expect(asides).toEqual([expect.stringMatching(/kept-aside-[0-9a-f]{8}$/)]);
    expect(await readdir(join(root, "outside"))).toEqual(["keep"]);
    expect((await keepOne(folder, join(root, "home/key"))).asides).toEqual([]);
  });

  test("stays, and is not used, where it holds other files", async () => {
    const root = await makeFolder({ "kept/letter.txt": "x" });
    expect(await keepOne(join(root, "kept"), join(root, "home/key"))).toEqual({
      store: undefined,
      asides: [],
    });
  });

  test("is believed with the key of several machines, and not with another", async () => {
    const root = await makeFolder({});
    const keepWith = async (key: string, home: string) => {
      vi.stubEnv("COUNTERCHANGE_KEY", key);
      const { asides } = await keepOne(join(root, "kept"), join(root, home, "key")).finally(() =>
        vi.unstubAllEnvs(),
      );
      return asides.length;
    };
    expect(await keepWith("a society's own long key", "one")).toBe(0);
    expect(await keepWith("a society's own long key", "two")).toBe(0);
    expect(await keepWith("somebody else's key", "two")).toBe(1);
  });

  test("a link in place of a folder of entries gets nothing", async () => {
    const root = await makeFolder({ "outside/keep": "x" });
    const [folder, secretFile] = [join(root, "kept"), join(root, "home/key")];
    await keepOne(folder, secretFile);
    const [bucket = ""] = (await readdir(folder)).filter((name) => /^[0-9a-f]{2}$/.test(name));
    await rm(join(folder, bucket), { recursive: true });
    await symlink(join(root, "outside"), join(folder, bucket));
    expect((await keepOne(folder, secretFile)).asides).toEqual([]);
    expect(await readdir(join(root, "outside"))).toEqual(["keep"]);
  });
});
