import { expect, test } from "vitest";
import { isPlain, listBranches, listValues, readMessage } from "../../../src/content/text/message.ts";

// Unicode CLDR, plural rules, cardinal: `en` has one and other, `ar` all six. ICU, “Formatting Messages”.
const edges = "{count, plural, one {# edge of {flag}} other {# edges of {flag}}}";

test("values are filled in by the plural rules of the language", () => {
  const say = (count: number) => readMessage(edges, "en").format({ count, flag: "Tollmere" });
  expect([1, 2, 1200].map(say)).toEqual([
    "1 edge of Tollmere",
    "2 edges of Tollmere",
    "1200 edges of Tollmere",
  ]);
});

test("names of values and tags, once each", () => {
  expect(listValues(edges)).toEqual(["{count}", "{flag}"]);
  expect(listValues("<a>{flag}</a> and {flag}")).toEqual(["<a>", "{flag}"]);
  expect(listValues("as it stands")).toEqual([]);
});

test("the branches of each plural", () => {
  expect(listBranches(edges)).toEqual([{ type: "cardinal", has: ["one", "other"] }]);
  expect(listBranches("{place, selectordinal, one {#st} other {#th}}")).toEqual([
    { type: "ordinal", has: ["one", "other"] },
  ]);
});

test.each(["{", "{a", "<a>b", "{n, plural, one {x}}"])("%s cannot be read", (message) => {
  expect(() => listValues(message)).toThrow(SyntaxError);
  expect(() => readMessage(message, "en")).toThrow(SyntaxError);
});

test("what is said as it stands", () => {
  expect(["Where they meet", "{a}", "<a>b</a>", "it''s"].map(isPlain)).toEqual([true, false, false, false]);
});
