import { expect, test } from "vitest";
import { linkFrom } from "../../../src/site/address.ts";
import { presentByline } from "../../../src/site/present/byline.ts";
import { createFormat } from "../../../src/site/present/format.ts";
import { study } from "../sample.ts";

const link = linkFrom("/studies/a-square/");
const format = createFormat("en-GB");

test("authors are one text, and in pieces that each lead to a shelf; what joins them leads nowhere", () => {
  const { authors, names, people } = presentByline(study, link, format);
  expect(authors).toBe("Ines Valcourt and Tobin Arkwell");
  expect(names).toEqual(["Ines Valcourt", "Tobin Arkwell"]);
  expect(people).toEqual([
    { text: "Ines Valcourt", address: "../../authors/ines-valcourt/" },
    { text: " and ", address: undefined },
    { text: "Tobin Arkwell", address: "../../authors/tobin-arkwell/" },
  ]);
});

test("the date is spelled out, and tags lead to their shelves", () => {
  const { date, tags } = presentByline({ ...study, tags: ["Charge"] }, link, format);
  expect(date).toEqual({ iso: "2026-04-02", text: "2 April 2026" });
  expect(tags).toEqual([{ text: "Charge", address: "../../tags/charge/" }]);
});

test("what a study does not say is not there", () => {
  const { date: _, ...undated } = study;
  const bare = presentByline({ ...undated, authors: [], tags: [] }, link, format);
  expect(bare).toEqual({ date: undefined, authors: undefined, names: [], people: [], tags: [] });
});
