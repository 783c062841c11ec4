import { expect, test } from "vitest";
import { defaultGallery, parseGallery } from "../../../src/content/gallery/galleryfile.ts";
import { formatProblems } from "../../../src/problem/problemtext.ts";

const parse = (text: string) => parseGallery("gallery.yaml", new TextEncoder().encode(text));
const head = "title: Flags of the Sound\naddress: https://flags.example/\n";
const print = (text: string) => formatProblems(parse(head + text).problems);

test("every setting", () => {
  const { value, problems } = parse(`${head}description: Measured.
language: en-GB
society: The Sound Flag Society
viewingDistance: 80
cloth: { black: 4, white: 88.5 }
palette: { white: "#fff", sea green: "#2e8b70" }
`);
  expect(problems).toEqual([]);
  expect(value).toEqual({
    title: "Flags of the Sound",
    description: "Measured.",
    address: "https://flags.example/",
    language: "en-GB",
    society: "The Sound Flag Society",
    viewingDistance: 80,
    cloth: { black: 4, white: 88.5 },
    palette: new Map([
      ["white", "#fff"],
      ["sea green", "#2e8b70"],
    ]),
  });
});

test("what is not said has its default", () => {
  const { value, problems } = parse(head);
  expect(problems).toEqual([]);
  expect(value).toEqual({
    ...defaultGallery,
    title: "Flags of the Sound",
    address: "https://flags.example/",
  });
  expect(value).toMatchObject({ viewingDistance: 40, cloth: { black: 5, white: 85 }, language: "en" });
});

test("a wrong setting has its default, the others stand", () => {
  const { value, problems } = parse(`${head}viewingDistance: far\nlanguage: cy\n`);
  expect(value).toMatchObject({ viewingDistance: 40, language: "cy", title: "Flags of the Sound" });
  expect(problems.map(({ rule }) => rule)).toEqual(["study/wrong-type"]);
});

test("a file that is no map gives all the defaults", () => {
  expect(parse("- a").value).toEqual(defaultGallery);
});

test.each(["http://localhost:8080/", "https://flags.example/a/b/"])("%s is an address", (address) => {
  expect(formatProblems(parse(`title: x\naddress: ${address}`).problems)).toBe("");
});

test.each([
  "flags.example",
  "/flags/",
  "ftp://flags.example/",
  "javascript:alert(1)",
  "https://",
  "https://a b/",
  "https://u:p@flags.example/",
])("%s is no address", (address) => {
  expect(parse(`title: x\naddress: "${address}"`).problems.map(({ rule }) => rule)).toEqual([
    "study/wrong-address",
  ]);
});

test.each(["en", "en-GB", "zh-Hant-TW", "sl-rozaj"])("%s is a language", (language) => {
  expect(print(`language: ${language}`)).toBe("");
});

test.each<[string, string, string]>([
  [
    "no title and no address",
    "language: en\n",
    `\
gallery.yaml:1:1  warning  gallery.yaml does not say “title”, so it is “Flag redesign studies”.  study/missing-key
    language: en
    ^^^^^^^^^^^^
    Add a line: title: Flags of the Sound

gallery.yaml:1:1  warning  gallery.yaml does not say “address”, so it is “http://localhost:8080/”.  study/missing-key
    language: en
    ^^^^^^^^^^^^
    Add a line: address: https://flags.example/`,
  ],
])("%s", (_, text, report) => {
  expect(formatProblems(parse(text).problems)).toBe(report);
});

// What an author reads, letter for letter. The lines follow a title and an address, so they begin on line 3.
test.each<[string, string, string]>([
  [
    "a mistyped key",
    "viewingdistence: 40",
    `\
gallery.yaml:3:1  error  gallery.yaml has no key “viewingdistence”.  study/unknown-key
    viewingdistence: 40
    ^^^^^^^^^^^^^^^
    Type “viewingDistance”.`,
  ],
  [
    "a distance out of range",
    "viewingDistance: 1001",
    `\
gallery.yaml:3:18  error  “viewingDistance” is 1001; it must be at most 1000.  study/out-of-range
    viewingDistance: 1001
                     ^^^^
    Type, for example: viewingDistance: 40`,
  ],
  [
    "a distance without end",
    "viewingDistance: .inf",
    `\
gallery.yaml:3:18  error  “viewingDistance” is “.inf”, which YAML reads as a number without end; it must be a number.  study/wrong-type
    viewingDistance: .inf
                     ^^^^
    Type, for example: viewingDistance: 40`,
  ],
  [
    "black cloth that is lighter than white",
    "cloth: { black: 85, white: 5 }",
    `\
gallery.yaml:3:8  error  Black cloth (85 %) must reflect less than white cloth (5 %).  study/wrong-cloth
    cloth: { black: 85, white: 5 }
           ^^^^^^^^^^^^^^^^^^^^^^^
    Type: cloth: { black: 5, white: 85 }`,
  ],
  [
    "a language in words",
    "language: English, British",
    `\
gallery.yaml:3:11  error  “language” is “English, British”, which is not a language tag.  study/wrong-language
    language: English, British
              ^^^^^^^^^^^^^^^^
    Type a tag such as en, en-GB or cy: language: en-GB`,
  ],
  [
    "palette colours without quotes, unknown, and of a name that cannot be",
    'palette:\n  red: #c00\n  blue: blu\n  __proto__: "#ffffff"',
    `\
gallery.yaml:4:8  error  Without quotes, # begins a comment, and “#c00” is lost.  study/quote-hash
      red: #c00
           ^^^^
    Put it in quotes: red: "#c00"

gallery.yaml:5:9  error  “blu” is not a CSS colour.  study/wrong-colour
      blue: blu
            ^^^
    Type “blue”, if that is meant.

gallery.yaml:6:3  error  “__proto__” cannot be the name of a colour.  study/wrong-palette
      __proto__: "#ffffff"
      ^^^^^^^^^
    A name begins with a letter and has letters, digits, spaces and hyphens, at most 40: sea green`,
  ],
  [
    "an empty palette",
    "palette: {}",
    `\
gallery.yaml:3:10  error  “palette” has no colour.  study/wrong-palette
    palette: {}
             ^^
    Add colours, or delete the line to get the usual ones.`,
  ],
])("%s", (_, text, report) => {
  expect(print(text)).toBe(report);
});

test("a folder to compare with lies inside the content folder", () => {
  expect(parse(`${head}compareWith: old/Flags of A\n`).value).toMatchObject({
    compareWith: "old/Flags of A",
    compareWithAt: { place: { line: 3, column: 14 }, sourceLine: "compareWith: old/Flags of A" },
  });
  for (const wrong of ["../flags", "/etc", "a/../b", ".git", "C:\\\\flags", "a//b", "~"]) {
    const { value, problems } = parse(`${head}compareWith: "${wrong}"\n`);
    expect(value).not.toHaveProperty("compareWith");
    expect(
      problems.map(({ rule }) => rule),
      wrong,
    ).toEqual(["study/wrong-folder"]);
  }
});

test("where readers answer is a mail address or a form, and nothing else", () => {
  expect(parse(`${head}answer: editor@flags.example\n`)).toMatchObject({
    value: { answer: { way: "mail", address: "editor@flags.example" } },
    problems: [],
  });
  expect(parse(`${head}answer: https://forum.example/?t={title}&u={url}\n`)).toMatchObject({
    value: { answer: { way: "form", template: "https://forum.example/?t={title}&u={url}" } },
    problems: [],
  });
  const { value, problems } = parse(`${head}answer: "javascript:alert(1)"\n`);
  expect(value).not.toHaveProperty("answer");
  expect(problems.map(({ rule }) => rule)).toEqual(["study/wrong-answer"]);
  expect(print("answer: https://forum.example/?t={titel}")).toBe(`\
gallery.yaml:3:9  error  “answer” has the placeholder “{titel}”, which nothing is filled into.  study/wrong-answer
    answer: https://forum.example/?t={titel}
            ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
    Type “{title}”. There are: {url}, {title}, {edge}, {numbers}, {answer}`);
});
