// Test support. What is kept, measurements and pictures: damaged in every way, and after every kind of edit, no byte of the
// site is another.
import { copyFile, mkdir, open, readdir, rm, stat, truncate, writeFile } from "node:fs/promises";
import path from "node:path";
import { buildSite } from "../../src/site/build.ts";
import { openStore } from "../../src/study/store.ts";
import { listEdits } from "./edits.ts";
import { type Content, makeContent, writeContent } from "./gallery.ts";
import { makeRandom, message, pick, type Tally } from "./tally.ts";
import { checkWhole } from "./whole.ts";

interface Bench {
  readonly content: string;
  readonly warmSite: string;
  readonly coldSite: string;
  readonly cache: string;
}

const benchIn = (room: string): Bench => ({
  content: path.join(room, "content"),
  warmSite: path.join(room, "warm"),
  coldSite: path.join(room, "cold"),
  cache: path.join(room, "cache"),
});

/** Returns the digest of what is published with the cache, as it is then. */
async function buildWarm({ content, warmSite, cache }: Bench): Promise<string> {
  const store = await openStore({ folder: cache, secretFile: `${cache}-key` });
  if (store === undefined) throw new Error("no cache could be opened");
  await buildSite(content, warmSite, { store });
  await store.close();
  return checkWhole(warmSite);
}

async function buildCold({ content, coldSite }: Bench): Promise<string> {
  await buildSite(content, coldSite);
  return checkWhole(coldSite);
}

type Deed = (file: string, random: () => number, all: readonly string[]) => Promise<void>;

const damages: Readonly<Record<string, Deed>> = {
  truncated: async (file, random) => truncate(file, Math.floor(random() * (await stat(file)).size)),
  emptied: (file) => truncate(file, 0),
  deleted: (file) => rm(file),
  "one bit flipped": async (file, random) => {
    const handle = await open(file, "r+");
    const at = Math.floor(random() * (await handle.stat()).size);
    const byte = new Uint8Array(1);
    await handle.read(byte, 0, 1, at);
    byte[0] = (byte[0] ?? 0) ^ (1 << Math.floor(random() * 8));
    await handle.write(byte, 0, 1, at);
    await handle.close();
  },
  "overwritten with noise": (file, random) =>
    writeFile(
      file,
      Uint8Array.from({ length: 2_000 }, () => Math.floor(random() * 256)),
    ),
  "replaced by another entry": (file, random, all) =>
    copyFile(pick(random, all), file).catch(() => undefined),
  "turned into a folder": async (file) => {
    await rm(file);
    await mkdir(file);
  },
};

/** Damages one, some or all entries, builds, and compares with what a build without the cache gives. */
export async function runDamages(room: string, tries: number, seed: number): Promise<Tally> {
  const random = makeRandom(seed);
  const bench = benchIn(room);
  await writeContent(bench.content, makeContent());
  const expected = await buildCold(bench);
  await buildWarm(bench);
  const lost: string[] = [];
  const pictures = (await readdir(bench.warmSite, { recursive: true })).filter((name) => /\.png$/.test(name));
  const kept = await listEntries(bench.cache);
  if (kept.length <= pictures.length) lost.push(`${pictures.length} pictures, ${kept.length} entries`);
  let damaged = 0;
  for (let done = 0; done < tries; done += 1) {
    const files = await listEntries(bench.cache);
    const share = pick(random, [0, 0.3, 1]);
    const chosen = files.filter((_, n) => random() < share || n === done % files.length);
    const [name, damage] = pick(random, Object.entries(damages));
    for (const file of chosen) await damage(file, random, files);
    damaged += chosen.length;
    try {
      if ((await buildWarm(bench)) !== expected) lost.push(`${chosen.length} entries ${name}: other bytes`);
    } catch (error) {
      lost.push(`${chosen.length} entries ${name}: ${message(error)}`);
    }
    for (const file of chosen)
      if ((await stat(file).catch(() => undefined))?.isDirectory()) await rm(file, { recursive: true });
    if (name === "turned into a folder") await buildWarm(bench);
  }
  return {
    name: "damaged cache entries",
    tried: tries,
    lost,
    note: `${damaged} entries damaged, of ${kept.length} with ${pictures.length} pictures`,
  };
}

/** Edits the gallery at random, building with the cache after each edit; then compares with a clean build. */
export async function runEdits(
  room: string,
  sequences: number,
  seed: number,
  onSequence?: (done: number) => void,
): Promise<Tally> {
  const random = makeRandom(seed);
  const bench = benchIn(room);
  const lost: string[] = [];
  let content: Content = makeContent();
  let edits = 0;
  for (let done = 0; done < sequences; done += 1) {
    const trail: string[] = [];
    const length = 1 + Math.floor(random() * 3);
    let warm = "";
    for (let n = 0; n < length; n += 1) {
      const [name, edit] = pick(random, listEdits(content));
      content = edit(content, random);
      trail.push(name);
      await writeContent(bench.content, content);
      warm = await buildWarm(bench);
    }
    edits += length;
    if (warm !== (await buildCold(bench)))
      lost.push(`after ${trail.join(", ")}: other bytes than a clean build`);
    onSequence?.(done + 1);
  }
  return { name: "random edits with the cache", tried: sequences, lost, note: `${edits} edits` };
}

async function listEntries(folder: string): Promise<readonly string[]> {
  const entries = await readdir(folder, { recursive: true, withFileTypes: true });
  return entries
    .filter((entry) => entry.isFile())
    .map((entry) => path.join(entry.parentPath, entry.name))
    .sort();
}
