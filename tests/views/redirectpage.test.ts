import { expect, test } from "vitest";
import { listFormer } from "../../src/content/folder/formerly.ts";
import { presentGone, presentLoneTags, presentMoved } from "../../src/views/redirectpage.ts";
import { createFormat } from "../../src/words/format.ts";
import { gallery, study, studyResult } from "../publish/sample.ts";

const named = (slug: string, formerly: readonly string[] = []) => ({
  ...studyResult,
  study: { ...study, slug, title: `The ${slug}`, formerly },
});
const edge = (slug: string, key: string) => ({
  slug,
  folder: `studies/${slug}/edges/${key}`,
  title: "White / red",
  study: { title: `The ${slug}`, address: "", table: "" },
});
const edges = [edge("new", "aa0000-ffffff"), edge("other", "000000-ffffff")];
const changes = [
  {
    slug: "new",
    folder: "studies/new/changes",
    title: "Other changes of one colour",
    study: { title: "The new", address: "" },
  },
];
const present = (...results: readonly ReturnType<typeof named>[]) =>
  presentMoved(
    results,
    changes,
    edges,
    listFormer(results.map(({ study: one }) => one)),
    { ...gallery, address: "https://flags.example/sound/" },
    createFormat("en"),
  );

test("the old address of a study and those of the pages below it lead to the new ones", () => {
  const pages = present(named("new", ["old"]), named("other"));
  expect(pages.map(({ folder, title, address }) => [folder, title, address])).toEqual([
    ["studies/old", "The new", "../new/"],
    ["studies/old/changes", "Other changes of one colour, in The new", "../../new/changes/"],
    ["studies/old/edges/aa0000-ffffff", "White / red, in The new", "../../../new/edges/aa0000-ffffff/"],
  ]);
  expect(pages.map(({ frame }) => frame.canonical)).toEqual([
    "https://flags.example/sound/studies/new/",
    "https://flags.example/sound/studies/new/changes/",
    "https://flags.example/sound/studies/new/edges/aa0000-ffffff/",
  ]);
  // The frame is that of the old address: its style sheet is found from there.
  expect(pages.map(({ frame }) => frame.links.home)).toEqual(["../../", "../../../", "../../../../"]);
  expect(pages[0]?.frame.share).toBeUndefined();
});

test("an address that has a study, or that two claim, has no page of this kind", () => {
  expect(present(named("new", ["other"]), named("other"))).toEqual([]);
  expect(present(named("new", ["old"]), named("other", ["old"]))).toEqual([]);
  expect(present(named("new"))).toEqual([]);
});

test("the tag of one study has a page that leads to it, asked for with that study; that of two has none here", () => {
  const tagged = (slug: string, tags: readonly string[]) => ({
    ...studyResult,
    study: { ...study, slug, title: `The ${slug}`, tags },
  });
  const all = [tagged("one", ["Charge", "bird"]), tagged("two", ["charge", "oak", "Oak"])];
  const [first] = all;
  const format = createFormat("en");
  const pages = presentLoneTags(all, all, gallery, format);
  expect(pages.map(({ folder, title, address }) => [folder, title, address])).toEqual([
    ["tags/bird", "The one", "../../studies/one/"],
    ["tags/oak", "The two", "../../studies/two/"],
  ]);
  expect(pages[0]?.frame.canonical).toMatch(/\/studies\/one\/$/);
  expect(first && presentLoneTags([first], all, gallery, format).map(({ folder }) => folder)).toEqual([
    "tags/bird",
  ]);
});

test("a page that has gone says so in its own words, and is led on from at once only where it is the same", () => {
  const pages = presentGone(
    [
      { address: "/studies/a/edges/000000-ffffff/", fate: "edge", to: "/studies/a/edges/000000-fffffe/" },
      { address: "/studies/b/", fate: "withdrawn", why: "<b>By its author</b>." },
      { address: "/studies/c/", fate: "moved", to: "/studies/a/" },
    ],
    new Map([
      ["/studies/a/", "The a"],
      ["/studies/a/edges/000000-fffffe/", "Black / white"],
    ]),
    gallery,
    createFormat("en"),
  );
  expect(pages.map(({ folder, title, address, isSame }) => [folder, title, address, isSame])).toEqual([
    ["studies/a/edges/000000-ffffff", "Black / white", "../000000-fffffe/", false],
    ["studies/b", gallery.title, "../../", false],
    ["studies/c", "The a", "../a/", true],
  ]);
  expect(pages[1]?.words.text).toContain("<b>By its author</b>.");
  expect(pages.map(({ frame }) => frame.canonical === undefined)).toEqual([true, true, false]);
});
