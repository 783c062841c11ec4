import { expect, test } from "vitest";
import type { ComparedEdge, Comparison, Outcome, Verdict } from "../../src/measure/comparison.ts";
import { createFormat } from "../../src/words/format.ts";
import { describeChange, describeVerdict, slugVerdict, verdictIds } from "../../src/words/verdict.ts";
import { comparison, studyResult } from "../publish/sample.ts";

const format = createFormat("en-GB");
const say = (given: Partial<Comparison>) => describeVerdict({ ...comparison, ...given }, format).sentence;

/** An edge between two named colours, one flag height long unless told otherwise. */
const edge = (
  names: string,
  outcome: Outcome,
  contrast: readonly [number | null, number],
  length = 1,
): ComparedEdge => {
  const [a = "", b = ""] = names.split(" / ");
  return {
    a,
    b,
    names: [
      [a, b],
      [a, b],
    ],
    length,
    contrast,
    outcome,
  };
};
const lost = edge("white / red", "lost", [84, 27]);
const gained = edge("blue / red", "gained", [20, 70]);

test("says the change by names, and where it was made", () => {
  expect(describeChange(studyResult, format)).toBe("Red becomes yellow.");
  const only = { ...studyResult, change: { ...studyResult.change, only: "#square" } };
  expect(describeChange(only, format)).toBe("Red becomes yellow, only in the selected part (#square).");
  const called = { ...only, change: { ...only.change, part: "the square" } };
  expect(describeChange(called, format)).toBe("Red becomes yellow, only in the square.");
});

test("clearer: what clarity does, and that nothing was paid for it", () => {
  expect(describeVerdict(comparison, format)).toEqual({
    word: "Clearer",
    sentence: "Clarity rises from 74% to 100%; no edge becomes harder to see.",
    cost: "No edge becomes harder to see.",
  });
});

test("that nothing was paid is not said where a short edge got worse", () => {
  const short = edge("white / grey", "lost", [50, 20], 0.001);
  expect(say({ edges: [gained, short] })).toBe(
    "Clarity rises from 74% to 100%; only edges under 1% of all edge length become harder to see.",
  );
});

test("where clarity is level, strength explains the verdict, and only where an edge is beyond clear", () => {
  const level = { clarity: [100, 100], strength: [80, 90] } as const;
  const up = edge("white / red", "better", [46, 58]);
  expect(say({ ...level, edges: [up] })).toBe(
    "Clarity stays at 100%, and edges grow stronger beyond clear; no edge becomes harder to see.",
  );
  const down = edge("white / red", "worse", [58, 46]);
  const weaker = { ...level, strength: [90, 80] as const, verdict: "less clear" as const };
  expect(say({ ...weaker, edges: [down], price: [down] })).toBe(
    "Clarity stays at 100%, and edges grow weaker beyond clear: white on red now has contrast 46% (clear), where it had 58% (clear).",
  );
  const below = edge("white / red", "better", [20, 23]);
  expect(say({ ...level, clarity: [84, 84], edges: [below] })).toBe(
    "Clarity stays at 84%; no edge becomes harder to see.",
  );
});

test("at a price: each edge by name with what it had and has; merged and parted ones in their own words", () => {
  const price = [lost, edge("blue / green", "merged", [32, 0]), edge("red / rust", "parted", [null, 38])];
  const given = { clarity: [57.2, 85.9], verdict: "clearer, at a price" } as const;
  expect(say({ ...given, edges: [gained, ...price], price })).toBe(
    "Clarity rises from 57% to 86%. The price: white on red now has contrast 27% (weak), where it had 84% (strong); blue and green merge into one colour; red and rust part, and the edge between them is soft (38%).",
  );
});

test("an edge whose colours have other names afterwards is named by both", () => {
  const names = [
    ["white", "black"],
    ["white", "gold"],
  ] as const;
  const price = [
    { ...lost, names },
    { ...edge("a / b", "lost", [60, 20]), names: [names[0], ["white", "straw"]] as const },
  ];
  const given = { clarity: [57.2, 85.9], verdict: "clearer, at a price", price } as const;
  expect(describeVerdict({ ...comparison, ...given, edges: [gained, ...price] }, format)).toEqual({
    word: "Clearer, at a price",
    sentence:
      "Clarity rises from 57% to 86%. The price: gold on white has contrast 27% (weak), where black on white had 84% (strong); straw on white has contrast 20% (weak), where black on white had 60% (strong).",
    // Beside the word that says that there is a price, the price alone.
    cost: "Gold on white has contrast 27% (weak), where black on white had 84% (strong); straw on white has contrast 20% (weak), where black on white had 60% (strong).",
  });
});

test("no more than three edges are named", () => {
  const price = ["a / b", "c / d", "e / f", "g / h", "i / j"].map((names) => edge(names, "lost", [60, 20]));
  expect(say({ clarity: [50, 90], verdict: "clearer, at a price", edges: [gained, ...price], price })).toBe(
    "Clarity rises from 50% to 90%. The price: a on b now has contrast 20% (weak), where it had 60% (strong); c on d now has contrast 20% (weak), where it had 60% (strong); e on f now has contrast 20% (weak), where it had 60% (strong); 2 more.",
  );
});

test("mixed: gains are counted, losses named", () => {
  const given = { clarity: [60, 62], verdict: "mixed", price: [lost] } as const;
  expect(say({ ...given, edges: [gained, lost] })).toBe(
    "Clarity rises from 60% to 62%: one edge gains, but white on red now has contrast 27% (weak), where it had 84% (strong).",
  );
  expect(say({ ...given, edges: [gained, gained, lost] })).toContain("2 edges gain, but");
});

test("less clear", () => {
  expect(say({ clarity: [100, 43], verdict: "less clear", edges: [lost], price: [lost] })).toBe(
    "Clarity falls from 100% to 43%: white on red now has contrast 27% (weak), where it had 84% (strong).",
  );
});

test.each<[string, readonly ComparedEdge[], readonly [number, number]]>([
  [
    "Clarity stays at 83%: no edge becomes easier or harder to see.",
    [edge("a / b", "same", [50, 51])],
    [83, 83],
  ],
  [
    "Clarity stays at 83%: nothing changes to the eye but edges under 1% of all edge length.",
    [edge("a / b", "same", [50, 50]), edge("c / d", "gained", [20, 70], 0.001)],
    [83, 83],
  ],
  [
    "Clarity rises from 88% to 92%, but no edge gets clearer or less clear by 3 points.",
    [edge("a / b", "same", [40, 42.5])],
    [88, 92],
  ],
  [
    "Clarity stays at 83%: one edge gains, too little to move it.",
    [edge("a / b", "gained", [43, 47])],
    [83, 83],
  ],
])("no gain: %s", (sentence, edges, clarity) => {
  expect(say({ edges, clarity, verdict: "no gain" })).toBe(sentence);
});

test("no gain with a loss too small to move clarity names it", () => {
  const worse = edge("a / b", "worse", [59, 55]);
  expect(say({ edges: [worse], price: [worse], clarity: [83, 83], verdict: "no gain" })).toBe(
    "Clarity stays at 83%: a on b now has contrast 55% (clear), where it had 59% (clear), too little to move it.",
  );
});

test("a contrast is not rounded across the grade that it lost", () => {
  const just = edge("a / b", "lost", [48.2, 44.98]);
  expect(say({ edges: [just], price: [just], clarity: [90, 80], verdict: "less clear" })).toContain(
    "has contrast 44.98% (soft), where it had 48% (clear)",
  );
});

test("one colour has nothing to measure", () => {
  expect(say({ edges: [], clarity: [null, null], verdict: "no gain" })).toBe(
    "One colour: no edges to measure.",
  );
});

test("a verdict in an address has no comma and no space", () => {
  const slugs = (Object.keys(verdictIds) as Verdict[]).map(slugVerdict);
  expect(slugs).toEqual(["clearer", "clearer-at-a-price", "mixed", "less-clear", "no-gain"]);
});

test("a colour that keeps its word says in what it changes", () => {
  const [one, red, white] = comparison.after.colours;
  if (!one || !red || !white) throw new Error("the sample has three paints");
  const darker = { ...red, hex: "#8c1f2b" as const, name: "darker red" };
  const after = { ...comparison.after, colours: [one, darker, white] };
  const result = {
    ...studyResult,
    change: { replace: "#c8202f", with: "#8c1f2b" },
    comparison: { ...comparison, after },
  } as const;
  expect(describeChange(result, format)).toBe("Red becomes darker red.");
});
