import { expect, test } from "vitest";
import type { Verdict } from "../../src/measure/outcome.ts";
import { createFormat } from "../../src/words/format.ts";
import { countRivals, describeClearest, describeRival } from "../../src/words/rivalphrase.ts";

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

const rival = (before: number | null, is: number | null, at: number, verdict: Verdict = "clearer") => ({
  number: String(at + 1),
  clarity: [before, is] as const,
  verdict,
});

test("a price of the clearest is told, and one that all have first", () => {
  const price = "clearer, at a price";
  const two = [rival(57.2, 86.1, 0, price), rival(57.2, 100, 1, price)];
  expect(describeClearest(two, format)).toBe(
    "Both are clearer at a price; proposal 2 is the clearer: 57% to 100%, against 86%.",
  );
  expect(describeClearest([...two, rival(57.2, 90, 2, price)], format)).toBe(
    "All shown here are clearer at a price; proposal 2 is the clearest: 57% to 100%, the next 90%.",
  );
  expect(describeClearest([rival(57.2, 86, 0), rival(57.2, 100, 1, price)], format)).toBe(
    "Proposal 2 is the clearest, at a price: clarity rises from 57% to 100%.",
  );
  expect(describeClearest([rival(57.2, 86, 0, price), rival(57.2, 100, 1)], format)).toBe(
    "Proposal 2 is the clearest: clarity rises from 57% to 100%.",
  );
  expect(describeClearest([rival(57.2, 86.1, 0, price), rival(57.2, 85.9, 1, price)], format)).toBe(
    "Proposals 1 and 2 are the clearest, at a price: clarity rises from 57% to 86%.",
  );
});

test("the clearest leads, all that are level in whole percent, or none", () => {
  const lead = (before: number | null, ...after: (number | null)[]) =>
    describeClearest(
      after.map((is, at) => rival(before, is, at)),
      format,
    );
  expect(lead(57.2, 86.1, 100)).toBe("Proposal 2 is the clearest: clarity rises from 57% to 100%.");
  expect(lead(57.2, 86.1, 85.9, 60)).toBe(
    "Proposals 1 and 2 are the clearest: clarity rises from 57% to 86%.",
  );
  expect(lead(57.2, 57.4, 40)).toBe("No proposal is clearer than the original: its clarity is 57%.");
  expect(lead(57.2, 12, null)).toBe("No proposal is clearer than the original: its clarity is 57%.");
  expect([lead(57.2, 86), lead(null, null, null), lead(10)]).toEqual([undefined, undefined, undefined]);
});
