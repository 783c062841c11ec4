import { expect, test } from "vitest";
import { linkFrom } from "../../../src/views/address.ts";
import { presentByline } from "../../../src/views/study/byline.ts";
import { createFormat } from "../../../src/words/format.ts";
import { study, studyResult } from "../../publish/sample.ts";

const link = linkFrom("/studies/a-square/");
const format = createFormat("en-GB");

test("authors are one text, and in pieces that each lead to a shelf; what joins them leads nowhere", () => {
  const { authors, names, people } = presentByline(study, link, format, [studyResult]);
  expect(authors).toBe("Ines Valcourt and Tobin Arkwell");
  expect(names).toEqual(["Ines Valcourt", "Tobin Arkwell"]);
  expect(people).toEqual([
    { text: "Ines Valcourt", address: "../../authors/ines-valcourt/" },
    { text: " and ", address: undefined },
    { text: "Tobin Arkwell", address: "../../authors/tobin-arkwell/" },
  ]);
});

test("the date is spelled out; tags lead to their shelves, and one that no other study has to the index", () => {
  const other = { ...studyResult, study: { ...study, slug: "b", tags: ["charge", "bird"] } };
  const { date, tags } = presentByline({ ...study, tags: ["Charge", "oak"] }, link, format, [
    studyResult,
    other,
  ]);
  expect(date).toEqual({ iso: "2026-04-02", text: "2 April 2026" });
  expect(tags).toEqual([
    { text: "Charge", address: "../../tags/charge/" },
    { text: "oak", address: "../../tags/" },
  ]);
});

test("what a study does not say is not there", () => {
  const { date: _, ...undated } = study;
  const bare = presentByline({ ...undated, authors: [], tags: [] }, link, format, []);
  expect(bare).toEqual({ date: undefined, authors: undefined, names: [], people: [], tags: [] });
});
