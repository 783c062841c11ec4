import { describe, expect, test } from "vitest";
import { listBranches, listValues } from "../../src/content/text/message.ts";
import { findCatalogue, languages } from "../../src/words/catalogue.ts";
import { english, type WordId } from "../../src/words/en/all.ts";
import { readSources } from "../structure/source.ts";

const ids = Object.keys(english) as WordId[];

describe.each(languages)("in %s", (language) => {
  const catalogue = findCatalogue(language);
  const categoriesOf = (type: Intl.PluralRuleType) =>
    new Intl.PluralRules(language, { type }).resolvedOptions().pluralCategories;

  test.each(ids)("%s holds the values and tags of the English", (id) => {
    expect(listValues(catalogue[id])).toEqual(listValues(english[id]));
  });

  test("a plural has a branch for each number that the language tells apart", () => {
    // A million of something, in French and Spanish: no gallery has it.
    const isNeeded = (category: string) => category !== "many" || language === "ar";
    const lacking = ids.filter((id) =>
      listBranches(catalogue[id]).some(({ type, has }) =>
        categoriesOf(type).some((category) => isNeeded(category) && !has.includes(category)),
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
