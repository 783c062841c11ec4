import { expect, test } from "vitest";
import { readSource } from "../../../src/content/text/textsource.ts";
import { joinFiles, splitFrontMatter } from "../../../src/content/yaml/frontmatter.ts";
import { formatProblems } from "../../../src/problem/problemtext.ts";
import { printText, writeStudy } from "../../analysis/fixture.ts";

const split = (text: string) => {
  const { value } = readSource("a.md", new TextEncoder().encode(text));
  return value && splitFrontMatter(value).value;
};

test("front matter, body, and the line on which each stands", () => {
  expect(split("---\ntitle: x\n---\nProse.\n---\nMore.\n")).toMatchObject({
    yaml: "\ntitle: x\n",
    closingLine: 3,
    body: "Prose.\n---\nMore.\n",
    bodyLine: 4,
  });
});

test("spaces behind a fence do not matter, and the body may be missing", () => {
  expect(split("---  \ntitle: x\n--- \t")).toMatchObject({ closingLine: 3, body: "", bodyLine: 4 });
});

test("CRLF, a byte order mark and lone CR change nothing", () => {
  expect(split("\ufeff---\r\ntitle: x\r\n---\r\nA\r\nB")).toEqual(split("---\ntitle: x\n---\nA\nB"));
  expect(split("---\rtitle: x\r---\rA\rB")).toEqual(split("---\ntitle: x\n---\nA\nB"));
});

test.each<[string, string, string]>([
  [
    "no front matter",
    "# Harbour\n",
    `\
ferry/study.md:1:1  error  The file does not begin with the keys of a study, between two lines of three hyphens.  study/front-matter-missing
    # Harbour
    ^^^^^^^^^
    Begin it like this:
    ---
    title: A lighter ferry wheel
    original: original.svg
    change: { replace: "#7a1020", with: "#f4c430" }
    ---`,
  ],
  [
    "an empty file",
    "",
    `\
ferry/study.md:1:1  error  The file does not begin with the keys of a study, between two lines of three hyphens.  study/front-matter-missing
    Begin it like this:
    ---
    title: A lighter ferry wheel
    original: original.svg
    change: { replace: "#7a1020", with: "#f4c430" }
    ---`,
  ],
  [
    "a fence that names a language",
    "---js\n{}\n---\n",
    `\
ferry/study.md:1:1  error  The first line is “---js”, but front matter is plain YAML and names no language.  study/front-matter-language
    ---js
    ^^^^^
    Make the first line three hyphens and nothing else: ---`,
  ],
  [
    "four hyphens",
    "----\ntitle: x\n----\n",
    `\
ferry/study.md:1:1  error  The first line is “----”; it must be three hyphens.  study/front-matter-missing
    ----
    ^^^^
    Type: ---`,
  ],
  [
    "no second fence",
    "---\ntitle: x\nProse.\n",
    `\
ferry/study.md:1:1  error  The keys that begin below this line never end: there is no second line of three hyphens.  study/front-matter-unclosed
    ---
    ^^^
    Type --- on a line of its own, below the last key and above the prose.`,
  ],
  [
    "front matter that is a list",
    "---\n- a\n- b\n---\n",
    `\
ferry/study.md:2:1  error  Lines of the form “key: value” belong here.  study/not-a-map
    - a
    ^
    Begin, for example, with: title: A lighter ferry wheel`,
  ],
  [
    "front matter that is a sentence",
    "---\nA study of the harbour flag\n---\n",
    `\
ferry/study.md:2:1  error  Lines of the form “key: value” belong here.  study/not-a-map
    A study of the harbour flag
    ^
    Begin, for example, with: title: A lighter ferry wheel`,
  ],
  [
    "front matter over 8 KB",
    writeStudy(`symbolism: ${"x".repeat(8200)}`),
    `\
ferry/study.md:1:1  error  The front matter has 9 KB; it may have 8 KB.  study/front-matter-size
    ---
    ^^^
    Move long texts below the second ---, into the prose.`,
  ],
])("%s", (_, text, report) => {
  expect(printText(text)).toBe(report);
});

const source = (file: string, text: string) => {
  const { value } = readSource(file, new TextEncoder().encode(text));
  if (!value) throw new Error("no text");
  return value;
};

test("keys and prose in two files: lines count in each", () => {
  const keys = source("study.yaml", "title: x\noriginal: a.svg\n\n");
  const prose = source("prose.md", "Prose.\n---\nMore.\n");
  expect(joinFiles(keys, prose).value).toEqual({
    yaml: keys.text,
    closingLine: 2,
    body: "Prose.\n---\nMore.\n",
    bodySource: prose,
    bodyLine: 1,
  });
  expect(joinFiles(keys, undefined).value).toMatchObject({ body: "", bodyLine: 1 });
});

test("front matter in prose.md, and a study.yaml that is too long", () => {
  const keys = source("study.yaml", "title: x\n");
  const twice = joinFiles(keys, source("prose.md", "---\ntitle: y\n---\nProse.\n"));
  expect(twice.value).toBeUndefined();
  expect(formatProblems(twice.problems)).toBe(`\
prose.md:1:1  error  prose.md begins with front matter, and the keys of this study are in study.yaml.  study/prose-front-matter
    ---
    ^^^
    Move the keys to study.yaml, and delete the lines down to the second ---.`);
  const long = joinFiles(source("study.yaml", `title: ${"x".repeat(9000)}\n`), undefined);
  expect(long.problems.map(({ reason, hint }) => [reason, hint])).toEqual([
    ["study.yaml has 9 KB; it may have 8 KB.", "Move long texts into prose.md, beside it."],
  ]);
});
