import { expect, test } from "vitest";
import { createFormat } from "../../src/words/format.ts";
import { sayEdges, sayNearly, sayPercent } from "../../src/words/spokennumber.ts";

const format = createFormat("en");

test.each([
  [0, "none"],
  [0.4, "none"],
  [2, "almost none"],
  [9, "about a tenth"],
  [10, "a tenth"],
  [33.4, "a third"],
  [52, "about half"],
  [66, "about two thirds"],
  [86, "about nine tenths"],
  [97, "almost all"],
  [100, "all"],
])("%d percent is %s", (percent, words) => {
  expect(sayNearly(percent)).toBe(words);
});

test("the exact number stands beside the words", () => {
  expect(sayPercent(52, format)).toBe("about half (52%)");
  expect(() => sayPercent(101, format)).toThrow(RangeError);
});

test("edges are counted by what becomes of them", () => {
  const edges = (...outcomes: readonly ("gained" | "better" | "same" | "lost" | "merged")[]) =>
    sayEdges(
      outcomes.map((outcome) => ({ outcome })),
      format,
    );
  expect(edges("gained", "same", "lost", "merged")).toBe(
    "Of four edges, one gets easier to see and two get harder to see.",
  );
  expect(edges("same")).toBe("Of one edge, none gets easier or harder to see.");
});
