// Pictures that are kept: found by what they show and by nothing else, and the same as those that are made.
import { readdir, readFile, truncate, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import type { Line } from "../../../src/analysis/jobs/pool.ts";
import { openStore, type Store } from "../../../src/analysis/store/resultstore.ts";
import { fileOf, type SiteFile } from "../../../src/publish/folder/sitefile.ts";
import { drawFiles } from "../../../src/publish/pictures/drawfiles.ts";
import { unpackFont } from "../../../src/publish/pictures/fontfile.ts";
import {
  findLetteringFile,
  keepFonts,
  letteringFonts,
  questionOf,
} from "../../../src/publish/pictures/imagecache.ts";
import { makeFiles } from "../../../src/publish/pictures/makefiles.ts";
import type { DrawnFile } from "../../../src/publish/pictures/recipe.ts";
import { listSite } from "../../../src/publish/publishgallery.ts";
import { makeFolder } from "../../content/folder.ts";
import { readLetters } from "../glyph.ts";
import { makeAll } from "../making.ts";
import { galleryResult } from "../sample.ts";

async function prepare(): Promise<{ folder: string; open: () => Promise<Store> }> {
  const root = await makeFolder({});
  const folder = join(root, "kept");
  const open = async () => {
    const store = await openStore({ folder, secretFile: join(root, "key") });
    if (store === undefined) throw new Error("no store");
    return store;
  };
  return { folder, open };
}

/** Makes `files` with what is kept, and waits until all of it is written. */
async function makeKept(files: readonly SiteFile[], open: () => Promise<Store>) {
  const store = await open();
  const made = await makeAll(keepFonts(files, store));
  await store.close();
  return made;
}

async function listEntries(folder: string): Promise<readonly string[]> {
  const names = await readdir(folder, { recursive: true });
  return names.filter((name) => name.endsWith(".entry")).map((name) => join(folder, name));
}

/** A file whose bytes take long to make. `recipe` is what goes into them. */
const pictureOf = (path: string, recipe: unknown, make: () => Promise<Uint8Array>): SiteFile => ({
  ...fileOf(path, make),
  findRecipe: async () => recipe,
});

/** A picture that counts how often it is made. */
function counted(recipe: unknown) {
  let times = 0;
  const make = async () => {
    times += 1;
    return Uint8Array.from([1, 2, 3]);
  };
  return { file: pictureOf("a.png", recipe, make), times: () => times };
}

test("a picture is made once for one recipe, whatever its path, and again for another", async () => {
  const { open } = await prepare();
  const first = counted({ drawing: "<svg/>", size: { width: 3, height: 2 } });
  await makeKept([first.file], open);
  const again = counted({ size: { height: 2, width: 3 }, drawing: "<svg/>" });
  const made = await makeKept([{ ...again.file, path: "b.png" }], open);
  expect([again.times(), [...(made.get("b.png") ?? [])]]).toEqual([0, [1, 2, 3]]);
  const other = counted({ drawing: "<svg/>", size: { width: 3, height: 3 } });
  await makeKept([other.file], open);
  expect(other.times()).toBe(1);
});

test("what has no recipe is made each time, and without a store all is", async () => {
  const { folder, open } = await prepare();
  const files = [fileOf("a.txt", () => "text")];
  expect((await makeKept(files, open)).get("a.txt")?.toString()).toBe("text");
  expect(await listEntries(folder).catch(() => [])).toEqual([]);
  const { file, times } = counted({ a: 1 });
  for (const one of [1, 2]) {
    await makeAll(keepFonts([file], undefined));
    expect(times()).toBe(one);
  }
});

test("what cannot be made gives way to its spare, which is not kept", async () => {
  const { folder, open } = await prepare();
  const whole = Uint8Array.from([9, 9]);
  const file = (make: () => Promise<Uint8Array>): SiteFile => ({
    ...pictureOf("a.woff2", { letters: "a" }, make),
    spare: async () => whole,
  });
  const failing = file(() => Promise.reject(new Error("no memory")));
  expect([...((await makeKept([failing], open)).get("a.woff2") ?? [])]).toEqual([9, 9]);
  expect([...((await makeAll(keepFonts([failing], undefined))).get("a.woff2") ?? [])]).toEqual([9, 9]);
  expect(await listEntries(folder).catch(() => [])).toEqual([]);
  expect([
    ...((await makeKept([file(async () => Uint8Array.from([1]))], open)).get("a.woff2") ?? []),
  ]).toEqual([1]);
  // Without a spare the build hears of it.
  await expect(
    makeKept([pictureOf("b.png", {}, () => Promise.reject(new Error("no memory")))], open),
  ).rejects.toThrow("no memory");
});

describe("every picture of a gallery", () => {
  const list = async () => (await listSite(galleryResult)).drawn;
  const draw = (input: Parameters<typeof makeFiles>[0]) => makeFiles(input);
  const refuse = () => Promise.reject(new Error("it was made again"));

  /** Draws with what is kept, in this process or not at all, and waits until all of it is written. */
  async function drawKept(files: readonly DrawnFile[], open: () => Promise<Store>, work: typeof draw = draw) {
    const store = await open();
    const run = ((_: string, __: string, input: Parameters<typeof draw>[0]) => work(input)) as unknown;
    const subject = { file: "a", drawing: "" };
    const { value } = await drawFiles({ line: { run: run as Line["run"] }, store }, subject, files);
    await store.close();
    return new Map(value?.map(({ path, bytes }) => [path, Buffer.from(bytes as string)]));
  }

  test("has a recipe of its own, is kept, and comes back byte for byte", async () => {
    const { folder, open } = await prepare();
    const plain = await makeAll(await list());
    expect(await drawKept(await list(), open)).toEqual(plain);
    const different = new Set([...plain.values()].map((bytes) => Buffer.from(bytes).toString("base64")));
    // Pictures that are alike, as of an edge that does not change, may share an entry; no two others do.
    expect((await listEntries(folder)).length).toBeGreaterThanOrEqual(different.size);
    expect(await drawKept(await list(), open, refuse)).toEqual(plain);
  });

  test("is made again where its entry is damaged, and is the same", async () => {
    const { folder, open } = await prepare();
    const plain = await drawKept(await list(), open);
    const entries = await listEntries(folder);
    const whole = await Promise.all(entries.map((entry) => readFile(entry)));
    const damages = [
      (entry: string) => truncate(entry, 60),
      (entry: string) => truncate(entry, 0),
      async (entry: string) => {
        const bytes = await readFile(entry);
        bytes[bytes.length - 9] = (bytes.at(-9) ?? 0) ^ 4;
        await writeFile(entry, bytes);
      },
      // The picture of somebody else.
      (entry: string) => writeFile(entry, whole[entry === entries[0] ? 1 : 0] ?? ""),
    ];
    for (const damage of damages) {
      for (const entry of entries) await damage(entry);
      expect(await drawKept(await list(), open)).toEqual(plain);
      // Healed: what is kept now is whole.
      expect(await Promise.all(entries.map((entry) => readFile(entry)))).toEqual(whole);
    }
  });
});

describe("words on a picture", () => {
  const recipeOf = (words: object) =>
    questionOf({ kind: "sheet", words, flags: [] } as unknown as DrawnFile["recipe"]);

  test("that both fonts can set are part of its recipe, the fonts too", async () => {
    const words = { title: "A “gold” anchor – 58.1 %…", captions: ["Über", undefined] };
    expect(await recipeOf(words)).toMatchObject({
      recipe: { recipe: { words }, fonts: expect.stringMatching(/^[0-9a-f]{64}$/) },
    });
  });

  test.each(["Łódź", "Ναύπλιο", "العلم", "旗", "a → b", "🏴"])(
    "%s, for which the machine lends a font: not kept",
    async (title) => {
      expect(await recipeOf({ title })).toBeUndefined();
      expect(await recipeOf({ captions: ["plain", title] })).toBeUndefined();
    },
  );

  test("of the letters that count as the fonts' own, both fonts have every one", async () => {
    for (const family of letteringFonts) {
      const has = readLetters(unpackFont(await readFile(findLetteringFile(family))));
      const missing: string[] = [];
      for (let code = 0x20; code < 0x3000; code += 1) {
        const letter = String.fromCodePoint(code);
        if ((await recipeOf({ letter })) !== undefined && !has.has(code)) missing.push(code.toString(16));
      }
      expect(missing, family).toEqual([]);
    }
  });
});
