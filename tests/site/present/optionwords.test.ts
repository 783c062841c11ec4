import { expect, test } from "vitest";
import { createFormat } from "../../../src/site/present/format.ts";
import { describeTies, inWords } from "../../../src/site/present/optionwords.ts";
import { makeOption } from "../../measure/ranked.ts";

const option = makeOption({});

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

test("decimals of a sentence stay, and are written as the language has them", () => {
  const sentence = "It would have to reflect 24.7 % or more, at a contrast of 44.96 %.";
  expect(inWords(sentence, createFormat("en"))).toBe(
    "It would have to reflect 24.7% or more, at a contrast of 44.96%.",
  );
  expect(inWords(sentence, createFormat("de"))).toBe(
    "It would have to reflect 24,7\u00a0% or more, at a contrast of 44,96\u00a0%.",
  );
});
