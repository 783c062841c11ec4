import { describe, expect, test } from "vitest";
import type { GalleryResult, StudyResult } from "../../../src/analysis/result.ts";
import type { Study } from "../../../src/content/study/study.ts";
import { feedLength, formatAtom, formatDecisions, formatJsonFeed } from "../../../src/publish/feeds/feed.ts";
import { presentSite } from "../../../src/views/siteview.ts";
import { formatOf } from "../../../src/words/format.ts";
import { emptyGallery, oddGallery } from "../../browser/gallery.ts";
import { readXml } from "../dom.ts";
import { galleryResult, series, studyResult } from "../sample.ts";
import { checkAtom, checkJsonFeed, childrenOf } from "../standards.ts";

const named = (slug: string, changed: Partial<Study>): StudyResult => ({
  ...studyResult,
  study: { ...studyResult.study, slug, ...changed },
});
const { date: _date, ...undatedStudy } = studyResult.study;
const undated: StudyResult = { ...studyResult, study: { ...undatedStudy, slug: "no-date" } };
const titles = [
  "]]> & <b>bold</b> \"double\" 'single'",
  "control \u0000\u0001\u0008\u000b\u001f\u007f \ufffe\uffff \ud800 lone",
  "\u202eevil \u2067שלום\u2069 مرحبا",
  "<![CDATA[ x ]]> <!-- y --> <?z?> &amp; &nope;",
  "x".repeat(200),
];
const hostile: GalleryResult = {
  ...galleryResult,
  gallery: { ...galleryResult.gallery, title: "Ties & <knots>", society: "A & B" },
  studies: titles.map((title, index) =>
    named(`hostile-${index}`, {
      title,
      authors: [title.slice(0, 100)],
      tags: [title.slice(0, 50)],
      decision: { why: title },
      symbolism: title,
      body: `${title}\n\n[a](../other/?a=1&b="2") [b](#c) [c](javascript:alert(1)) ![d](https://x.example/p.png)\n`,
      credit: { title, author: title, source: title, licence: title },
    }),
  ),
};
const many: GalleryResult = {
  ...galleryResult,
  studies: Array.from({ length: feedLength + 20 }, (_, index) => named(`study-${index}`, {})),
};
const galleries: Readonly<Record<string, GalleryResult>> = {
  sample: galleryResult,
  odd: oddGallery,
  empty: emptyGallery,
  undated: { ...galleryResult, studies: [undated] },
  series: { ...galleryResult, series: [series] },
  hostile,
  many,
};

function feedsOf(result: GalleryResult): Readonly<Record<"atom" | "json" | "decisions", string>> {
  const { gallery } = result;
  const view = presentSite(result, undefined);
  const facts = {
    title: gallery.title,
    description: gallery.description,
    format: formatOf(gallery),
    publisher: gallery.society ?? gallery.title,
    address: (path: string) => `https://flags.example/sound${path}`,
  };
  return {
    atom: formatAtom(facts, view.studies, view.series),
    json: formatJsonFeed(facts, view.studies, view.series),
    decisions: formatDecisions(facts, view.shelves.find(({ folder }) => folder === "decisions")?.cards ?? []),
  };
}

describe.each(Object.entries(galleries))("%s gallery", (_name, result) => {
  const { atom, json, decisions } = feedsOf(result);

  test("Atom: nothing is wrong by RFC 4287", () => {
    expect(checkAtom(atom)).toEqual([]);
    expect(checkAtom(decisions)).toEqual([]);
  });

  test("JSON Feed: nothing is wrong by version 1.1", () => {
    expect(checkJsonFeed(json)).toEqual([]);
  });

  test("the same input gives the same bytes", () => {
    expect(feedsOf(result)).toEqual({ atom, json, decisions });
  });
});

test("an entry says what its study says, with its address as id, and the newest date is that of the feed", () => {
  const older = named("older", { title: "Older", date: "2025-01-31" });
  const { atom, json } = feedsOf({ ...galleryResult, studies: [older, studyResult] });
  const feed = readXml(atom).documentElement;
  const text = (parent: Element, name: string) => childrenOf(parent, name).map((one) => one.textContent);
  expect(text(feed, "updated")).toEqual(["2026-04-02T00:00:00Z"]);
  const [first, second] = childrenOf(feed, "entry");
  if (!first || !second) throw new Error("two entries");
  expect(text(first, "id")).toEqual(["https://flags.example/sound/studies/a-square/"]);
  expect(text(first, "title")).toEqual(["A lighter square"]);
  expect(text(first, "rights")).toEqual(["The square, by Ines Valcourt, CC0-1.0"]);
  expect(text(second, "updated")).toEqual(["2025-01-31T00:00:00Z"]);
  expect(childrenOf(first, "author").map((author) => text(author, "name")[0])).toEqual([
    "Ines Valcourt",
    "Tobin Arkwell",
  ]);
  expect(childrenOf(first, "category").map((tag) => tag.getAttribute("term"))).toEqual(["charge"]);
  const [item] = JSON.parse(json).items;
  expect(item).toMatchObject({
    id: "https://flags.example/sound/studies/a-square/",
    title: "A lighter square",
    date_published: "2026-04-02T00:00:00Z",
    tags: ["charge"],
    image: "https://flags.example/sound/studies/a-square/link.png",
    authors: [
      { name: "Ines Valcourt", url: "https://flags.example/sound/authors/ines-valcourt/" },
      { name: "Tobin Arkwell", url: "https://flags.example/sound/authors/tobin-arkwell/" },
    ],
  });
});

test("a decision has the day of its own, and its address on the page of the study", () => {
  const decision = { date: "2026-05-02", for: 3, why: "It reads." };
  const feed = readXml(feedsOf({ ...galleryResult, studies: [named("wheel", { decision })] }).decisions);
  const [entry] = childrenOf(feed.documentElement, "entry");
  const text = (name: string) => entry && childrenOf(entry, name).map((one) => one.textContent);
  expect(text("id")).toEqual(["https://flags.example/sound/studies/wheel/#decision"]);
  expect(text("updated")).toEqual(["2026-05-02T00:00:00Z"]);
  expect(text("title")).toEqual(["Adopted: A lighter square"]);
  expect(text("summary")).toEqual(["Adopted on May 2, 2026, 3 for. It reads."]);
});

test("a study without a date has a time that never moves, and none where none is asked for", () => {
  const { atom, json } = feedsOf({ ...galleryResult, studies: [undated] });
  expect(atom.match(/<updated>[^<]*/g)).toEqual(Array(2).fill("<updated>1970-01-01T00:00:00Z"));
  expect(atom).not.toContain("<published>");
  expect(JSON.parse(json).items[0]).not.toHaveProperty("date_published");
});

test("hostile titles arrive letter for letter, but for what XML cannot hold", () => {
  const { atom, json } = feedsOf(hostile);
  const read = childrenOf(readXml(atom).documentElement, "entry").map(
    (entry) => childrenOf(entry, "title")[0]?.textContent,
  );
  // Source: XML 1.0, production 2: neither controls below the space, nor the last two of a plane, nor half a pair.
  const holdable = titles.map((title) => (title.startsWith("control") ? "control \u007f   lone" : title));
  expect(read).toEqual(holdable);
  expect(JSON.parse(json).items.map(({ title }: { title: string }) => title)).toEqual(titles);
});

test("feeds tell what is new: the first hundred", () => {
  const { atom, json } = feedsOf(many);
  expect(childrenOf(readXml(atom).documentElement, "entry")).toHaveLength(100);
  expect(JSON.parse(json).items).toHaveLength(100);
});

test("a series stands among the studies by its date, with its studies in their order", () => {
  const { atom } = feedsOf({ ...galleryResult, series: [series] });
  expect(
    childrenOf(readXml(atom).documentElement, "entry").map(
      (entry) => childrenOf(entry, "id")[0]?.textContent,
    ),
  ).toEqual([
    "https://flags.example/sound/series/quay/",
    `https://flags.example/sound/studies/${studyResult.study.slug}/`,
  ]);
  expect(atom).toContain(`&lt;ol&gt;&lt;li&gt;&lt;a href=&quot;https://flags.example/sound/studies/`);
});

describe("the checks can fail", () => {
  const { atom, json } = feedsOf(galleryResult);

  test.each([
    ["a relative link", / href="https:[^"]*"/, ' href="studies/"'],
    ["no id", /<id>[^<]*<\/id>/, ""],
    ["a date without a time", /<updated>[^<]*/, "<updated>2026-04-02"],
    ["no language", / xml:lang="en"/, ""],
    ["no type of content", / type="html"/, ""],
    ["a script in the content", /&lt;p&gt;/, "&lt;script&gt;x&lt;/script&gt;"],
    ["an element that Atom does not have", /<generator>/, "<made/><generator>"],
  ])("Atom with %s", (_what, pattern, wrong) => {
    expect(atom).toMatch(pattern);
    expect(checkAtom(atom.replace(pattern, wrong))).not.toEqual([]);
  });

  test("Atom that is no XML", () => {
    expect(() => checkAtom(atom.replace("</feed>", ""))).toThrow();
  });

  test.each([
    ["another version", "version/1.1", "version/1"],
    ["a key of its own", '"favicon"', '"favourite"'],
    ["a relative address", '"url": "https://flags.example/sound', '"url": "'],
    ["a relative picture", 'src=\\"https://flags.example', 'src=\\"'],
  ])("JSON Feed with %s", (_what, right, wrong) => {
    expect(json).toContain(right);
    expect(checkJsonFeed(json.replace(right, wrong))).not.toEqual([]);
  });
});
