import { expect, test } from "vitest";
import { splitFrontMatter } from "../../src/study/frontmatter.ts";
import { readSource } from "../../src/study/source.ts";
import { printText, writeStudy } from "./fixture.ts";

const split = (text: string) => {
  const { value } = readSource("a.md", new TextEncoder().encode(text));
  return value && splitFrontMatter(value).value;
};

test("front matter, body, and the line on which each stands", () => {
  expect(split("---\ntitle: x\n---\nProse.\n---\nMore.\n")).toEqual({
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
ferry/study.md:1:1  error  The file does not begin with front matter.  study/front-matter-missing
    # Harbour
    ^^^^^^^^^
    Make the first line three hyphens: ---
    Then come title, original and change, then a second --- and the prose.`,
  ],
  [
    "an empty file",
    "",
    `\
ferry/study.md:1:1  error  The file does not begin with front matter.  study/front-matter-missing
    Make the first line three hyphens: ---
    Then come title, original and change, then a second --- and the prose.`,
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
ferry/study.md:1:1  error  The file does not begin with front matter.  study/front-matter-missing
    ----
    ^^^^
    Make the first line three hyphens: ---
    Then come title, original and change, then a second --- and the prose.`,
  ],
  [
    "no second fence",
    "---\ntitle: x\nProse.\n",
    `\
ferry/study.md:1:1  error  The front matter that begins here never ends.  study/front-matter-unclosed
    ---
    ^^^
    Put a line of three hyphens between the front matter and the prose: ---`,
  ],
  [
    "front matter that is a list",
    "---\n- a\n- b\n---\n",
    `\
ferry/study.md:2:1  error  A list of “key: value” lines belongs here.  study/not-a-map
    - a
    ^
    Type, for example: title: A lighter ferry wheel`,
  ],
  [
    "front matter that is a sentence",
    "---\nA study of the harbour flag\n---\n",
    `\
ferry/study.md:2:1  error  A list of “key: value” lines belongs here.  study/not-a-map
    A study of the harbour flag
    ^
    Type, for example: title: A lighter ferry wheel`,
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
