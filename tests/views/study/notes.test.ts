import { expect, test } from "vitest";
import type { Study } from "../../../src/content/study/study.ts";
import { linkFrom } from "../../../src/views/address.ts";
import { presentNotes } from "../../../src/views/study/notes.ts";
import { createFormat } from "../../../src/words/format.ts";
import { gallery, study, studyResult } from "../../publish/sample.ts";

const path = "/studies/a-square/";
const notes = (changed: Partial<Study>) =>
  presentNotes(
    { ...studyResult, study: { ...study, ...changed } },
    gallery,
    linkFrom(path),
    path,
    createFormat("en"),
  );

test("a palette name is shown as its colour, and keeps its name", () => {
  expect(notes({}).options[0]?.with).toEqual({ text: "straw", swatch: { hex: "#f4c430", name: "straw" } });
});

test("words that name no colour stay words", () => {
  const options = [{ replace: "the old red", with: "white" }];
  expect(notes({ options }).options[0]).toMatchObject({
    replace: { text: "the old red", swatch: undefined },
    with: { text: "white", swatch: { hex: "#ffffff" } },
    note: undefined,
  });
});

test("only a web address is a link", () => {
  expect(notes({}).credit?.source).toBe("https://flags.example/square");
  for (const source of ["Drawing book, sheet 1", "javascript:alert(1)", "//flags.example"]) {
    const credit = notes({ credit: { source, licence: "CC0-1.0" } }).credit;
    expect(credit).toMatchObject({ source: undefined, sourceText: source, sentence: "The drawing" });
  }
});

test("both drawings can be taken away, by names that say which is which", () => {
  const [original, redesign] = notes({}).downloads;
  expect(original).toMatchObject({ address: "original.svg", file: "a-square-original.svg" });
  expect(redesign).toMatchObject({ address: "redesign.svg", file: "a-square-redesign.svg" });
  expect(notes({}).unofficial).toMatch(/unofficial study published by Sound Flag Circle/);
});
