import { expect, test } from "vitest";
import { formatStudyPath, presentStatus } from "../../src/views/status.ts";
import { plainFormat } from "../../src/words/format.ts";

test("a study lives in a folder of its own", () => {
  expect(formatStudyPath("a-square-2")).toBe("/studies/a-square-2/");
});

test.each(["", "..", "a/b", "A", "a--b", "-a", "a.b", "a b", "%2e"])("%j is no slug", (slug) => {
  expect(() => formatStudyPath(slug)).toThrow(RangeError);
});

test("every status has a word and says what it means", () => {
  for (const status of ["draft", "open", "adopted", "declined", "withdrawn"] as const) {
    const view = presentStatus(status, plainFormat);
    expect(view.word.toLowerCase()).toBe(status);
    expect(view.meaning.length).toBeGreaterThan(5);
  }
});
