import { expect, test } from "vitest";
import { createFormat } from "../../src/words/format.ts";
import { countRivals, describeRival } from "../../src/words/rivalphrase.ts";

const format = createFormat("en");

test("up to ten in words, beyond in figures", () => {
  expect(countRivals(2, 2, format)).toBe("two proposals for one flag");
  expect([0, 1].map((count) => countRivals(count, count, format))).toEqual([
    "no study of it yet",
    "one proposal for this flag",
  ]);
  expect(describeRival(10, format)).toBe("one of ten proposals for it");
  expect(countRivals(11, 11, format)).toBe("11 proposals for one flag");
  expect(countRivals(24, 80, format)).toBe("80 proposals for one flag, the first 24 shown");
});
