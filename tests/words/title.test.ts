import { expect, test } from "vitest";
import { createFormat } from "../../src/words/format.ts";
import { formatTitle } from "../../src/words/title.ts";

const english = createFormat("en");

test("the flag stands over the title, where the study names one", () => {
  expect(formatTitle({ flag: "The Kedgeport anchor", title: "A gold anchor" }, english)).toBe(
    "The Kedgeport anchor: A gold anchor",
  );
  expect(formatTitle({ flag: "L’ancre", title: "Une ancre d’or" }, createFormat("fr"))).toBe(
    "L’ancre\u00a0: Une ancre d’or",
  );
  expect(formatTitle({ title: "A gold anchor" }, english)).toBe("A gold anchor");
});
