// What a gallery calls its colours, from typed names: one colour, one name, but never against an author's own words.
import { expect, test } from "vitest";
import { gatherNames, pickNames } from "../../src/analysis/sharedname.ts";
import type { Hex } from "../../src/colour/colour.ts";

const named = (...names: readonly (readonly [Hex, string])[]) => ({ names: new Map(names) });

test("a colour has the name that most studies give it, then the first in the alphabet", () => {
  const shared = gatherNames([
    named(["#1b6375", "sea"], ["#de7d30", "rust"]),
    named(["#1b6375", "teal"], ["#de7d30", "copper"]),
    named(["#1b6375", "teal"]),
    {},
  ]);
  expect(Object.fromEntries(shared)).toEqual({ "#1b6375": "teal", "#de7d30": "copper" });
});

test("only colours of the drawing or of the study have it, and none that the study may have typed by a word", () => {
  const shared = new Map<Hex, string>([["#1b6375", "teal"]]);
  const pick = (text: string, typed = "") => [...pickNames(shared, text, typed).values()];
  expect(pick('<path fill="#1B6375"/>')).toEqual(["teal"]);
  expect(pick("<path/>", "#1b6375")).toEqual(["teal"]);
  expect(pick("<path/>")).toEqual([]);
  expect(pick("#1b6375", '::figure{edge="white / dark blue"}')).toEqual([]);
  expect(pick("#1b6375", "Teal")).toEqual([]);
});
