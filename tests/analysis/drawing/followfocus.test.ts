// What is left of the focus from each distance. On a flag 200 high an arcminute is 0.58 from 10 flag heights away, 2.3 from 40,
// 4.7 from 80, 9.3 from 160 and 18.6 from 320 (200 · distance · 0.00029089).
import { expect, test } from "vitest";
import { box, disc, field, lookFrom, red, see, white } from "../sight.ts";

/** Share of the focus that is left from each distance step. */
async function leftOf(body: string): Promise<readonly number[]> {
  const { table } = await lookFrom(field(white) + body);
  return table.focus.steps.map(({ left }) => left);
}

test("no focus, no steps", async () => {
  expect(await leftOf("")).toEqual([]);
});

test("a disc that is thicker than what vanishes from anywhere stays", async () => {
  for (const left of await leftOf(disc(150, 100, 50, red))) expect(left).toBeGreaterThan(0.97);
});

test("a bar goes where it is thinner than an arcminute, and does not come back", async () => {
  const left = await leftOf(box(100, 97, 100, 6, red));
  expect(left.slice(0, 4).map((share) => Math.round(share))).toEqual([1, 1, 1, 1]);
  expect(left.slice(4)).toEqual([0, 0]);
});

test("of a disc with a bar beside it the bar goes alone: its share of the area", async () => {
  const share = 600 / (600 + Math.PI * 40 ** 2);
  const left = await leftOf(disc(80, 100, 40, red) + box(160, 97, 100, 6, red));
  expect(left[3]).toBeGreaterThan(0.97);
  expect(Math.abs((left[4] ?? 0) - (1 - share))).toBeLessThan(0.02);
});

test("lasts to the last step from which half is left and five arcminutes across", async () => {
  // 12 of 200 are five arcminutes across from 41 flag heights away: 12 / 200 / (5 · 0.00029089).
  expect((await see(field(white) + disc(150, 100, 6, red) + disc(100, 100, 6, red))).focus.lastsTo).toBe(40);
});
