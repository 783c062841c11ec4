import { expect, test } from "vitest";
import { createSay } from "../../src/words/say.ts";

test("values are filled in, and a society's own words take the place of ours", () => {
  const say = createSay("en", { "verdict.changeInPart": "In {part}: from {before} to {after}." });
  expect(say("verdict.change", { before: "Red", after: "gold" })).toBe("Red becomes gold.");
  expect(say("verdict.changeInPart", { before: "red", after: "gold", part: "the wheel" })).toBe(
    "In the wheel: from red to gold.",
  );
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
