import { expect, test } from "vitest";
import { cleanText, nameCharacter } from "../../../src/content/text/cleantext.ts";

test("direction controls go, control characters become U+FFFD, tabs and lines stay, accents are joined", () => {
  expect(cleanText("a\u202eb\u2066c\0d\te\nf\u007fcafe\u0301")).toEqual({
    text: "abc\ufffdd\te\nf\ufffdcaf\u00e9",
    directions: ["U+202E", "U+2066"],
    controls: 2,
  });
});

test.each([..."\u202a\u202b\u202c\u202d\u202e\u2066\u2067\u2068\u2069"])("%j is taken out", (character) => {
  expect(cleanText(`a${character}b`).text).toBe("ab");
});

test("marks that only help right-to-left text stay", () => {
  expect(cleanText("a\u200fb\u061cc").text).toBe("a\u200fb\u061cc");
});

test("a character is named as Unicode names it", () => {
  expect([nameCharacter("\0"), nameCharacter("\u202e"), nameCharacter("🏴x")]).toEqual([
    "U+0000",
    "U+202E",
    "U+1F3F4",
  ]);
});
