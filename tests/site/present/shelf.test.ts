import { expect, test } from "vitest";
import { linkFrom } from "../../../src/site/address.ts";
import { createFormat } from "../../../src/site/present/format.ts";
import { linkShelves, presentShelves } from "../../../src/site/present/shelf.ts";
import type { StudyResult } from "../../../src/study/result.ts";
import { gallery, study, studyResult } from "../sample.ts";

const format = createFormat("en");
const by = (slug: string, authors: readonly string[], tags: readonly string[]): StudyResult => ({
  ...studyResult,
  study: { ...study, slug, authors, tags },
});
const results = [
  by("one", ["Tobin Arkwell", "Ines Valcourt"], ["charge"]),
  by("two", ["ines valcourt"], ["Charge"]),
];

test("every author and every tag has a page with its studies, names that differ in case alone together", () => {
  expect(
    presentShelves(results, gallery, format).map(({ folder, name, cards }) => [
      folder,
      name,
      cards.map(({ address }) => address),
    ]),
  ).toEqual([
    ["authors/ines-valcourt", "Ines Valcourt", ["../../studies/one/", "../../studies/two/"]],
    ["authors/tobin-arkwell", "Tobin Arkwell", ["../../studies/one/"]],
    ["tags/charge", "charge", ["../../studies/one/", "../../studies/two/"]],
  ]);
});

test("the ways to them stand in the order of the alphabet, with how many studies there are", () => {
  expect(linkShelves(results, "authors", linkFrom("/"), format)).toEqual([
    { slug: "ines-valcourt", name: "Ines Valcourt", address: "authors/ines-valcourt/", count: "2" },
    { slug: "tobin-arkwell", name: "Tobin Arkwell", address: "authors/tobin-arkwell/", count: "1" },
  ]);
});
