import { describe, expect, test } from "vitest";
import { nameColour, nameColours } from "../../src/colour/name.ts";
import { shadeNames } from "../reference/names.ts";

describe("nameColour", () => {
  test.each(shadeNames)("%s is %s", (hex, words) => {
    expect(words.split(" or ")).toContain(nameColour(hex));
  });

  test("the table is long enough and leaves little open", () => {
    expect(shadeNames.length).toBeGreaterThanOrEqual(70);
    expect(shadeNames.filter(([, words]) => words.includes(" or ")).length).toBeLessThanOrEqual(10);
  });

  test("refuses what is not #rrggbb", () => {
    expect(() => nameColour("#fff")).toThrow(RangeError);
    expect(() => nameColours(["#ffffff", "#nothex"])).toThrow("#nothex");
  });
});

// Expected by reading: which of the shades is darker is plain to see.
describe("nameColours", () => {
  test("names that differ anyway are left alone, in the order given", () => {
    expect(nameColours(["#c8102e", "#ffffff", "#12235c"])).toEqual(["red", "white", "dark blue"]);
  });

  test("the darker of two says so, whichever comes first", () => {
    expect(nameColours(["#ee1c25", "#ba0c2f"])).toEqual(["red", "darker red"]);
    expect(nameColours(["#ba0c2f", "#ee1c25"])).toEqual(["darker red", "red"]);
  });

  test("three and more are still told apart", () => {
    expect(nameColours(["#ff3333", "#dd1111", "#b80c0c"])).toEqual(["red", "darker red", "darkest red"]);
    expect(nameColours(["#ff3333", "#ee2222", "#cc1111", "#b80c0c"])).toEqual([
      "red",
      "darker red",
      "darker red 2",
      "darkest red",
    ]);
  });

  test("dark and light forms grow more so", () => {
    expect(nameColours(["#00205b", "#001133"])).toEqual(["dark blue", "very dark blue"]);
    expect(nameColours(["#75aadb", "#b9d9eb"])).toEqual(["light blue", "very light blue"]);
    expect(nameColours(["#0057b7", "#003399", "#00205b", "#001133"])).toEqual([
      "blue",
      "darker blue",
      "dark blue",
      "very dark blue",
    ]);
  });

  test("the blackest black is the plain one", () => {
    expect(nameColours(["#262626", "#000000"])).toEqual(["lighter black", "black"]);
  });

  test("two greens of one lightness get a number, not a false darker", () => {
    const names = nameColours(["#00843d", "#1a8335"]);
    expect([...names].sort()).toEqual(["green", "green 2"]);
    expect(nameColours(["#1a8335", "#00843d"])).toEqual([...names].reverse());
  });

  test("one colour given twice is one colour", () => {
    expect(nameColours(["#c8102e", "#c8102e"])).toEqual(["red", "red"]);
  });

  test("no colours, no names", () => {
    expect(nameColours([])).toEqual([]);
  });
});
