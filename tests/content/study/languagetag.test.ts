import { expect, test } from "vitest";
import { checkLanguage } from "../../../src/content/study/languagetag.ts";

// Source: RFC 5646, section 2.2.
test.each(["en", "en-GB", "cy", "ar-EG", "zh-Hant-TW"])("%s is a tag", (tag) => {
  expect(checkLanguage(tag)).toEqual([]);
});

test.each([
  ["German", "Type: language: de"],
  ["english", "Type: language: en"],
  ["e", "Type a tag such as en, en-GB or cy: language: en-GB"],
  ["en_GB!", "Type a tag such as en, en-GB or cy: language: en-GB"],
])("%s is none", (text, hint) => {
  expect(checkLanguage(text)).toMatchObject([{ rule: "study/wrong-language", path: "language", hint }]);
});
