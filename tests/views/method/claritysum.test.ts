import { expect, test } from "vitest";
import { presentSum } from "../../../src/views/method/claritysum.ts";
import { createFormat } from "../../../src/words/format.ts";
import { comparison } from "../../publish/sample.ts";

const format = createFormat("en");
const { before } = comparison;
const [first, second] = before.edges;
if (first === undefined || second === undefined) throw new Error("the sample has two edges");

test("an area for each edge: weights make the width, contrast up to 45 the height, and the filled part is clarity", () => {
  // Half of the first edge borders what has to be seen: weights 2 + 1 and 1.5, together 4.5; contrasts 22.5 and 84.2.
  const edges = [second, { ...first, focusLength: 1, contrast: 22.5 }];
  // By hand: (3 · 0.5 + 1.5 · 1) / 4.5 = 66.7 %.
  const { bars, clarity } = presentSum({ ...before, edges, clarity: 66.7 }, format);
  expect(bars.map(({ names, x, width, height }) => [names, x, width, height])).toEqual([
    ["dark blue / red", 0, 66.7, 50],
    ["dark blue / white", 66.7, 33.3, 100],
  ]);
  const filled = bars.reduce((sum, { width, height }) => sum + (width * height) / 100, 0);
  expect(filled).toBeCloseTo(66.7, 0);
  expect(clarity).toBe("67%");
});

test("says in words what is drawn", () => {
  expect(presentSum(before, format).description).toBe(
    "dark blue / red: 57% of all weight, counts 55%; dark blue / white: 43% of all weight, counts 100%.",
  );
});
