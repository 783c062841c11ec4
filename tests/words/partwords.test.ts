import { expect, test } from "vitest";
import { letterWords } from "../../src/words/partwords.ts";

test("a letter is promised the text only where its address takes it along", () => {
  expect(letterWords.byMail("a@b.example")).toBe("by mail to a@b.example, with the text already in it.");
  expect(letterWords.atForm("forum.example", true)).toBe("at forum.example, with the text already in it.");
  expect(letterWords.atForm("forum.example", false)).toBe("at forum.example; copy the text first.");
  expect(letterWords.title("Flags")).toBe("A study for Flags");
});
