// Areas and lines of flags whose geometry a law fixes, measured from a drawing through the whole pipeline.
import { describe, expect, test } from "vitest";
import { measureDrawing } from "../../src/analysis/analyse.ts";
import { defaultCloth } from "../../src/colour/cloth.ts";
import { hasError } from "../../src/problem/problem.ts";
import { drawLawFlag, type LawFlag, lawFlags } from "./geometry.ts";

/** In percentage points: a 600-pixel picture has 0.17 percentage points a row of pixels. */
const shareTolerance = 0.2;

// A fifteenth flag, Palau, is left out: pages disagree on its proportions (3 : 5 or 5 : 8), so its figures are no check.

async function measureLaw(flag: LawFlag) {
  const { value, problems } = await measureDrawing("law.svg", new TextEncoder().encode(drawLawFlag(flag)), {
    cloth: defaultCloth,
    distance: 0,
    palette: new Map(),
  });
  if (value === undefined || hasError(problems))
    throw new Error(problems.map(({ reason }) => reason).join(" "));
  const hexOf = new Map(value.colours.map(({ id, hex }) => [id, hex]));
  const lengths = new Map(
    value.edges.map(({ a, b, length }) => [
      [hexOf.get(a), hexOf.get(b)].sort().join(" "),
      length * flag.height,
    ]),
  );
  const shares = new Map(value.colours.map(({ hex, share }) => [hex as string, share]));
  return { value, shares, lengths };
}

describe.each(lawFlags)("$flag: $source", (flag) => {
  test("shares of the area, within 0.2 percentage points", async () => {
    const { shares } = await measureLaw(flag);
    expect([...shares.keys()].sort()).toEqual(Object.keys(flag.shares).sort());
    for (const [hex, share] of Object.entries(flag.shares)) {
      expect(100 * Math.abs((shares.get(hex) ?? Number.NaN) - share), hex).toBeLessThan(shareTolerance);
    }
  });

  test(`edges, and the inner boundary as a whole, within ${100 * flag.lengthTolerance} %`, async () => {
    const { lengths } = await measureLaw(flag);
    const expected = flag.edges.map(({ pair, length }) => [[...pair].sort().join(" "), length] as const);
    expect([...lengths.keys()].sort()).toEqual(expected.map(([pair]) => pair).sort());
    for (const [pair, length] of expected) {
      expect(Math.abs((lengths.get(pair) ?? Number.NaN) / length - 1), pair).toBeLessThan(
        flag.lengthTolerance,
      );
    }
    const total = expected.reduce((sum, [, length]) => sum + length, 0);
    const measured = [...lengths.values()].reduce((sum, length) => sum + length, 0);
    expect(Math.abs(measured / total - 1)).toBeLessThan(flag.lengthTolerance);
  });

  test("proportions", async () => {
    const { value } = await measureLaw(flag);
    const [height, width] = value.proportions;
    expect(width / height).toBeCloseTo(flag.width / flag.height, 3);
  });
});

// The table's own closed forms, computed another way: the pentagram by its corners, with the shoelace formula.
test("the figures of a star", () => {
  const points = Array.from({ length: 10 }, (_, index) => {
    // φ⁻² of the circumradius is the radius of the inner corners.
    const radius = index % 2 === 0 ? 1 : (3 - Math.sqrt(5)) / 2;
    return [radius * Math.sin((index * Math.PI) / 5), radius * Math.cos((index * Math.PI) / 5)] as const;
  });
  const sides = points.map((point, index) => [point, points[(index + 1) % 10] ?? point] as const);
  const perimeter = sides.reduce((sum, [[ax, ay], [bx, by]]) => sum + Math.hypot(bx - ax, by - ay), 0);
  const area = Math.abs(sides.reduce((sum, [[ax, ay], [bx, by]]) => sum + ax * by - bx * ay, 0)) / 2;
  const china = lawFlags.find(({ flag }) => flag === "China");
  expect(china?.edges[0]?.length).toBeCloseTo(7 * perimeter, 10);
  // Four small stars and one of three times the radius: 4 + 9 times the area of one.
  expect(china?.shares["#ffcd00"]).toBeCloseTo((13 * area) / 600, 10);
});
