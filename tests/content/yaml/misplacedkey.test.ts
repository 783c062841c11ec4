import { describe, expect, test } from "vitest";
import { studyExamples } from "../../../src/content/study/studykey.ts";
import { describeHomeless, findHome, writeValue } from "../../../src/content/yaml/misplacedkey.ts";

const guide = { whole: "A study", examples: studyExamples };

test.each([
  ["with", { typed: "with", parent: "change", key: "with" }],
  ["license", { typed: "license", parent: "credit", key: "licence" }],
  ["selec", { typed: "selec", parent: "focus", key: "select" }],
  ["author", undefined],
  ["titel", undefined],
  ["layout", undefined],
])("where %s belongs", (typed, home) => {
  expect(findHome(typed, guide)).toEqual(home);
});

describe("keys that belong further in", () => {
  const homeless = ["replace", "with"].map((key) => ({ typed: key, parent: "change", key }));

  test("are one finding, with the lines to type", () => {
    expect(describeHomeless(homeless, { replace: "#7a1020", with: "sea green" })).toEqual([
      {
        rule: "study/unknown-key",
        path: "replace",
        on: "key",
        reason: "“replace” and “with” belong under “change”.",
        hint: 'Type, with two spaces before what belongs to it:\nchange:\n  replace: "#7a1020"\n  with: sea green',
        meant: "change",
      },
    ]);
  });

  test("are moved where their home is there already", () => {
    const [only] = describeHomeless([{ typed: "only", parent: "change", key: "only" }], {
      only: "#wheel",
      change: { replace: "red", with: "blue" },
    });
    expect(only?.reason).toBe("“only” belongs under “change”.");
    expect(only?.hint).toBe('Move it there and type: only: "#wheel"');
  });
});

test.each<[unknown, string]>([
  ["Ines Valcourt", "Ines Valcourt"],
  ["#7a1020", '"#7a1020"'],
  ["a: b", '"a: b"'],
  [12, "12"],
  [["a", "#b"], '[a, "#b"]'],
  [{ a: 1 }, "…"],
  [null, "…"],
])("%j is written %s", (value, text) => {
  expect(writeValue(value)).toBe(text);
});
