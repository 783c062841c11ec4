import { expect, test } from "vitest";
import { formatTitle } from "../../src/words/title.ts";

test("the flag stands over the title, where the study names one", () => {
  expect(formatTitle({ flag: "The Kedgeport anchor", title: "A gold anchor" })).toBe(
    "The Kedgeport anchor: A gold anchor",
  );
  expect(formatTitle({ title: "A gold anchor" })).toBe("A gold anchor");
});
