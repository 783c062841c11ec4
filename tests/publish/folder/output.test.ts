import { execFileSync } from "node:child_process";
import {
  lstat,
  mkdir,
  mkdtemp,
  readdir,
  readFile,
  readlink,
  rename,
  rm,
  symlink,
  writeFile,
} from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import { OutputError } from "../../../src/publish/folder/diskfailure.ts";
import {
  describeFile,
  formatManifest,
  listFiles,
  manifestName,
} from "../../../src/publish/folder/manifest.ts";
import { type OutputOptions, withOutput } from "../../../src/publish/folder/output.ts";
import { fileOf, type SiteFile } from "../../../src/publish/folder/sitefile.ts";
import { type Disk, disk } from "../../../src/publish/folder/writedisk.ts";
import { disks, failingDisk } from "../../faults/disk.ts";
import { watchSystem } from "../../faults/system.ts";

let room: string;
let site: string;
beforeEach(async () => {
  room = await mkdtemp(path.join(tmpdir(), "counterchange-output-"));
  site = path.join(room, "_site");
});
afterEach(() => rm(room, { recursive: true, force: true }));

const workshop = ".counterchange-_site";
const page = (text: string): readonly SiteFile[] => [fileOf("index.html", () => text)];
const publish = (files: readonly SiteFile[], options: Partial<OutputOptions> = {}, at = site) =>
  withOutput(at, { keepOut: [], ...options }, (output) => output.publish(files));
const read = (...parts: readonly string[]) => readFile(path.join(room, ...parts), "utf8");

test("writes a folder that is not there, with its manifest, and leaves beside it what says whose it is", async () => {
  expect(await publish(page("new"))).toEqual({ way: "renamed" });
  expect(await listFiles(site)).toEqual([manifestName, "index.html"]);
  expect(await readdir(room)).toEqual([workshop, "_site"]);
  expect((await readdir(path.join(room, workshop))).sort()).toEqual([".gitignore", "published"]);
});

// printf new | sha256sum
test("the manifest gives path, size and SHA-256 of every file", async () => {
  await publish([fileOf("b/c.txt", () => "new"), fileOf("a.txt", () => "")]);
  expect(JSON.parse(await read("_site", manifestName))).toEqual({
    schemaVersion: 1,
    schema: "schemas/manifest.schema.json",
    files: [
      { path: "a.txt", size: 0, sha256: "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855" },
      {
        path: "b/c.txt",
        size: 3,
        sha256: "11507a0e2f5e69d5dfa40a62a1bd7b6ee57e6bcd85c67c9b8431b36fff21c437",
      },
    ],
  });
});

describe.each(Object.entries(disks))("swapped by %s", (name, way) => {
  const files = [fileOf("old/index.html", () => "old"), fileOf("index.html", () => "old")];

  test("what is no longer written is gone, and the site before is kept until the next build", async () => {
    await publish(files, { disk: way });
    const { way: done } = await publish(page("new"), { disk: way });
    expect(done).toBe({ exchange: "exchanged", link: "linked", move: "moved" }[name]);
    expect(await listFiles(site)).toEqual([manifestName, "index.html"]);
    expect(await read("_site/index.html")).toBe("new");
    expect(await read(workshop, "previous/old/index.html")).toBe("old");
    await publish(page("newer"), { disk: way });
    expect(await read("_site/index.html")).toBe("newer");
    expect(await read(workshop, "previous/index.html")).toBe("new");
    const kinds = (await readdir(path.join(room, workshop))).map((entry) => entry.replace(/-.*/, "")).sort();
    expect(kinds).toEqual([".gitignore", "previous", "published", ...(name === "link" ? ["version"] : [])]);
    expect(await read(workshop, ".gitignore")).toMatch(/^\*\n# [0-9a-f]{64}\n$/);
  });

  test("a file that came in unseen is kept", async () => {
    await publish(files, { disk: way });
    await writeFile(path.join(site, "CNAME"), "flags.example");
    const { kept } = await publish(page("new"), { disk: way, isForced: true });
    expect(kept).toEqual({ folder: `${site}-kept`, files: ["CNAME"] });
    expect(await read("_site-kept/CNAME")).toBe("flags.example");
    expect(await read("_site-kept/old/index.html")).toBe("old");
    expect(await listFiles(site)).toEqual([manifestName, "index.html"]);
  });
});

test("a link stands for the folder only where folders cannot be exchanged; it stays right when all is moved", async () => {
  await publish(page("a"), { disk: disks.exchange });
  expect((await lstat(site)).isDirectory()).toBe(true);
  await publish(page("b"), { disk: disks.link });
  expect((await lstat(site)).isDirectory()).toBe(true);
  await rm(site, { recursive: true });
  await publish(page("c"), { disk: disks.link });
  expect(await readlink(site)).toMatch(/^\.counterchange-_site\/version-[0-9a-f]{12}$/);
  const moved = `${room}-moved`;
  await rename(room, moved);
  expect(await readFile(path.join(moved, "_site/index.html"), "utf8")).toBe("c");
  await rename(moved, room);
});

test("refuses a folder without our manifest and keeps every file in it", async () => {
  await mkdir(site);
  await writeFile(path.join(site, "thesis.txt"), "precious");
  await expect(publish(page("new"))).rejects.toThrow(/thesis\.txt/);
  expect(await read("_site/thesis.txt")).toBe("precious");
  expect(await readdir(room)).toEqual(["_site"]);
});

test("replaces it when forced, and keeps it under another name each time", async () => {
  for (const text of ["one", "two"]) {
    await rm(site, { recursive: true, force: true });
    await mkdir(site);
    await writeFile(path.join(site, "thesis.txt"), text);
    await publish(page("new"), { isForced: true });
  }
  expect(await read("_site/index.html")).toBe("new");
  expect(await read("_site-kept/thesis.txt")).toBe("one");
  expect(await read("_site-kept-2/thesis.txt")).toBe("two");
});

test("refuses our own folder once someone has put a file into it, at the last moment too", async () => {
  await publish(page("new"));
  const cname = path.join(site, "CNAME");
  await writeFile(cname, "flags.example");
  await expect(publish(page("newer"))).rejects.toThrow(OutputError);
  await rm(cname);
  const late = fileOf("late.html", async () => {
    await writeFile(cname, "flags.example");
    return "late";
  });
  await expect(publish([late])).rejects.toThrow(/CNAME/);
  expect(await read("_site/index.html")).toBe("new");
});

test("takes an empty folder, one that a file manager has been in, and one of an earlier version", async () => {
  await mkdir(site);
  await publish(page("new"));
  await writeFile(path.join(site, ".DS_Store"), "x");
  await publish(page("newer"));
  await rm(path.join(site, manifestName));
  await writeFile(path.join(site, manifestName), "index.html\n");
  await publish(page("newest"));
  expect(await read("_site/index.html")).toBe("newest");
});

test("refuses a folder of empty folders, one in the place of our manifest too", async () => {
  for (const inner of [manifestName, "notes/2026"]) {
    await mkdir(path.join(site, inner), { recursive: true });
    await expect(publish(page("new"))).rejects.toThrow(`${inner}/`);
    expect((await lstat(path.join(site, inner))).isDirectory()).toBe(true);
    await rm(site, { recursive: true });
  }
});

test("takes our own site where an empty folder is left of what someone deleted", async () => {
  await publish([fileOf("a/b.txt", () => "b"), ...page("new")]);
  await rm(path.join(site, "a/b.txt"));
  expect((await publish(page("newer"))).kept).toBeUndefined();
});

test("a manifest that came with a folder costs nobody a file: the folder is kept, however often is built", async () => {
  await mkdir(site);
  await writeFile(path.join(site, "thesis.txt"), "precious");
  await writeFile(path.join(site, manifestName), formatManifest([describeFile("thesis.txt", "precious")]));
  const { kept } = await publish(page("new"));
  expect(kept).toEqual({ folder: `${site}-kept`, files: [manifestName, "thesis.txt"] });
  for (const text of ["newer", "newest"]) expect((await publish(page(text))).kept).toBeUndefined();
  expect(await read("_site-kept/thesis.txt")).toBe("precious");
});

test("refuses what somebody is at home in, and looks at nothing there", async () => {
  vi.stubEnv("HOME", path.join(room, "inner/home"));
  try {
    for (const target of ["/", process.cwd(), path.dirname(process.cwd()), tmpdir(), room]) {
      const seen: string[] = [];
      const before = (_: string, file: string) => void (file.startsWith(room) && seen.push(file));
      const isRefused = expect(
        watchSystem({ within: room, before }, () => publish(page("new"), {}, target)),
      ).rejects;
      await isRefused.toThrow(/it would take the place of (?:your home folder|the folder)/);
      expect(seen.filter((file) => !file.startsWith(path.join(room, "inner")) && file !== room)).toEqual([]);
    }
  } finally {
    vi.unstubAllEnvs();
  }
});

test("refuses a file, and a link to a folder", async () => {
  await writeFile(site, "a file");
  await expect(publish(page("new"))).rejects.toThrow(/not a folder/);
  const link = path.join(room, "link");
  await mkdir(path.join(room, "elsewhere"));
  await symlink(path.join(room, "elsewhere"), link);
  await expect(publish(page("new"), {}, link)).rejects.toThrow(/not a folder/);
});

test("refuses to mix with the content: the same folder, one inside it, one around it, through links too", async () => {
  const content = path.join(room, "content");
  await mkdir(content);
  await symlink(content, path.join(room, "alias"));
  for (const target of [content, path.join(content, "_site"), room, path.join(room, "alias/_site")]) {
    await expect(publish(page("new"), { keepOut: [content] }, target)).rejects.toThrow(OutputError);
  }
  expect(await readdir(content)).toEqual([]);
});

test("a folder whose name only begins like the content's is no part of it", async () => {
  await publish(page("new"), { keepOut: [path.join(room, "content")] }, path.join(room, "content-site"));
  expect(await readdir(room)).toContain("content-site");
});

test("keeps the old site when making a file fails, and cleans up, folders on the way there included", async () => {
  await publish(page("old"));
  const broken = fileOf("broken.html", () => {
    throw new Error("no such font");
  });
  await expect(publish([...page("half"), broken])).rejects.toThrow("no such font");
  expect(await read("_site/index.html")).toBe("old");
  expect(await readdir(room)).toEqual([workshop, "_site"]);
  await expect(publish([broken], {}, path.join(room, "a/b/site"))).rejects.toThrow("no such font");
  expect(await readdir(room)).toEqual([workshop, "_site"]);
});

test("swaps nothing in that is not on the disk as it was made", async () => {
  await publish(page("old"));
  const isPage = (file: string) => file.endsWith("index.html");
  const lossy: Disk = {
    ...disk,
    write: (file, bytes) => disk.write(file, isPage(file) ? bytes.slice(0, -1) : bytes),
  };
  await expect(publish(page("new"), { disk: lossy })).rejects.toThrow(/not on the disk as it was written/);
  const forgetful: Disk = {
    ...disk,
    write: async (file, bytes) => (isPage(file) ? undefined : disk.write(file, bytes)),
  };
  await expect(publish(page("new"), { disk: forgetful })).rejects.toThrow(/was not written/);
  expect(await read("_site/index.html")).toBe("old");
});

test("a full disk is told calmly: what, where, what to do", async () => {
  await publish(page("old"));
  const failing = failingDisk(1, "ENOSPC", { calls: ["write"], forGood: true });
  const error: unknown = await publish(page("new"), { disk: failing.disk }).catch((found: unknown) => found);
  expect(error).toBeInstanceOf(OutputError);
  expect(error).toMatchObject({
    code: "ENOSPC",
    message: expect.stringMatching(/: the disk is full \(ENOSPC at /),
  });
  expect(await read("_site/index.html")).toBe("old");
});

test("the second of two builds waits for the first, hears so once, and then publishes", async () => {
  let heard = 0;
  let begin: () => void = () => undefined;
  const begun = new Promise<void>((resolve) => {
    begin = resolve;
  });
  const slow = fileOf("index.html", async () => {
    begin();
    await new Promise((resolve) => setTimeout(resolve, 700));
    return "first";
  });
  const first = publish([slow]);
  await begun;
  const onWait = ({ pid }: { pid: number }) => {
    expect(pid).toBe(process.pid);
    heard += 1;
  };
  await Promise.all([first, publish(page("second"), { onWait })]);
  expect(heard).toBe(1);
  expect(await read("_site/index.html")).toBe("second");
  expect(await read(workshop, "previous/index.html")).toBe("first");
});

describe("a hidden folder that came with a checkout is put aside, and nothing of it is used", () => {
  const hidden = () => path.join(room, workshop);
  const asideOf = async (options: Partial<OutputOptions> = {}) => {
    let aside: string | undefined;
    await withOutput(site, { keepOut: [], ...options }, async (output) => {
      aside = output.aside;
    });
    return aside;
  };
  const makeForged = async (folder: string) => {
    await mkdir(path.join(folder, "outgoing"), { recursive: true });
    await writeFile(path.join(folder, ".gitignore"), "*\n");
    await writeFile(path.join(folder, "outgoing/index.html"), "<script>alert(1)</script>");
  };

  test("with an outgoing site, where nothing else is published", async () => {
    await makeForged(hidden());
    expect(await asideOf()).toBe(`${hidden()}-aside`);
    expect(await readdir(room)).toEqual([`${workshop}-aside`]);
    expect(await read(`${workshop}-aside`, "outgoing/index.html")).toContain("script");
  });

  test("as a link", async () => {
    const outside = path.join(room, "outside");
    await makeForged(outside);
    await symlink(outside, hidden());
    expect(await asideOf()).toBe(`${hidden()}-aside`);
    expect(await readlink(`${hidden()}-aside`)).toBe(outside);
    expect((await readdir(outside)).sort()).toEqual([".gitignore", "outgoing"]);
    expect(await publish(page("new"))).toEqual({ way: "renamed" });
  });

  test("with locks, which are not waited for, and as a pipe", async () => {
    await mkdir(hidden());
    for (let pid = 10; pid < 35; pid += 1)
      await writeFile(path.join(hidden(), `lock.${pid}.0.0000abcd.elsewhere.0123456789${pid}`), "0\n");
    let waits = 0;
    expect(await asideOf({ onWait: () => (waits += 1) })).toBe(`${hidden()}-aside`);
    execFileSync("mkfifo", [hidden()]);
    expect(await asideOf({ onWait: () => (waits += 1) })).toBe(`${hidden()}-aside-2`);
    expect(waits).toBe(0);
  });

  test("and where the site is a link into it, nothing is done", async () => {
    await publish(page("old"), { disk: disks.link });
    await expect(publish(page("new"), { secret: new Uint8Array(32) })).rejects.toThrow("it is a link into");
    expect(await read("_site/index.html")).toBe("old");
    expect(await publish(page("new"), { disk: disks.link })).toEqual({ way: "linked" });
  });

  test("one of our own is not: a site that waits in it comes back", async () => {
    await publish(page("old"));
    await publish(page("new"));
    await rename(site, path.join(hidden(), "outgoing"));
    expect(await asideOf()).toBeUndefined();
    expect(await read("_site/index.html")).toBe("new");
  });
});

test("locks that are no files, in a hidden folder of our own, hold nobody up", async () => {
  await publish(page("old"));
  await publish(page("new"));
  const lock = (pid: number) =>
    path.join(room, workshop, `lock.${pid}.0.0000abcd.elsewhere.0123456789${pid}`);
  await mkdir(lock(10));
  execFileSync("mkfifo", [lock(11)]);
  await symlink("/dev/zero", lock(12));
  expect(await publish(page("newer"))).toEqual({ way: "exchanged" });
});

test("a manifest that is a pipe or a link without end is none", async () => {
  await mkdir(site);
  execFileSync("mkfifo", [path.join(site, manifestName)]);
  await expect(publish(page("new"))).rejects.toThrow("holds what was not written here");
  await rm(path.join(site, manifestName));
  await symlink("/dev/zero", path.join(site, manifestName));
  await expect(publish(page("new"))).rejects.toThrow("holds what was not written here");
});

test("without a home that can be written nothing is published, and a key of one's own is enough", async () => {
  await writeFile(path.join(room, "file"), "");
  vi.stubEnv("XDG_CACHE_HOME", path.join(room, "file"));
  try {
    await expect(publish(page("new"))).rejects.toThrow("can be neither read nor kept");
    vi.stubEnv("COUNTERCHANGE_KEY", "words of a society");
    expect(await publish(page("new"))).toEqual({ way: "renamed" });
  } finally {
    vi.unstubAllEnvs();
  }
});
