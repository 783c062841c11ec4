import { expect, test } from "vitest";
import { checkAnsweredChanges, findNamedChange } from "../../../src/analysis/options/namedchange.ts";
import { matrix } from "../../publish/ranked.ts";

const about = (option: string) =>
  checkAnsweredChanges([{ key: "1", by: "A", says: "ask", text: "?", option, at: { file: "a.md" } }], matrix);

test.each(["red to straw", " Red → Straw ", "#c8202f to #f4c430", "red -> #f4c430"])(
  "a change is named by its colours or their hexes: %s",
  (text) => {
    expect(findNamedChange(text, matrix)).toEqual({
      replace: "#c8202f",
      with: "#f4c430",
      name: "red to straw",
    });
    expect(about(text)).toEqual([]);
  },
);

test("what was not tried is told, with a change that was", () => {
  for (const text of ["straw to red", "red", "dark blue to straw", "red to ", "to straw"])
    expect(findNamedChange(text, matrix), text).toBeUndefined();
  expect(findNamedChange("red to straw", undefined)).toBeUndefined();
  expect(about("pink to straw")).toMatchObject([
    { rule: "study/answer-option", severity: "warning", file: "a.md" },
  ]);
  expect(about("pink to straw")[0]?.hint).toContain("option: red to white");
});
