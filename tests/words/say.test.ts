import { expect, test } from "vitest";
import { createSay } from "../../src/words/say.ts";

test("values are filled in, and a society's own words take the place of ours", () => {
  const say = createSay("en", { "verdict.changeInPart": "In {part}: from {before} to {after}." });
  expect(say("verdict.change", { before: "Red", after: "gold" })).toBe("Red becomes gold.");
  expect(say("verdict.changeInPart", { before: "red", after: "gold", part: "the wheel" })).toBe(
    "In the wheel: from red to gold.",
  );
});

test("in Arabic a value in other letters keeps together, and the message runs from the right all the same", () => {
  const say = createSay("ar", {
    "verdict.change": "{after}: {before}",
    "colour.deep": "{word, select, black {–} other {{colour}}}",
  });
  expect(say("verdict.change", { before: "أحمر", after: "gold" })).toBe("\u200f\u2068gold\u2069: أحمر");
  expect(say("verdict.change", { before: "red", after: "gold" })).toBe("gold: red");
  expect(say("colour.deep", { word: "black", colour: "gold" })).toBe("–");
});

test.each([
  ["en", 1, "From 1 flag height, enlarged"],
  ["en", 20, "From 20 flag heights, enlarged"],
  ["fr", 1.5, "À 1,5 hauteur de drapeau, agrandi"],
  ["ar", 3, "من 3 أضعاف ارتفاع العلم، مكبَّرًا"],
])("a distance in %s of %f flag heights", (language, from, said) => {
  expect(createSay(language)("show.fromStill", { from })).toBe(said);
});

test("a message with tags comes in pieces", () => {
  const say = createSay("en");
  const tags = { distance: (inside: readonly unknown[]) => ({ link: inside.join("") }) };
  expect(say.parts("edges.moreOnDistance", tags)).toEqual(["More on ", { link: "distance" }]);
});

test("a message without one of its values is a fault of ours", () => {
  const say = createSay("en") as unknown as (id: string) => string;
  expect(() => say("verdict.change")).toThrow("before");
});
