// Where measurements are kept, as the commands do it. HOME is a folder of its own, so that no test shares a secret.
import { readdir, stat } from "node:fs/promises";
import { join } from "node:path";
import { afterEach, expect, test, vi } from "vitest";
import { openCache } from "../../src/cli/cacheoption.ts";
import { harbour, makeFolder } from "../content/folder.ts";
import { runHere } from "./run.ts";

vi.setConfig({ testTimeout: 60_000 });

const content = Object.fromEntries(Object.entries(harbour).map(([path, text]) => [`content/${path}`, text]));

async function run(
  folder: string,
  home: string,
  ...words: readonly string[]
): Promise<{ status: number; said: string }> {
  vi.stubEnv("HOME", home);
  vi.stubEnv("XDG_CACHE_HOME", "");
  const { status, data, messages } = await runHere(folder, ...words);
  return { status, said: data + messages };
}
afterEach(() => void vi.unstubAllEnvs());

/** Bytes of all entries together. */
async function weighEntries(folder: string): Promise<number> {
  const names = (await readdir(folder, { recursive: true })).filter((name) => name.endsWith(".entry"));
  const sizes = await Promise.all(names.map(async (name) => (await stat(join(folder, name))).size));
  return sizes.reduce((sum, size) => sum + size, 0);
}

async function countEntries(folder: string): Promise<number> {
  const names = await readdir(folder, { recursive: true }).catch(() => []);
  return names.filter((name) => name.endsWith(".entry")).length;
}

test("build keeps in the working folder, and says the same the second time", async () => {
  const [folder, home] = [await makeFolder(content), await makeFolder({})];
  const first = await run(folder, home, "publish");
  expect(first.status).toBe(0);
  const cache = join(folder, ".cache/counterchange");
  const kept = await countEntries(cache);
  // Pictures among them: each of the site, which has a dozen of a study's distances alone.
  const pictures = (await readdir(join(folder, "published"), { recursive: true })).filter((name) =>
    /\.(?:png|webp)$/.test(name),
  );
  expect(pictures.length).toBeGreaterThan(12);
  expect(kept).toBeGreaterThan(pictures.length);
  // No more than what they show, and a little for the measurements.
  expect(await weighEntries(cache)).toBeLessThan(1_000_000);
  expect(await run(folder, home, "publish")).toEqual(first);
  expect(await countEntries(cache)).toBe(kept);
  expect(await readdir(join(home, ".cache/counterchange"))).toEqual(["key"]);
});

test("in the content folder itself nothing is kept: it goes to the user's home", async () => {
  const [folder, home] = [await makeFolder(content), await makeFolder({})];
  const { status } = await run(join(folder, "content"), home, "publish", ".", "--out", join(folder, "site"));
  expect(status).toBe(0);
  expect((await readdir(join(folder, "content"))).sort()).toEqual([
    "addresses.txt",
    "gallery.yaml",
    "studies",
  ]);
  expect(await countEntries(join(home, ".cache/counterchange/kept"))).toBeGreaterThan(1);
});

test("check reads what is kept and keeps nothing of the content", async () => {
  const [folder, home] = [await makeFolder(content), await makeFolder({})];
  expect((await run(folder, home, "check")).status).toBe(0);
  expect(await readdir(folder)).toEqual(["content"]);
  expect(await readdir(home)).toEqual([]);
});

test("--cache names another folder, off keeps nothing, and inside the content it is refused", async () => {
  const [folder, home] = [await makeFolder(content), await makeFolder({})];
  expect((await run(folder, home, "survey", "content", "--cache", "kept")).status).toBe(0);
  expect(await countEntries(join(folder, "kept"))).toBe(1);
  expect((await run(folder, home, "publish", "--cache", "off")).status).toBe(0);
  expect((await readdir(folder)).sort()).toEqual([
    ".counterchange-published",
    "content",
    "kept",
    "published",
  ]);
  const refused = await run(folder, home, "publish", "--cache", "content/kept");
  expect(refused).toEqual({
    status: 2,
    said: "--cache is content/kept, inside content: what is kept must not mix with what authors write.\n    Name a folder elsewhere, or type: --cache off\n",
  });
});

test("a folder whose name only begins like the content's is not inside it", async () => {
  const folder = await makeFolder({});
  vi.stubEnv("XDG_CACHE_HOME", folder);
  const given = {
    operands: [],
    values: { cache: join(folder, "content-kept") },
    switches: new Set<string>(),
  };
  const output = { message: () => undefined };
  expect(await openCache(given, join(folder, "content"), output)).toBeDefined();
  await expect(openCache(given, folder, output)).rejects.toThrow("inside");
});

test("without a home that can be written to, nothing is published, and the reason is said", async () => {
  const [folder, home] = [await makeFolder(content), await makeFolder({ file: "x" })];
  const { status, said } = await run(folder, join(home, "file"), "publish");
  expect(status).toBe(2);
  expect(said).toMatch(
    /^Nothing was written to published: the key that marks what is ours .*\n {4}Let HOME or/,
  );
  expect(await readdir(folder)).toEqual(["content"]);
});

test("what came with a checkout is put aside and named: a cache, and a hidden folder with a site in it", async () => {
  const [folder, home] = [
    await makeFolder({
      ...content,
      ".cache/counterchange/aa/1.entry": "x",
      ".counterchange-published/outgoing/index.html": "<script></script>",
    }),
    await makeFolder({}),
  ];
  const { status, said } = await run(folder, home, "publish");
  expect(status).toBe(0);
  expect(said).toMatch(/it was put aside as \.cache\/counterchange-aside-[0-9a-f]{8},/);
  expect(said).toContain(".counterchange-published-aside lay beside published");
  expect((await readdir(folder)).sort()).toEqual([
    ".cache",
    ".counterchange-published",
    ".counterchange-published-aside",
    "content",
    "published",
  ]);
});
