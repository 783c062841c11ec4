import { expect, test } from "vitest";
import type { StudyResult } from "../../../src/analysis/result.ts";
import { linkFrom } from "../../../src/views/address.ts";
import { linkIndexes, linkShelves, presentShelfIndexes } from "../../../src/views/shelf/shelfindex.ts";
import { createFormat } from "../../../src/words/format.ts";
import { gallery, study, studyResult } from "../../publish/sample.ts";

const format = createFormat("en");
const by = (slug: string, authors: readonly string[], tags: readonly string[]): StudyResult => ({
  ...studyResult,
  study: { ...study, slug, title: `Study ${slug}`, authors, tags },
});
const results = [by("one", ["Tobin Arkwell", "Ines Valcourt"], ["charge"]), by("two", ["ines valcourt"], [])];

test("the ways to all shelves stand in the order of the alphabet, with how many studies there are", () => {
  expect(linkShelves(results, "authors", 40, linkFrom("/"), format).links).toEqual([
    { slug: "ines-valcourt", name: "Ines Valcourt", address: "authors/ines-valcourt/", count: "2" },
    { slug: "tobin-arkwell", name: "Tobin Arkwell", address: "authors/tobin-arkwell/", count: "1" },
  ]);
});

test("/authors/ and /tags/ list every name with its studies", () => {
  const [authors, tags] = presentShelfIndexes(results, gallery, format);
  expect([tags?.folder, tags?.title, tags?.entries.map(({ name }) => name)]).toEqual([
    "tags",
    "Tags",
    ["charge"],
  ]);
  expect(
    authors?.entries.map(({ address, studies }) => [address, studies.map((one) => one.address)]),
  ).toEqual([
    ["ines-valcourt/", ["../studies/one/", "../studies/two/"]],
    ["tobin-arkwell/", ["../studies/one/"]],
  ]);
});

test("tags that most studies have come first, authors as in the alphabet", () => {
  const more = [by("three", ["Ada Quay"], ["bird", "stripe"]), by("four", [], ["stripe", "cross"])];
  const [authors, tags] = presentShelfIndexes([...results, ...more], gallery, format);
  expect(tags?.entries.map(({ name }) => name)).toEqual(["stripe", "bird", "charge", "cross"]);
  expect(authors?.entries.map(({ name }) => name)).toEqual(["Ada Quay", "Ines Valcourt", "Tobin Arkwell"]);
});

test("the tag of one study leads straight to it; each study is there with both its flags", () => {
  const [, tags] = presentShelfIndexes(results, gallery, format);
  expect(tags?.entries[0]).toMatchObject({
    address: "../studies/one/",
    studies: [
      {
        title: "Study one",
        plates: [{ src: "../studies/one/original.svg" }, { src: "../studies/one/redesign.svg" }],
      },
    ],
  });
  expect(
    linkShelves([...results, by("three", [], ["Charge"])], "tags", 40, linkFrom("/"), format).links,
  ).toEqual([{ slug: "charge", name: "charge", address: "tags/charge/", count: "2" }]);
});

test("without a tag the page is there and says so; the front page has no way to it", () => {
  const [, tags] = presentShelfIndexes([], gallery, format);
  expect([tags?.entries, tags?.empty]).toEqual([
    [],
    "No study has a tag yet. Authors add them in their study files.",
  ]);
  expect(linkIndexes([], linkFrom("/"), format)).toEqual([]);
});

test("the front page leads to both indexes and says how much they have", () => {
  expect(linkIndexes(results, linkFrom("/"), format)).toEqual([
    { text: "2 authors", address: "authors/" },
    { text: "1 tag", address: "tags/" },
    { text: "2 decisions", address: "decisions/" },
  ]);
});
