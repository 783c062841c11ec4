import { expect, test } from "vitest";
import { checkShow } from "../../../src/content/study/showstep.ts";

const told = (show: unknown, options = 0) =>
  checkShow(show, options).map(({ rule, path, hint }) => [rule, path, hint]);

test("steps that there are, each once, in any order", () => {
  expect(told({ steps: ["after", "tried", "tried-2"], notes: { "the-flag": "Wait." } }, 2)).toEqual([]);
  expect(told(undefined)).toEqual([]);
  expect(told({ steps: "after", without: 3 })).toEqual([]);
});

test("an unknown step names the nearest", () => {
  expect(told({ steps: ["the flag"], without: ["form-afar"], notes: { "the-prize": "Wait." } })).toEqual([
    ["study/unknown-step", "show.steps.0", "Type: the-flag"],
    ["study/unknown-step", "show.without.0", "Type: from-afar"],
    ["study/unknown-step", "show.notes.the-prize", "Type: the-price"],
  ]);
  expect(told({ steps: ["encore"] })[0]?.[2]).toMatch(/^The steps are: the-flag, /);
});

test("an option that there is none of has no step", () => {
  expect(told({ steps: ["tried-2"] }, 1)).toEqual([["study/unknown-step", "show.steps.0", "Type: tried"]]);
});

test("a step that stands twice", () => {
  expect(told({ steps: ["after", "after"] })).toEqual([
    ["study/step-twice", "show.steps.1", "Delete one of the two."],
  ]);
  expect(told({ steps: ["after"], without: ["after"] })).toEqual([
    ["study/step-twice", "show.without.0", "Delete one of the two."],
  ]);
});
