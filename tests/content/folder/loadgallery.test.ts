import { execFileSync } from "node:child_process";
import { chmod, mkdir, symlink, unlink } from "node:fs/promises";
import { join, posix, win32 } from "node:path";
import { expect, test } from "vitest";
import {
  loadGallery,
  loadSettings,
  readOriginal,
  showFolder,
} from "../../../src/content/folder/loadgallery.ts";
import { formatProblems } from "../../../src/problem/problemtext.ts";
import { writeStudy } from "../../analysis/fixture.ts";
import { drawing, harbour, makeFolder, settings } from "../folder.ts";

/** Loads a folder and prints its problems with the folder's own path as `content`. */
async function load(root: string) {
  const loaded = await loadGallery(root);
  return { ...loaded, report: formatProblems(loaded.problems).replaceAll(root, "content") };
}

test.each([
  ["my\\gallery\\", "my/gallery", "my\\gallery\\"],
  ["C:\\flags", "C:/flags", "C:\\flags"],
  ["content//", "content", "content"],
  ["/", "/", "/"],
])("the folder %s is told as %s on Windows, as %s elsewhere", (folder, onWindows, elsewhere) => {
  expect([showFolder(folder, win32), showFolder(folder, posix)]).toEqual([onWindows, elsewhere]);
});

test("a right gallery has its studies, sorted, and no problem", async () => {
  const root = await makeFolder({
    ...harbour,
    "studies/abbey/study.md": writeStudy("original: /flags/abbey.svg"),
    "flags/abbey.svg": drawing,
  });
  const { gallery, studies, report } = await load(root);
  expect(report).toBe("");
  expect(gallery.title).toBe("Flags of the Sound");
  expect(studies.map(({ slug }) => slug)).toEqual(["abbey", "ferry"]);
  expect(studies[0]).toMatchObject({
    originalFile: `${root}/flags/abbey.svg`,
    file: `${root}/studies/abbey/study.md`,
  });
  for (const study of studies) expect(new TextDecoder().decode(await readOriginal(study))).toBe(drawing);
});

test("a slash behind the folder's name changes nothing", async () => {
  const root = await makeFolder(harbour);
  expect((await loadGallery(`${root}/`)).studies).toEqual((await loadGallery(root)).studies);
});

test("a bad study is left out and named, the good one stays", async () => {
  const root = await makeFolder({
    ...harbour,
    "studies/bad/study.md": "---js\n",
    "studies/bad/original.svg": drawing,
  });
  const { studies, report } = await load(root);
  expect(studies.map(({ slug }) => slug)).toEqual(["ferry"]);
  expect(report).toMatch(/^content\/studies\/bad\/study\.md:1:1 {2}error/);
});

test.each<[string, Record<string, string>, string]>([
  [
    "no gallery.yaml",
    { "gallery.yaml": "" },
    `\
content/gallery.yaml  warning  There is no gallery.yaml, so the gallery has the usual title, palette and settings.  study/gallery-missing
    Make one with two lines:
    title: Flags of the Sound
    address: https://flags.example/`,
  ],
  [
    "no study.md",
    { "studies/ferry/study.md": "" },
    `\
content/studies/ferry/study.md  error  The study's folder has no study.md.  study/study-missing
    Write the study in content/studies/ferry/study.md, or remove the folder.`,
  ],
  [
    "no drawing at all",
    { "studies/ferry/original.svg": "" },
    `\
content/studies/ferry/study.md:3:11  error  The drawing “original.svg” is not in the study's folder.  study/drawing-missing
    original: original.svg
              ^^^^^^^^^^^^
    Put the drawing there: content/studies/ferry/original.svg`,
  ],
  [
    "one drawing of another name",
    { "studies/ferry/original.svg": "", "studies/ferry/wheel.svg": drawing },
    `\
content/studies/ferry/study.md:3:11  error  The drawing “original.svg” is not in the study's folder.  study/drawing-missing
    original: original.svg
              ^^^^^^^^^^^^
    Type: original: wheel.svg`,
  ],
  [
    "several drawings, one with a name that is near",
    {
      "studies/ferry/original.svg": "",
      "studies/ferry/orignal.svg": drawing,
      "studies/ferry/wheel.svg": drawing,
    },
    `\
content/studies/ferry/study.md:3:11  error  The drawing “original.svg” is not in the study's folder.  study/drawing-missing
    original: original.svg
              ^^^^^^^^^^^^
    Type: original: orignal.svg
    The drawings there are: orignal.svg, wheel.svg`,
  ],
  [
    "no such drawing in flags",
    { "studies/ferry/study.md": writeStudy("original: /flags/harbor.svg"), "flags/harbour.svg": drawing },
    `\
content/studies/ferry/study.md:3:11  error  The drawing “/flags/harbor.svg” is not in the folder flags.  study/drawing-missing
    original: /flags/harbor.svg
              ^^^^^^^^^^^^^^^^^
    Type: original: /flags/harbour.svg`,
  ],
  [
    "a drawing over 512 KB",
    { "studies/ferry/original.svg": " ".repeat(512 * 1024 + 1) },
    `\
content/studies/ferry/original.svg  error  The drawing has 513 KB; a drawing may have 512 KB.  study/drawing-size
    Export it again with fewer points: a flag rarely needs more than 50 KB.`,
  ],
  [
    "a study.md over 64 KB",
    { "studies/ferry/study.md": writeStudy() + "x".repeat(65536) },
    `\
content/studies/ferry/study.md  error  The file has 65 KB; a study file may have 64 KB.  study/file-size
    Shorten the prose, or keep the long version elsewhere and link to it.`,
  ],
  [
    "a folder with a space",
    { "studies/b c/study.md": writeStudy() },
    `\
content/studies/b c  error  The folder “b c” cannot be an address: small letters, digits and single hyphens only, 100 at most.  study/slug
    Rename the folder to: b-c`,
  ],
  [
    "a folder whose accent is a character of its own",
    { "studies/cafe\u0301/study.md": writeStudy() },
    `\
content/studies/cafe\u0301  error  The folder “cafe\u0301” cannot be an address: small letters, digits and single hyphens only, 100 at most.  study/slug
    Rename the folder to: cafe`,
  ],
])("%s", async (_, files, report) => {
  const all = Object.entries({ ...harbour, ...files }).filter(([, content]) => content !== "");
  const root = await makeFolder(Object.fromEntries(all));
  expect((await load(root)).report).toBe(report);
});

test("a content folder that does not exist, or is a file, is a problem and no exception", async () => {
  const root = await makeFolder({ "content.txt": "" });
  const load = async (name: string) => {
    const { studies, folders, problems } = await loadGallery(join(root, name));
    expect([studies, folders]).toEqual([[], []]);
    return formatProblems(problems).replaceAll(root, "here");
  };
  expect(await load("nowhere")).toBe(`\
here/nowhere  error  There is no such content folder.  study/content-missing
    Looked for here/nowhere
    Name the folder that holds gallery.yaml and studies/; or begin one: counterchange begin SLUG --original FILE.svg`);
  expect(await load("content.txt")).toBe(`\
here/content.txt  error  This is a file; a content folder belongs here.  study/content-missing
    Name the folder that holds gallery.yaml and studies/, for example: content`);
});

test("a content folder without studies is a warning", async () => {
  const root = await makeFolder({ "gallery.yaml": settings });
  expect((await load(root)).report).toBe(`\
content/studies  warning  There is no folder studies, so the gallery has no study.  study/studies-missing
    Make the folder, with one folder in it for each study: content/studies/my-study/study.md`);
});

test("links are not followed, whatever they stand for", async () => {
  const secret = await makeFolder({ ...harbour, secret: "secret", "flags/x.svg": drawing });
  const root = await makeFolder({
    ...harbour,
    "studies/a/original.svg": drawing,
    "studies/b/study.md": writeStudy(),
    "studies/d/study.md": writeStudy("original: /flags/x.svg"),
  });
  await unlink(join(root, "gallery.yaml"));
  await symlink(join(secret, "gallery.yaml"), join(root, "gallery.yaml"));
  await symlink(join(secret, "secret"), join(root, "studies/a/study.md"));
  await symlink(join(secret, "secret"), join(root, "studies/b/original.svg"));
  await symlink(join(secret, "studies/ferry"), join(root, "studies/c"));
  await symlink(join(secret, "flags"), join(root, "flags"));
  const { gallery, studies, problems } = await loadGallery(root);
  expect(studies.map(({ slug }) => slug)).toEqual(["ferry"]);
  expect(gallery.title).toBe("Flag redesign studies");
  expect(new Set(problems.map(({ rule }) => rule))).toEqual(new Set(["study/link"]));
  expect(new Set(problems.map(({ file }) => file.slice(root.length + 1)))).toEqual(
    new Set(["gallery.yaml", "studies/a/study.md", "studies/b/original.svg", "studies/c", "flags"]),
  );
});

test("a link in place of the whole folder of studies is refused", async () => {
  const other = await makeFolder(harbour);
  const root = await makeFolder({ "gallery.yaml": settings });
  await symlink(join(other, "studies"), join(root, "studies"));
  expect((await load(root)).report).toContain(
    "content/studies  error  This is a symbolic link, and links are not followed.  study/content-missing",
  );
});

test("a folder called study.md, and one called gallery.yaml", async () => {
  const root = await makeFolder({ "studies/ferry/original.svg": drawing });
  await mkdir(join(root, "studies/ferry/study.md"));
  await mkdir(join(root, "gallery.yaml"));
  const { report } = await load(root);
  expect(report).toBe(`\
content/gallery.yaml  error  This is a folder; a file of that name belongs here.  study/not-a-file
    Rename or remove it, and put the file in its place.

content/studies/ferry/study.md  error  This is a folder; a file of that name belongs here.  study/not-a-file
    Rename or remove it, and put the file in its place.`);
});

test("a pipe is refused at once, not waited for", async () => {
  const root = await makeFolder({ "gallery.yaml": settings, "studies/ferry/study.md": writeStudy() });
  execFileSync("mkfifo", [join(root, "studies/ferry/original.svg")]);
  const { studies, problems } = await loadGallery(root);
  expect(studies).toEqual([]);
  expect(problems.some(({ rule }) => rule === "study/not-a-file")).toBe(true);
});

test("a file that may not be read is a problem", async () => {
  const root = await makeFolder(harbour);
  await chmod(root, 0o755);
  await chmod(join(root, "studies/ferry/study.md"), 0);
  const isRoot = process.geteuid?.() === 0;
  // The superuser may read everything, so for a moment we are somebody else.
  if (isRoot) process.seteuid?.(65534);
  try {
    expect((await load(root)).report).toBe(`\
content/studies/ferry/study.md  error  The file could not be read: permission denied.  study/unreadable
    Check that you may read it, and that it has not moved.`);
  } finally {
    if (isRoot) process.seteuid?.(0);
  }
});

test.each([
  [
    "studies",
    "content/studies  error  The folder could not be read: permission denied.  study/content-missing",
  ],
  [
    "studies/ferry",
    "content/studies/ferry  error  The folder could not be read: permission denied.  study/unreadable",
  ],
  [".", "content  error  The folder could not be read: permission denied.  study/content-missing"],
])("a folder that may not be read is a problem and not an absence: %s", async (folder, line) => {
  const root = await makeFolder(harbour);
  await chmod(root, 0o755);
  await chmod(join(root, folder), 0);
  const isRoot = process.geteuid?.() === 0;
  if (isRoot) process.seteuid?.(65534);
  try {
    const { report, studies } = await load(root);
    expect(report.split("\n")[0]).toBe(line);
    expect(studies).toEqual([]);
  } finally {
    if (isRoot) process.seteuid?.(0);
    await chmod(join(root, folder), 0o755);
  }
});

test("a drawing that goes after loading is an exception, since nobody wrote it wrong", async () => {
  const root = await makeFolder(harbour);
  const [study] = (await loadGallery(root)).studies;
  await unlink(join(root, "studies/ferry/original.svg"));
  await expect(study && readOriginal(study)).rejects.toThrow("changed while it was being read (missing)");
});

const keys = writeStudy().split("---\n")[1] ?? "";
/** The harbour with its keys and its prose in two files. */
const { "studies/ferry/study.md": _, ...rest } = harbour;
const split = { ...rest, "studies/ferry/study.yaml": keys, "studies/ferry/prose.md": "One.\n\nTwo.\n" };

test("study.yaml and prose.md say the same as study.md", async () => {
  const [whole] = (await load(await makeFolder(harbour))).studies;
  const root = await makeFolder(split);
  const { studies, report } = await load(root);
  expect(report).toBe("");
  const [study] = studies;
  expect(study).toMatchObject({
    title: whole?.title,
    change: whole?.change,
    originalFile: `${root}/studies/ferry/original.svg`,
    file: `${root}/studies/ferry/study.yaml`,
    proseFile: `${root}/studies/ferry/prose.md`,
    body: "One.\n\nTwo.\n",
    bodyLine: 1,
  });
});

test("study.yaml without prose.md has no prose", async () => {
  const { "studies/ferry/prose.md": __, ...alone } = split;
  const { studies, report } = await load(await makeFolder(alone));
  expect([report, studies[0]?.body, studies[0]?.proseFile]).toEqual(["", "", undefined]);
});

test("each problem points into its own file", async () => {
  const root = await makeFolder({
    ...split,
    "studies/ferry/study.yaml": `${keys}titel: x\n`,
    "studies/ferry/prose.md": "One.\nT\u0007wo.\n",
  });
  const { problems, studies } = await load(root);
  expect(studies).toEqual([]);
  expect(problems.map(({ rule, file, place }) => [rule, file, place?.line, place?.column])).toEqual([
    ["study/unknown-key", `${root}/studies/ferry/study.yaml`, 4, 1],
    ["study/prose-control", `${root}/studies/ferry/prose.md`, 2, 2],
  ]);
});

test("fences around the keys of study.yaml, as copied from a study.md", async () => {
  const one = await load(await makeFolder({ ...split, "studies/ferry/study.yaml": `---\n${keys}` }));
  expect([one.report, one.studies.length]).toEqual(["", 1]);
  const two = await load(
    await makeFolder({ ...split, "studies/ferry/study.yaml": `---\n${keys}---\nProse.\n` }),
  );
  expect(two.studies).toEqual([]);
  expect(two.report).toBe(`\
content/studies/ferry/study.yaml:5:1  error  “---” would begin a second YAML document.  study/yaml-feature
    ---
    ^^^
    Delete the line.`);
});

test("both ways of writing a study: neither is taken", async () => {
  const { studies, problems } = await load(await makeFolder({ ...harbour, ...split }));
  expect(studies).toEqual([]);
  expect(problems.map(({ rule }) => rule)).toEqual(["study/two-files"]);
});

test.each(["study.yaml", "prose.md"])("a link called %s is not followed", async (name) => {
  const { [`studies/ferry/${name}` as keyof typeof split]: text = "", ...others } = split;
  const root = await makeFolder({ ...others, "elsewhere.txt": text });
  await symlink(join(root, "elsewhere.txt"), join(root, "studies/ferry", name));
  const { studies, problems } = await load(root);
  expect(studies).toEqual([]);
  expect(problems.map(({ rule }) => rule)).toEqual(["study/link"]);
});

test.each(["study.yaml", "prose.md"])(
  "a folder, a pipe or a huge file called %s is refused at once",
  async (name) => {
    const { [`studies/ferry/${name}` as keyof typeof split]: __, ...others } = split;
    const folder = await makeFolder({ ...others, [`studies/ferry/${name}/x.txt`]: "x" });
    expect((await load(folder)).problems.map(({ rule }) => rule)).toEqual(["study/not-a-file"]);
    const pipe = await makeFolder(others);
    execFileSync("mkfifo", [join(pipe, "studies/ferry", name)]);
    expect((await load(pipe)).problems.map(({ rule }) => rule)).toEqual(["study/not-a-file"]);
    const huge = await makeFolder({ ...others, [`studies/ferry/${name}`]: "x".repeat(70_000) });
    expect((await load(huge)).problems.map(({ rule }) => rule)).toEqual(["study/file-size"]);
  },
);

test("the settings alone", async () => {
  const root = await makeFolder({ "gallery.yaml": settings });
  expect(await loadSettings(root)).toMatchObject({ value: { title: "Flags of the Sound" }, problems: [] });
  const bare = await loadSettings(join(root, "nowhere"));
  expect(bare.problems.map(({ rule }) => rule)).toEqual(["study/gallery-missing"]);
});
