import { describe, expect, test } from "vitest";
import {
  countName,
  findNeutralNames,
  isNeutral,
  isOwnWord,
  listDifferences,
  nameBy,
} from "../../src/colour/qualifier.ts";

// Expected by reading: the shades differ in one way only, or in one way far more than in the others.
describe("listDifferences", () => {
  test("the most telling comes first", () => {
    expect(listDifferences("red", "#ee1c25", "#8f1016")[0]).toMatchObject({
      axis: "lightness",
      comparative: "darker",
    });
    expect(listDifferences("blue", "#2060c0", "#4a658f")[0]).toMatchObject({
      axis: "strength",
      comparative: "greyer",
    });
    expect(listDifferences("green", "#1a8335", "#008257")[0]).toMatchObject({
      axis: "hue",
      comparative: "bluer",
    });
    expect(listDifferences("grey", "#808080", "#78828c")[0]).toMatchObject({
      axis: "hue",
      quality: "bluish",
    });
  });

  test("a hue that lies far off is told before a lightness that hardly differs", () => {
    expect(listDifferences("green", "#009639", "#7a8f00")[0]).toMatchObject({
      axis: "hue",
      comparative: "yellower",
    });
  });

  test("the same colour does not differ", () => {
    expect(listDifferences("red", "#c8102e", "#c8102e")).toEqual([]);
  });

  test("refuses what is not #rrggbb", () => {
    expect(() => listDifferences("red", "#c8102e", "#nothex")).toThrow(RangeError);
  });
});

test("black and white have names of their own", () => {
  expect(nameBy("darker", "green")).toBe("darker green");
  expect(nameBy("lighter", "black")).toBe("off-black");
  expect(findNeutralNames("darker", "white")).toContain("off-white");
  expect(["black", "blue"].map((word) => isNeutral(word as "black"))).toEqual([true, false]);
});

test("the last resort counts in words as far as they go", () => {
  const taken = new Set<string>();
  for (let count = 0; count < 11; count += 1) taken.add(countName("red", (name) => taken.has(name)));
  expect([...taken].slice(0, 2)).toEqual(["second red", "third red"]);
  expect([...taken].slice(-3)).toEqual(["tenth red", "red 11", "red 12"]);
});

test("words of ours are known from others", () => {
  expect(["darker", "bluish", "off", "second", "warmer"].every(isOwnWord)).toBe(true);
  expect(["lihgt", "signal", "red", ""].some(isOwnWord)).toBe(false);
});
