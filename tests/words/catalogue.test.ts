import { parse, TYPE } from "@formatjs/icu-messageformat-parser";
import { describe, expect, test } from "vitest";
import { english, findCatalogue, languages, type WordId } from "../../src/words/catalogue.ts";
import { readSources } from "../structure/source.ts";

type Element = ReturnType<typeof parse>[number];

/** All parts of a message, those in branches and tags too. */
function walk(elements: readonly Element[]): readonly Element[] {
  return elements.flatMap((element) => {
    if (element.type === TYPE.plural || element.type === TYPE.select)
      return [element, ...Object.values(element.options).flatMap(({ value }) => walk(value))];
    return element.type === TYPE.tag ? [element, ...walk(element.children)] : [element];
  });
}

function listNames(message: string): readonly string[] {
  const named = walk(parse(message)).flatMap((element) =>
    element.type === TYPE.literal || element.type === TYPE.pound
      ? []
      : [`${element.type === TYPE.tag ? "<" : ""}${element.value}`],
  );
  return [...new Set(named)].sort();
}

const ids = Object.keys(english) as WordId[];

describe.each(languages)("in %s", (language) => {
  const catalogue = findCatalogue(language);
  const categoriesOf = (type: Intl.PluralRuleType) =>
    new Intl.PluralRules(language, { type }).resolvedOptions().pluralCategories;

  test.each(ids)("%s holds the values and tags of the English", (id) => {
    expect(listNames(catalogue[id])).toEqual(listNames(english[id]));
  });

  test("a plural has a branch for each number that the language tells apart", () => {
    const lacking = ids.filter((id) =>
      walk(parse(catalogue[id])).some(
        (element) =>
          element.type === TYPE.plural &&
          // A million of something, in French and Spanish: no gallery has it.
          categoriesOf(element.pluralType ?? "cardinal").some(
            (category) => !(category in element.options) && !(category === "many" && language !== "ar"),
          ),
      ),
    );
    expect(lacking).toEqual([]);
  });
});

test("every message is said somewhere", () => {
  const code = readSources(["src", "templates"], [".ts", ".tsx"])
    .filter(({ path }) => !/^src\/words\/[a-z]{2}\//.test(path))
    .map(({ text }) => text)
    .join("\n");
  expect(ids.filter((id) => !code.includes(`"${id}"`))).toEqual([]);
});

test("a language of a region has the words of the language, one that is not written those of English", () => {
  expect(findCatalogue("en-GB")).toBe(findCatalogue("en"));
  expect(findCatalogue("cy")).toBe(findCatalogue("en"));
});
