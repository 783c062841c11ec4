// Test support. What is kept, measurements and pictures: damaged in every way, and after every kind of edit, no byte of the
// site is another.
import { copyFile, mkdir, open, readdir, readFile, rm, stat, truncate, writeFile } from "node:fs/promises";
import path from "node:path";
import { openStore, type Store } from "../../src/analysis/store/resultstore.ts";
import { buildSite } from "../../src/publish/buildsite.ts";
import { listEdits } from "./edits.ts";
import { type Content, makeContent, writeContent } from "./gallery.ts";
import { type Hits, Memory } from "./hits.ts";
import { makeRandom, message, pick, type Tally } from "./tally.ts";
import { checkWhole, digest } from "./whole.ts";

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

/** Returns the digest of what is published with the cache, as it is then, and what the cache was good for. */
async function buildWarm(
  { content, warmSite, cache }: Bench,
  memory: Memory,
): Promise<{ readonly digest: string; readonly hits: Hits }> {
  const store = await openStore({ folder: cache, secretFile: `${cache}-key` });
  if (store === undefined) throw new Error("no cache could be opened");
  const readHits = memory.watch(store);
  // Where a site stands, studies that broke since keep their pages: what was kept of measuring is not what is asked here.
  await rm(warmSite, { recursive: true, force: true });
  await buildSite(content, warmSite, { store });
  await store.close();
  return { digest: checkWhole(warmSite), hits: readHits() };
}

/** Returns the digest of what is published without the cache; `sound`: a store that nothing was done to. */
async function buildCold({ content, coldSite }: Bench, sound: Store | undefined): Promise<string> {
  await rm(coldSite, { recursive: true, force: true });
  await buildSite(content, coldSite, { store: sound });
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
export async function runDamages(room: string, tries: number, seed: number, sound?: Store): Promise<Tally> {
  const random = makeRandom(seed);
  const bench = benchIn(room);
  const memory = new Memory();
  await writeContent(bench.content, makeContent());
  const expected = await buildCold(bench, sound);
  await buildWarm(bench, memory);
  const lost: string[] = [];
  const pictures = (await readdir(bench.warmSite, { recursive: true })).filter((name) =>
    /\.(?:png|webp)$/.test(name),
  );
  const kept = await listEntries(bench.cache);
  if (kept.length <= pictures.length) lost.push(`${pictures.length} pictures, ${kept.length} entries`);
  const counts = { damaged: 0, hit: 0, worked: 0 };
  for (let done = 0; done < tries; done += 1) {
    const files = await listEntries(bench.cache);
    const share = pick(random, [0, 0.3, 1]);
    const chosen = files.filter((_, n) => random() < share || n === done % files.length);
    const [name, damage] = pick(random, Object.entries(damages));
    const before = await digestAll(files);
    for (const file of chosen) await damage(file, random, files);
    const after = await digestAll(files);
    const damaged = files.filter((file) => before.get(file) !== after.get(file)).length;
    const what = `${damaged} of ${files.length} entries ${name}`;
    counts.damaged += damaged;
    try {
      const { digest: found, hits } = await buildWarm(bench, memory);
      if (found !== expected) lost.push(`${what}: other bytes`);
      // No more work than there was damage, and no less: the cache was read, and what was damaged was not believed.
      if (hits.missed !== damaged || hits.invented > 0 || hits.hit < files.length - damaged)
        lost.push(`${what}: ${formatHits(hits)}`);
      counts.hit += hits.hit;
      counts.worked += hits.worked;
    } catch (error) {
      lost.push(`${what}: ${message(error)}`);
    }
    for (const file of chosen)
      if ((await stat(file).catch(() => undefined))?.isDirectory()) await rm(file, { recursive: true });
    if (name === "turned into a folder") await buildWarm(bench, memory);
  }
  if (counts.damaged === 0) lost.push("no entry was damaged");
  const note = `${counts.damaged} entries damaged, of ${kept.length} with ${pictures.length} pictures; ${counts.hit} times found, ${counts.worked} times made again`;
  return { name: "damaged cache entries", tried: tries, lost, note };
}

function formatHits({ hit, worked, missed, invented }: Hits): string {
  return `${hit} found, ${worked} made; ${missed} made though known before, ${invented} found though never made`;
}

/** Path → digest, or nothing for what is no file. */
async function digestAll(files: readonly string[]): Promise<ReadonlyMap<string, string | undefined>> {
  const found = new Map<string, string | undefined>();
  for (const file of files) {
    const bytes = await readFile(file).catch(() => undefined);
    found.set(file, bytes && digest(bytes));
  }
  return found;
}

/** Edits the gallery at random, building with the cache after each edit; then compares with a clean build. */
export async function runEdits(
  room: string,
  sequences: number,
  seed: number,
  onSequence?: (done: number) => void,
  sound?: Store,
): Promise<Tally> {
  const random = makeRandom(seed);
  const bench = benchIn(room);
  const memory = new Memory();
  const lost: string[] = [];
  let content: Content = makeContent();
  await writeContent(bench.content, content);
  await buildWarm(bench, memory);
  const counts = { edits: 0, hit: 0, worked: 0 };
  for (let done = 0; done < sequences; done += 1) {
    const trail: string[] = [];
    const length = 1 + Math.floor(random() * 3);
    let warm = "";
    for (let n = 0; n < length; n += 1) {
      const [name, edit] = pick(random, listEdits(content));
      content = edit(content, random);
      trail.push(name);
      await writeContent(bench.content, content);
      const { digest: found, hits } = await buildWarm(bench, memory);
      warm = found;
      if (hits.missed > 0 || hits.invented > 0) lost.push(`after ${trail.join(", ")}: ${formatHits(hits)}`);
      counts.hit += hits.hit;
      counts.worked += hits.worked;
    }
    counts.edits += length;
    if (warm !== (await buildCold(bench, sound)))
      lost.push(`after ${trail.join(", ")}: other bytes than a clean build`);
    onSequence?.(done + 1);
  }
  if (counts.hit === 0) lost.push("nothing was ever found in the cache");
  const note = `${counts.edits} edits; ${counts.hit} answers found, ${counts.worked} made, none of them twice`;
  return { name: "random edits with the cache", tried: sequences, lost, note };
}

async function listEntries(folder: string): Promise<readonly string[]> {
  const entries = await readdir(folder, { recursive: true, withFileTypes: true });
  return entries
    .filter((entry) => entry.isFile() && entry.name.endsWith(".entry"))
    .map((entry) => path.join(entry.parentPath, entry.name))
    .sort();
}
