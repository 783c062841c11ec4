// Edges of uneven paints, measured with the colours that they have along the edge: small drawings of ours, their colours
// worked out by hand from the stops, their contrasts by the published formula (Bowman and Sapolinski, on cloth of 5 and 85).
// A unit is 3.6 pixels; what is uneven is under a hundredth of the flag, as it has to be.
import { describe, expect, test } from "vitest";
import type { Measure } from "../../src/measure/measurement.ts";
import { contrast } from "../measure/oracle.ts";
import { blue, change, field, red, see, white } from "./sight.ts";

const along = (vector: string, from: string, to: string): string =>
  `<linearGradient id="g" gradientUnits="userSpaceOnUse" ${vector}><stop stop-color="${from}"/><stop offset="1" stop-color="${to}"/></linearGradient>`;
/** White for four pixels from `x` on, blue from six on. */
const across = (x = 0): string => along(`x1="${x + 1.1}" x2="${x + 1.7}"`, white, blue);
const shaded = (x: number, y: number, width: number, height: number): string =>
  `<rect x="${x}" y="${y}" width="${width}" height="${height}" fill="url(#g)"/>`;
const only = ({ edges }: Measure) => {
  expect(edges).toHaveLength(1);
  return edges[0];
};

describe("a gradient whose light end never meets its neighbour", () => {
  // From white at the hoist to blue, where white begins.
  const drawing = `${field(white)}${across()}${shaded(0, 0, 2.8, 200)}`;

  test.each([0, 40])("counts with its dark end (from %d)", async (distance) => {
    const edge = only(await see(drawing, { distance }));
    expect(Math.abs((edge?.contrast ?? 0) - contrast(white, blue))).toBeLessThan(1);
    expect(edge?.grade).toBe("strong");
    expect(edge?.deltaE00).toBeGreaterThan(60);
  });

  test("has its mean and both ends in the table of colours all the same", async () => {
    const { colours } = await see(drawing);
    const uneven = colours.find(({ uneven: ends }) => ends !== null)?.uneven;
    expect(Number.parseInt(uneven?.lightest.slice(1, 3) ?? "", 16)).toBeGreaterThan(0xf0);
    expect(Number.parseInt(uneven?.darkest.slice(1, 3) ?? "", 16)).toBeLessThan(0x10);
  });
});

test("a gradient that runs along its edge counts with whichever end is nearer, where it is a part of all edges", async () => {
  // White above, blue below, white beside all of it: above nothing is told apart. Two stripes have four edges as long.
  const drawing = `${field(white)}${across().replace(/x1.*?"><stop/, 'x2="0" y2="200"><stop')}${shaded(0, 0, 2.8, 200)}`;
  await expect(see(drawing)).rejects.toThrow("100.0 % of the length of all edges lies beside a gradient");
  const stripes = [100, 200].map((x) => `<rect x="${x}" width="50" height="200" fill="${red}"/>`).join("");
  const { edges, colours } = await see(`${drawing}${stripes}`);
  const uneven = colours.find(({ uneven: ends }) => ends !== null)?.id ?? "";
  expect(edges.find(({ a, b }) => a === uneven || b === uneven)?.contrast).toBeLessThan(2);
});

test("each neighbour for itself: the light end meets one, the dark end the other", async () => {
  // Red beside a gradient from white to blue beside white.
  const drawing = `${field(white)}<rect width="50" height="200" fill="${red}"/>${across(50)}${shaded(50, 0, 2.8, 200)}`;
  const { edges, colours } = await see(drawing);
  const hexOf = (id: string): string => colours.find((colour) => colour.id === id)?.hex ?? "";
  const besides = (hex: string) => edges.find(({ a, b }) => hexOf(a) === hex || hexOf(b) === hex);
  expect(Math.abs((besides(red)?.contrast ?? 0) - contrast(red, white))).toBeLessThan(1.5);
  expect(Math.abs((besides(white)?.contrast ?? 0) - contrast(white, blue))).toBeLessThan(1.5);
});

test("a line between the two that vanishes is looked past", async () => {
  // A red line of 1.6 units parts blue from white: gone from 40, and the gradient is looked at beyond it.
  const drawing = `${field(white)}${across()}${shaded(0, 0, 3.4, 200)}<rect x="2.6" height="200" width="1.6" fill="${red}"/>`;
  expect(Math.abs((only(await see(drawing))?.contrast ?? 0) - contrast(white, blue))).toBeLessThan(2.5);
});

test("a pattern counts with those of its colours that reach the edge", async () => {
  // Tiles of 2.5 by 30, one column of them: white becomes blue, which they are in their further half, beside white.
  const drawing = `${field(white)}<linearGradient id="s"><stop offset=".3" stop-color="${white}"/><stop offset=".5" stop-color="${blue}"/></linearGradient><pattern id="g" width="2.5" height="30" patternUnits="userSpaceOnUse"><rect width="2.5" height="30" fill="url(#s)"/></pattern>${shaded(0, 0, 2.5, 200)}`;
  const edge = only(await see(drawing, { distance: 0 }));
  expect(Math.abs((edge?.contrast ?? 0) - contrast(white, blue))).toBeLessThan(0.5);
});

describe("before and after a change", () => {
  test("of a stop: the redesign is looked at along the same edge", async () => {
    const drawing = `${field(white)}${across()}${shaded(0, 0, 2.8, 200)}`;
    const { before, after } = await change(drawing, { replace: blue, with: red });
    expect(Math.abs((only(before)?.contrast ?? 0) - contrast(white, blue))).toBeLessThan(1);
    expect(Math.abs((only(after)?.contrast ?? 0) - contrast(white, red))).toBeLessThan(1);
  });

  test("of the neighbour: the gradient keeps what it has there", async () => {
    const drawing = `${field(red)}${across()}${shaded(0, 0, 2.8, 200)}`;
    const { before, after } = await change(drawing, { replace: red, with: "#ffff00" });
    expect(Math.abs((only(before)?.contrast ?? 0) - contrast(red, blue))).toBeLessThan(1.5);
    expect(Math.abs((only(after)?.contrast ?? 0) - contrast("#ffff00", blue))).toBeLessThan(1);
  });
});
