import { expect, test } from "vitest";
import { createFormat } from "../../../src/site/present/format.ts";
import { presentShelves } from "../../../src/site/present/shelfpage.ts";
import type { StudyResult } from "../../../src/study/result.ts";
import { gallery, study, studyResult } from "../sample.ts";

const by = (slug: string, authors: readonly string[], tags: readonly string[]): StudyResult => ({
  ...studyResult,
  study: { ...study, slug, authors, tags },
});
const pages = presentShelves(
  [
    by("one", ["Tobin Arkwell", "Ines Valcourt"], ["charge", "bird"]),
    by("two", ["ines valcourt"], ["Charge"]),
  ],
  gallery,
  createFormat("en"),
);

test("every author has a page with its studies, and every tag that several have", () => {
  expect(pages.map(({ folder, name, cards }) => [folder, name, cards.map(({ address }) => address)])).toEqual(
    [
      ["authors/ines-valcourt", "Ines Valcourt", ["../../studies/one/", "../../studies/two/"]],
      ["authors/tobin-arkwell", "Tobin Arkwell", ["../../studies/one/"]],
      ["tags/charge", "charge", ["../../studies/one/", "../../studies/two/"]],
    ],
  );
});

test("a page says what it is a page of, how many studies it has, and where all of its kind are", () => {
  expect(pages[0]).toMatchObject({
    kind: { text: "Author", address: "../", all: "All authors" },
    count: "2 studies",
    frame: { title: "Ines Valcourt – Flags of the Sound" },
  });
  expect(pages[0]?.frame.description).toContain("2 studies by Ines Valcourt");
  expect(pages[2]?.frame.description).toContain("2 studies tagged charge");
});
