import { expect, test } from "vitest";
import type { StudyResult } from "../../../src/analysis/result.ts";
import { countStudies, formatShelfPath, listShelves } from "../../../src/views/shelf/shelf.ts";
import { createFormat } from "../../../src/words/format.ts";
import { study, studyResult } from "../../publish/sample.ts";

const by = (slug: string, authors: readonly string[]): StudyResult => ({
  ...studyResult,
  study: { ...study, slug, authors },
});
const namesOf = (language: string, names: readonly string[]) =>
  listShelves(
    names.map((name, index) => by(`s${index}`, [name])),
    "authors",
    createFormat(language),
  ).map(({ name }) => name);

test("every author has a shelf with the studies of it, names that differ in case alone together", () => {
  const results = [
    by("one", ["Tobin Arkwell", "Ines Valcourt"]),
    by("two", ["ines valcourt", "INES VALCOURT"]),
  ];
  expect(
    listShelves(results, "authors", createFormat("en")).map(({ slug, name, results: own }) => [
      slug,
      name,
      own.map((result) => result.study.slug),
    ]),
  ).toEqual([
    ["ines-valcourt", "Ines Valcourt", ["one", "two"]],
    ["tobin-arkwell", "Tobin Arkwell", ["one"]],
  ]);
});

test("a later study renames no shelf: the spelling that most have is shown, else that of the oldest", () => {
  const dated = (slug: string, date: string | undefined, ...authors: readonly string[]): StudyResult => {
    const { date: _, ...rest } = study;
    return { ...studyResult, study: { ...rest, slug, authors, ...(date === undefined ? {} : { date }) } };
  };
  const shown = (...results: readonly StudyResult[]) =>
    listShelves(results, "authors", createFormat("en")).map(({ name }) => name);
  const old = dated("old", "2025-01-01", "Ines Valcourt");
  const late = dated("late", "2026-01-01", "INES-VALCOURT");
  for (const results of [
    [late, old],
    [old, late],
  ])
    expect(shown(...results)).toEqual(["Ines Valcourt"]);
  expect(shown(dated("never", undefined, "INES-VALCOURT"), old)).toEqual(["Ines Valcourt"]);
  expect(shown(late, dated("more", "2026-02-01", "INES-VALCOURT"), old)).toEqual(["INES-VALCOURT"]);
});

// Source: the alphabets: ä stands with a in German (DIN 5007-1), behind z in Swedish (Svenska Akademiens ordlista).
test("the alphabet is that of the gallery's language", () => {
  expect(namesOf("de", ["Zeta", "Äther", "Beta"])).toEqual(["Äther", "Beta", "Zeta"]);
  expect(namesOf("sv", ["Zeta", "Äther", "Beta"])).toEqual(["Beta", "Zeta", "Äther"]);
});

test("a shelf has an address that no other name changes", () => {
  expect(formatShelfPath("tags", "Dark on dark")).toBe("/tags/dark-on-dark/");
});

test("studies are counted in the digits of the language", () => {
  expect(countStudies(1, createFormat("en"))).toBe("1 study");
  expect(countStudies(12, createFormat("fa"))).toBe("۱۲ studies");
});
