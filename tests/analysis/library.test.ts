import { expect, test } from "vitest";
import { compare, measure, rankOptions, readDrawing, recolour } from "../../src/analysis/library.ts";
import { draw } from "../svg/drawing.ts";

const flag = draw(
  '<rect width="30" height="20"/><circle id="disc" cx="15" cy="10" r="5" fill="#FFF"/><path d="M0 0h30v1H0z" fill="#fff"/>',
);

test("measure: black on white by the luminance contrast of AS 1428.1, and the length of a circle", async () => {
  const { value, problems } = await measure(flag, { cloth: { black: 5, white: 85 }, focus: "#disc" });
  expect(problems).toEqual([]);
  // Of reflectances Y: 125 (Y2 − Y1) / (Y1 + Y2 + 25), of 85 and 5 percent.
  expect(value?.edges[0]?.contrast).toBeCloseTo((125 * 80) / 115, 6);
  // In flag heights: a circle of a quarter of the height.
  expect(Math.abs((value?.edges[0]?.focusLength ?? 0) - Math.PI / 2)).toBeLessThan(0.01);
  expect((await measure(flag, { file: "mine.svg", distance: 0 })).value).toMatchObject({
    file: "mine.svg",
    distance: 0,
  });
});

test("readDrawing, recolour: every colour, one of them changed, and a part of it", () => {
  expect(readDrawing(flag).value?.colours).toEqual(["#000000", "#ffffff"]);
  const { value = "" } = recolour(flag, { replace: "white", with: "gold" });
  expect(value).toContain("Unofficial study");
  expect(readDrawing(value).value?.colours).toEqual(["#000000", "#ffd700"]);
  const part = recolour(flag, { replace: "white", with: "gold", only: "circle" }).value ?? "";
  expect(readDrawing(part).value?.colours).toEqual(["#000000", "#ffd700", "#ffffff"]);
});

test("compare, rankOptions: whether it is clearer, and what would be", async () => {
  const dim = flag.replaceAll(/#FFF/gi, "#222222");
  const compared = await compare(dim, { replace: "#222222", with: "white" });
  expect(compared.value?.verdict).toBe("clearer");
  const ranked = await rankOptions(dim, { palette: { snow: "white" } });
  expect(ranked.value?.options.map(({ name }) => name)).toContain("snow");
});

test("what is wrong is told with its place, and nothing is returned", async () => {
  const broken = flag.replace("<circle", "<image href='x.png'/><circle");
  const refused = readDrawing(broken, "mine.svg");
  expect(refused.value).toBeUndefined();
  expect(refused.problems).toMatchObject([{ file: "mine.svg", severity: "error", place: { line: 1 } }]);
  for (const asked of [measure(broken), rankOptions(broken), compare(broken, { replace: "a", with: "b" })])
    expect((await asked).value).toBeUndefined();
  expect(recolour(broken, { replace: "black", with: "red" }).value).toBeUndefined();
  const absent = recolour(flag, { replace: "pink", with: "gold" });
  expect(absent).toMatchObject({ value: undefined, problems: [{ rule: "study/colour-absent" }] });
});
