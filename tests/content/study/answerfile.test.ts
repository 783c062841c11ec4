import { join } from "node:path";
import { expect, test } from "vitest";
import { loadGallery } from "../../../src/content/folder/loadgallery.ts";
import { loadAnswers, parseAnswerFile } from "../../../src/content/study/answerfile.ts";
import { rightDrawing, rightGallery, rightStudy } from "../mistakes.ts";
import { inFolder } from "../rules/making.ts";

const answer = "---\nby: Dunstan\ndate: 2026-04-11\nedge: white / navy\nsays: doubt\n---\nI cannot see it.\n";
const parse = (text: string) => parseAnswerFile("dunstan", "answers/dunstan.md", Buffer.from(text));
const rules = (text: string) => parse(text).problems.map(({ rule, place }) => `${rule} ${place?.line}`);

test("an answer has its keys, its text, and the place of the edge for what is found later", () => {
  expect(parse(answer)).toEqual({
    value: {
      key: "dunstan",
      by: "Dunstan",
      date: "2026-04-11",
      edge: "white / navy",
      says: "doubt",
      text: "I cannot see it.\n",
      at: {
        file: "answers/dunstan.md",
        place: { line: 4, column: 7, length: 12 },
        sourceLine: "edge: white / navy",
      },
    },
    problems: [],
  });
});

test.each([
  ["by: Dunstan", "by: ..", "study/wrong-author 2"],
  ["2026-04-11", "2026-04-31", "study/wrong-date 3"],
  ["says: doubt", "says: maybe", "study/unknown-word 5"],
  ["says: doubt", "says: doubt\nreply: { date: soon, text: So. }", "study/wrong-date 6"],
  ["says: doubt", "says: doubt\nlink: javascript:alert(1)", "study/answer-link 6"],
  ["says: doubt", "says: doubt\nmood: cross", "study/unknown-key 6"],
])("%s → %s: %s", (right, wrong, told) => {
  expect(rules(answer.replace(right, wrong))).toEqual([told]);
  expect(parse(answer.replace(right, wrong)).value).toBeUndefined();
});

test("a figure is the author's to show", () => {
  expect(rules(`${answer}\n::figure{kind="edge map"}\n`)).toEqual(["study/figure 9"]);
});

const study = { "content/gallery.yaml": rightGallery, "content/studies/ferry/study.md": rightStudy };
const files = { ...study, "content/studies/ferry/original.svg": rightDrawing };

test("a bad answer is named and left out; the study and the good answers stay", async () => {
  const answers = {
    "content/studies/ferry/answers/good.md": answer,
    "content/studies/ferry/answers/bad.md": answer.replace("doubt", "maybe"),
    "content/studies/ferry/answers/Note.txt": "x",
  };
  const loaded = await inFolder({ ...files, ...answers }, (root) => loadGallery(join(root, "content")));
  expect(loaded.studies.map((one) => one.answers?.map(({ key }) => key))).toEqual([["good"]]);
  expect(loaded.problems.map(({ rule }) => rule)).toEqual(["study/answer-name", "study/unknown-word"]);
});

test("no folder, no answers", async () => {
  const read = (root: string) => loadAnswers(join(root, "content"), "content", "ferry");
  expect(await inFolder(files, read)).toEqual({ value: [], problems: [] });
});
