import { describe, expect, test } from "vitest";
import { openDrawing } from "../../../src/analysis/drawing/opendrawing.ts";
import { bytesOf } from "../drawing.ts";

const open = async (body: string) => {
  const text = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 300 200">${body}</svg>`;
  return (await openDrawing("a.svg", bytesOf(text), { distance: 40 })).problems;
};

describe("a warning, with the share that is not painted", () => {
  // The shares are the areas of a square and of a stripe, by hand.
  test.each([
    ["no field", '<rect x="100" y="50" width="100" height="90" fill="#c8202f"/>', "85.0 %"],
    ["a stripe that is missing", '<rect width="300" height="190" fill="#c8202f"/>', "5.0 %"],
    [
      "one that hardly shows",
      '<rect width="300" height="190" fill="#c8202f"/><rect y="190" width="300" height="10" fill="#c8202f" opacity=".1"/>',
      "5.0 %",
    ],
  ])("%s", async (_, body, share) => {
    const told = (await open(body)).filter(({ rule }) => rule === "study/unpainted");
    expect(told).toMatchObject([{ severity: "warning", file: "a.svg" }]);
    expect(told[0]?.reason).toMatch(new RegExp(`^${share} of the drawing is left unpainted`));
  });
});

test.each([
  ["a triangle", '<path d="M0 0L300 100L0 200z" fill="#c8202f"/>'],
  ["a swallow tail", '<path d="M0 0H300L240 100L300 200H0z" fill="#c8202f"/>'],
])("none for a flag that is no rectangle: %s", async (_, body) => {
  expect(await open(body)).toEqual([]);
});

test("none where all is painted, or all but a border of a hundredth", async () => {
  expect(await open('<rect width="300" height="200" fill="#c8202f"/>')).toEqual([]);
  expect(await open('<rect width="297" height="200" fill="#c8202f"/>')).toEqual([]);
});
