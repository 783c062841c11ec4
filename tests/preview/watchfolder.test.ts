// Saves as editors make them, on a real disk. Every one must be heard, however it is made.
import { appendFile, mkdir, rename, rm, unlink, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { expect, onTestFinished, test, vi } from "vitest";
import { Watcher } from "../../src/preview/watchfolder.ts";
import { makeFolder } from "../content/folder.ts";

const files = {
  "gallery.yaml": "x",
  "studies/a/study.md": "x",
  "studies/a/original.svg": "x",
  "_notes/a.txt": "x",
  "published/.counterchange-site": "{}",
  "published/a.html": "x",
};

async function watch(folder: string) {
  let heard = 0;
  const watcher = new Watcher(folder, {
    isIgnored: (name) => /^[._]|~$/.test(name),
    onChange: () => {
      heard += 1;
    },
  });
  onTestFinished(() => watcher.close());
  await watcher.scan();
  return {
    watcher,
    /** Does something and waits until it is heard. */
    async hears(act: () => Promise<unknown>): Promise<void> {
      const before = heard;
      await act();
      await vi.waitFor(() => expect(heard).toBeGreaterThan(before), { timeout: 5000, interval: 5 });
      await watcher.scan();
    },
    count: () => heard,
  };
}

test("every way to save, and what comes and goes", async () => {
  const folder = await makeFolder(files);
  const study = join(folder, "studies/a/study.md");
  const { hears } = await watch(folder);
  await hears(() => writeFile(study, "written over"));
  await hears(() => appendFile(study, "longer"));
  await hears(async () => {
    await writeFile(`${study}~`, "a fresh copy");
    await rename(`${study}~`, study);
  });
  // The watcher of a file that was replaced would hear no more: once more.
  await hears(() => writeFile(study, "again"));
  await hears(() => unlink(study));
  await hears(() => writeFile(study, "back"));
  await hears(() => writeFile(join(folder, "gallery.yaml"), "y"));
});

test("folders that are new, moved, deleted and made again", async () => {
  const folder = await makeFolder(files);
  const { hears } = await watch(folder);
  await hears(() => mkdir(join(folder, "studies/b")));
  await hears(() => writeFile(join(folder, "studies/b/study.md"), "x"));
  await hears(() => rename(join(folder, "studies/b"), join(folder, "studies/c")));
  await hears(() => writeFile(join(folder, "studies/c/study.md"), "y"));
  await hears(() => rm(join(folder, "studies"), { recursive: true }));
  await hears(() => mkdir(join(folder, "studies/a"), { recursive: true }));
  await hears(() => writeFile(join(folder, "studies/a/study.md"), "z"));
});

test("the whole folder deleted, and there again", async () => {
  const folder = await makeFolder(files);
  const { hears } = await watch(folder);
  await hears(() => rm(folder, { recursive: true }));
  await hears(() => mkdir(join(folder, "studies/a"), { recursive: true }));
  await hears(() => writeFile(join(folder, "studies/a/study.md"), "x"));
});

test("a folder that is not there yet", async () => {
  const folder = join(await makeFolder({}), "later");
  const { hears } = await watch(folder);
  await hears(() => mkdir(folder));
  await hears(() => writeFile(join(folder, "gallery.yaml"), "x"));
});

test("what is ignored is not heard, and neither is anything after the end", async () => {
  const folder = await makeFolder(files);
  const { hears, count, watcher } = await watch(folder);
  await writeFile(join(folder, "studies/a/study.md~"), "x");
  await writeFile(join(folder, "studies/a/.study.md.swp"), "x");
  await writeFile(join(folder, "_notes/a.txt"), "y");
  await writeFile(join(folder, "published/a.html"), "y");
  const before = count();
  await hears(() => writeFile(join(folder, "gallery.yaml"), "y"));
  // One save may be heard as several; none of them is older than the last.
  expect(before).toBe(0);
  watcher.close();
  const after = count();
  await writeFile(join(folder, "gallery.yaml"), "z");
  await new Promise((resolve) => setImmediate(resolve));
  expect(count()).toBe(after);
});
