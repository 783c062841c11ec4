import { expect, test } from "vitest";
import type { Gallery, Study } from "../../../src/content/study/study.ts";
import { presentRefer, presentSeriesRefer } from "../../../src/views/study/citation.ts";
import { createFormat } from "../../../src/words/format.ts";
import { stampOf } from "../../../src/words/studystamp.ts";
import { gallery, series, study, studyResult } from "../../publish/sample.ts";

const format = createFormat("en");
const stamp = stampOf(studyResult, gallery);
const refer = (changed: Partial<Study> = {}, around: Gallery = gallery) =>
  presentRefer({ ...studyResult, study: { ...study, ...changed } }, around, format);

test("plain text: who, what, where, when, and an address that carries the stamp", () => {
  expect(refer().text).toBe(
    `Ines Valcourt and Tobin Arkwell: “A lighter square”, unofficial flag redesign study. Flags of the Sound, April 2, 2026. https://flags.example/sound/studies/a-square/?stamp=${stamp}`,
  );
  expect(refer().link).toBe(refer().stamped);
});

test("pieces from right to left keep their own order between the words, and others those between them", () => {
  const arabic = createFormat("ar-EG");
  const { text, bibtex } = presentRefer(
    { ...studyResult, study: { ...study, authors: ["ש. כהן"] } },
    gallery,
    arabic,
  );
  // Unicode Standard Annex 9: U+2068 opens a piece whose first strong letter gives its direction, U+2069 ends it.
  expect(text).toMatch(/^\u2068ש\. כהן\u2069: «\u200f\u2068A lighter square\u2069»، /);
  expect(text).toMatch(/Flags of the Sound\u2069، \u2068[^\u2069]*\p{sc=Arab}[^\u2069]*\u2069\. https:/u);
  expect(bibtex).not.toMatch(/[\u200f\u2068\u2069]/);
  expect(refer().text).not.toMatch(/[\u2068\u2069]/);
});

test("BibTeX, letter for letter", () => {
  expect(refer().bibtex).toBe(`@misc{a-square-${stamp},
  title = {{A lighter square}},
  author = {Ines Valcourt and Tobin Arkwell},
  year = {2026},
  howpublished = {\\url{https://flags.example/sound/studies/a-square/?stamp=${stamp}}},
  note = {Unofficial flag redesign study, Flags of the Sound, stamp ${stamp}},
}`);
});

test("the note and what stands between are in the language of the pages", () => {
  const { text, bibtex } = presentRefer(studyResult, gallery, createFormat("fr"));
  expect(text).toMatch(/^Ines Valcourt et Tobin Arkwell\u00a0: «\u00a0A lighter square\u00a0», étude non/);
  expect(bibtex).toContain(
    `note = {Étude non officielle de drapeau redessiné, Flags of the Sound, cachet ${stamp}}`,
  );
});

test("what the study does not say is left out of both", () => {
  const { date: _, ...undated } = study;
  const { text, bibtex } = presentRefer(
    { ...studyResult, study: { ...undated, authors: [] } },
    gallery,
    format,
  );
  expect(text).toMatch(/^“A lighter square”, unofficial flag redesign study. Flags of the Sound. https:/);
  expect(bibtex).not.toMatch(/author|year/);
});

test("one edge is referred to by its own address, under a key of its own", () => {
  const { text, bibtex, stamped } = presentRefer(studyResult, gallery, format, {
    title: "Dark blue / red",
    path: "/studies/a-square/edges/12235c-c8202f/",
    kind: "edge",
  });
  expect(stamped).toBe(`https://flags.example/sound/studies/a-square/edges/12235c-c8202f/?stamp=${stamp}`);
  expect(text).toContain(
    "“Dark blue / red, in A lighter square”, one edge of an unofficial flag redesign study. Flags",
  );
  expect(bibtex).toContain(`@misc{a-square-12235c-c8202f-${stamp},`);
  expect(bibtex).toContain("note = {One edge of an unofficial flag redesign study, Flags of the Sound,");
});

test("what TeX would read as a command is written as a letter; braces stay in pairs", () => {
  const { bibtex } = refer({
    title: String.raw`50% & $more_ #1 {a} ~b^ \c`,
    authors: ["Valcourt, Ines", "Sand and Sons", "Élan {x"],
  });
  expect(bibtex).toContain(
    String.raw`title = {{50\% \& \$more\_ \#1 \textbraceleft{}a\textbraceright{} \textasciitilde{}b\textasciicircum{} \textbackslash{}c}}`,
  );
  expect(bibtex).toContain(
    String.raw`author = {{Valcourt, Ines} and {Sand and Sons} and Élan \textbraceleft{}x}`,
  );
  // BibTeX counts every brace, those behind a backslash too.
  for (const line of bibtex.split("\n").slice(1, -1))
    expect(line.split("{").length, line).toBe(line.split("}").length);
});

test("a brace in the gallery's address does not end the field", () => {
  const { bibtex } = refer({}, { ...gallery, address: "https://flags.example/a}b" });
  expect(bibtex).toContain("\\url{https://flags.example/a%7Db/studies/");
});

test("a gallery without an address of its own refers by path, and links to the page itself", () => {
  const { stamped, link } = refer({}, { ...gallery, address: "http://localhost:8080/" });
  expect(stamped).toBe(`/studies/a-square/?stamp=${stamp}`);
  expect(link).toBe(`?stamp=${stamp}`);
});

test("a series is cited by its address, without a stamp", () => {
  const { text, bibtex } = presentSeriesRefer(series, gallery, format);
  expect(text).toBe(
    "Ines Valcourt and Nobody Here: “From the quay”, series of unofficial flag redesign studies. Flags of the Sound, June 24, 2026. https://flags.example/sound/series/quay/",
  );
  expect(bibtex).toBe(`@misc{series-quay,
  title = {{From the quay}},
  author = {Ines Valcourt and Nobody Here},
  year = {2026},
  howpublished = {\\url{https://flags.example/sound/series/quay/}},
  note = {Series of unofficial flag redesign studies, Flags of the Sound},
}`);
});
