import { access, mkdtemp, readdir, readFile, rename, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, test, vi } from "vitest";
import { plainFormat } from "../../src/words/format.ts";
import { writeStudy } from "../analysis/fixture.ts";
import { drawing, harbour, makeFolder } from "../content/folder.ts";
import { writeContent } from "../faults/gallery.ts";
import { type Run, run, runHere } from "./run.ts";
import { findFaults } from "./schema.ts";

vi.setConfig({ testTimeout: 60_000 });

const content = Object.fromEntries(Object.entries(harbour).map(([path, text]) => [`content/${path}`, text]));
const bad = {
  "content/studies/bad/study.md": writeStudy("status: x"),
  "content/studies/bad/original.svg": drawing,
};

let built = "";
let first: Run;
beforeAll(async () => {
  built = await mkdtemp(join(tmpdir(), "counterchange-test-"));
  await writeContent(built, content);
  first = await run(built, "publish");
});
afterAll(() => rm(built, { recursive: true, force: true }));

// By hand, from the sRGB curve and 5 + 80 · Y: #7a1020 has Y = 0.2126 · 0.1946 + 0.7152 · 0.0052 + 0.0722 · 0.0144 = 0.0461
// and reflects 8.69 %; #f4c430 has Y = 0.1923 + 0.3948 + 0.0021 = 0.5892 and reflects 52.14 %; white reflects 85 %.
// Contrast of white and dark red 125 · 76.31 / 118.69 = 80.37, of white and yellow 125 · 32.86 / 162.14 = 25.33, which is
// 56 % of the way to 45.
test("a gallery is published, with a line for each study and where to look", async () => {
  const { status, data, messages } = first;
  expect([status, messages]).toEqual([0, ""]);
  expect(data).toMatch(/^ {2}study +clarity {2}verdict\n {2}ferry {2}100 % → 56 % {2}less clear$/m);
  expect(data).toMatch(/^1 study on \d+ pages?: open published\/index\.html$/m);
  await access(join(built, "published/index.html"));
  await access(join(built, "published/studies/ferry/index.html"));
});

test("a bad study is left out and named, the others are published, status 1", async () => {
  const root = await makeFolder({ ...content, ...bad });
  const { status, data, messages } = await runHere(root, "publish", "content", "--out", "site");
  expect(status).toBe(1);
  expect(data).toContain("open site/index.html");
  expect(messages).toMatch(/^content\/studies\/bad\/study\.md:5:9 {2}error/);
  expect(messages).toMatch(/\n1 study left out: bad\.\n$/);
  await access(join(root, "site/studies/ferry/index.html"));
  await expect(access(join(root, "site/studies/bad"))).rejects.toThrow("ENOENT");
});

test("with --strict nothing is published where there is an error", async () => {
  const root = await makeFolder({ ...content, ...bad });
  const { status, data, messages } = await runHere(root, "publish", "--strict");
  expect([status, data]).toEqual([1, ""]);
  expect(messages).toContain("Nothing was published: 1 error, 0 warnings.");
  expect(await readdir(root)).not.toContain("published");
});

test("a draft is published only when asked for", async () => {
  const root = await makeFolder({
    ...content,
    "content/studies/ferry/study.md": writeStudy("status: draft"),
  });
  expect((await runHere(root, "publish")).data).not.toContain("ferry");
  expect((await runHere(root, "publish", "--with-drafts")).data).toContain("ferry");
});

test("a folder that holds somebody's files is not written to", async () => {
  const root = await makeFolder({ ...content, "mine/letter.txt": "x" });
  const { status, data, messages } = await runHere(root, "publish", "--out", "mine");
  expect([status, data]).toEqual([2, ""]);
  expect(messages).toContain("mine");
  expect(await readdir(join(root, "mine"))).toEqual(["letter.txt"]);
});

test("with --force it is, and what was in it is kept and named", async () => {
  const root = await makeFolder({ ...content, "mine/letter.txt": "x" });
  const { status, messages } = await runHere(root, "publish", "--out", "mine", "--force");
  expect([status, messages]).toEqual([
    0,
    "mine held 1 file that was not written here (letter.txt). The folder as it was is kept: mine-kept\n",
  ]);
  expect(await readFile(join(root, "mine-kept/letter.txt"), "utf8")).toBe("x");
  await access(join(root, "mine/index.html"));
});

test("of two builds at once the second says for whom it waits, and both publish", async () => {
  // With a cache of their own, which holds nothing yet, both are at work long enough to meet.
  const root = await makeFolder({ ...content, ".cache/mine.txt": "" });
  const both = await Promise.all([run(root, "publish"), run(root, "publish")]);
  expect(both.map(({ status }) => status)).toEqual([0, 0]);
  const waited = both.filter(({ messages }) => messages !== "");
  expect(waited.map(({ messages }) => messages)).toEqual([
    expect.stringMatching(
      /^Another run is at work on published \(process \d+ on [\w-]+\): waiting until it is done\.\n$/,
    ),
  ]);
});

test("a content folder that is not there, and a base that is no path, are wrong use", async () => {
  const root = await makeFolder({});
  expect((await runHere(root, "publish")).status).toBe(2);
  expect(await runHere(root, "publish", "--base", "flags")).toEqual({
    status: 2,
    data: "",
    messages: `\
--base is “flags”; a path begins and ends with a slash.
    Type, for example: --base /flags/
`,
  });
  expect(await readdir(root)).toEqual([]);
});

test.each([
  ["a misspelt key", "titel: Flags\n"],
  ["no YAML", "title: [\n"],
  ["a value that is none", "language: English, British\n"],
])("a gallery is not published over itself with %s in its settings", async (_, settings) => {
  const root = await makeFolder(content);
  await runHere(root, "publish");
  const before = await readFile(join(root, "published/index.html"), "utf8");
  await writeFile(join(root, "content/gallery.yaml"), settings);
  const { status, data, messages } = await runHere(root, "publish");
  expect([status, data]).toEqual([1, ""]);
  expect(messages).toMatch(/^content\/gallery\.yaml:1:\d+ {2}error/m);
  expect(messages).toContain(
    "\n\nNothing was published: gallery.yaml has an error, and published holds a gallery with its settings as they were.\n",
  );
  expect(await readFile(join(root, "published/index.html"), "utf8")).toBe(before);
  // Where nothing stands yet there is nothing to lose: it is published with the usual settings, and said.
  const first = await runHere(root, "publish", "--out", "first");
  expect([first.status, first.data]).toEqual([1, expect.stringContaining("1 study on")]);
});

test("an output inside the content, asked for from within it, is refused with a folder that would do", async () => {
  const root = await makeFolder(content);
  const { status, messages } = await runHere(join(root, "content"), "publish", "--out", "other");
  expect(status).toBe(2);
  expect(messages).toContain("Type, for example: --out ../my-site");
  expect((await runHere(join(root, "content"), "publish", "--out", "../my-site")).status).toBe(0);
});

test("an empty gallery is not published over one with studies", async () => {
  const root = await makeFolder(content);
  await runHere(root, "publish");
  const before = await readFile(join(root, "published/index.html"), "utf8");
  await writeFile(join(root, "content/studies/ferry/study.md"), writeStudy("status: x"));
  const { status, data, messages } = await runHere(root, "publish");
  expect([status, data]).toEqual([1, ""]);
  expect(messages).toMatch(/^content\/studies\/ferry\/study\.md:5:9 {2}error/);
  expect(messages).toMatch(
    /\n\nNothing was published: 1 study left out: ferry, and published holds a gallery of 1 study\.\n {4}Mend a study; or, if the gallery is to be empty, remove published first\.\n$/,
  );
  expect(await readFile(join(root, "published/index.html"), "utf8")).toBe(before);

  // Elsewhere, where nothing is lost, it is.
  const elsewhere = await runHere(root, "publish", "--out", "new");
  expect([elsewhere.status, elsewhere.data]).toMatchObject([1, expect.stringContaining("0 studies")]);
});

test("a file in the place of the folder is kept, and the advice is given once", async () => {
  const root = await makeFolder({ ...content, mine: "x" });
  const { status, messages } = await runHere(root, "publish", "--out", "mine");
  expect(status).toBe(2);
  expect(messages.match(/another/g)).toHaveLength(1);
  expect(messages).toContain("    Type, for example: --out my-site\n");
});

test("with --strict a warning is enough, and without it the gallery is published", async () => {
  const warned = { ...content, "content/studies/ferry/study.md": `${writeStudy()}\n![a bell](bell.png)\n` };
  const root = await makeFolder(warned);
  const strict = await runHere(root, "publish", "--strict");
  expect([strict.status, strict.data]).toEqual([1, ""]);
  expect(strict.messages).toContain("Nothing was published: 0 errors, 1 warning.");
  await expect(access(join(root, "published"))).rejects.toThrow("ENOENT");
  expect((await runHere(root, "publish")).status).toBe(0);
  // A site that is there stays as it was.
  const before = await readFile(join(root, "published/index.html"), "utf8");
  expect((await runHere(root, "publish", "--strict")).status).toBe(1);
  expect(await readFile(join(root, "published/index.html"), "utf8")).toBe(before);
});

test("in the content folder itself the site goes to published in it, and nowhere else in it", async () => {
  const root = await makeFolder(harbour);
  expect((await runHere(root, "publish")).data).toContain("open published/index.html");
  expect((await runHere(root, "publish")).status).toBe(0);
  expect((await runHere(root, "check")).messages).toBe("0 errors, 0 warnings; 1 good study.\n");
  for (const out of ["studies", "studies/published", "flags", ".", "site"]) {
    expect([out, (await runHere(root, "publish", "--out", out)).status]).toEqual([out, 2]);
  }
});

test("a study that moved leaves pages at its old address", async () => {
  const root = await makeFolder({
    ...content,
    "content/studies/ferry/study.md": writeStudy("formerly: [old-ferry]"),
  });
  expect((await runHere(root, "publish")).status).toBe(0);
  const page = await readFile(join(root, "published/studies/old-ferry/index.html"), "utf8");
  expect(page).toContain('<meta http-equiv="refresh" content="0; url=../ferry/"/>');
  expect(page).toContain('<link rel="canonical" href="https://flags.example/studies/ferry/"/>');
  expect(page).toContain('<meta name="robots" content="noindex"/>');
  expect(page).toContain('<a href="../ferry/">');
  const map = await readFile(join(root, "published/sitemap.xml"), "utf8");
  expect(map).not.toContain("old-ferry");
});

test("over the seasons: a study is renamed, one breaks and stays as it was, one is withdrawn", async () => {
  const copy = (slug: string) => ({
    [`content/studies/${slug}/study.md`]: writeStudy(`symbolism: The ${slug}.`),
    [`content/studies/${slug}/original.svg`]: drawing,
  });
  const root = await makeFolder({ ...content, ...copy("lamp"), ...copy("mill") });
  const at = (file: string) => join(root, file);
  const page = (address: string) => readFile(at(`published${address}index.html`), "utf8");
  expect((await runHere(root, "publish")).status).toBe(0);
  const list = await readFile(at("content/addresses.txt"), "utf8");
  expect(list).toMatch(/^\/studies\/lamp\/edges\/7a1020-ffffff\/$/m);
  const lamp = await readFile(at("published/studies/lamp/original.svg"), "utf8");

  await rename(at("content/studies/ferry"), at("content/studies/wheel"));
  await writeFile(
    at("content/studies/wheel/study.md"),
    writeStudy("formerly: [ferry]", 'change: { replace: "#7a1021", with: white }'),
  );
  await writeFile(at("content/studies/wheel/original.svg"), drawing.replace("#7a1020", "#7a1021"));
  await writeFile(at("content/studies/lamp/study.md"), writeStudy("formerly: [ferry]", "status: x"));
  await rm(at("content/studies/mill"), { recursive: true });
  const told = (await runHere(root, "check", "--json")).data;
  expect(findFaults("check", told)).toEqual([]);
  expect(JSON.parse(told).moved.gone).toContainEqual({
    address: "/studies/ferry/edges/7a1020-ffffff/",
    to: "/studies/wheel/edges/7a1021-ffffff/",
  });
  const { status, messages } = await runHere(root, "publish");
  expect(status).toBe(1);
  expect(messages).toContain("1 study left out: lamp. The last good pages stay of lamp.");

  expect(await page("/studies/ferry/")).toContain('content="0; url=../wheel/"');
  expect(await page("/studies/ferry/edges/7a1020-ffffff/")).toMatch(
    /no longer in the study.*href="\.\.\/\.\.\/\.\.\/wheel\/edges\/7a1021-ffffff\/"/,
  );
  expect(await page("/studies/mill/edges/7a1020-ffffff/")).toContain("This was withdrawn");
  for (const address of ["/studies/lamp/", "/studies/lamp/sheet/", "/studies/lamp/edges/7a1020-ffffff/"])
    expect(await page(address)).toContain(`<aside class="kept">${plainFormat.say("moved.lastGood")}</aside>`);
  expect(await readFile(at("published/studies/lamp/original.svg"), "utf8")).toBe(lamp);
  // What is gone cannot be claimed later.
  expect(await readFile(at("content/addresses.txt"), "utf8")).toMatch(/^\/studies\/mill\/ withdrawn$/m);
  // It is in no list.
  expect(await readFile(at("published/studies.json"), "utf8")).not.toContain("lamp");
  expect(await page("/list/").catch(() => page("/"))).not.toContain("studies/lamp/");

  // With --strict nothing is published; once its folder is gone it is withdrawn as any other.
  expect((await runHere(root, "publish", "--strict")).status).toBe(1);
  expect(await page("/studies/lamp/")).toContain(plainFormat.say("moved.lastGood"));
  await rm(at("content/studies/lamp"), { recursive: true });
  expect((await runHere(root, "publish")).status).toBe(0);
  expect(await page("/studies/lamp/")).toContain("This was withdrawn");
  // Nothing that was listed is lost, and the same again is the same, byte by byte.
  const [later, manifest] = await readBoth(root);
  for (const line of list.split("\n")) expect(later).toContain(line);
  expect((await runHere(root, "publish", "--strict")).status).toBe(0);
  expect(await readBoth(root)).toEqual([later, manifest]);
});

test("pages of a site that somebody else made do not stay", async () => {
  const root = await makeFolder({ ...content, ...bad });
  await writeFile(join(root, "content/studies/bad/study.md"), writeStudy("tags: [quay]"));
  await runHere(root, "publish");
  await rm(join(root, ".counterchange-published"), { recursive: true });
  await writeFile(join(root, "content/studies/bad/study.md"), writeStudy("status: x"));
  const { messages } = await runHere(root, "publish");
  expect(messages).toContain("1 study left out: bad.\n");
  expect(await readFile(join(root, "published/studies/bad/index.html"), "utf8")).toContain(
    "not shown at present",
  );
});

test("with --strict nothing is published while the list lacks an address; drafts are not listed", async () => {
  const root = await makeFolder({ ...content, "content/addresses.txt": "/\n" });
  const { status, messages } = await runHere(root, "publish", "--strict");
  expect(status).toBe(1);
  expect(messages).toMatch(
    /^content\/addresses\.txt {2}warning {2}The list lacks \d+ addresses of this gallery: “\/.+address\/lacking$/m,
  );
  expect((await runHere(root, "check", "--strict")).status).toBe(1);
  await runHere(root, "publish", "--with-drafts");
  expect(await readFile(join(root, "content/addresses.txt"), "utf8")).toBe("/\n");
  expect((await runHere(root, "publish")).status).toBe(0);
  expect((await runHere(root, "publish", "--strict")).status).toBe(0);
  expect(await runHere(root, "check", "--strict")).toMatchObject({ status: 0, data: "" });
});

/** The list of addresses, and the manifest of the site. */
async function readBoth(root: string): Promise<readonly string[]> {
  const files = ["content/addresses.txt", "published/.counterchange-site"];
  return Promise.all(files.map((file) => readFile(join(root, file), "utf8")));
}
