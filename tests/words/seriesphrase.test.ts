import { expect, test } from "vitest";
import { createFormat } from "../../src/words/format.ts";
import { countEntries } from "../../src/words/seriesphrase.ts";

const format = createFormat("en");

test("one and several, with and without flags of their own", () => {
  expect(countEntries(1, 0, format)).toBe("1 study");
  expect(countEntries(6, 1, format)).toBe("6 studies and 1 flag without a study");
  expect(countEntries(0, 2, format)).toBe("2 flags without a study");
});
