import { expect, test } from "vitest";
import { checkMeant, checkScripts } from "../../../src/content/study/namesense.ts";

const rulesOf = (hex: string, name: string) => checkMeant({ [hex]: name }).map(({ rule }) => rule);

test("the plain name of quite another colour is told, with what to type", () => {
  expect(checkMeant({ "#000": "White" })).toEqual([
    {
      rule: "study/name-contradicts",
      severity: "warning",
      path: "names.#000",
      on: "value",
      reason: "“#000” is called “White”, and it is black.",
      hint: 'Type: "#000000": black\nOr give the name to the colour that it says.',
    },
  ]);
});

// Hex values of the names: CSS Color Module Level 4, section 6.1. That the pairs here contradict is common practice, no source.
test.each([
  ["#ff0000", "dark blue"],
  ["#008000", "sky blue"],
  ["#008000", "skyblue"],
  ["#ffd700", "white"],
  ["#006400", "crimson"],
  ["#ffffff", "navy"],
])("%s is not %s", (hex, name) => expect(rulesOf(hex, name)).toEqual(["study/name-contradicts"]));

// Shades that tables of flag laws and of trade call so; common practice, no source.
test.each([
  ["#1b2a5c", "navy"],
  ["#00002a", "navy"],
  ["#d4af37", "gold"],
  ["#c98a12", "gold"],
  ["#ff9900", "yellow"],
  ["#d05a1e", "red"],
  ["#008080", "blue"],
  ["#008080", "green"],
  ["#0000ff", "azure"],
  ["#3b1f10", "chocolate"],
  ["#c0c0c0", "silver"],
  ["#7a1020", "wine"],
  ["#000000", "the colour of ink"],
  ["#ffffff", "белый"],
])("%s may be called %s", (hex, name) => expect(rulesOf(hex, name)).toEqual([]));

// U+0456, U+043E, U+0435 and U+03B2 look like i, o, e and ß. Source: Unicode, confusables.txt.
test.each([
  ["wh\u0456te", ": white"],
  ["\u043erange", ": orange"],
  ["s\u0435a of ink", ", in letters of one alphabet."],
  ["\u03b2lue", ", in letters of one alphabet."],
  // Not one letter of it is Latin.
  ["\u0433\u0435\u0501", ": red"],
])("%s is not what it looks like", (name, typed) => {
  expect(checkScripts({ change: { part: name } })).toMatchObject([
    { rule: "study/mixed-script", path: "change.part", hint: `Type it again by hand${typed}` },
  ]);
});

test("a word that only looks like a colour is held to it", () => {
  expect(rulesOf("#000000", "wh\u0456te")).toEqual(["study/name-contradicts"]);
  expect(rulesOf("#ffffff", "wh\u0456te")).toEqual([]);
});

test("words of one alphabet each, and what is no text, pass", () => {
  for (const name of ["κόκκινο", "красный", "rouge и blanc", "β-carotene", "ΔE00 is 12", 7, undefined])
    expect(checkScripts({ title: name })).toEqual([]);
  expect(checkMeant({ "dark blue": "white", "#fff": 7 })).toEqual([]);
});

// U+1D400 is MATHEMATICAL BOLD CAPITAL A; U+E000 is for private use. Source: Unicode, UnicodeData.txt.
test("signs in the place of letters are told wherever they stand", () => {
  const raw = { tags: ["bold", "\u{1d400}ll"], decided: { by: "the \ue000 council" }, title: "\u0410dopted" };
  expect(checkScripts(raw)).toMatchObject([
    { path: "tags.1", hint: "Type it again by hand: All" },
    { path: "decided.by", reason: expect.stringContaining("(U+E000)") },
    { path: "title", reason: expect.stringContaining("(U+0410)") },
  ]);
});

// U+FF37 is FULLWIDTH LATIN CAPITAL LETTER W. Source: Unicode, UnicodeData.txt.
test("letters of full width are read as those they stand for", () => {
  expect(rulesOf("#ff0000", "\uff37hite")).toEqual(["study/name-contradicts"]);
  expect(checkScripts({ title: "\uff37hite" })).toMatchObject([{ hint: "Type it again by hand: White" }]);
});
