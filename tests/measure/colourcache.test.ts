import { describe, expect, test } from "vitest";
import { SwatchBook } from "../../src/measure/colourcache.ts";
import { difference, difference76, reflectance } from "./oracle.ts";

const book = new SwatchBook({ black: 5, white: 85 });

describe("SwatchBook", () => {
  test.each(["#000000", "#ffffff", "#c8202f", "#12235c"] as const)(
    "reflectance of %s on its cloth, asked twice",
    (hex) => {
      expect(book.reflectanceOf(hex)).toBeCloseTo(reflectance(hex), 6);
      expect(book.reflectanceOf(hex)).toBeCloseTo(reflectance(hex), 6);
      expect(new SwatchBook({ black: 0, white: 100 }).reflectanceOf(hex)).toBeCloseTo(
        reflectance(hex, 0, 100),
        6,
      );
    },
  );

  test("difference, either way round, asked twice", () => {
    for (const [one, other] of [
      ["#c8202f", "#000000"],
      ["#000000", "#c8202f"],
      ["#c8202f", "#000000"],
    ] as const) {
      expect(book.differenceOf(one, other)).toBeCloseTo(difference(one, other), 1);
    }
    expect(book.differenceOf("#c8202f", "#c8202f")).toBe(0);
  });

  test("distance in CIELAB, of 1976", () => {
    for (const other of ["#000000", "#ffffff", "#b01c2a"] as const)
      expect(book.distanceOf("#c8202f", other)).toBeCloseTo(difference76("#c8202f", other), 1);
    // Black is 0 0 0 and white is 100 0 0.
    expect(book.distanceOf("#000000", "#ffffff")).toBeCloseTo(100, 1);
  });

  test("red and green draw together for a deutan eye, blue and yellow do not", () => {
    // Machado 2009, severity 1: a red and a green of like luminance meet near one brownish yellow.
    expect(book.differenceOf("#a05a00", "#4f7a00")).toBeGreaterThan(10);
    expect(book.differenceOf("#a05a00", "#4f7a00", "deutan")).toBeLessThan(
      book.differenceOf("#a05a00", "#4f7a00") / 2,
    );
    expect(book.differenceOf("#1f56a8", "#f7c81e", "deutan")).toBeGreaterThan(40);
  });

  test("one kind of sight is not taken for another", () => {
    const [one, other] = ["#c8202f", "#0b7a3b"] as const;
    const all = (["normal", "protan", "deutan", "tritan"] as const).map((sight) =>
      book.differenceOf(one, other, sight),
    );
    expect(new Set(all).size).toBe(4);
  });

  test("what is no colour is refused", () => {
    expect(() => book.reflectanceOf("#12")).toThrow(RangeError);
    expect(() => book.differenceOf("#123456", "#zzzzzz")).toThrow(RangeError);
  });
});
