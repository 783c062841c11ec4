import { expect, test } from "vitest";
import { describeUnknownColour } from "../../../src/content/study/unknowncolour.ts";

test.each([
  ["7a1020", [], 'Put # before it: "#7a1020"'],
  ["#f4c43", [], 'Type all six, such as "#f4c430".'],
  ["signal rde", ["signal red"], "Type “signal red”, if that is meant."],
  ["golden", ["red"], "Type “gold”, if that is meant."],
  ["xyzzyx", [], 'Type a hex colour in quotes, such as "#f4c430".'],
  ["xyzzyx", ["red", "sea"], 'Type a hex colour in quotes, such as "#f4c430", or a name: red, sea.'],
])("%s, with the palette %j: %s", (text, names, hint) => {
  expect(describeUnknownColour(text, names).hint).toBe(hint);
});

test("the palette is named only where it may be used", () => {
  expect(describeUnknownColour("x", []).reason).toBe("“x” is not a CSS colour.");
  expect(describeUnknownColour("x", ["red"]).reason).toBe(
    "“x” is neither a name of the palette nor a CSS colour.",
  );
});

test("of equals the palette's own name is proposed", () => {
  expect(describeUnknownColour("golt", ["bolt"]).hint).toBe("Type “bolt”, if that is meant.");
});
