// Everything that a reader sees stands in the catalogue of words: no page has a word of its own.
import { expect, test } from "vitest";
import { figureKinds } from "../../src/content/study/figurekind.ts";
import { listLiterals, listStyleWords } from "./literal.ts";
import { readSources } from "./source.ts";

/** Names of data, not words for readers: kinds, verdicts, divisions of a field, ways round, reasons. */
const names: readonly string[] = [
  ...figureKinds,
  ...["clearer, at a price", "less clear", "no gain"],
  ...["per pale", "per bend", "per bend sinister", "per fess"],
  ...["both metals", "both colours", "parted field", "as it is", "upside down"],
  // Types of schema.org, and colours that the method page compares, by the names of floor 1.
  ...["Thing", "Person", "Organization", "dark blue", "mid green", "light blue"],
];

/** What machines read: styles, names of files, marks in HTML, policies, headers, BibTeX, a file of an answer, names of typefaces and of a colour space. */
const machines =
  /^(?:edge|and|min|ΔE00|says: ask|CIELAB .*|Source (?:Serif 4|Sans 3)|(?:Serif|Sans) Delta|[\s\S]*(?:url\(|font-display:)[\s\S]*|original\.svg|study\.md|<span class=.*|original: original\.svg[\s\S]*|credit: \{[\s\S]*|trusted-types .*|X-Content-.*|Referrer-.*|; img-src.*|Cache-.*|nofollow .*|width=device-width.*|light dark|sum-title .*|<!DOCTYPE.*)$/;

/** Where a comma or a semicolon stands between items of a style, a policy, a record for search or a formula. */
const listing: readonly string[] = [
  ...["src/views/fontface.ts", "src/views/pagepolicy.ts", "src/views/schemarecord.ts"],
  "templates/parts/formula.tsx",
];

/** What scripts of pages tell programs: a channel, a key, a command, the line of a ballot. */
const scripted: readonly string[] = ["steps of", "Escape", "counterchange begin", "ballot"];

test("views and templates hold no words", () => {
  const found = readSources(["src/views", "templates"], [".ts", ".tsx"]).flatMap(listLiterals);
  expect(found.length).toBeGreaterThan(50);
  const words = found.filter(
    ({ path, text }) =>
      !names.includes(text) && !machines.test(text) && !(text.length === 1 && listing.includes(path)),
  );
  expect(words.map(({ path, line, text }) => `${path}:${line}: ${text}`)).toEqual([]);
});

test("scripts of pages hold no words", () => {
  const found = readSources(["templates/client"], [".js"]).flatMap(listLiterals);
  const words = found.filter(({ text }) => !scripted.includes(text) && !machines.test(text));
  expect(words.map(({ path, line, text }) => `${path}:${line}: ${text}`)).toEqual([]);
});

test("styles hold no words", () => {
  const styles = readSources(["templates"], [".css"]);
  expect(styles.length).toBeGreaterThan(10);
  expect(
    styles.flatMap(({ path, text }) => listStyleWords(text).map((words) => `${path}: ${words}`)),
  ).toEqual([]);
});

test.each([
  ['a::before { content: "Sort by"; }', ["Sort by"]],
  ["a::before { content: 'of ' counter(place); }", ["of "]],
  ['a::before { content: attr(data-order) "; " counter(place, decimal) "\\2192"; font: "Two Words"; }', []],
])("in %s", (text, words) => expect(listStyleWords(text)).toEqual(words));

test.each([
  ["a.tsx", "export const a = <p>Hello</p>;", ["Hello"]],
  ["a.tsx", 'export const a = <p aria-label="The edge map" class="edge map" />;', ["The edge map"]],
  ["a.ts", `export const a = (count: number) => \`$\{count} edges of it\`;`, ["edges of it"]],
  [
    "a.ts",
    'import b from "two words"; type C = "three small words"; throw new Error("no reader sees it");',
    [],
  ],
  ["a.ts", 'export const a = say("edges.where");', []],
  ["a.ts", `export const a = (b: string, c: string) => \`$\{b}: $\{c}\`;`, [":"]],
  ["a.tsx", "export const a = <p>{one}, {other}</p>;", [","]],
  ["a.js", 'document.querySelector("main a").textContent = "No study";', ["No study"]],
])("in %s, %s", (path, text, words) => {
  expect(listLiterals({ path, text }).map((found) => found.text)).toEqual(words);
});
