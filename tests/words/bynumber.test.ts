import { expect, test } from "vitest";
import { sayByNumber } from "../../src/words/bynumber.ts";
import { createFormat } from "../../src/words/format.ts";

test("a message for each kind of number, with a mark for the number", () => {
  expect(sayByNumber("surveyTable.chosen", createFormat("en"))).toEqual({
    "data-one": "# flag chosen",
    "data-other": "# flags chosen",
  });
});

test("a language that tells six kinds apart has six messages", () => {
  const kinds = Object.keys(sayByNumber("surveyTable.chosen", createFormat("ar"))).sort();
  expect(kinds).toEqual(["data-few", "data-many", "data-one", "data-other", "data-two", "data-zero"]);
});
