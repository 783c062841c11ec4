import { expect, test } from "vitest";
import { createFormat, plainFormat } from "../../src/words/format.ts";
import { capitalise, formatNames, nameInText } from "../../src/words/phrase.ts";

test("a selected part reads as one in a sentence", () => {
  expect(nameInText({ name: "brown, selected part", part: { of: "brown" } }, plainFormat)).toBe(
    "the selected brown",
  );
  const wheel = { name: "the wheel", part: { of: "brown", called: "the wheel" } };
  expect(nameInText(wheel, plainFormat)).toBe("the wheel");
  expect(nameInText({ name: "dark brown" }, plainFormat)).toBe("dark brown");
});

test("an edge is called by its two paints, in the order in which the page is read", () => {
  expect(formatNames(["white", "light blue"], plainFormat)).toBe("white / light blue");
  expect(formatNames(["navy", "أسود"], createFormat("ar"))).toBe("\u200f\u2068navy\u2069 / أسود");
});

test("only the first letter is raised", () => {
  expect(capitalise("dark Blue")).toBe("Dark Blue");
});
