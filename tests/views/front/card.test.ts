import { expect, test } from "vitest";
import type { StudyResult } from "../../../src/analysis/result.ts";
import { linkFrom } from "../../../src/views/address.ts";
import { orderStudies, presentCard } from "../../../src/views/front/card.ts";
import { presentFront } from "../../../src/views/front/front.ts";
import { createFormat } from "../../../src/words/format.ts";
import { galleryResult, studyResult } from "../../publish/sample.ts";

const format = createFormat("en");

function dated(slug: string, date: string | undefined): StudyResult {
  const { date: _date, ...rest } = studyResult.study;
  return { ...studyResult, study: { ...rest, slug, ...(date === undefined ? {} : { date }) } };
}

test("newest first, undated last, by slug where the day is the same", () => {
  const studies = [
    dated("b", "2026-01-01"),
    dated("none", undefined),
    dated("a", "2026-01-01"),
    dated("c", "2026-02-01"),
  ];
  expect(orderStudies(studies).map(({ study }) => study.slug)).toEqual(["c", "a", "b", "none"]);
});

test("an entry says what changed, what came of it, and where it stands", () => {
  const front = presentFront(galleryResult, format);
  expect(front).toMatchObject({ title: "Flags of the Sound", count: "1 study" });
  expect(front.lead?.card).toMatchObject({
    address: "studies/a-square/",
    title: "A lighter square",
    authors: "Ines Valcourt and Tobin Arkwell",
    date: { iso: "2026-04-02", text: "April 2, 2026" },
    change: "Red becomes yellow.",
    verdict: "Clearer",
    clarity: { before: "74%", after: "100%" },
  });
  expect(front.lead?.card.plates.map((plate) => plate.src)).toEqual([
    "studies/a-square/original.svg",
    "studies/a-square/redesign.svg",
  ]);
});

test("an entry names the price where the verdict says that there is one, and nothing else", () => {
  const { comparison } = studyResult;
  const fallen = { ...comparison.edges[0], outcome: "lost" } as (typeof comparison.edges)[number];
  const at = (verdict: "clearer, at a price" | "less clear") =>
    presentCard(
      { ...studyResult, comparison: { ...comparison, verdict, price: [fallen] } },
      linkFrom("/"),
      format,
    ).price;
  expect(at("clearer, at a price")).toContain(fallen.names[0].join(" on ").slice(1));
  expect(at("less clear")).toBe("");
});

test("a gallery without studies has a front page", () => {
  expect(presentFront({ ...galleryResult, studies: [] }, format)).toMatchObject({
    count: "0 studies",
    cards: [],
  });
});
