import { expect, test } from "vitest";
import { presentFront } from "../../../src/views/front/front.ts";
import { mostOnPage } from "../../../src/views/paging.ts";
import { createFormat } from "../../../src/words/format.ts";
import { galleryResult, study, studyResult } from "../../publish/sample.ts";

const format = createFormat("en");

test("a choice that would narrow nothing is not offered", () => {
  const two = [
    studyResult,
    { ...studyResult, study: { ...study, slug: "b", status: "open" as const, tags: ["canton"] } },
  ];
  const { finder } = presentFront({ ...galleryResult, studies: two }, format);
  expect(finder?.choices.map(({ name, options }) => [name, options.map(({ value }) => value)])).toEqual([
    ["status", ["open", "adopted"]],
    ["tag", ["canton", "charge"]],
    ["author", ["ines-valcourt", "tobin-arkwell"]],
  ]);
  expect(finder?.words).toBe("assets/words.js");
  expect(finder?.found).toBe("# of 2 studies");
});

test("one study needs no search, none needs no chart", () => {
  expect(presentFront(galleryResult, format).finder).toBeUndefined();
  const empty = presentFront({ ...galleryResult, studies: [] }, format);
  expect([empty.gain, empty.finder, empty.shelves]).toEqual([undefined, undefined, []]);
});

test("beyond one page the finder offers what the rows of the chart have, and says how many they are", () => {
  const [sample] = galleryResult.studies;
  if (sample === undefined) throw new Error("no study");
  const of = (index: number, author: string, clarity: readonly [number, number]) => ({
    ...sample,
    study: { ...sample.study, slug: `s${index}`, authors: [author] },
    comparison: { ...sample.comparison, clarity },
  });
  // Gains alone order the rows: the least comes last and has none.
  const many = Array.from({ length: mostOnPage }, (_, index) =>
    of(index, ["Ines Valcourt", "Odo Marsh"][index % 2] ?? "", [10, 90]),
  );
  const { finder } = presentFront(
    { ...galleryResult, studies: [...many, of(mostOnPage, "Left Over", [50, 50])] },
    format,
  );
  expect(finder?.found).toBe(`# of the ${mostOnPage} listed here`);
  const authors = finder?.choices.find(({ name }) => name === "author");
  expect(authors?.options.map(({ text }) => text)).toEqual(["Ines Valcourt", "Odo Marsh"]);
});

test("a study without an edge, for which the chart has no line, is linked all the same", () => {
  const edgeless = {
    ...studyResult,
    study: { ...study, slug: "plain", title: "A plain field" },
    comparison: { ...studyResult.comparison, clarity: [null, null] as const },
  };
  const both = presentFront({ ...galleryResult, studies: [studyResult, edgeless] }, format);
  expect(both.edgeless).toEqual([{ text: "A plain field", address: "studies/plain/" }]);
  expect(both.gain?.rows.map(({ slug }) => slug)).toEqual([study.slug]);
  const twin = { ...edgeless, study: { ...study, slug: "plainer" } };
  const neither = presentFront({ ...galleryResult, studies: [edgeless, twin] }, format);
  // The form narrows the chart: without one it would do nothing.
  expect([neither.gain, neither.finder, neither.edgeless.map(({ text }) => text).join("")]).toEqual([
    undefined,
    undefined,
    "A plain field and A lighter square",
  ]);
});
