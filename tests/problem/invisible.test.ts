import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { findInvisible, isBlank, replaceInvisible } from "../../src/problem/invisible.ts";

const clean = (text: string): string => replaceInvisible(text, () => "");

describe("what a script or a picture needs stays", () => {
  test.each([
    ["a Persian word with a joiner between its parts", "می\u200cخواهم"],
    ["a Persian plural", "کتاب\u200cها"],
    ["an Arabic letter that is joined to nothing", "ه\u200d"],
    ["Hindi with a joiner behind a virama", "क्\u200dष"],
    ["Hindi with a non-joiner behind a virama", "क्\u200cष"],
    ["Sinhala", "ශ්\u200dරී ලංකා"],
    ["Malayalam", "അവന്\u200dറെ"],
    ["Hebrew with a mark of direction", "דגל\u200f (1)"],
    ["Arabic with its own mark", "علم\u061c 1"],
    ["Hebrew and English", "דגל English\u200e"],
    ["a family", "👨\u200d👩\u200d👧\u200d👦"],
    ["a rainbow flag", "🏳\ufe0f\u200d🌈"],
    ["a woman with a tone of skin at a computer", "👩🏽\u200d💻"],
    ["the flag of a region", "🏴\u{E0067}\u{E0062}\u{E0073}\u{E0063}\u{E0074}\u{E007F}"],
    ["a heart as a picture", "❤\ufe0f"],
    ["a key of a telephone", "1\ufe0f\u20e3"],
    ["a variant of an ideograph", "葛\u{E0100}"],
    ["Mongolian with a variant", "\u1820\u180b"],
    ["letters, signs and spaces", "Ferry: “a” – b… 旗 é e\u0301 ½ €\u00a0"],
  ])("%s", (_, text) => {
    expect(clean(text)).toBe(text);
    expect(findInvisible(text)).toBeUndefined();
    expect(isBlank(text)).toBe(false);
  });
});

describe("what only hides goes", () => {
  test.each([
    ["a space of no width", "a\u200bb"],
    ["a soft hyphen", "a\u00adb"],
    ["a joiner between letters that are not joined", "a\u200db"],
    ["a non-joiner between them", "a\u200cb"],
    ["a non-joiner at the end of a Persian word", "می\u200c"],
    ["a mark of direction among letters from left to right", "a\u200fb"],
    ["an embedding", "a\u202ab"],
    ["an override, in Hebrew too", "דגל\u202eb"],
    ["an isolate", "a\u2066b"],
    ["words spelt in tags", "a\u{E0068}\u{E0069}b"],
    ["tags behind a flag that end nowhere", "🏴\u{E0067}\u{E0062}b"],
    ["a variant of a letter that has none", "a\ufe0fb"],
    ["a late variant of a letter", "a\u{E01EF}b"],
    ["a digit as a picture without its key", "1\ufe0fb"],
    ["a filler of Hangul", "a\u3164b"],
    ["a half-wide filler", "a\uffa0b"],
    ["a blank of braille", "a\u2800b"],
    ["a mark of the order of bytes", "a\ufeffb"],
    ["a joiner of words", "a\u2060b"],
    ["an invisible operator", "a\u2063b"],
    ["a joiner of graphemes", "a\u034fb"],
    ["a note without a head", "a\u{1D159}b"],
    ["an annotation", "a\ufff9b"],
    ["a separator of lines", "a\u2028b"],
    ["what Unicode keeps for invisible characters to come", "a\u{E0FFF}b"],
  ])("%s", (_, text) => {
    expect(findInvisible(text)).toBeDefined();
    expect(clean(text)).not.toBe(text);
    expect(findInvisible(clean(text))).toBeUndefined();
  });
});

test.each([
  "",
  " ",
  "\u200b",
  "\u00ad\u200e",
  "\u2800",
  "\u3164\u3164",
  "\u{E0041}",
  "\ufe0f",
  "\u0301",
  "\u3000",
  "\u200f\u061c",
])("%j is blank", (text) => {
  expect(isBlank(text)).toBe(true);
});

test("every code point that Unicode says to ignore is blank, and is found between Latin letters", () => {
  // The property is the engine's own; the code is asked what it does with each of its characters.
  for (let code = 0; code < 0x110000; code += 1) {
    const character = String.fromCodePoint(code);
    if (!/[\p{Default_Ignorable_Code_Point}\p{Bidi_Control}]/u.test(character)) continue;
    expect([code, isBlank(character), clean(`a${character}b`)]).toEqual([code, true, "ab"]);
  }
});

test("nothing invisible is left twice over, and the rest is as it was, whatever comes in", () => {
  fc.assert(
    fc.property(fc.string({ unit: "binary" }), (text) => {
      const once = clean(text);
      const kept = (whole: string) =>
        whole.replace(/[\p{DI}\p{Bidi_C}\u2028\u2029\u2800\u{1D159}\ufff9-\ufffb]/gu, "");
      expect(kept(once)).toBe(kept(text));
      expect(once).not.toMatch(/[\u202a-\u202e\u2066-\u2069]/);
    }),
  );
});
