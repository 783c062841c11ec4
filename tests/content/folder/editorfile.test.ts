import { expect, test } from "vitest";
import { isEditorFile } from "../../../src/content/folder/editorfile.ts";

test.each([
  "study.md~",
  ".study.md.swp",
  ".study.md.swo",
  ".original.svg.swx",
  "4913",
  ".#study.md",
  "#study.md#",
  ".goutputstream-7Q2C51",
  "study.md___jb_tmp___",
  "study.md___jb_old___",
  ".study.md.kate-swp",
  "study.md.tmp",
  "study.md.tmp.12345",
  "study.md.bak",
])("%s is an editor's", (name) => {
  expect(isEditorFile(name)).toBe(true);
});

test.each([
  "study.md",
  "study.yaml",
  "prose.md",
  "original.svg",
  "a-4913.svg",
  "gallery.yaml",
  "notes.txt",
  "tmp.svg",
])("%s is an author's", (name) => {
  expect(isEditorFile(name)).toBe(false);
});
