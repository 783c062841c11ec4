import { expect, test } from "vitest";
import { linkList } from "../../src/views/linklist.ts";
import { createFormat } from "../../src/words/format.ts";

const links = ["A", "B", "C"].map((text) => ({ text, address: `${text}/` }));
const say = (language: string, type?: "unit") =>
  linkList(links, createFormat(language), type)
    .map(({ text, address }) => (address === undefined ? text : `[${text}]`))
    .join("");

test("the language says what stands between links", () => {
  expect(say("en")).toBe("[A], [B], and [C]");
  expect(say("de")).toBe("[A], [B] und [C]");
  expect(say("en", "unit")).toBe("[A], [B], [C]");
});
