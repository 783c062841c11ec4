// A drawing of very many colours: those that show least are one, and the figures of the others are as they were.
import { describe, expect, test } from "vitest";
import { compareDrawing, measureDrawing } from "../../../src/analysis/analyse.ts";
import { mostColours, otherName } from "../../../src/analysis/drawing/smallcolour.ts";
import { defaultCloth } from "../../../src/colour/cloth.ts";
import type { Hex } from "../../../src/colour/colour.ts";
import { farColours } from "../../colour/farcolours.ts";

const options = { cloth: defaultCloth, distance: 0, palette: new Map<string, string>() };

/** `count` stripes side by side, no two of one colour; the first are wider than all others. */
function stripes(count: number): Uint8Array {
  let at = 0;
  const drawn = Array.from({ length: count }, (_, index) => {
    const [from, width] = [at, index < mostColours ? 60 : 0.4];
    at += width;
    return `<path fill="${codeOf(index)}" d="M${from} 0h${width}v100h-${width}z"/>`;
  });
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${at} ${at / 2}"><g transform="scale(1 ${at / 200})">`;
  return Buffer.from(`${svg}${drawn.join("")}</g></svg>`);
}

const colours = farColours(110);
const codeOf = (index: number): Hex => colours[index] ?? "#000000";

describe.each([60, 110])("%i colours", { timeout: 120_000 }, (count) => {
  test("the largest stand for themselves, the others are one, and that is said", async () => {
    const { value } = await measureDrawing("a.svg", stripes(count), options);
    const hexes = value?.colours.map(({ hex }) => hex) ?? [];
    expect(hexes).toHaveLength(mostColours + 1);
    for (let index = 0; index < mostColours; index += 1) expect(hexes).toContain(codeOf(index));
    expect(value?.colours.filter(({ name }) => name === otherName)).toHaveLength(1);
    expect(value?.warnings[0]).toEqual({ about: "joined", count: count - mostColours });
    // The edge of the two widest stripes is as high as the flag.
    const id = (hex: string) => value?.colours.find((colour) => colour.hex === hex)?.id;
    const ids = [id(codeOf(0)), id(codeOf(1))];
    const edge = value?.edges.find(({ a, b }) => ids.includes(a) && ids.includes(b));
    expect(edge?.length).toBeCloseTo(1, 2);
  });

  test("one of the largest can be changed, one of the others cannot", async () => {
    const change = (index: number) => ({ replace: codeOf(index), with: "#fefefe" });
    const large = await compareDrawing("a.svg", stripes(count), change(0), options);
    expect(large.value?.comparison.after.colours.map(({ hex }) => hex)).toContain("#fefefe");
    const small = await compareDrawing("a.svg", stripes(count), change(count - 1), options);
    expect(small.problems.map(({ rule }) => rule)).toEqual(["study/colour-small"]);
  });
});

test("near shades count with the one of them that shows most: two halves of 200 each are black and white", async () => {
  const hexOf = (step: number) => step.toString(16).padStart(2, "0");
  const cells = Array.from({ length: 400 }, (_, index) => {
    const [x, y] = [index % 20, Math.floor(index / 20)];
    const nth = (x % 10) + 10 * y;
    const steps = [nth % 6, Math.floor(nth / 6) % 6, Math.floor(nth / 36)];
    const shade = steps.map((step) => hexOf(x < 10 ? step : 255 - step)).join("");
    return `<path fill="#${shade}" d="M${x * 15} ${y * 10}h15v10h-15z"/>`;
  });
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 300 200">${cells.join("")}</svg>`;
  const { value } = await measureDrawing("a.svg", Buffer.from(svg), options);
  const [edge] = value?.edges ?? [];
  expect(value?.edges).toHaveLength(1);
  expect(edge?.length).toBeCloseTo(1, 2);
  expect(edge?.grade).toBe("strong");
});

test("as many as may be are all measured", async () => {
  const { value } = await measureDrawing("a.svg", stripes(mostColours), options);
  expect(value?.colours).toHaveLength(mostColours);
  expect(value?.warnings.map(({ about }) => about)).not.toContain("joined");
});
