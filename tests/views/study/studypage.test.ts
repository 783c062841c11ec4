import { expect, test } from "vitest";
import { presentStudy } from "../../../src/views/study/studypage.ts";
import { createFormat } from "../../../src/words/format.ts";
import { comparison, gallery, study, studyResult } from "../../publish/sample.ts";

const format = createFormat("en");

test("the page has finished words for everything it shows", () => {
  const page = presentStudy(studyResult, gallery, format);
  expect(page.summary).toEqual([
    { name: "Clarity", means: "100% where every edge is clear", before: "74%", after: "100%" },
    { name: "Clarity of what has to be seen", before: "no emblem found", after: "no emblem found" },
    {
      name: "Weakest edge",
      means: "contrast of the two colours",
      before: "25%",
      after: "67%",
      of: ["dark blue / red", "dark blue / yellow"],
    },
  ]);
  expect(page.frame.description).toMatch(/^Unofficial redesign study\. Red becomes yellow\. Clearer\. /);
  expect(page.plates.map((plate) => plate.src)).toEqual(["original.svg", "redesign.svg"]);
  expect(page.seen.flatMap((seen) => seen.plates.map((plate) => plate.src))).toEqual([
    "seen-protan-original.svg",
    "seen-protan-redesign.svg",
    "seen-deutan-original.svg",
    "seen-deutan-redesign.svg",
    "seen-tritan-original.svg",
    "seen-tritan-redesign.svg",
    "seen-grey-original.svg",
    "seen-grey-redesign.svg",
  ]);
  expect(new Set(page.seen.flatMap((seen) => seen.plates.map((plate) => plate.label))).size).toBe(8);
});

test("where it is clearer at a price, the longest edge that falls stands among the marks", () => {
  const names = [
    ["white", "black"],
    ["white", "gold"],
  ] as const;
  const fallen = { a: "p1", b: "p9", names, length: 1, contrast: [84.4, 27], outcome: "lost" } as const;
  const merged = { ...fallen, length: 2, outcome: "merged" } as const;
  const priced = (verdict: typeof comparison.verdict, weakestEdge = comparison.after.weakestEdge) => {
    const after = { ...comparison.after, weakestEdge };
    return presentStudy(
      { ...studyResult, comparison: { ...comparison, after, verdict, price: [merged, fallen] } },
      gallery,
      format,
    ).summary[3];
  };
  expect(priced("clearer, at a price")).toEqual({
    name: "The price",
    means: "contrast of the two colours",
    before: "84%",
    after: "27%",
    of: ["white / black", "white / gold"],
  });
  const same = { ...fallen, contrast: 27 };
  expect(priced("clearer, at a price", same)?.of).toEqual(["white / black", "the same edge"]);
  expect(priced("mixed")).toBeUndefined();
});

test("says whether the numbers are of the full drawing", () => {
  const far = { ...comparison, before: { ...comparison.before, distance: 40 } };
  expect(presentStudy(studyResult, gallery, format).measuredHow).toMatch(/full drawing/);
  expect(presentStudy({ ...studyResult, comparison: far }, gallery, format).measuredHow).toMatch(
    /40 flag heights/,
  );
});

test("figures in the prose are the edges of this study", () => {
  const body = 'A.\n\n::figure{edge="red / dark blue"}\n\n::figure{edge="red / pink"}\n';
  const page = presentStudy({ ...studyResult, study: { ...study, body } }, gallery, format);
  expect(page.prose.map((block) => block.kind)).toEqual(["html", "figure"]);
});
