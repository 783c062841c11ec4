import { readdir, readFile, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { expect, test, vi } from "vitest";
import { harbour, makeFolder } from "../content/folder.ts";
import { runHere, runShell, start } from "./run.ts";

vi.setConfig({ testTimeout: 120_000 });

const svg = (inner: string) => `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 60 40">${inner}</svg>\n`;
const field = '<path fill="#15244a" d="M0 0h60v40H0z"/>';
const flag = svg(`<!-- mine -->${field}<circle cx="30" cy="20" r="10" fill="#701c2b"/>`);
const list = async (root: string) =>
  (await readdir(root, { recursive: true, withFileTypes: true }))
    .filter((entry) => !entry.isDirectory())
    .map((entry) => join(entry.parentPath, entry.name).slice(root.length + 1))
    .sort();

test("in an empty folder: a gallery that builds with the commands it prints", async () => {
  const root = await makeFolder({});
  const elsewhere = await makeFolder({ "old light.svg": flag });
  const drawing = join(elsewhere, "old light.svg");
  // In a shell of its own, so that what it prints can be typed there.
  const made = await runShell(root, `counterchange begin old-light --original '${drawing}'`);
  expect([made.status, made.messages]).toEqual([0, ""]);
  expect(await list(root)).toEqual([
    ".gitignore",
    ".schemas/front-matter.schema.json",
    ".schemas/gallery.schema.json",
    ".schemas/theme.schema.json",
    ".schemas/words.schema.json",
    "README.md",
    "gallery.yaml",
    "studies/old-light/.schema.json",
    "studies/old-light/original.svg",
    "studies/old-light/study.md",
  ]);
  // As it is: with its comment, which a published drawing would not have. The original stays what it was.
  expect(await readFile(join(root, "studies/old-light/original.svg"), "utf8")).toBe(flag);
  expect(await readFile(join(elsewhere, "old light.svg"), "utf8")).toBe(flag);
  const steps = made.data.split("\n").filter((line) => /^ {2}\d\. /.test(line));
  expect(steps).toHaveLength(3);
  expect(made.data).toMatch(/\n {5}The address in gallery\.yaml is a stand-in: .*\n$/);
  const [, publish = ""] = /^ {2}3\. Publish: (.*)$/m.exec(made.data) ?? [];
  expect(publish).toContain("check && ");
  const built = await runShell(root, publish);
  expect([built.status, built.messages]).toEqual([0, "0 errors, 0 warnings; 1 good study.\n"]);
  expect(await list(join(root, "published"))).toContain("studies/old-light/index.html");
  const page = await readFile(join(root, "published/studies/old-light/index.html"), "utf8");
  expect(page).toContain("Old light");
  // Again, over the site of the first time.
  expect((await runShell(root, publish)).status).toBe(0);
});

test("in a gallery: one study more, measured with the gallery's own settings", async () => {
  const palette = 'palette: { chalk: "#fefefe" }\n';
  const root = await makeFolder({
    ...harbour,
    "gallery.yaml": `${harbour["gallery.yaml"]}${palette}`,
    "a.svg": flag,
    "series/six.md": `---\ntitle: Six\nstudies: [ferry]   # more to come\n---\nMine.\n`,
  });
  const before = await readFile(join(root, "gallery.yaml"), "utf8");
  const made = await runHere(
    root,
    "begin",
    "b",
    "--original",
    "a.svg",
    "--title",
    'It\'s "b": #1',
    "--flag",
    "The b",
    "--series",
    "six",
  );
  expect([made.status, made.messages]).toEqual([0, ""]);
  expect(made.data).toMatch(/^A new study: studies\/b\/study\.md$/m);
  expect(await readFile(join(root, "gallery.yaml"), "utf8")).toBe(before);
  expect(await readFile(join(root, "series/six.md"), "utf8")).toBe(
    `---\ntitle: Six\nstudies: [ferry, b]   # more to come\n---\nMine.\n`,
  );
  expect(made.data).toContain(
    "It is the last of its series: move its line to where it belongs in series/six.md",
  );
  const text = await readFile(join(root, "studies/b/study.md"), "utf8");
  expect(text).toMatch(/^flag: The b$/m);
  expect(text).toContain("→ chalk: ");
  expect(text).toContain('with: "#fefefe"');
  expect(text).not.toContain("with: chalk");
  expect(await runHere(root, "check")).toMatchObject({
    status: 0,
    messages: "0 errors, 0 warnings; 2 good studies.\n",
  });
});

test("beside a content folder, and in one that is named", async () => {
  const root = await makeFolder({ "content/gallery.yaml": harbour["gallery.yaml"] ?? "", "a.svg": flag });
  expect((await runHere(root, "begin", "a", "--original", "a.svg")).status).toBe(0);
  const named = await runHere(root, "begin", "a", "--original", "a.svg", "--content", "my gallery");
  expect(named.data).toContain("check 'my gallery' && ");
  expect(await list(root)).toEqual(
    expect.arrayContaining([
      "content/studies/a/study.md",
      "my gallery/studies/a/study.md",
      "my gallery/gallery.yaml",
    ]),
  );
});

test("keys and prose in files of their own", async () => {
  const root = await makeFolder({ "a.svg": flag });
  const made = await runHere(root, "begin", "a", "--original", "a.svg", "--yaml");
  expect(made.data).toContain("open studies/a/study.yaml");
  expect((await readFile(join(root, "studies/a/study.yaml"), "utf8")).split("\n")[0]).toBe(
    "# yaml-language-server: $schema=.schema.json",
  );
  expect(await runHere(root, "check")).toMatchObject({
    status: 0,
    messages: "0 errors, 0 warnings; 1 good study.\n",
  });
});

test("nothing is overwritten", async () => {
  const root = await makeFolder({ ...harbour, "a.svg": flag });
  const before = await list(root);
  const made = await runHere(root, "begin", "ferry", "--original", "a.svg");
  expect(made).toEqual({
    status: 2,
    data: "",
    messages:
      "There is a study “ferry” already, and nothing is overwritten.\n    Type: npm run -s cli -- begin ferry-2 --original a.svg\n",
  });
  expect(await list(root)).toEqual(before);
});

test("a drawing that is refused: its problems, and nothing written", async () => {
  const root = await makeFolder({ "a.svg": svg('<image href="x.png"/>') });
  const made = await runHere(root, "begin", "a", "--original", "a.svg");
  expect(made.status).toBe(1);
  expect(made.messages).toMatch(/a\.svg:1:\d+ {2}error {2}.*svg\//);
  expect(made.messages).toContain("Nothing was written: “a.svg” cannot be measured.");
  expect(await list(root)).toEqual(["a.svg"]);
});

test.each(["nowhere.svg", "."])("no drawing: %s", async (original) => {
  const root = await makeFolder({});
  expect((await runHere(root, "begin", "a", "--original", original)).status).toBe(2);
  expect(await list(root)).toEqual([]);
});

test("a drawing of one colour: a study without a change, and it says so", async () => {
  const root = await makeFolder({ "a.svg": svg(field) });
  const made = await runHere(root, "begin", "a", "--original", "a.svg");
  expect(made.status).toBe(0);
  expect(made.data).toContain("One colour: no edges to measure.");
  expect(made.data).toContain(
    "No change stands in the study yet, and it is left out of the gallery until one does.",
  );
  const checked = await runHere(root, "check");
  expect([checked.status, checked.data]).toEqual([1, expect.stringContaining("A study needs “change”")]);
});

test("what cannot be finished leaves nothing behind", async () => {
  const root = await makeFolder({ "a.svg": flag });
  // A file where the hidden folder of schemas would go is something that is there: it stays.
  await writeFile(join(root, ".schemas"), "mine");
  expect((await runHere(root, "begin", "a", "--original", "a.svg")).status).toBe(0);
  expect(await readFile(join(root, ".schemas"), "utf8")).toBe("mine");
  const full = `ulimit -f 1; "${process.execPath}" "${start}" new b --original a.svg`;
  const before = await list(root);
  expect((await runShell(root, full)).status).not.toBe(0);
  expect(await list(root)).toEqual(before);
});
