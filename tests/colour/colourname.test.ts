import { describe, expect, test } from "vitest";
import type { Hex } from "../../src/colour/colour.ts";
import { isOwnName, nameColour, nameColours, nameReplacement, wordOf } from "../../src/colour/colourname.ts";
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
    expect(() => nameColours(["#ffffff", "#nothex"], [1, 1])).toThrow("#nothex");
  });
});

/** Names of colours that cover less and less. */
function nameFalling(...hexes: readonly Hex[]): readonly string[] {
  return nameColours(
    hexes,
    hexes.map((_, index) => hexes.length - index),
  );
}

// Expected by reading: which of the shades is darker, duller or bluer is plain to see.
describe("nameColours", () => {
  test("names that differ anyway are left alone, in the order given", () => {
    expect(nameFalling("#c8102e", "#ffffff", "#12235c")).toEqual(["red", "white", "dark blue"]);
  });

  test("the largest is plain, whichever comes first and whichever is darker", () => {
    expect(nameColours(["#ee1c25", "#ba0c2f"], [0.6, 0.2])).toEqual(["red", "darker red"]);
    expect(nameColours(["#ba0c2f", "#ee1c25"], [0.2, 0.6])).toEqual(["darker red", "red"]);
    expect(nameColours(["#ba0c2f", "#ee1c25"], [0.6, 0.2])).toEqual(["red", "lighter red"]);
    expect(nameColours(["#ee1c25", "#ba0c2f", "#ee1c25"], [0.2, 0.3, 0.2])).toEqual([
      "red",
      "darker red",
      "red",
    ]);
  });

  test("three and more are still told apart in words, and in their order of lightness", () => {
    expect(nameFalling("#ff3333", "#dd1111", "#b80c0c")).toEqual(["red", "darker red", "darkest red"]);
    expect(nameFalling("#dd1111", "#ff3333", "#b80c0c")).toEqual(["red", "lighter red", "darker red"]);
    expect(nameFalling("#ff3333", "#ee2222", "#cc1111", "#b80c0c")).toEqual([
      "red",
      "slightly darker red",
      "darker red",
      "darkest red",
    ]);
  });

  test("dark and light forms grow more so, and what lies between dark and plain is less dark", () => {
    expect(nameFalling("#00205b", "#001133")).toEqual(["dark blue", "very dark blue"]);
    expect(nameFalling("#75aadb", "#b9d9eb")).toEqual(["light blue", "very light blue"]);
    expect(nameFalling("#0057b7", "#001133", "#003399", "#00205b")).toEqual([
      "blue",
      "dark blue",
      "darker blue",
      "less dark blue",
    ]);
    expect(nameFalling("#001133", "#00205b")).toEqual(["dark blue", "less dark blue"]);
  });

  test("black and white have words of their own", () => {
    expect(nameFalling("#000000", "#262626")).toEqual(["black", "off-black"]);
    expect(nameFalling("#262626", "#000000")).toEqual(["black", "deep black"]);
    expect(nameFalling("#ffffff", "#f0f0f0")).toEqual(["white", "off-white"]);
    expect(nameFalling("#f0f0f0", "#ffffff")).toEqual(["white", "bright white"]);
  });

  test("two of one lightness are told apart by hue or strength, not by a false darker", () => {
    expect(nameFalling("#00843d", "#1a8335")).toEqual(["green", "yellower green"]);
    expect(nameFalling("#1a8335", "#00843d")).toEqual(["green", "bluer green"]);
    expect(nameFalling("#2060c0", "#4a658f")).toEqual(["blue", "greyer blue"]);
  });

  test("where the words are used up, a second one joins them", () => {
    const names = nameFalling("#dd1111", "#c01010", "#b00c0c", "#a50a0a", "#b8100c", "#a81830");
    expect(new Set(names).size).toBe(6);
    for (const name of names) expect(name).toMatch(/^([a-z]+ )*red$/);
  });

  test("a given name is kept, and no other colour gets it", () => {
    const given = new Map<Hex, string>([
      ["#1b2a5c", "navy"],
      ["#7a1020", "red"],
    ]);
    expect(nameColours(["#1b2a5c", "#14213d", "#7a1020", "#c8102e"], [4, 3, 2, 1], given)).toEqual([
      "navy",
      "dark blue",
      "red",
      "lighter red",
    ]);
  });

  test("no colours, no names", () => {
    expect(nameColours([], [])).toEqual([]);
  });
});

// Expected by reading, as above.
describe("nameReplacement", () => {
  const white = { hex: "#ffffff", name: "white" } as const;
  const green = { hex: "#009639", name: "green" } as const;

  test("another word is the plain name; the author's or the palette's word stands as it is", () => {
    expect(nameReplacement("#f4c430", green, [white])).toBe("yellow");
    expect(nameReplacement("#f4c430", green, [white], "gold")).toBe("gold");
    expect(nameReplacement("#006233", green, [white], "dark green")).toBe("dark green");
  });

  test("the same word says how it differs", () => {
    expect(nameReplacement("#39a15b", green, [white])).toBe("lighter green");
    expect(nameReplacement("#007a2d", green, [white])).toBe("darker green");
    expect(nameReplacement("#00945e", green, [white])).toBe("bluer green");
    expect(nameReplacement("#bfe3a8", green, [white])).toBe("light green");
    expect(nameReplacement("#009639", { hex: "#004225", name: "dark green" }, [white])).toBe("lighter green");
    expect(nameReplacement("#262626", { hex: "#000000", name: "black" }, [white])).toBe("off-black");
  });

  test("a colour that the flag has keeps its name there; a name that it has is no other colour's", () => {
    expect(nameReplacement("#ffffff", green, [white], "snow")).toBe("white");
    expect(nameReplacement("#c8202f", green, [{ hex: "#e4303f", name: "red" }], "red")).toBe("darker red");
    expect(nameReplacement("#c8202f", green, [{ hex: "#e4303f", name: "red" }])).toBe("darker red");
    const greens = [{ hex: "#5ab775", name: "lighter green" }] as const;
    expect(nameReplacement("#39a15b", green, greens)).toBe("slightly lighter green");
  });

  test("lighter than the one it replaces but darker than the plain one of the flag lies between", () => {
    const dark = { hex: "#14407f", name: "darker blue" } as const;
    expect(nameReplacement("#1a4fa0", dark, [{ hex: "#2a62c0", name: "blue" }])).toBe("mid blue");
  });
});

test("the word is the name without light and dark", () => {
  expect(["#12235c", "#75aadb", "#0057b7"].map((hex) => wordOf(hex as Hex))).toEqual([
    "blue",
    "blue",
    "blue",
  ]);
});

test("a name of ours is known from a name that somebody gave", () => {
  for (const name of ["green", "dark yellow", "off-white", "slightly darker bluish green"])
    expect(isOwnName(name)).toBe(true);
  for (const name of ["gold", "signal red", "sea green", "#ff0000", "", "lihgt blue"])
    expect(isOwnName(name)).toBe(false);
});
