import { expect, test } from "vitest";
import { cutText, listFitting, wrapText } from "../../../src/cli/text/wrap.ts";

test("lines break between words, and never before a %", () => {
  expect(wrapText("clarity rises to 100 % with white", 20)).toEqual(["clarity rises to", "100 % with white"]);
  expect(wrapText("one two", 20, "  ")).toEqual(["  one two"]);
  expect(wrapText("one two", 6, "  ")).toEqual(["  one", "  two"]);
});

test("a word longer than a line is cut, and takes two columns where it is wide", () => {
  expect(wrapText("abcdefgh ij", 5)).toEqual(["abcd…", "ij"]);
  expect(cutText("旗旗旗旗", 6)).toBe("旗旗…");
  expect(cutText("dark blue", 9)).toBe("dark blue");
  expect(cutText("dark blue", 6)).toBe("dark…");
});

test("what has no room is counted", () => {
  expect(listFitting(["red", "dark blue"], ", ", 14)).toBe("red, dark blue");
  expect(listFitting(["red", "dark blue", "green"], ", ", 18)).toBe("red and 2 more");
  expect(listFitting(["light yellow", "green"], ", ", 8)).toBe("light y…");
});
