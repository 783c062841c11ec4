import { expect, test } from "vitest";
import type { RankedOption } from "../../../src/measure/rank.ts";
import { createFormat } from "../../../src/site/present/format.ts";
import { describeTies, inWords } from "../../../src/site/present/optionwords.ts";

const option: RankedOption = {
  id: "p2",
  place: 1,
  replace: "#c8202f",
  with: "#fafafa",
  name: "white",
  kind: "palette",
  clarity: 99.6,
  clearEdgeShare: 1,
  deltaE00: 41.4,
  gained: [],
  lost: [],
  merged: [],
  vanishes: false,
  confusable: [],
  confusions: [],
};

test.each([
  [0, undefined],
  [1, "Two colours do equally well here; this one is nearest to today’s."],
  [6, "Seven colours do equally well here; this one is nearest to today’s."],
  [12, "13 colours do equally well here; this one is nearest to today’s."],
])("with %d others: %s", (others, says) => {
  expect(describeTies(Array(others).fill(option), createFormat("en"))).toBe(says);
});

test("percent are set as the language of the page has them", () => {
  const sentence = "It rises from 14 % to 100 %, further from today's colour.";
  expect(inWords(sentence, createFormat("en"))).toBe(
    "It rises from 14% to 100%, further from today’s colour.",
  );
  expect(inWords(sentence, createFormat("de"))).toBe(
    "It rises from 14\u00a0% to 100\u00a0%, further from today’s colour.",
  );
});
