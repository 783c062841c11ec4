import { describe, expect, test } from "vitest";
import { findShade } from "../../src/measure/options/kepthue.ts";
import { describeNoShade } from "../../src/words/noshade.ts";

const cloth = { black: 5, white: 85 };
const describeBeside = (...neighbours: readonly (readonly [string, ...number[]])[]) =>
  describeNoShade(
    "blue",
    findShade(
      "#1f56a8",
      neighbours.map(([name, ...reflectances]) => ({ name, reflectances })),
      cloth,
    ),
  );

describe("describeNoShade", () => {
  test("says nothing where a shade clears, or none is needed", () => {
    expect(describeBeside(["black", 5])).toBeUndefined();
    expect(describeBeside(["white", 85])).toBeUndefined();
    expect(describeBeside()).toBeUndefined();
  });

  // The blue reflects 12.2: on black 21.9, so 50 is asked, (175 · 5 + 1250) / 75 = 28.33; beside 55 it is clear, 58.0, and
  // 45 is kept: (80 · 55 − 1125) / 170 = 19.26, and 19.3 would not be clear.
  test("two neighbours that ask for opposite things, with both limits", () => {
    expect(describeBeside(["black", 5], ["yellow", 55])).toBe(
      "No shade of this blue is well clear of both black and yellow: beside black it would have to reflect 28.4 % or more, beside yellow 19.2 % or less.",
    );
  });

  test("of several neighbours the strictest two are named", () => {
    expect(describeBeside(["black", 5], ["dark red", 10], ["white", 85], ["yellow", 55])).toMatch(
      /^No shade of this blue is well clear of both dark red and yellow: /,
    );
  });

  // A light blue that reflects 26.7 is clear of black, 47.9, and of white, 53.3, and keeps that from 24.69 to
  // (80 · 85 − 1125) / 170 = 33.38. Beside 29 it needs (75 · 29 − 1250) / 175 = 5.29 or less, or 84.33 or more.
  test("a neighbour that stands in the gap the others leave", () => {
    const neighbours = [
      { name: "black", reflectances: [5] },
      { name: "grey", reflectances: [29] },
      { name: "white", reflectances: [85] },
    ];
    expect(describeNoShade("blue", findShade("#4a90e2", neighbours, cloth))).toBe(
      "No shade of this blue is well clear of black, grey and white at once: beside black it would have to reflect 24.7 % or more, beside white 33.3 % or less.",
    );
  });

  test("a neighbour that no cloth clears", () => {
    const narrow = { black: 20, white: 40 };
    const finding = findShade("#1f56a8", [{ name: "grey", reflectances: [30] }], narrow);
    expect(describeNoShade("blue", finding)).toBe("No shade of this blue is well clear of grey.");
  });

  // Beside 6.5 it is clear, with 5 points in hand, from 75 · y = 175 · 6.5 + 1250, 31.8 %, on: a red as light as that is pink.
  test("a shade that clears and is called by another word", () => {
    const finding = findShade("#701c2b", [{ name: "dark blue", reflectances: [6.5] }], cloth);
    expect(describeNoShade("red", finding)).toMatch(
      /^No shade of this red is well clear of dark blue: the nearest colour that is well clear is pink, #[0-9a-f]{6}\.$/,
    );
  });
});
