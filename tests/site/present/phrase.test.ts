import { expect, test } from "vitest";
import { capitalise, nameInText, nameNew, tellApart } from "../../../src/site/present/phrase.ts";

const green = (hex: `#${string}`) => ({ hex, name: "green" });

test.each([
  ["#78ab62", "#31744d", "a darker green"],
  ["#31744d", "#78ab62", "a lighter green"],
  ["#2f8f3f", "#2f8f6a", "a different green"],
  ["#2f8f3f", "#2f8e40", "almost the same green"],
] as const)("%s to %s is %s", (before, after, said) => {
  expect(nameNew(green(before), green(after))).toBe(said);
});

test("names that differ say enough", () => {
  expect(nameNew(green("#78ab62"), { hex: "#000000", name: "black" })).toBe("black");
  expect(tellApart("green", "black")).toEqual(["green", "black"]);
  expect(tellApart("green", "green")).toEqual(["the old green", "the new green"]);
});

test("a selected part reads as one in a sentence", () => {
  expect(nameInText("brown, selected part")).toBe("the selected brown");
  expect(nameInText("dark brown")).toBe("dark brown");
});

test("only the first letter is raised", () => {
  expect(capitalise("dark Blue")).toBe("Dark Blue");
});
