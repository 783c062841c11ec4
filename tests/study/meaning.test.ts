import { expect, test } from "vitest";
import { checkMeanings } from "../../src/study/meaning.ts";
import { defaultPalette } from "../../src/study/palette.ts";

const typed = (...names: readonly string[]) =>
  names.map((name, index) => ({ path: `options.${index}.with`, name }));

// Shades of CSS: CSS Color 4, section 6.1, named colours.
test("all names of a study are said at once, where the first stands", () => {
  expect(checkMeanings(typed("#123456", "yellow", "Green", "yellow"), defaultPalette)).toEqual([
    {
      rule: "study/two-meanings",
      severity: "warning",
      path: "options.1.with",
      on: "value",
      reason:
        "Names are taken from the usual palette: “yellow” is #f7c81e, not #ffff00 as in CSS; “green” is #2f8f46, not #008000 as in CSS.",
      hint: 'To settle it, type the one you mean: with: "#f7c81e" or with: "#ffff00"',
    },
  ]);
});

test.each([
  ["white, which is the same in both", "white"],
  ["a name that only the palette has", "dark green"],
  ["a name that only CSS has", "teal"],
  ["a hex colour", "#ffff00"],
])("nothing is said of %s", (_, name) => {
  expect(checkMeanings(typed(name), defaultPalette)).toEqual([]);
});

test("a gallery that names its own palette has settled it", () => {
  expect(checkMeanings(typed("yellow"), new Map([["yellow", "#f7c81e"]]))).toEqual([]);
});
