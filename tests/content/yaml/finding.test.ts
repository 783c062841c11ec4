import { expect, test } from "vitest";
import { readSource } from "../../../src/content/text/textsource.ts";
import { capital, exampleOf, labelOf, placeFindings } from "../../../src/content/yaml/finding.ts";
import { parseYaml } from "../../../src/content/yaml/readyaml.ts";

test.each([
  ["title", "“title”"],
  ["change.with", "“with”"],
  ["authors.1", "item 2 of “authors”"],
  ["options.0.with", "“with”"],
])("%s is called %s", (path, label) => {
  expect(labelOf(path)).toBe(label);
});

test("the example of an item is found under a star", () => {
  const guide = { whole: "x", examples: { "options.*.with": "with: red", "tags.*": "tags: [a]" } };
  expect(exampleOf(guide, "options.12.with")).toBe("with: red");
  expect(exampleOf(guide, "tags.0")).toBe("tags: [a]");
  expect(exampleOf(guide, "title")).toBeUndefined();
});

test("a finding is shown at its value, its key, or its parent; what has no place, at the last line", () => {
  const text = "change:\n  with: red\n---";
  const { value: source } = readSource("a", new TextEncoder().encode(text));
  const data = source && parseYaml(source, "change:\n  with: red\n").value;
  if (!source || !data) throw new Error("the test's own YAML is wrong");
  const at = (path: string, on: "key" | "value" | "parent") =>
    placeFindings(source, data, 3, [{ rule: "a/b", path, on, reason: "" }]).map(({ place }) => [
      place?.line,
      place?.column,
    ]);
  expect(at("change.with", "value")).toEqual([[2, 9]]);
  expect(at("change.with", "key")).toEqual([[2, 3]]);
  expect(at("change.replace", "parent")).toEqual([[1, 1]]);
  expect(at("title", "parent")).toEqual([[3, 1]]);
});

test("a sentence begins with a capital", () => {
  expect(capital("item 1")).toBe("Item 1");
});
