import { expect, test } from "vitest";
import { describeUnknownColour } from "../../src/study/unknown.ts";

test.each([
  ["7a1020", [], 'Put # before it: "#7a1020"'],
  ["#f4c43", [], 'A hex colour is # and 3 or 6 digits, 0 to 9 and a to f, such as "#f4c430".'],
  ["signal rde", ["signal red"], "Did you mean “signal red”?"],
  ["golden", ["red"], "Did you mean “gold”?"],
  ["xyzzyx", [], 'Type a CSS colour in quotes, such as "#f4c430".'],
  [
    "xyzzyx",
    ["red", "sea"],
    'Type a CSS colour in quotes, such as "#f4c430", or one of the palette: red, sea.',
  ],
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
  expect(describeUnknownColour("golt", ["bolt"]).hint).toBe("Did you mean “bolt”?");
});
