import { expect, test } from "vitest";
import { listMenu, loadPages, ownSteps } from "../../../src/content/page/loadpages.ts";
import { formatHeaders } from "../../../src/views/pagepolicy.ts";
import { drawing } from "../folder.ts";
import { rightPage } from "../mistakes.ts";
import { inFolder } from "../rules/making.ts";

const load = (files: Readonly<Record<string, string>>) =>
  inFolder(files, async (root) => {
    const { value, problems } = await loadPages(root, "content", ["ferry", "wheel"]);
    return [value.map(({ path }) => path), problems.map(({ rule, file }) => [rule, file])];
  });

test("no folder, no pages", async () => {
  expect(await load({ "gallery.yaml": "" })).toEqual([[], []]);
});

test("every good page of every folder; a bad one costs no other", async () => {
  const files = {
    "pages/about.md": rightPage,
    "pages/guide.md": rightPage.replace("Who we are", "A guide"),
    "pages/guide/a/b/deep.md": rightPage.replace("Who we are", "Deep"),
    "pages/guide/a/b/c/deeper.md": rightPage,
    "pages/guide/index.md": rightPage,
    "pages/index.md": rightPage,
    "pages/survey.md": rightPage,
    "pages/guide/survey.md": rightPage.replace("Who we are", "Our survey"),
    "pages/Not This.md": rightPage,
    "pages/Not This Either/about.md": rightPage,
    "pages/prn.md": rightPage,
    "pages/x.txt": rightPage,
    "pages/bad.md": "no keys",
    "pages/guide/empty.md": rightPage.replace("ferry", "nobody").replace("Who we are", "Nobody"),
    "pages/.DS_Store": "",
    "pages/a.md~": "",
  };
  const [paths, problems] = await load(files);
  expect(paths).toEqual(["guide", "guide/a/b/deep", "guide/empty", "guide/survey", "about"]);
  expect(problems).toEqual([
    ["page/file-name", "content/pages/Not This Either"],
    ["page/file-name", "content/pages/Not This.md"],
    ["page/address", "content/pages/index.md"],
    ["page/file-name", "content/pages/prn.md"],
    ["page/address", "content/pages/survey.md"],
    ["page/file-name", "content/pages/x.txt"],
    ["page/address", "content/pages/guide/index.md"],
    ["page/file-name", "content/pages/guide/a/b/c"],
    ["study/front-matter-missing", "content/pages/bad.md"],
    ["page/study", "content/pages/guide/empty.md"],
  ]);
});

test("links are not followed, neither a file's nor a folder's", async () => {
  expect(await load({ "other.md": rightPage, "pages/a.md": "→../other.md" })).toEqual([
    [],
    [["study/link", "content/pages/a.md"]],
  ]);
  expect(await load({ "elsewhere/a.md": rightPage, pages: "→elsewhere" })).toEqual([
    [],
    [["study/link", "content/pages"]],
  ]);
});

test("drawings lie beside pages and in flags; what is not there is told with what is meant", async () => {
  const show = (...names: readonly string[]) =>
    `${rightPage}\n${names.map((name) => `::figure{drawing="${name}"}\n\n`).join("")}`;
  const files = {
    "flags/harbour.svg": drawing,
    "flags/Old.svg": drawing,
    "studies/ferry/original.svg": drawing,
    "pages/about.md": show("rule.svg", "/flags/harbor.svg", "/studies/ferry/original.svg", "/flags/Old.svg"),
    "pages/rule.svg": drawing,
    "pages/nobody.svg": drawing,
    "pages/guide/a.md": show("rule.svg", "../rule.svg", "own.svg", "/flags/harbour.svg", "%2e%2e/rule.svg"),
    "pages/guide/own.svg": drawing,
    "pages/index.svg": drawing,
    "pages/guide/Wrong Name.SVG": drawing,
    "pages/guide/folder.svg/b.md": rightPage,
  };
  await inFolder(files, async (root) => {
    const { drawings, problems } = await loadPages(root, "content", ["ferry"]);
    expect(drawings).toEqual(
      ["flags/harbour.svg", "pages/guide/own.svg", "pages/rule.svg"].map((inner) => ({
        ...{ name: inner, file: `content/${inner}`, root, inner },
      })),
    );
    const there = "The drawings there are: /flags/harbour.svg";
    expect(problems.map(({ rule, file, hint }) => [rule, file.slice(14), hint])).toEqual([
      ["page/file-name", "guide/Wrong Name.SVG", "Rename it to: wrong-name.svg"],
      ["page/file-name", "guide/folder.svg", "Rename it to: folder-svg"],
      ["page/drawing", "about.md", 'Type: ::figure{drawing="/flags/harbour.svg"}'],
      ["page/drawing", "about.md", `${there}, index.svg, nobody.svg, rule.svg`],
      ["page/drawing", "about.md", `${there}, index.svg, nobody.svg, rule.svg`],
      ["page/drawing", "guide/a.md", `${there}, own.svg`],
      ["page/drawing", "guide/a.md", `${there}, own.svg`],
      ["page/drawing", "guide/a.md", `${there}, own.svg`],
    ]);
  });
});

test("a drawing that is a link is none, nor one in a folder that is a link", async () => {
  const page = `${rightPage}\n::figure{drawing="a.svg"}\n\n::figure{drawing="/flags/a.svg"}\n`;
  const files = { "x/a.svg": drawing, "pages/about.md": page, "pages/a.svg": "→../x/a.svg", flags: "→x" };
  await inFolder(files, async (root) => {
    const { drawings, problems } = await loadPages(root, "content", ["ferry"]);
    expect(drawings).toEqual([]);
    expect(problems.map(({ rule }) => rule)).toEqual(["study/link", "page/drawing", "page/drawing"]);
  });
});

test("the navigation has five words, and one for pages that nothing leads to", () => {
  const page = (path: string, menu?: string) => ({
    ...{ path, title: path, file: "", body: "", bodyLine: 1 },
    ...(menu === undefined ? {} : { menu }),
  });
  const five = [..."abcde"].map((path) => page(path, path));
  expect(listMenu([...five, page("a/below")]).map(({ word }) => word)).toEqual([..."abcde"]);
  const more = [...five, page("f", "F"), page("g/below"), page("a/below/deep")];
  expect(listMenu(more).at(-1)).toEqual({ word: "Pages", path: "pages" });
});

test("no page takes the place of one of the program's", () => {
  const steps = [...formatHeaders([], true).matchAll(/^\/([a-z-]+)\//gm)].map(([, step]) => step);
  expect(steps.length).toBeGreaterThan(8);
  expect(ownSteps).toEqual(expect.arrayContaining(steps));
});
