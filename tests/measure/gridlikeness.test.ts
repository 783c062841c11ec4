import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { LinearRgb } from "../../src/colour/colour.ts";
import { boundDistance, compareGrids, prepareGrid } from "../../src/measure/gridlikeness.ts";
import { ciede2000, labOfLinear, linear } from "./oracle.ts";

const cloth = { black: 5, white: 85 };
const linearOf = (hex: string): LinearRgb => {
  const [linearR, linearG, linearB] = linear(hex);
  return { linearR, linearG, linearB };
};
const colours: Readonly<Record<string, string>> = {
  r: "#c8202f",
  w: "#ffffff",
  b: "#12235c",
  y: "#fcd20f",
  k: "#000000",
};

/** A grid drawn in letters, a dot where the flag does not reach. */
const draw = (...rows: readonly string[]) =>
  prepareGrid(
    rows[0]?.length ?? 0,
    rows.length,
    rows.flatMap((row) =>
      [...row].map((letter) => (letter === "." ? null : linearOf(colours[letter] ?? ""))),
    ),
    cloth,
  );

/** ΔE00 of two letters on cloth, by hand. */
const apart = (one: string, other: string) => {
  const dye = (letter: string) => {
    const [r, g, b] = linear(colours[letter] ?? "").map((c) => 0.05 + 0.8 * c);
    return labOfLinear([r ?? 0, g ?? 0, b ?? 0]);
  };
  return ciede2000(dye(one), dye(other));
};

describe("compareGrids", () => {
  test("a flag is like itself", () => {
    expect(compareGrids(draw("rw", "by"), draw("rw", "by"))).toBe(0);
  });

  test("the mean over the cells, in cloth colours", () => {
    expect(compareGrids(draw("rw", "by"), draw("rw", "bb"))).toBeCloseTo(apart("y", "b") / 4, 1);
    expect(compareGrids(draw("rr"), draw("wb"))).toBeCloseTo((apart("r", "w") + apart("r", "b")) / 2, 1);
    // On cloth black and white are nearer than on a screen, where they are 100 apart.
    expect(compareGrids(draw("k"), draw("w"))).toBeLessThan(80);
  });

  test("mirrored and upside down", () => {
    const flag = draw("rwb", "yyk");
    expect(compareGrids(flag, draw("bwr", "kyy"), "mirrored")).toBe(0);
    expect(compareGrids(flag, draw("yyk", "rwb"), "upside down")).toBe(0);
    expect(compareGrids(flag, draw("bwr", "kyy"))).toBeGreaterThan(10);
    expect(compareGrids(flag, draw("kyy", "bwr"), "upside down")).toBeGreaterThan(10);
  });

  test("where only one flag reaches, a cell counts 100; where none does, 0", () => {
    expect(compareGrids(draw("r.", "r."), draw("r.", "rr"))).toBe(25);
    expect(compareGrids(draw(".r"), draw("r."))).toBe(100);
  });

  test("gives up over the limit, and not at it", () => {
    const [one, other] = [draw("rr", "rr"), draw("rr", "ww")];
    const mean = compareGrids(one, other);
    expect(compareGrids(one, other, "as it is", mean)).toBe(mean);
    expect(compareGrids(one, other, "as it is", mean - 0.01)).toBe(Number.POSITIVE_INFINITY);
  });

  test("many colours, more than are kept, give the same mean", () => {
    const shade = (n: number): LinearRgb => ({
      linearR: n / 100,
      linearG: ((n * 37) % 100) / 100,
      linearB: 0.2,
    });
    const one = prepareGrid(
      10,
      10,
      Array.from({ length: 100 }, (_, n) => shade(n)),
      cloth,
    );
    const other = prepareGrid(
      10,
      10,
      Array.from({ length: 100 }, (_, n) => shade(99 - n)),
      cloth,
    );
    const lab = ({ linearR, linearG, linearB }: LinearRgb) =>
      labOfLinear([0.05 + 0.8 * linearR, 0.05 + 0.8 * linearG, 0.05 + 0.8 * linearB]);
    const mean = Array.from({ length: 100 }, (_, n) => ciede2000(lab(shade(n)), lab(shade(99 - n)))).reduce(
      (sum, each) => sum + each / 100,
      0,
    );
    expect(compareGrids(one, other)).toBeCloseTo(mean, 1);
  });

  test("grids of two sizes are refused, and grids that are none", () => {
    expect(() => compareGrids(draw("rr"), draw("r"))).toThrow(RangeError);
    expect(() => prepareGrid(2, 2, [null], cloth)).toThrow(RangeError);
    expect(() => prepareGrid(1, 1, [{ linearR: 2, linearG: 0, linearB: 0 }], cloth)).toThrow(RangeError);
  });
});

const orientations = ["as it is", "mirrored", "upside down"] as const;

test("no flag is nearer, however it is turned, than its bound says", () => {
  const channel = fc.integer({ min: 0, max: 20 }).map((value) => value / 20);
  const colour = fc.record({ linearR: channel, linearG: channel, linearB: channel });
  const cells = fc.array(fc.oneof({ weight: 9, arbitrary: colour }, fc.constant(null)), {
    minLength: 24,
    maxLength: 24,
  });
  const whole = { black: 0, white: 100 };
  fc.assert(
    fc.property(cells, cells, (some, others) => {
      const [one, other] = [prepareGrid(6, 4, some, whole), prepareGrid(6, 4, others, whole)];
      const nearest = Math.min(...orientations.map((orientation) => compareGrids(one, other, orientation)));
      expect(boundDistance(one)(other)).toBeLessThanOrEqual(nearest + 1e-9);
    }),
    { numRuns: 300, seed: 5 },
  );
});

test("a bound is under the difference of any two greys, and not far under it", () => {
  // Lightness alone: ΔE00 is ΔL* / S_L there.
  const greys = Array.from({ length: 41 }, (_, at) => (at / 40) ** 3);
  const flat = (grey: number) =>
    prepareGrid(1, 1, [{ linearR: grey, linearG: grey, linearB: grey }], { black: 0, white: 100 });
  const shares = greys.flatMap((one, at) =>
    greys.slice(at + 1).map((other) => {
      const [a, b] = [flat(one), flat(other)];
      return boundDistance(a)(b) / compareGrids(a, b);
    }),
  );
  expect(Math.max(...shares)).toBeLessThanOrEqual(1);
  expect(Math.max(...shares)).toBeGreaterThan(0.99);
  expect(Math.min(...shares)).toBeGreaterThan(0.7);
});

test("a bound sees a flag that is the same when turned, and where lightness lies", () => {
  const flag = draw("rwb", "yyk");
  expect(boundDistance(flag)(draw("bwr", "kyy"))).toBe(0);
  expect(boundDistance(draw("wk"))(draw("kk"))).toBeGreaterThan(10);
});
