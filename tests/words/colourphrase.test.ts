import { describe, expect, test } from "vitest";
import { basicWords } from "../../src/colour/basicword.ts";
import { isOwnName } from "../../src/colour/colourname.ts";
import { ownWords } from "../../src/colour/qualifier.ts";
import { sayColour } from "../../src/words/colourphrase.ts";
import { colour } from "../../src/words/en/colour.ts";
import { createFormat } from "../../src/words/format.ts";

/** Words that are no English: the noun first, what is said of it behind, with its degree and word in brackets. */
const foreign = createFormat("en", {
  ...Object.fromEntries(
    Object.entries<string>(colour).map(([id, message]) => {
      const word = id.slice("colour.".length).toUpperCase();
      const choosers = ["degree", "word", "place", "number"].filter((name) => message.includes(`{${name}`));
      const values = choosers.map((name) => `:{${name}}`).join("");
      return [id, message.includes("{colour}") ? `{colour} ${word}${values}` : word];
    }),
  ),
});

describe("every form of name is said in the words of the language", () => {
  test.each([
    ["red", "RED"],
    ["dark red", "RED DARK:none:red"],
    ["very dark blue", "BLUE DARK:very:blue"],
    ["slightly less light blue", "BLUE LIGHT:slightlyLess:blue"],
    ["darkest red", "RED DARKEST"],
    ["darker red", "RED DARKER:none"],
    ["much darker green", "GREEN DARKER:much"],
    ["bluer green", "GREEN BLUER:none"],
    ["slightly bluer dark red", "RED DARK:none:red BLUER:slightly"],
    ["darker bluish green", "GREEN BLUISH:none DARKER:none"],
    ["very bluish grey", "GREY BLUISH:very"],
    ["neutral grey", "GREY NEUTRAL:none"],
    ["mid blue", "BLUE MID"],
    ["off-white", "WHITE OFF:white"],
    ["bluish off-black", "BLACK OFF:black BLUISH:none"],
    ["jet black", "BLACK JET"],
    ["second darker green", "GREEN DARKER:none NTH:second"],
    ["darker green 11", "GREEN DARKER:none NUMBERED:11"],
    ["brown, selected part", "BROWN SELECTEDPART"],
    ["other colours", "OTHERS"],
    // What we say of a colour that the author named.
    ["darker gold", "gold DARKER:none"],
    ["much lighter sea blue", "sea blue LIGHTER:much"],
    ["second gold", "gold NTH:second"],
    ["gold, selected part", "gold SELECTEDPART"],
  ])("%s: %s", (name, said) => {
    expect(sayColour(name, foreign)).toBe(said);
  });
});

test.each([
  "gold",
  "dark gold",
  "sea blue",
  "dark sea green",
  "Pantone 186",
  "the wheel",
  "#12235c",
  "dark-red",
])("%s, which an author said, stays as it is", (name) => {
  expect(sayColour(name, foreign)).toBe(name);
});

test("every word of a name has a message, and in English every name is what it was", () => {
  const degrees = ["", "slightly ", "much ", "very ", "less ", "slightly less ", "much less "];
  const before = [...ownWords].filter((word) => !degrees.some((degree) => degree.includes(word)));
  const names = basicWords.flatMap((word) =>
    ["", ...before].map((one) => (one === "" ? word : one === "off" ? `off-${word}` : `${one} ${word}`)),
  );
  expect(names.every(isOwnName)).toBe(true);
  const english = createFormat("en");
  expect(names.filter((name) => sayColour(name, english) !== name)).toEqual([]);
  expect(names.filter((name) => sayColour(name, foreign) === name)).toEqual([]);
  const graded = degrees.slice(1, 4).map((degree) => `${degree}bluish grey`);
  const less = degrees.slice(3).map((degree) => `${degree}dark red`);
  for (const name of [...graded, ...less]) expect(sayColour(name, english)).toBe(name);
});
