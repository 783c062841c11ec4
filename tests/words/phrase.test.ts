import { expect, test } from "vitest";
import { plainFormat } from "../../src/words/format.ts";
import { capitalise, nameInText } from "../../src/words/phrase.ts";

test("a selected part reads as one in a sentence", () => {
  expect(nameInText({ name: "brown, selected part", part: { of: "brown" } }, plainFormat)).toBe(
    "the selected brown",
  );
  const wheel = { name: "the wheel", part: { of: "brown", called: "the wheel" } };
  expect(nameInText(wheel, plainFormat)).toBe("the wheel");
  expect(nameInText({ name: "dark brown" }, plainFormat)).toBe("dark brown");
});

test("only the first letter is raised", () => {
  expect(capitalise("dark Blue")).toBe("Dark Blue");
});
