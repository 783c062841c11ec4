// A drawing of very many colours: those that show least are one, and the figures of the others are as they were.
import { describe, expect, test } from "vitest";
import { compareDrawing, measureDrawing } from "../../../src/analysis/analyse.ts";
import { mostColours, otherName } from "../../../src/analysis/drawing/smallcolour.ts";
import { defaultCloth } from "../../../src/colour/cloth.ts";

const options = { cloth: defaultCloth, distance: 0, palette: new Map<string, string>() };

/** `count` stripes side by side, no two of one colour; the first are wider than all others. */
function stripes(count: number): Uint8Array {
  let at = 0;
  const drawn = Array.from({ length: count }, (_, index) => {
    const [from, width] = [at, index < mostColours ? 60 : 20];
    at += width;
    return `<path fill="${codeOf(index)}" d="M${from} 0h${width}v100h-${width}z"/>`;
  });
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${at} ${at / 2}"><g transform="scale(1 ${at / 200})">`;
  return Buffer.from(`${svg}${drawn.join("")}</g></svg>`);
}

const codeOf = (index: number): `#${string}` =>
  `#${(Math.imul(index + 1, 0x9e3779b1) >>> 8).toString(16).padStart(6, "0")}`;

describe.each([60, 300])("%i colours", { timeout: 120_000 }, (count) => {
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

test("as many as may be are all measured", async () => {
  const { value } = await measureDrawing("a.svg", stripes(mostColours), options);
  expect(value?.colours).toHaveLength(mostColours);
  expect(value?.warnings.map(({ about }) => about)).not.toContain("joined");
});
