import { expect, test } from "vitest";
import { parse } from "yaml";
import { checkPlaceholders, placeholders } from "../../../src/content/study/placeholder.ts";

const pathsOf = (yaml: string) =>
  checkPlaceholders(parse(yaml)).map(({ path, severity }) => [path, severity]);

test("each of the words is told where it stands, as a warning", () => {
  const yaml = `
flag: ${placeholders.flag}
authors: [${placeholders["authors.0"]}]
credit: { author: ${placeholders["credit.author"]}, licence: CC0-1.0 }
symbolism: ${placeholders.symbolism}
`;
  expect(pathsOf(yaml)).toEqual([
    ["flag", "warning"],
    ["authors.0", "warning"],
    ["credit.author", "warning"],
    ["symbolism", "warning"],
  ]);
});

test.each([
  "authors: [Ines Valcourt]",
  "authors: Your Name",
  "credit: Who drew it",
  "title: Your Name",
  "{}",
])("%s is none", (yaml) => expect(pathsOf(yaml)).toEqual([]));
