import { expect, test } from "vitest";
import { linkFrom } from "../../../src/views/address.ts";
import { presentEdgeMap } from "../../../src/views/study/edgemap.ts";
import { createFormat } from "../../../src/words/format.ts";
import { comparison, studyResult } from "../../publish/sample.ts";

const path = "/studies/a-square/";
const format = createFormat("en-GB");
const map = presentEdgeMap(studyResult, linkFrom(path), path, format);

test("every edge is drawn once, in thousandths of the flag's height, each point from the one before", () => {
  expect(map).toMatchObject({ width: 1500, height: 1000, fit: "wide" });
  expect(map.shapes).toEqual([
    { id: "line-p1-p3", path: "M0 900l1500 0", isFocus: false },
    { id: "line-p1-p2", path: "M500 250l500 0 0 500-500 0 0-500", isFocus: false },
  ]);
});

test("both panels show every edge by its grade, over the grey drawing, and say it in words", () => {
  expect(map.panels.map((panel) => panel.lines.map(({ grade }) => grade))).toEqual([
    ["strong", "weak"],
    ["strong", "strong"],
  ]);
  expect(map.panels.map((panel) => panel.ground)).toEqual([
    "seen-grey-original.svg",
    "seen-grey-redesign.svg",
  ]);
  // 1.5 and 2 of 3.5 flag heights.
  expect(map.panels[0].description).toBe(
    "Strong, 43% of all edge length: dark blue / white. Weak, 57%: dark blue / red.",
  );
});

test("a parted edge is not in the original, a merged one is marked in the redesign", () => {
  const [first, second] = comparison.edges;
  if (!first || !second) throw new Error("the sample has two edges");
  const edges = [
    { ...first, contrast: [null, 84.2] as const, outcome: "parted" as const },
    { ...second, contrast: [24.6, 0] as const, outcome: "merged" as const },
  ];
  const odd = presentEdgeMap(
    { ...studyResult, comparison: { ...comparison, edges } },
    linkFrom(path),
    path,
    format,
  );
  expect(odd.panels[0].lines.map(({ id }) => id)).toEqual(["line-p1-p2"]);
  expect(odd.panels[1].lines.map(({ grade }) => grade)).toEqual(["strong", "merged"]);
});

test("a very fine drawing is thinned until its page stays light, ends kept", () => {
  const points = Array.from({ length: 40_000 }, (_, index) => [
    (index / 40_000) * 1.5,
    0.5 + 0.1 * Math.sin(index / 100),
  ]).flat();
  const fine = presentEdgeMap(
    { ...studyResult, edgeLines: [{ a: "p1", b: "p2", points, focusShare: 0 }] },
    linkFrom(path),
    path,
    format,
  );
  const drawn = fine.shapes[0]?.path ?? "";
  expect(drawn.length).toBeLessThan(24_000);
  expect(drawn.startsWith("M0 500")).toBe(true);
  // Every point is given from the one before: together they end where the line ends.
  const steps =
    drawn
      .slice(drawn.indexOf("l") + 1)
      .match(/-?\d+/g)
      ?.map(Number) ?? [];
  expect(steps.filter((_, index) => index % 2 === 0).reduce((sum, dx) => sum + dx, 0)).toBe(1500);
});

test("lines with the focus beside them are marked, and the map says what the focus is", () => {
  expect(map.focus).toBeUndefined();
  const focus = { ...comparison.before.focus, source: "found", share: 0.17 } as const;
  const edgeLines = studyResult.edgeLines.map((line) => ({ ...line, focusShare: line.b === "p2" ? 1 : 0 }));
  const seen = presentEdgeMap(
    { ...studyResult, edgeLines, comparison: { ...comparison, before: { ...comparison.before, focus } } },
    linkFrom(path),
    path,
    format,
  );
  expect(seen.shapes.map(({ id, isFocus }) => [id, isFocus])).toEqual([
    ["line-p1-p3", false],
    ["line-p1-p2-focus", true],
  ]);
  expect(seen.panels[1].lines).toEqual([
    { id: "line-p1-p3", grade: "strong", isFocus: false },
    { id: "line-p1-p2-focus", grade: "strong", isFocus: true },
  ]);
  expect(map.band).toBe("");
  expect(seen.band).toMatch(/^M[^M]+z$/);
  expect(seen.focus).toBe("what has to be seen, found: 17% of the flag");
});
