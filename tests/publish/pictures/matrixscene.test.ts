import { expect, test } from "vitest";
import { arrangeMatrix, measureMatrix } from "../../../src/publish/pictures/matrixscene.ts";
import { presentMatrix } from "../../../src/views/study/matrixview.ts";
import { createFormat } from "../../../src/words/format.ts";
import { matrix as drawn, ranked } from "../ranked.ts";

const matrix = presentMatrix(ranked({ matrix: drawn }), (to) => to, createFormat("en"));
if (matrix === undefined) throw new Error("no matrix");
const box = { x: 10, y: 20, width: 1000, height: 400 };
const textsOf = (items: ReturnType<typeof arrangeMatrix>) =>
  items.flatMap((item) => (item.kind === "text" ? [item] : []));
const tall = arrangeMatrix(matrix, "AAAA", { ...box, height: 4000 }, 20, createFormat("en").say);

test("each cell has a flag of its proportions and, below it, its clarity; the best are not quiet", () => {
  const texts = textsOf(tall);
  const [shape] = tall;
  const svg = shape?.kind === "shape" ? shape.svg : "";
  const flags = [...svg.matchAll(/<svg [^>]*width="(\d+)" height="(\d+)" viewBox="[\d. ]+ 96 64">/g)];
  expect(flags).toHaveLength(4);
  for (const [, width, height] of flags) expect(Number(width) / Number(height)).toBeCloseTo(1.5, 1);
  const loud = texts.filter(({ isQuiet }) => isQuiet === false).map(({ text }) => text);
  expect(loud).toEqual(["100%", "80%"]);
  expect(texts.map(({ text }) => text)).toEqual(expect.arrayContaining(["red", "dark blue", "merges", "–"]));
  // The change of the study alone is framed; the best of each row is underlined.
  expect(svg.match(/fill="none" stroke="/g)).toHaveLength(1);
  const cells = svg.split('fill="#777777"').slice(1);
  expect(cells.map((cell) => cell.includes("<path "))).toEqual([true, false, false, true]);
});

test("nothing leaves its box, and it is no higher than its flags ask", () => {
  for (const { y, pixels, x } of textsOf(arrangeMatrix(matrix, "AAAA", box, 20, createFormat("en").say))) {
    expect(y).toBeGreaterThanOrEqual(box.y);
    expect(y + pixels).toBeLessThanOrEqual(box.y + box.height);
    expect(x).toBeGreaterThanOrEqual(box.x);
    expect(x).toBeLessThanOrEqual(box.x + box.width);
  }
  const whole = measureMatrix(matrix, 1000, 20);
  const tops = textsOf(tall).map(({ y }) => y);
  expect(Math.max(...tops) - Math.min(...tops)).toBeLessThan(whole);
});
