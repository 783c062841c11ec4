import { describe, expect, test } from "vitest";
import { findConfusables } from "../../../src/content/folder/confusable.ts";
import type { Study } from "../../../src/content/study/study.ts";
import { formatProblems } from "../../../src/problem/problemtext.ts";
import { parseText, writeStudy } from "../../analysis/fixture.ts";

function study(slug: string, ...lines: readonly string[]): Study {
  const { value } = parseText(writeStudy(...lines));
  if (value === undefined) throw new Error(lines.join());
  return { ...value, slug, file: `studies/${slug}/study.md` };
}

const told = (...studies: readonly Study[]): string => formatProblems(findConfusables(studies));

describe("names that are easily taken for each other", () => {
  test("of an author: the one that fewer studies have is told, at its place", () => {
    const studies = [
      study("a", "authors: [lnes Valcourt]"),
      study("b", "authors: [Ines Valcourt]"),
      study("c", "authors: [Tobin, INES VALCOURT]"),
    ];
    expect(told(...studies)).toBe(`\
studies/a/study.md:5:11  warning  “lnes Valcourt” is easily taken for “Ines Valcourt”, which b has.  study/confusable
    authors: [lnes Valcourt]
              ^^^^^^^^^^^^^
    If it is the same, type it the same: Ines Valcourt
    If it is another, add what tells them apart.`);
    expect(told(...studies.toReversed())).toContain("studies/a/study.md:5:11");
  });

  test("of a tag, where both are as many: the younger one; without a date it is the youngest", () => {
    const old = study("old", "tags: [two-colour]", "date: 2025-01-01");
    expect(told(study("new", "tags: [two colour]", "date: 2026-01-01"), old)).toContain(
      "studies/new/study.md",
    );
    expect(told(study("new", "tags: [two colour]"), old)).toContain("studies/new/study.md");
  });

  test("of a study's folder", () => {
    expect(told(study("modern", "date: 2025-01-01"), study("modem", "date: 2026-01-01"))).toBe(`\
studies/modem/study.md  warning  The name of the folder, “modem”, is easily taken for “modern”.  study/confusable
    Rename the folder, so that nobody follows the wrong address.`);
  });

  test("in other letters: Cyrillic in a Latin name", () => {
    expect(
      told(
        study("a", "authors: [Ines Valcourt]", "date: 2025-01-01"),
        study("b", "authors: [Іnes Vаlсourt]"),
      ),
    ).toContain("studies/b/study.md");
  });
});

test("an author is no tag, case tells no names apart, and different names are different", () => {
  const studies = [
    study("a", "authors: [modern]", "tags: [modem, Dark on dark]"),
    study("b", "authors: [Modern]", "tags: [dark on dark]"),
    study("c", "authors: [Zoë, Zoé, שרה]"),
  ];
  expect(told(...studies)).toBe("");
});
