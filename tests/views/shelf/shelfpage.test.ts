import { expect, test } from "vitest";
import type { StudyResult } from "../../../src/analysis/result.ts";
import { mostOnPage } from "../../../src/views/paging.ts";
import { presentShelves } from "../../../src/views/shelf/shelfpage.ts";
import { createFormat } from "../../../src/words/format.ts";
import { gallery, study, studyResult } from "../../publish/sample.ts";

const by = (slug: string, authors: readonly string[], tags: readonly string[]): StudyResult => ({
  ...studyResult,
  study: { ...study, slug, authors, tags, status: "open" },
});
const pages = presentShelves(
  [
    by("one", ["Tobin Arkwell", "Ines Valcourt"], ["charge", "bird"]),
    by("two", ["ines valcourt"], ["Charge"]),
  ],
  gallery,
  createFormat("en"),
);

test("what is decided has a list, the latest decision first, each with its day and what was said", () => {
  const decided = (slug: string, changed: Partial<StudyResult["study"]>): StudyResult => ({
    ...studyResult,
    study: { ...study, slug, authors: [], tags: [], status: "declined", ...changed },
  });
  const [list] = presentShelves(
    [
      decided("open", { status: "open" }),
      decided("early", { decision: { date: "2026-05-01", why: "Too pale." } }),
      decided("made", { status: "adopted", decision: { date: "2026-04-30", why: "It reads." } }),
      decided("late", {
        decision: { date: "2026-06-01", why: "too dark.", by: "the meeting", for: 1, against: 9 },
      }),
    ],
    gallery,
    createFormat("en-GB"),
  );
  expect([list?.folder, list?.count]).toEqual(["decisions", "3 decisions"]);
  expect(
    list?.cards.map(({ search, decided: day, outcome, why }) => [search.slug, day, outcome, why]),
  ).toEqual([
    ["late", "2026-06-01", "Declined on 1 June 2026 by the meeting, 1 for and 9 against.", "Too dark."],
    ["early", "2026-05-01", "Declined on 1 May 2026.", "Too pale."],
    ["made", "2026-04-30", "Adopted on 30 April 2026.", "It reads."],
  ]);
  expect(list?.cards.map(({ maker }) => maker)).toEqual([undefined, undefined, "../studies/made/maker/"]);
});

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

test("the page of an author names the others of a study, and a tag names all", () => {
  expect(pages.map(({ cards }) => cards.map(({ authors }) => authors))).toEqual([
    ["With Tobin Arkwell", undefined],
    ["With Ines Valcourt"],
    ["Tobin Arkwell and Ines Valcourt", "ines valcourt"],
  ]);
});

test("a long shelf has several pages, and a gallery that the front page cannot show has a list of all", () => {
  const many = Array.from({ length: mostOnPage + 1 }, (_, index) => by(`s${index}`, ["Ines Valcourt"], []));
  const found = presentShelves(many, gallery, createFormat("en"));
  expect(found.map(({ folder, cards, pages }) => [folder, cards.length, pages?.label])).toEqual([
    ["list", mostOnPage, "Page 1 of 2"],
    ["list/page/2", 1, "Page 2 of 2"],
    ["authors/ines-valcourt", mostOnPage, "Page 1 of 2"],
    ["authors/ines-valcourt/page/2", 1, "Page 2 of 2"],
  ]);
  expect(found[3]?.frame.title).toBe("Ines Valcourt, page 2 of 2 – Flags of the Sound");
  expect(found[3]?.kind.address).toBe("../../../");
  expect(found[3]?.cards[0]?.address).toBe("../../../../studies/s200/");
  expect(new Set(found.map(({ frame }) => frame.canonical)).size).toBe(4);
});
