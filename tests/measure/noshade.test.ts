import { describe, expect, test } from "vitest";
import { describeNoShade } from "../../src/measure/noshade.ts";
import { findShade } from "../../src/measure/shade.ts";

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
      "No shade of this blue clears both black and yellow: beside black it would have to reflect 28.4 % or more, beside yellow 19.2 % or less.",
    );
  });

  test("of several neighbours the strictest two are named", () => {
    expect(describeBeside(["black", 5], ["dark red", 10], ["white", 85], ["yellow", 55])).toMatch(
      /^No shade of this blue clears both dark red and yellow: /,
    );
  });

  // 50 beside 29: (75 · 29 − 1250) / 175 = 5.29 or less, (175 · 29 + 1250) / 75 = 84.33 or more; beside black 28.33 or
  // more, beside 75 (clear or more today, 125 · 62.8 / 112.2 = 70: 60 is kept) (65 · 75 − 1500) / 185 = 18.2 or less.
  test("a neighbour that stands in the gap the others leave", () => {
    expect(describeBeside(["black", 5], ["grey", 29], ["yellow", 85])).toBe(
      "No shade of this blue clears both black and yellow: beside black it would have to reflect 28.4 % or more, beside yellow 21.7 % or less.",
    );
    // Mid grey 60: on it 125 · 47.8 / 97.2 = 61.5, strong: (65 · 60 − 1500) / 185 = 12.97 or less, more than cloth else.
    expect(describeBeside(["black", 5], ["grey", 29])).toBeUndefined();
  });

  test("a neighbour that no cloth clears", () => {
    const narrow = { black: 20, white: 40 };
    const finding = findShade("#1f56a8", [{ name: "grey", reflectances: [30] }], narrow);
    expect(describeNoShade("blue", finding)).toBe("No shade of this blue clears grey.");
  });
});
