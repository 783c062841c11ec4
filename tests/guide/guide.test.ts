// The README and the guide are true: what they tell to type runs, what they show is what comes of it, and nothing that a
// user may type is left out.
import { existsSync, readFileSync, statSync } from "node:fs";
import { cp, mkdir, writeFile } from "node:fs/promises";
import { dirname, join } from "node:path";
import { describe, expect, test } from "vitest";
import { parseArguments } from "../../src/cli/arguments.ts";
import { commands } from "../../src/cli/commands.ts";
import { formatHelp } from "../../src/cli/text/help.ts";
import { loadGallery } from "../../src/content/folder/loadgallery.ts";
import { gallerySchema } from "../../src/content/gallery/gallerykey.ts";
import { figureKinds } from "../../src/content/study/figurekind.ts";
import { showSteps } from "../../src/content/study/showstep.ts";
import { studySchema } from "../../src/content/study/studykey.ts";
import { runHere } from "../cli/run.ts";
import { makeFolder } from "../content/folder.ts";
import { rightDrawing } from "../content/mistakes.ts";
import { imported } from "../package/consumer.ts";
import { blocks, listCalls, textOf, texts } from "./block.ts";

const root = join(import.meta.dirname, "../..");
const readme = texts.get("README.md") ?? "";
const guide = [...texts].flatMap(([file, text]) => (file === "README.md" ? [] : text)).join("\n");

describe("the README", () => {
  test("is short, and names the two commands that .ci/run gives", () => {
    expect(readme.split(/\s+/).length).toBeLessThanOrEqual(900);
    const { scripts } = JSON.parse(readFileSync(join(root, "package.json"), "utf8"));
    const named = [...readme.matchAll(/^npm ci && npm (?:run )?(\w+) /gm)].map(([, name = ""]) => name);
    expect(named).toEqual(["build", "test"]);
    expect(Object.keys(scripts)).toEqual(expect.arrayContaining(named));
  });

  test("every link leads to a file, and both pictures are small", () => {
    const links = [...readme.matchAll(/\]\(([^)]+)\)/g)].map(([, link = ""]) => link);
    expect(links.filter((link) => !existsSync(join(root, link)))).toEqual([]);
    const pictures = links.filter((link) => link.endsWith(".png"));
    expect(pictures).toHaveLength(2);
    for (const picture of pictures) expect(statSync(join(root, picture)).size).toBeLessThan(100_000);
    const pages = [...texts.keys()].filter((file) => file.startsWith("content/pages/guide/"));
    expect(pages.filter((file) => !links.includes(file))).toEqual([]);
  });
});

describe("commands", () => {
  const calls = [...texts].flatMap(([file, text]) => listCalls(text).map((words) => ({ file, words })));

  test.each(calls)("$file: $words", ({ words: [name, ...rest] }) => {
    const command = commands.find((one) => one.name === name);
    expect(command).toBeDefined();
    if (command !== undefined) expect(() => parseArguments(command, rest, commands)).not.toThrow();
  });

  test("there are calls of each", () => {
    const names = new Set(calls.map(({ words: [name] }) => name));
    const untold = commands.filter(({ name }) => !names.has(name)).map(({ name }) => name);
    expect(untold).toEqual([]);
  });

  test("each has its usage on the page of commands", () => {
    const page = texts.get("content/pages/guide/commands.md") ?? "";
    for (const { name, usage } of commands)
      if (name !== "try") expect(page).toContain(`\`${name} ${usage.replace(" [--cache DIR]", "")}\``);
    const { options = {} } = commands.find(({ name }) => name === "try") ?? {};
    for (const option of Object.keys(options))
      expect(page).toMatch(new RegExp(`try FILE.*--${option}[ \\]]`));
  });
});

test("the help names the guide, which is there", () => {
  const [named = ""] = /content\/pages\/\S+\.md/.exec(formatHelp(commands)) ?? [];
  expect([...texts.keys()]).toContain(named);
});

test("every key, every figure and every step is told", () => {
  const names = [...Object.keys(studySchema.shape), ...Object.keys(gallerySchema.shape)];
  expect(names.filter((name) => !new RegExp(`\`${name}\\b|^${name}: `, "m").test(guide))).toEqual([]);
  const words = [...figureKinds, ...showSteps].map((word) => `\`${word}\``);
  expect(words.filter((word) => !guide.includes(word))).toEqual([]);
});

test("every file that is shown can be read as it stands", async () => {
  const file = await makeFolder({
    "gallery.yaml": textOf("yaml gallery"),
    "words.yaml": textOf("yaml words.yaml"),
    "theme.yaml": textOf("yaml theme.yaml"),
    "studies/kedgeport/study.md": textOf("markdown content/studies/kedgeport/study.md"),
    "studies/kedgeport/answers/dunstan.md": textOf("markdown answer"),
    "studies/old-light/study.md": textOf("markdown"),
    "series/six-faults.md": textOf("markdown series"),
    "pages/contest.md": textOf("markdown page"),
    "pages/quay.svg": rightDrawing,
    "flags/wrackline.svg": rightDrawing,
    "flags/nominations.yaml": textOf("yaml nominations"),
    "addresses.txt": textOf("text addresses"),
  });
  await cp(join(root, "content/studies/harrowquay"), join(file, "studies/harrowquay"), { recursive: true });
  for (const slug of ["kedgeport", "old-light"])
    await writeFile(join(file, `studies/${slug}/original.svg`), rightDrawing);
  const { problems, studies, series, pages } = await loadGallery(file);
  expect(problems).toEqual([]);
  expect([studies.length, series.length, pages.length]).toEqual([3, 1, 1]);
});

test("the program that imports the package is the one that the package is tried with", () => {
  expect(textOf("js program")).toBe(imported);
});

test("the study that is shown is the one of the demo", () => {
  const [shown] = blocks.filter(({ info }) => info.startsWith("markdown content/"));
  expect(shown?.text).toBe(readFileSync(join(root, shown?.info.split(" ")[1] ?? ""), "utf8"));
});

test.each(blocks.filter(({ info }) => info === "console"))("$text", async ({ text }) => {
  const [call = "", ...said] = text.trimEnd().split("\n");
  const { status, data } = await runHere(root, ...(listCalls(call)[0] ?? []));
  expect(status).toBe(0);
  expect(data.trimEnd()).toBe(said.join("\n"));
});

test("one sitting, and what the hosts are given, in an empty folder", async () => {
  const folder = await makeFolder({ "flag.svg": rightDrawing });
  const type = async (info: string) => {
    for (const words of listCalls(textOf(info))) {
      const { status, messages } = await runHere(folder, ...words);
      expect({ words, status, messages }).toMatchObject({ status: 0 });
    }
  };
  await type("sh sitting");
  expect(existsSync(join(folder, "published/studies/old-light/index.html"))).toBe(true);
  await mkdir(dirname(join(folder, "content")), { recursive: true });
  await cp(join(folder, "my-gallery"), join(folder, "content"), { recursive: true });
  await type("sh prefix");
  expect(readFileSync(join(folder, "site/404.html"), "utf8")).toContain('href="/flags/assets/site.css"');
});
