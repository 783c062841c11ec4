import { runInNewContext } from "node:vm";
import { expect, test } from "vitest";
import type { StudyResult } from "../../src/analysis/result.ts";
import type { Study } from "../../src/content/study/study.ts";
import { formatWords, listWords } from "../../src/views/searchwords.ts";
import { createFormat, plainFormat } from "../../src/words/format.ts";
import { studyResult } from "../publish/sample.ts";

const told = (changed: Partial<Study>): StudyResult => ({
  ...studyResult,
  study: { ...studyResult.study, ...changed },
});

test("a study is found by its title, prose, decision, names, tags, credit, colours, hexes, outcomes, verdict, status", () => {
  const words = listWords(studyResult, plainFormat);
  for (const word of [
    ...["lighter", "first", "because", "arkwell", "charge", "harvest", "square"],
    ...["red", "yellow", "straw", "c8202f", "f4c430", "12235c"],
    ...["gained", "clearer", "adopted"],
  ])
    expect(words).toContain(word);
  expect(new Set(words).size).toBe(words.length);
});

test("words are folded: small, without marks; figures and addresses are not read", () => {
  const words = listWords(
    told({
      body: 'Café ÉCLAIR Straße\n\n::figure{edge="mauve / puce"}\n\n[the quay](https://harbour.example/hidden)',
    }),
    plainFormat,
  );
  for (const word of ["cafe", "eclair", "straße", "the", "quay"]) expect(words).toContain(word);
  for (const word of ["figure", "mauve", "hidden", "https"]) expect(words).not.toContain(word);
});

test("the script sets the words of each study, whatever stands in it, and does nothing else", () => {
  const hostile = told({ slug: "hostile", title: "</script><script>alert(1)</script> \u2028 `x` \\" });
  const text = formatWords([studyResult, hostile], plainFormat);
  expect(text).not.toContain("<");
  const world: Record<string, unknown> = {};
  runInNewContext(text, world);
  expect(Object.keys(world)).toEqual(["studyWords", "pageWords"]);
  expect(Object.keys(Object(world.studyWords))).toEqual(["a-square", "hostile"]);
  expect(Object(world.studyWords)["a-square"]).toMatch(/^ [^ ]+( [^ ]+)*$/);
});

test("without a study there is a script all the same", () => {
  expect(formatWords([], plainFormat)).toBe("globalThis.studyWords = {};\nglobalThis.pageWords = [];\n");
});

test("pages are found by title and text, at their addresses from the front page", () => {
  const page = {
    path: "guide/study",
    title: "A study",
    body: "Café.\n\n::study{ferry}",
    file: "",
    bodyLine: 1,
  };
  const box: { pageWords?: unknown } = {};
  runInNewContext(formatWords([studyResult], plainFormat, [page]), { globalThis: box });
  expect(box.pageWords).toEqual([{ title: "A study", address: "guide/study/", words: " a study cafe" }]);
});

test("outcomes and verdicts are found in the language of the pages", () => {
  const words = listWords(studyResult, createFormat("de"));
  for (const word of ["gewonnen", "klarer", "angenommen"]) expect(words).toContain(word);
  for (const word of ["gained", "clearer"]) expect(words).not.toContain(word);
});
