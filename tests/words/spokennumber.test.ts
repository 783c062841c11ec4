import { expect, test } from "vitest";
import { createFormat } from "../../src/words/format.ts";
import { sayEdges, sayNearly, sayPercent, sayPrice } from "../../src/words/spokennumber.ts";

const format = createFormat("en");

test.each([
  [0, "none"],
  [0.4, "none"],
  [2, "almost none"],
  [5, "one part in twenty"],
  [7.4, "about one part in fifteen"],
  [9, "about a tenth"],
  [12, "an eighth"],
  [13.2, "about an eighth"],
  [16, "about a sixth"],
  [10, "a tenth"],
  [33.4, "a third"],
  [52, "about half"],
  [66, "about two thirds"],
  [86, "about nine tenths"],
  [97, "almost all"],
  [100, "all"],
])("%d percent is %s", (percent, words) => {
  expect(sayNearly(percent, format)).toBe(words);
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

test("a price is told in sentences, the renamed side by its new name", () => {
  const was = ["dark red", "white"] as const;
  const say = (
    outcome: "worse" | "merged" | "parted",
    contrast: readonly [number | null, number],
    is = was,
  ) => sayPrice([{ outcome, contrast, names: [was, is] }], format);
  expect(say("worse", [78, 42], ["orange", "white"] as never)).toBe(
    "The price: where dark red meets white, the edge was strong (78%); now, orange beside white, it is only soft (42%).",
  );
  expect(say("worse", [98, 85])).toBe(
    "The price: where dark red meets white, the edge was strong (98%); now it is still strong (85%).",
  );
  expect(say("worse", [84, 45])).toMatch(/now it is clear \(45%\)\.$/);
  expect(say("merged", [78, 0])).toBe("The price: dark red and white merge into one colour.");
  expect(say("parted", [null, 42])).toBe(
    "The price: dark red and white part, and the edge between them is soft (42%).",
  );
  const one = { outcome: "merged", contrast: [78, 0], names: [was, was] } as const;
  expect(sayPrice([one, one, one, one, one], format)).toMatch(/; and two more get harder to see\.$/);
  expect(sayPrice([], format)).toBe("");
});
