import { expect, test } from "vitest";
import { indexNames, presentEdgePages } from "../../../src/views/edge/edgepage.ts";
import { createFormat } from "../../../src/words/format.ts";
import { gallery, study, studyResult } from "../../publish/sample.ts";

const format = createFormat("en");
const other = { ...studyResult, study: { ...study, slug: "another", title: "Another" } };
const pages = presentEdgePages([studyResult, other], indexNames([studyResult, other]), gallery, format);
const page = pages[1];
if (page === undefined) throw new Error("two edges, two pages");

test("every edge of every study has a page of its own", () => {
  expect(pages.map(({ folder }) => folder)).toEqual([
    "studies/a-square/edges/12235c-ffffff",
    "studies/a-square/edges/12235c-c8202f",
    "studies/another/edges/12235c-ffffff",
    "studies/another/edges/12235c-c8202f",
  ]);
  expect(page.frame.canonical).toBe("https://flags.example/sound/studies/a-square/edges/12235c-c8202f/");
});

test("it says what became of the edge, with the numbers of both sides", () => {
  expect(page.title).toBe("Dark blue / red");
  expect(page.renamed).toBe("dark blue / yellow");
  expect(page.outcome.word).toBe("Gained");
  // 2 of 3.5 flag heights; both contrasts as typed in the sample.
  expect(page.outcome.sentence).toBe(
    "Yellow now stands out from dark blue over 57% of all edge length: contrast 67%, strong, where red had 25%, weak.",
  );
  // Contrast first, then what stands beside it.
  expect(page.numbers.map(({ name }) => name)).toEqual([
    "Contrast",
    "Contrast ratio",
    "Colour difference, ΔE00",
    "Only hue differs",
    "Rule of tincture",
    "Length",
  ]);
  expect(page.numbers[0]).toEqual({ name: "Contrast", before: "25%", after: "67%", of: ["weak", "strong"] });
  expect(page.numbers[1]?.before).toBe("3.0:1");
  expect(page.near).toBeUndefined();
});

test("a grade near the line is told of the side that has it; the length once, with what of it has to be seen", () => {
  const { comparison } = studyResult;
  const near = (measure: typeof comparison.before) => ({
    ...measure,
    edges: measure.edges.map((edge) => ({ ...edge, nearLine: true, focusLength: 0.5 })),
    focus: { ...measure.focus, source: "found" as const },
  });
  const show = (before: typeof comparison.before, after: typeof comparison.before) => {
    const result = { ...studyResult, comparison: { ...comparison, before, after } };
    return presentEdgePages([result], indexNames([result]), gallery, format)[0];
  };
  const { before, after } = comparison;
  expect(show(before, near(after))?.near).toBe("The grade of the redesign is near the line");
  expect(show(near(before), after)?.near).toBe("The grade of the original is near the line");
  expect(show(near(before), near(after))?.near).toBe("Both grades are near the line");
  expect(show(near(before), near(after))?.numbers.at(-1)).toEqual({
    name: "Length",
    before: "1.50 flag heights",
    after: "1.50 flag heights",
    of: [
      "0.50 of it on the outline of what has to be seen",
      "0.50 of it on the outline of what has to be seen",
    ],
    isShared: true,
  });
});

test("grey keeps the contrast, so that it gives the difference alone", () => {
  expect(page.visions.map(({ vision }) => vision)).toEqual(["protan", "deutan", "tritan", "grey"]);
  expect(page.visions[0]?.before?.contrast).toBe("25%");
  expect(page.visions[3]?.before).toMatchObject({ contrast: undefined, grade: undefined, difference: "14" });
  // Grey of a colour has three equal parts.
  expect(page.visions[3]?.before?.hexes[0]).toMatch(/^#(..)\1\1$/);
});

test("the same two names in another study are linked, this study is not", () => {
  expect(page.elsewhere?.rows.map(({ edge: { called, address } }) => [called, address])).toEqual([
    ["Another", "../../../another/edges/12235c-c8202f/"],
  ]);
  expect(page.siblings.filter(({ isHere }) => isHere).map(({ names }) => names)).toEqual(["dark blue / red"]);
});

test("an edge that merged has no numbers after, and says so with a dash", () => {
  const { comparison } = studyResult;
  const [, edge] = comparison.edges;
  if (edge === undefined) throw new Error("two edges");
  const merged = {
    ...studyResult,
    comparison: {
      ...comparison,
      after: { ...comparison.after, edges: [] },
      edges: [{ ...edge, contrast: [24.6, 0] as const, outcome: "merged" as const }],
    },
  };
  const [only] = presentEdgePages([merged], indexNames([merged]), gallery, format);
  expect(only?.numbers.map(({ after }) => after)).toEqual(["0%", "–", "–", "–", "–", "–"]);
  expect(only?.numbers[0]?.of?.[1]).toBe("merged");
  expect(only?.visions[0]?.after).toBeUndefined();
  expect(only?.outcome.sentence).toContain("become one colour to the eye");
});

test("wherever the edge is pictured, the place on the flag is shown, cut out of drawings that the site has", () => {
  const { proportions } = studyResult.comparison.before;
  const [detail] = page.visions[0]?.details ?? [];
  expect(detail?.src).toBe("../../seen-protan-original.svg");
  const [x = 0, y = 0, width = 0, height = 0] = (detail?.viewBox ?? "").split(" ").map(Number);
  expect([x >= 0, y >= 0, width / height]).toEqual([true, true, 1.5]);
  expect(x + width).toBeLessThanOrEqual((1000 * proportions[1]) / proportions[0]);
  expect(y + height).toBeLessThanOrEqual(1000);
  expect(page.place?.locator.frame).toEqual({ x, y, width, height });
  expect(page.siblings.map(({ details }) => details?.[1].src)).toEqual([
    "../../redesign.svg",
    "../../redesign.svg",
  ]);
  expect(page.elsewhere?.rows[0]?.details?.[0].src).toBe("../../../another/original.svg");
});

test("a part that the author names stands on its ground in the title", () => {
  const { comparison } = studyResult;
  const part = { of: "red", called: "the square" };
  const named = (measure: typeof comparison.before) => ({
    ...measure,
    colours: measure.colours.map((colour) =>
      colour.id === "p2" ? { ...colour, name: "the square", part } : colour,
    ),
  });
  const edges = comparison.edges.map((edge) =>
    edge.b === "p2" ? { ...edge, names: [["dark blue", "the square"], edge.names[1]] as const } : edge,
  );
  const result = {
    ...studyResult,
    comparison: { ...comparison, edges, before: named(comparison.before), after: named(comparison.after) },
  };
  const titles = presentEdgePages([result], indexNames([result]), gallery, format).map(({ title }) => title);
  expect(titles).toContain("The square on dark blue");
});
