// Mistakes that authors make, as data: what was right, and what was typed instead. What each comes to, word for word,
// stands in mistakes.txt.

/** One study with one mistake in it; its slug says which. The other files are right. */
export interface StudyMistake {
  readonly slug: string;
  /** What the author did, in a few words. */
  readonly what: string;
  /** In study.md: what is right → what was typed. */
  readonly typed?: Readonly<Record<string, string>>;
  /** In original.svg: what is right → what was drawn. */
  readonly drawn?: Readonly<Record<string, string>>;
  /** Files of the study's folder with other content, by name; null: not there. */
  readonly files?: Readonly<Record<string, string | Uint8Array | null>>;
}

/** A mistake in the content folder as a whole: files with other content, by path; null: not there. */
export interface GalleryMistake {
  readonly what: string;
  readonly files: Readonly<Record<string, string | null>>;
}

export const rightStudy = `---
title: A lighter ferry wheel
original: original.svg
change:
  replace: "#7a1020"
  with: "#f4c430"
  only: "#wheel"
focus: { select: "#wheel" }
status: open
authors: [Ines Valcourt]
date: 2026-04-02
tags: [charge, dark on dark]
credit: { author: Ines Valcourt, licence: CC0-1.0 }
---
The wheel is dark on dark: from the quay it is not there.
`;

export const rightDrawing = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 30 20">
  <rect id="sea" width="30" height="20" fill="#1b2a5c"/>
  <rect id="foam" y="16" width="30" height="4" fill="#ffffff"/>
  <circle id="wheel" cx="15" cy="8" r="5" fill="#7a1020"/>
</svg>
`;

export const rightGallery = `title: Flags of the Sound
address: https://flags.example/
`;

export const rightPage = `---
title: Who we are
menu: About
---
We meet on the quay.

::study{ferry}
`;

export const rightSeries = `---
title: From the quay
authors: [Ines Valcourt]
date: 2026-06-24
studies: [ferry]
closing: Which of these changes would you make?
---
Look at each from the door.
`;

const palette = `${rightGallery}palette:
  yellow: "#f7c81e"
  sea green: "#2e8b70"
`;

const named = (line: string): Readonly<Record<string, string>> => ({ "status: open": line });

const names: readonly StudyMistake[] = [
  {
    slug: "name-absent",
    what: "a name for a shade that is not there",
    typed: named('names: { "#1b2a5d": navy }'),
  },
  {
    slug: "name-unquoted",
    what: "the colour of a name without quotes",
    typed: named("names: { #1b2a5c: navy }"),
  },
  {
    slug: "name-unquoted-below",
    what: "the same, on a line of its own",
    typed: named("names:\n  #1b2a5c: navy"),
  },
  { slug: "name-turned", what: "name and colour exchanged", typed: named('names: { navy: "#1b2a5c" }') },
  {
    slug: "name-by-name",
    what: "a name for what the page calls the colour",
    typed: named("names: { dark blue: navy }"),
  },
  {
    slug: "name-twice",
    what: "one name for two colours",
    typed: named('names: { "#1b2a5c": navy, "#7a1020": navy }'),
  },
  {
    slug: "name-contradicts",
    what: "the name of quite another colour",
    typed: named('names: { "#1b2a5c": white }'),
  },
  {
    slug: "name-mixed",
    what: "a name with a letter of another alphabet",
    typed: named('names: { "#1b2a5c": n\u0430vy }'),
  },
  { slug: "name-stroke", what: "a name with a stroke", typed: named('names: { "#1b2a5c": navy/ink }') },
  { slug: "name-number", what: "a number for a name", typed: named('names: { "#1b2a5c": 281 }') },
  { slug: "name-empty", what: "a colour without its name", typed: named('names: { "#1b2a5c": }') },
  {
    slug: "name-long",
    what: "a name that is too long",
    typed: named('names: { "#1b2a5c": the blue of the sea before the harbour in winter }'),
  },
  { slug: "name-text", what: "a text for the names", typed: named("names: navy") },
  { slug: "name-singular", what: "name for names", typed: named('name: { "#1b2a5c": navy }') },
  { slug: "part-alone", what: "a part without only", typed: { 'only: "#wheel"': "part: the wheel" } },
  {
    slug: "part-selector",
    what: "a selector for the name of the part",
    typed: { 'only: "#wheel"': 'only: "#wheel"\n  part: "#wheel"' },
  },
];

const keys: readonly StudyMistake[] = [
  { slug: "key-misspelt", what: "a typo in a key", typed: { "title:": "titel:" } },
  { slug: "key-in-capitals", what: "a key with a capital", typed: { "title:": "Title:" } },
  { slug: "key-american", what: "the American spelling", typed: { licence: "license" } },
  {
    slug: "key-of-another-tool",
    what: "a key that other site generators have",
    typed: { "tags:": "layout: page\ntags:" },
  },
  {
    slug: "key-at-the-top",
    what: "replace and with without change",
    typed: { "change:\n  replace": "replace", "  with": "with", "  only": "only" },
  },
  { slug: "key-not-there", what: "no title", typed: { "title: A lighter ferry wheel\n": "" } },
  { slug: "key-twice", what: "a key twice", typed: { "status: open": "status: open\ntitle: The wheel" } },
  { slug: "key-without-value", what: "a key left empty", typed: { "status: open": "status:" } },
  { slug: "colon-without-space", what: "no space behind the colon", typed: { "title: A": "title:A" } },
  { slug: "colon-forgotten", what: "no colon", typed: { "status: open": "status open" } },
  {
    slug: "colon-in-the-title",
    what: "a second colon in a title",
    typed: { "A lighter ferry wheel": "Ferry: a lighter wheel" },
  },
  {
    slug: "equals-sign",
    what: "an equals sign in place of the colon",
    typed: { "status: open": "status = open" },
  },
];

const wholeChange = 'change:\n  replace: "#7a1020"\n  with: "#f4c430"\n  only: "#wheel"';

/** One sign of the frame of a line is another than it looks. */
const signs: readonly StudyMistake[] = [
  {
    slug: "quotes-within-quotes",
    what: "quotes within quotes",
    typed: { "A lighter ferry wheel": '"A "lighter" wheel"' },
  },
  {
    slug: "apostrophe-within-quotes",
    what: "an apostrophe within single quotes",
    typed: { "A lighter ferry wheel": "'The ferry's wheel'" },
  },
  {
    slug: "quotes-round-a-word",
    what: "quotes round the first word alone",
    typed: { "A lighter ferry wheel": '"A lighter" ferry wheel' },
  },
  {
    slug: "quote-twice",
    what: "a quote twice at the end",
    typed: { "A lighter ferry wheel": '"A lighter ferry wheel""' },
  },
  {
    slug: "semicolon-at-the-end",
    what: "a semicolon at the end of a line",
    typed: { 'replace: "#7a1020"': 'replace: "#7a1020";' },
  },
  {
    slug: "indented-under-a-value",
    what: "a line indented under one that has a value",
    typed: { "tags:": "  tags:" },
  },
  {
    slug: "comma-missing",
    what: "no comma in braces",
    typed: { [wholeChange]: 'change: { replace: "#7a1020" with: "#f4c430" }' },
  },
  {
    slug: "semicolon",
    what: "a semicolon in braces",
    typed: { [wholeChange]: 'change: { replace: "#7a1020"; with: "#f4c430" }' },
  },
  {
    slug: "comma-missing-lines",
    what: "no comma in braces of several lines",
    typed: { [wholeChange]: 'change: {\n  replace: "#7a1020"\n  with: "#f4c430"\n}' },
  },
  {
    slug: "comma-missing-list",
    what: "“and” in a list of names in quotes",
    typed: { "[Ines Valcourt]": '["Ines Valcourt" and "Tobin Arkwell"]' },
  },
  {
    slug: "brace-too-many",
    what: "a brace too many",
    typed: { [wholeChange]: 'change: { replace: "#7a1020", with: "#f4c430" } }' },
  },
  {
    slug: "bracket-in-a-list",
    what: "a bracket in a name of a list",
    typed: { "[Ines Valcourt]": "[Ines [Mole] Valcourt]" },
  },
  {
    slug: "colon-missing-braces",
    what: "no colons in braces",
    typed: { [wholeChange]: 'change: { replace "#7a1020", with "#f4c430" }' },
  },
  {
    slug: "colon-crowded-braces",
    what: "no spaces behind the colons in braces",
    typed: { [wholeChange]: 'change: { replace:"#7a1020", with:"#f4c430" }' },
  },
  {
    slug: "hyphen-without-space",
    what: "no space behind the hyphen of a second item",
    typed: { "authors: [Ines Valcourt]": "authors:\n  - Ines Valcourt\n  -Tobin Arkwell" },
  },
  {
    slug: "hyphens-without-space",
    what: "no space behind any hyphen",
    typed: { "authors: [Ines Valcourt]": "authors:\n  -Ines Valcourt\n  -Tobin Arkwell" },
  },
  {
    slug: "dash-for-hyphen",
    what: "a dash in place of the hyphen",
    typed: { "authors: [Ines Valcourt]": "authors:\n  – Ines Valcourt\n  – Tobin Arkwell" },
  },
  {
    slug: "no-break-space",
    what: "a no-break space behind the colon",
    typed: { "status: open": "status:\u00a0open" },
  },
  {
    slug: "no-break-space-before",
    what: "a no-break space before the colon",
    typed: { "status: open": "status\u00a0: open" },
  },
  {
    slug: "no-break-space-indent",
    what: "a no-break space at the beginning of a line",
    typed: { "  with:": "\u00a0\u00a0with:" },
  },
  {
    slug: "no-break-space-braces",
    what: "a no-break space in braces",
    typed: { '{ select: "#wheel" }': '{ select:\u00a0"#wheel" }' },
  },
  { slug: "full-width-colon", what: "a full-width colon", typed: { "status: open": "status：open" } },
  { slug: "anchor", what: "a title that begins with &", typed: { "A lighter ferry wheel": "&Heron" } },
  {
    slug: "hash-in-the-title",
    what: "a # in the title",
    typed: { "A lighter ferry wheel": "Ferry # wheel" },
  },
];

const quotes: readonly StudyMistake[] = [
  { slug: "colour-without-quotes", what: "an unquoted colour", typed: { '"#7a1020"': "#7a1020" } },
  {
    slug: "colour-without-quotes-inline",
    what: "an unquoted colour in braces",
    typed: { '{ select: "#wheel" }': "{ colour: #7a1020 }" },
  },
  {
    slug: "curly-quotes",
    what: "curly quotes, as a word processor types them",
    typed: { '"#7a1020"': "“#7a1020”" },
  },
  { slug: "curly-quotes-single", what: "curly single quotes", typed: { '"#f4c430"': "‘#f4c430’" } },
  { slug: "quote-not-closed", what: "a quote that is not closed", typed: { '"#f4c430"': '"#f4c430' } },
  {
    slug: "bracket-not-closed",
    what: "a bracket that is not closed",
    typed: { "[Ines Valcourt]": "[Ines Valcourt" },
  },
  { slug: "tab", what: "a tab at the beginning of a line", typed: { "  with:": "\twith:" } },
  { slug: "indented-too-far", what: "a line indented too far", typed: { "  with:": "    with:" } },
  {
    slug: "not-indented",
    what: "the lines below change not indented",
    typed: { "  replace": "replace", "  with": "with", "  only": "only" },
  },
  {
    slug: "value-with-at",
    what: "an author's handle with an at sign",
    typed: { "[Ines Valcourt]": "[@ines]" },
  },
];

const fences: readonly StudyMistake[] = [
  { slug: "fence-not-closed", what: "the closing --- forgotten", typed: { "CC0-1.0 }\n---": "CC0-1.0 }" } },
  { slug: "fence-not-opened", what: "the opening --- forgotten", typed: { "---\ntitle": "title" } },
  {
    slug: "fence-too-short",
    what: "two hyphens in place of three",
    typed: { "CC0-1.0 }\n---": "CC0-1.0 }\n--" },
  },
  { slug: "fence-below-a-blank", what: "a blank line above ---", typed: { "---\ntitle": "\n---\ntitle" } },
  { slug: "fence-indented", what: "a space before the first ---", typed: { "---\ntitle": " ---\ntitle" } },
  { slug: "empty-study", what: "an empty study.md", files: { "study.md": "" } },
  {
    slug: "prose-alone",
    what: "prose and nothing else",
    files: { "study.md": "# My flag\n\nThe wheel is too dark.\n" },
  },
  {
    slug: "front-matter-empty",
    what: "nothing between the two ---",
    files: { "study.md": "---\n---\nThe wheel is too dark.\n" },
  },
];

const values: readonly StudyMistake[] = [
  {
    slug: "value-invisible",
    what: "a name copied with a character that is not seen",
    typed: { "[Ines Valcourt]": "[Ines\u200b Valcourt]" },
  },
  {
    slug: "value-blank",
    what: "a decision of nothing that is seen",
    typed: named('status: adopted\ndecision: "\u00ad"'),
  },
  {
    slug: "prose-invisible",
    what: "prose copied with a character that is not seen",
    typed: { "dark on dark:": "dark\u3164 on dark:" },
  },
  {
    slug: "value-far-date",
    what: "a date far ahead",
    typed: { "date: 2026-04-02": "date: 2062-04-02" },
  },
  { slug: "date-the-other-way-round", what: "day, month and year", typed: { "2026-04-02": "02.04.2026" } },
  { slug: "date-with-slashes", what: "a date with slashes", typed: { "2026-04-02": "4/2/2026" } },
  { slug: "date-without-zeros", what: "a date without its zeros", typed: { "2026-04-02": "2026-4-2" } },
  { slug: "date-that-is-none", what: "a day that there is not", typed: { "2026-04-02": "2026-02-30" } },
  { slug: "date-year-alone", what: "a year alone", typed: { "2026-04-02": "2026" } },
  { slug: "status-in-capitals", what: "a status with a capital", typed: { "status: open": "status: Open" } },
  { slug: "status-misspelt", what: "a status misspelt", typed: { "status: open": "status: adoptd" } },
  {
    slug: "status-unknown",
    what: "a status that there is not",
    typed: { "status: open": "status: accepted" },
  },
  {
    slug: "adopted-without-decision",
    what: "adopted without a decision",
    typed: { "status: open": "status: adopted" },
  },
  {
    slug: "votes-the-other-way-round",
    what: "votes the other way round",
    typed: {
      "status: open": "status: adopted\ndecided: { date: 2026-05-02, for: 2, against: 11, why: It reads. }",
    },
  },
  {
    slug: "authors-as-text",
    what: "authors as text",
    typed: { "[Ines Valcourt]": "Ines Valcourt and Tobin Arkwell" },
  },
  {
    slug: "author",
    what: "author for authors",
    typed: { "authors: [Ines Valcourt]": "author: Ines Valcourt" },
  },
  { slug: "tags-as-text", what: "tags as text", typed: { "[charge, dark on dark]": "charge, dark on dark" } },
  { slug: "tag-with-hash", what: "a tag with a hash", typed: { "[charge, dark on dark]": '["#charge"]' } },
  {
    slug: "tag-with-bare-hash",
    what: "a tag with a hash and no quotes",
    typed: { "[charge, dark on dark]": "[#charge]" },
  },
  {
    slug: "option-with-change",
    what: "a change put into the options as it is",
    typed: {
      "authors: [": 'options:\n  - change: { replace: "#1b2a5c", with: "#2e8b70" }\nauthors: [',
    },
  },
  {
    slug: "change-as-list",
    what: "two changes as a list",
    typed: {
      [wholeChange]:
        'change:\n  - { replace: "#7a1020", with: "#f4c430" }\n  - { replace: "#1b2a5c", with: "#2e8b70" }',
    },
  },
  {
    slug: "option-repeated",
    what: "the change itself as an option",
    typed: {
      "authors: [": 'options:\n  - { replace: "#7A1020", with: "#f4c430", only: "#wheel" }\nauthors: [',
    },
  },
  {
    slug: "words-of-begin",
    what: "a word of new left standing",
    typed: { "author: Ines Valcourt": "author: Who drew it" },
  },
  {
    slug: "title-as-list",
    what: "a list where a text belongs",
    typed: { "A lighter ferry wheel": "[A lighter ferry wheel]" },
  },
  {
    slug: "step-mistyped",
    what: "a step of the show that is mistyped",
    typed: { "authors: [": "show: { without: [form-afar] }\nauthors: [" },
  },
  {
    slug: "step-tried",
    what: "a note to an option that is not there",
    typed: { "authors: [": 'show: { notes: { tried-1: "Wait." } }\nauthors: [' },
  },
  {
    slug: "show-as-list",
    what: "the steps of the show as a list",
    typed: { "authors: [": "show: [the-flag, after]\nauthors: [" },
  },
  {
    slug: "step-kept-and-left",
    what: "a step kept and left out",
    typed: { "authors: [": "show: { steps: [the-flag, after], without: [after] }\nauthors: [" },
  },
  { slug: "title-as-number", what: "a title that is a number", typed: { "A lighter ferry wheel": "1912" } },
  {
    slug: "change-as-text",
    what: "the change as a sentence",
    typed: { 'change:\n  replace: "#7a1020"\n  with: "#f4c430"\n  only: "#wheel"': "change: red to yellow" },
  },
  { slug: "licence-misspelt", what: "a licence without its version", typed: { "CC0-1.0": "cc0" } },
  {
    slug: "licence-in-words",
    what: "a licence in words",
    typed: { "CC0-1.0": "Creative Commons Attribution 4.0" },
  },
  { slug: "licence-unknown", what: "a licence that nobody knows", typed: { "CC0-1.0": "free for schools" } },
  { slug: "credit-without-licence", what: "a credit without a licence", typed: { ", licence: CC0-1.0": "" } },
];

const colours: readonly StudyMistake[] = [
  {
    slug: "colour-not-in-the-drawing",
    what: "a colour that the drawing does not have",
    typed: { '"#7a1020"': '"#7b3040"' },
  },
  {
    slug: "colour-exchanged",
    what: "replace and with exchanged",
    typed: { '"#7a1020"\n  with: "#f4c430"\n  only: "#wheel"': '"#f4c430"\n  with: "#7a1020"' },
  },
  { slug: "colour-nearly-there", what: "a colour a shade off", typed: { '"#7a1020"': '"#7a1021"' } },
  {
    slug: "colour-name-not-in-the-drawing",
    what: "a name that the drawing does not have",
    typed: { '"#7a1020"': "green" },
  },
  { slug: "colour-five-digits", what: "a colour with five digits", typed: { '"#f4c430"': '"#f4c43"' } },
  { slug: "colour-without-hash", what: "a colour without #", typed: { '"#f4c430"': "f4c430" } },
  {
    slug: "colour-digits-alone",
    what: "a colour of digits without # and quotes",
    typed: { '"#7a1020"': "701020" },
  },
  { slug: "colour-misspelt", what: "a colour name misspelt", typed: { '"#f4c430"': "yelow" } },
  {
    slug: "colour-unknown-name",
    what: "a colour name that nobody knows",
    typed: { '"#f4c430"': "buttercup" },
  },
  { slug: "colour-as-cmyk", what: "a printer's colour", typed: { '"#f4c430"': '"C0 M20 Y80 K4"' } },
  { slug: "colour-by-itself", what: "a colour replaced by itself", typed: { '"#f4c430"': '"#7a1020"' } },
  {
    slug: "colour-cut-off",
    what: "a colour with commas in braces, without quotes",
    typed: {
      'change:\n  replace: "#7a1020"\n  with: "#f4c430"\n  only: "#wheel"\n':
        'change: { replace: "#7a1020", with: rgb(238, 122, 26), only: "#wheel" }\n',
    },
  },
  { slug: "colour-translucent", what: "a translucent colour", typed: { '"#f4c430"': '"#f4c43080"' } },
  {
    slug: "colour-two-meanings",
    what: "a name that CSS has for another colour than the drawing",
    typed: { '"#f4c430"': "pink" },
    drawn: { "#ffffff": "#e5709a" },
  },
  {
    slug: "colour-two-meanings-drawing",
    what: "a name that means two colours of the drawing",
    typed: { '"#7a1020"': "pink", '\n  only: "#wheel"': "" },
    drawn: {
      '<rect id="foam"': '<rect x="20" width="10" height="10" fill="#e5709a"/>\n  <rect id="foam"',
      "#7a1020": "#ffc0cb",
    },
  },
  {
    slug: "colour-not-offered",
    what: "a colour in our own words that nothing has",
    typed: { '"#f4c430"': "much darker yellow" },
  },
  {
    slug: "colour-of-a-stroke",
    what: "a shade that is not there, where only an outline has the one meant",
    typed: { '"#7a1020"': '"#7a1030"' },
    drawn: { 'fill="#7a1020"': 'fill="none" stroke="#7a1020"' },
  },
  {
    slug: "colour-of-a-gradient",
    what: "a flag with a gradient, named by its looks",
    typed: { '"#7a1020"': '"#85102c"' },
    drawn: {
      '  <rect id="sea"':
        '  <linearGradient id="shade"><stop stop-color="#7a1020"/><stop offset="1" stop-color="#7e1024"/></linearGradient>\n  <rect id="sea"',
      'fill="#7a1020"': 'fill="url(#shade)"',
    },
  },
];

const selectors: readonly StudyMistake[] = [
  { slug: "only-misspelt", what: "a selector with a typo", typed: { 'only: "#wheel"': 'only: "#whel"' } },
  { slug: "only-without-hash", what: "an id without its #", typed: { 'only: "#wheel"': "only: wheel" } },
  {
    slug: "only-without-that-colour",
    what: "only the elements that do not have the colour",
    typed: { 'only: "#wheel"': 'only: "#foam"' },
  },
  {
    slug: "only-no-selector",
    what: "a selector that cannot be read",
    typed: { 'only: "#wheel"': 'only: "circle["' },
  },
  {
    slug: "only-class",
    what: "a class that the drawing does not have",
    typed: { 'only: "#wheel"': "only: .charge" },
  },
  {
    slug: "focus-with-both",
    what: "a focus by colour and by selector",
    typed: { '{ select: "#wheel" }': '{ select: "#wheel", colour: "#7a1020" }' },
  },
  {
    slug: "focus-as-text",
    what: "a focus as text",
    typed: { 'focus: { select: "#wheel" }': 'focus: "#wheel"' },
  },
  {
    slug: "focus-empty",
    what: "a focus with nothing in it",
    typed: { 'focus: { select: "#wheel" }': "focus: {}" },
  },
  {
    slug: "charge-runs-into-stripe",
    what: "a charge that runs into a stripe of its own colour",
    typed: { '"#7a1020"\n': '"#ffffff"\n', '  only: "#wheel"\nfocus: { select: "#wheel" }\n': "" },
    drawn: { 'cy="8" r="5" fill="#7a1020"': 'cy="12" r="5" fill="#ffffff"' },
  },
];

const prose: readonly StudyMistake[] = [
  {
    slug: "figure-of-no-edge",
    what: "a figure of an edge that there is not",
    typed: { "is not there.\n": 'is not there.\n\n::figure{edge="white / red"}\n' },
  },
  {
    slug: "figure-misspelt",
    what: "a figure without its braces",
    typed: { "is not there.\n": 'is not there.\n\n::figure edge="white / red"\n' },
  },
  {
    slug: "figure-curly",
    what: "a figure with curly quotes",
    typed: { "is not there.\n": "is not there.\n\n::figure{edge=“white / dark blue”}\n" },
  },
  {
    slug: "figure-in-a-sentence",
    what: "a figure in the middle of a sentence",
    typed: { "is not there.\n": 'is not there: see ::figure{edge="white / dark blue"} for it.\n' },
  },
  {
    slug: "figure-one-colon",
    what: "a figure with one colon",
    typed: { "is not there.\n": 'is not there.\n\n:figure{kind="edge map"}\n' },
  },
  {
    slug: "figure-capital",
    what: "a figure with a capital",
    typed: { "is not there.\n": 'is not there.\n\n::Figure{kind="edge map"}\n' },
  },
  {
    slug: "figure-spaced",
    what: "a figure with a space behind the colons",
    typed: { "is not there.\n": 'is not there.\n\n:: figure{kind="edge map"}\n' },
  },
  {
    slug: "figure-name",
    what: "a figure by its name",
    typed: { "is not there.\n": 'is not there.\n\n::figure{name="edge map"}\n' },
  },
  {
    slug: "figure-in-hex",
    what: "a figure of an edge in hex",
    typed: { "is not there.\n": 'is not there.\n\n::figure{edge="#FFFFFF / #1b2a5c"}\n' },
  },
  {
    slug: "figure-one-colour",
    what: "a figure of one colour",
    typed: { "is not there.\n": 'is not there.\n\n::figure{edge="white"}\n' },
  },
  {
    slug: "picture-in-prose",
    what: "a picture in the prose",
    typed: { "is not there.\n": "is not there.\n\n![The ferry](ferry.jpg)\n" },
  },
  {
    slug: "link-in-prose",
    what: "a link to no page",
    typed: { "is not there.\n": "is not there: see [the book](ftp://flags.example/ferries).\n" },
  },
  {
    slug: "entity-in-prose",
    what: "an entity of a character that turns the reading direction",
    typed: { "is not there.\n": "is not &#x202e;there.\n" },
  },
  {
    slug: "html-in-prose",
    what: "HTML in the prose",
    typed: { "is not there.\n": "is <b>not there</b>.<br>\n" },
  },
];

/** In UTF-16, as some editors call “Unicode”. */
const utf16 = new Uint8Array([
  0xff,
  0xfe,
  ...new Uint8Array(new Uint16Array(Array.from(rightStudy, (c) => c.charCodeAt(0))).buffer),
]);

const files: readonly StudyMistake[] = [
  { slug: "file-in-utf16", what: "study.md saved as UTF-16", files: { "study.md": utf16 } },
  {
    slug: "file-in-latin1",
    what: "study.md saved in an old encoding",
    files: {
      "study.md": new Uint8Array(
        Array.from(rightStudy.replace("Valcourt", "Valcört"), (c) => c.charCodeAt(0)),
      ),
    },
  },
  {
    slug: "file-from-windows",
    what: "a mark at the beginning and Windows line ends: no mistake, beside the one in a key",
    files: { "study.md": `\ufeff${rightStudy.replace("status:", "state:").replace(/\n/g, "\r\n")}` },
  },
  {
    slug: "study-in-capitals",
    what: "study.md called Study.MD",
    files: { "study.md": null, "Study.MD": rightStudy },
  },
  {
    slug: "study-called-readme",
    what: "study.md called README.md",
    files: { "study.md": null, "README.md": rightStudy },
  },
  {
    slug: "study-txt",
    what: "study.md saved as study.md.txt",
    files: { "study.md": null, "study.md.txt": rightStudy },
  },
  { slug: "drawing-missing", what: "a drawing that is not there", files: { "original.svg": null } },
  {
    slug: "drawing-other-name",
    what: "a drawing by another name",
    files: { "original.svg": null, "ferry-flag.svg": rightDrawing },
  },
  {
    slug: "drawing-in-capitals",
    what: "a drawing in other letter case",
    files: { "original.svg": null, "Original.SVG": rightDrawing },
  },
  {
    slug: "original-of-the-computer",
    what: "a path of the author's own computer",
    typed: { "original: original.svg": "original: C:\\Users\\Ines\\ferry.svg" },
  },
  {
    slug: "original-absolute",
    what: "an absolute path",
    typed: { "original: original.svg": "original: /home/ines/ferry.svg" },
  },
  {
    slug: "original-upwards",
    what: "a path that climbs",
    typed: { "original: original.svg": "original: ../../flags/ferry.svg" },
  },
  {
    slug: "original-in-flags",
    what: "a flag of the gallery without the / before its folder",
    typed: { "original: original.svg": "original: flags/harbour.svg" },
  },
  {
    slug: "original-dotted",
    what: "the drawing with ./ before it",
    typed: { "original: original.svg": "original: ./original.svg" },
  },
  {
    slug: "original-on-the-web",
    what: "an address on the web",
    typed: { "original: original.svg": "original: https://flags.example/ferry.svg" },
  },
  {
    slug: "original-png",
    what: "a picture in pixels",
    typed: { "original: original.svg": "original: ferry.png" },
    files: { "ferry.png": "PNG" },
  },
];

const drawings: readonly StudyMistake[] = [
  { slug: "drawing-no-viewbox", what: "no viewBox", drawn: { ' viewBox="0 0 30 20"': "" } },
  {
    slug: "drawing-percent",
    what: "no viewBox and a size in percent",
    drawn: { 'viewBox="0 0 30 20"': 'width="100%" height="100%"' },
  },
  {
    slug: "drawing-millimetres",
    what: "no viewBox and a size in millimetres",
    drawn: { 'viewBox="0 0 30 20"': 'width="30mm" height="20mm"' },
  },
  {
    slug: "drawing-path-comma",
    what: "a comma too many in a path",
    drawn: { "</svg>": '  <path d="M2 2h9v9,l-9 3z" fill="#7a1020"/>\n</svg>' },
  },
  {
    slug: "drawing-far",
    what: "a shape that runs on for ever",
    drawn: { "</svg>": '  <path d="M2 2H1e30V9H2z" fill="#7a1020"/>\n</svg>' },
  },
  {
    slug: "drawing-text",
    what: "text in the drawing",
    drawn: { "</svg>": '  <text x="15" y="19" font-size="3">FERRY</text>\n</svg>' },
  },
  {
    slug: "drawing-picture",
    what: "an embedded picture",
    drawn: { "</svg>": '  <image width="10" height="10" href="data:image/png;base64,AAAA"/>\n</svg>' },
  },
  {
    slug: "drawing-linked-picture",
    what: "a shape from another file",
    drawn: { "</svg>": '  <use href="wheel.svg#wheel"/>\n</svg>' },
  },
  {
    slug: "drawing-shadow",
    what: "a drop shadow",
    drawn: {
      '  <rect id="sea"':
        '  <filter id="shadow"><feDropShadow dx=".2" dy=".2" stdDeviation=".1"/></filter>\n  <rect id="sea"',
      'r="5" fill': 'r="5" style="filter:url(#shadow)" fill',
    },
  },
  {
    slug: "drawing-shadow-lost",
    what: "a drop shadow from elsewhere",
    drawn: { 'r="5" fill': 'r="5" style="filter:url(#shadow)" fill' },
  },
  {
    slug: "drawing-noise",
    what: "a filter that makes noise",
    drawn: {
      '  <rect id="sea"': '  <filter id="rough"><feTurbulence baseFrequency="1"/></filter>\n  <rect id="sea"',
      'r="5" fill': 'r="5" filter="url(#rough)" fill',
    },
  },
  {
    slug: "drawing-blend",
    what: "a field that is mixed with another",
    drawn: {
      '  <rect id="foam"':
        '  <rect width="30" height="20" fill="#8090c0" style="mix-blend-mode:multiply"/>\n  <rect id="foam"',
    },
  },
  {
    slug: "drawing-ampersand",
    what: "an ampersand in a title",
    drawn: { '  <rect id="sea"': '  <title>Ferry & Sons</title>\n  <rect id="sea"' },
  },
  {
    slug: "drawing-veil",
    what: "a veil that looks like a stripe",
    drawn: {
      "</svg>":
        '  <rect y="14" width="30" height="2" fill="#999999"/>\n  <rect y="18" width="30" height="2" opacity="0.4"/>\n</svg>',
    },
  },
  {
    slug: "drawing-halves",
    what: "a gradient that is two colours side by side",
    drawn: {
      "</svg>":
        '  <linearGradient id="halves"><stop offset=".5" stop-color="#ff0000"/><stop offset=".5" stop-color="#ffffff"/></linearGradient>\n  <rect y="2" width="30" height="9" fill="url(#halves)"/>\n</svg>',
    },
  },
  { slug: "drawing-cut-off", what: "a drawing that is cut off", drawn: { "</svg>\n": "" } },
  {
    slug: "drawing-not-closed",
    what: "a group that is not closed",
    drawn: { "  <circle": "  <g>\n  <circle" },
  },
  {
    slug: "drawing-gap",
    what: "a page that is larger than the flag",
    drawn: { 'viewBox="0 0 30 20"': 'viewBox="0 0 40 20"' },
  },
  { slug: "drawing-namespace", what: "no namespace", drawn: { ' xmlns="http://www.w3.org/2000/svg"': "" } },
  {
    slug: "drawing-is-png",
    what: "a PNG with the name of an SVG",
    files: { "original.svg": new Uint8Array([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]) },
  },
  {
    slug: "drawing-is-a-page",
    what: "a web page saved as SVG",
    files: { "original.svg": "<!DOCTYPE html>\n<html><body>Not found</body></html>\n" },
  },
  {
    slug: "drawing-same-id",
    what: "an id twice that something points at",
    drawn: { 'id="foam"': 'id="wheel"', "</svg>": '  <use href="#wheel" x="12"/>\n</svg>' },
  },
  {
    slug: "drawing-variable",
    what: "a colour as a CSS variable",
    drawn: { 'fill="#7a1020"': 'fill="var(--wheel)"' },
  },
  {
    slug: "drawing-hex",
    what: "a hex colour with a digit missing in the drawing",
    drawn: { '"#1b2a5c"': '"#1b2a5"' },
  },
  {
    slug: "drawing-word",
    what: "a colour name misspelt in the drawing",
    drawn: { 'height="4" fill="#ffffff"': 'height="4" fill="ivrory"' },
  },
  { slug: "drawing-number", what: "a comma in a number", drawn: { 'r="5"': 'r="4,5"' } },
  {
    slug: "drawing-too-large",
    what: "a drawing of over 512 KB",
    files: {
      "original.svg": rightDrawing.replace("</svg>", `<path d="M0 0${"l1 1".repeat(140_000)}"/></svg>`),
    },
  },
];

export const studyMistakes: readonly StudyMistake[] = [
  ...keys,
  ...signs,
  ...quotes,
  ...fences,
  ...values,
  ...colours,
  ...names,
  ...selectors,
  ...prose,
  ...files,
  ...drawings,
];

const ferry = (name: string): Record<string, string> => ({
  [`studies/${name}/study.md`]: rightStudy,
  [`studies/${name}/original.svg`]: rightDrawing,
});
const without: Record<string, null> = { "studies/ferry/study.md": null, "studies/ferry/original.svg": null };

/** One mistake in a series beside the right study. */
const series = (typed: string): Readonly<Record<string, string>> => ({
  "series/quay.md": rightSeries.replace("studies: [ferry]", typed),
});

const seriesMistakes: readonly GalleryMistake[] = [
  { what: "a series of a study that is mistyped", files: series("studies: [fery]") },
  { what: "a series of a study that nobody knows", files: series("studies: [ferry, brass-hub]") },
  { what: "a study twice in a series", files: series("studies: [ferry, ferry]") },
  { what: "the path of a study in a series", files: series("studies: [studies/ferry]") },
  { what: "a series without studies", files: series("") },
  { what: "an empty list in a series", files: series("studies: []") },
  { what: "a series of numbers", files: series("studies: [ferry, 2]") },
  { what: "one study in a series without brackets", files: series("studies: ferry") },
  { what: "a flag in a series by its file alone", files: series("studies: [{ flag: harbour.svg }]") },
  { what: "a flag in a series that is not there", files: series("studies: [{ flag: /flags/harbour.svg }]") },
  {
    what: "a flag in a series with an unknown key",
    files: series("studies: [ferry, { flag: /flags/a.svg, question: Why }]"),
  },
  {
    what: "a note of a series at a step that it does not have",
    files: series("studies: [ferry]\nshow: { notes: { opening: Wait. } }"),
  },
  { what: "a series with a key of a study", files: series("studies: [ferry]\ntags: [charge]") },
  {
    what: "a series with a figure",
    files: { "series/quay.md": `${rightSeries}\n::figure{kind="edge map"}\n` },
  },
  { what: "a series in a text file", files: { "series/Quay.txt": rightSeries } },
];

/** One mistake in a page beside the right study. */
const page = (text: string, file = "about.md"): Readonly<Record<string, string>> => ({
  [`pages/${file}`]: text,
});
const right = "---\ntitle: Who we are\n---\n";

const pageMistakes: readonly GalleryMistake[] = [
  { what: "a page without a title", files: page("We meet on the quay.\n") },
  { what: "a page with nothing between its lines of hyphens", files: page("---\n---\nWe meet.\n") },
  { what: "a page with a key that is mistyped", files: page("---\ntitle: Who we are\nmenue: About\n---\n") },
  { what: "a page with an order in words", files: page("---\ntitle: Who we are\norder: first\n---\n") },
  {
    what: "a page with a word that is too long for the navigation",
    files: page("---\ntitle: Who we are\nmenu: Everything about our society\n---\n"),
  },
  { what: "a page that shows a study that is mistyped", files: page(`${right}::study{fery}\n`) },
  { what: "a page that shows a study by its title", files: page(`${right}::study{A lighter wheel}\n`) },
  { what: "a page that shows a study without braces", files: page(`${right}::study ferry\n`) },
  { what: "a page with a figure", files: page(`${right}::figure{kind="edge map"}\n`) },
  {
    what: "a page with a drawing that is mistyped",
    files: {
      ...page(`${right}::figure{drawing="anchr.svg"}\n`),
      "pages/anchor.svg": rightDrawing,
    },
  },
  {
    what: "a page with a drawing of a study",
    files: page(`${right}::figure{drawing="../studies/ferry/original.svg"}\n`),
  },
  { what: "a page with a drawing without quotes", files: page(`${right}::figure{drawing=/flags/a.svg}\n`) },
  { what: "a drawing with a space in its name beside a page", files: page(rightDrawing, "old quay.svg") },
  { what: "a page with a link from the top", files: page(`${right}See [the survey](/survey/).\n`) },
  { what: "a page at an address of the program", files: page(right, "survey.md") },
  { what: "a page called index", files: page(right, "guide/index.md") },
  { what: "a page with capitals in its name", files: page(right, "Who We Are.md") },
  { what: "a page in a text file", files: page(right, "about.txt") },
  {
    what: "six words for the navigation",
    files: Object.fromEntries(
      [..."abcdef"].map((name) => [`pages/${name}.md`, `---\ntitle: ${name}\nmenu: Page ${name}\n---\n`]),
    ),
  },
  { what: "a folder of pages with a space in its name", files: page(right, "our rules/about.md") },
  { what: "a page in four folders", files: page(right, "a/b/c/d/about.md") },
];

/** One mistake in a file of ballots beside a right series. */
const voted = (text: string, file = "ballots.csv"): Readonly<Record<string, string>> => ({
  "series/quay.md": rightSeries,
  [`votes/quay/${file}`]: text,
});
const voteHead = "ballot,series,study,choice,why";

const voteMistakes: readonly GalleryMistake[] = [
  { what: "ballots without the names of columns", files: voted("70ccec313571810a,quay,ferry,redesign,") },
  { what: "an empty file of ballots", files: voted("\n") },
  { what: "a picture among the ballots", files: voted("\u0089PNG\u0000", "hands.csv") },
  { what: "a ballot with too few values", files: voted(`${voteHead}\n70ccec313571810a,quay,ferry`) },
  {
    what: "a ballot with an open quote",
    files: voted(`${voteHead}\n70ccec313571810a,quay,ferry,redesign,"gold`),
  },
  { what: "a ballot with an id of another kind", files: voted(`${voteHead}\nInes,quay,ferry,redesign,`) },
  {
    what: "a ballot of another series",
    files: voted("ballot 70ccec313571810a season ferry=redesign", "a.txt"),
  },
  {
    what: "a ballot on a study that is mistyped",
    files: voted("ballot 70ccec313571810a quay fery=redesign", "a.txt"),
  },
  {
    what: "a ballot with a choice of its own",
    files: voted("ballot 70ccec313571810a quay ferry=yes", "a.txt"),
  },
  {
    what: "a ballot twice",
    files: voted(
      "ballot 70ccec313571810a quay ferry=redesign\nballot 70ccec313571810a quay ferry=original",
      "a.txt",
    ),
  },
  {
    what: "a ballot in a mail, broken by the mail program",
    files: voted(
      "Dear Ines,\n\n> ballot 70ccec313571810a quay ferry=redesign\n> wheel=neither\n-- \nOtto",
      "a.txt",
    ),
  },
  { what: "a mail without a ballot", files: voted("Dear Ines,\nhere is my ballot.", "a.txt") },
  { what: "ballots in a document", files: voted("", "hands.docx") },
  {
    what: "ballots of a series that is mistyped",
    files: { ...voted(voteHead), "votes/qauy/a.csv": voteHead },
  },
];

/** Nominations beside the drawing of one flag. */
const nominated = (text: string): Readonly<Record<string, string>> => ({
  "flags/harbour.svg": rightDrawing.replaceAll("#1b2a5c", "#2e8b70"),
  "flags/nominations.yaml": text,
});
const harbour = "flag: /flags/harbour.svg, by: Ines Valcourt, reason: Dark on dark";

const nominationMistakes: readonly GalleryMistake[] = [
  {
    what: "a nomination of a flag that is mistyped",
    files: nominated("nominations:\n  - { flag: /flags/habour.svg, reason: Dark on dark }\n"),
  },
  {
    what: "a nomination of a flag by its file alone",
    files: nominated("nominations:\n  - { flag: harbour.svg, reason: Dark on dark }\n"),
  },
  {
    what: "a nomination twice",
    files: nominated(`nominations:\n  - { ${harbour} }\n  - { ${harbour} }\n`),
  },
  {
    what: "a nomination with an unknown key",
    files: nominated("nominations:\n  - { flag: /flags/harbour.svg, why: Dark on dark }\n"),
  },
  { what: "nominations without their key", files: nominated(`- { ${harbour} }\n`) },
];

const worded = (text: string): Readonly<Record<string, string>> => ({ "words.yaml": text });

const wordMistakes: readonly GalleryMistake[] = [
  { what: "a message that is mistyped", files: worded("edges.were: Where they meet\n") },
  { what: "a message without its value", files: worded("verdict.change: It becomes {after}.\n") },
  {
    what: "a message with a value of another name",
    files: worded('verdict.change: "{was} becomes {after}."\n'),
  },
  { what: "a message with a brace left open", files: worded('verdict.change: "{before becomes {after}."\n') },
  {
    what: "a message without a quote before its brace",
    files: worded("verdict.change: {before} becomes {after}.\n"),
  },
  { what: "a message that is a list", files: worded("edges.where: [Where, they, meet]\n") },
  { what: "a message with a link of its own", files: worded('edges.where: "<a>Where</a> they meet"\n') },
  { what: "messages below a word", files: worded("edges:\n  where: Where they meet\n") },
];

const themed = (text: string): Readonly<Record<string, string>> => ({ "theme.yaml": text });

const themeMistakes: readonly GalleryMistake[] = [
  { what: "a theme in a family that is not installed", files: themed("text: Inter\n") },
  { what: "a theme in a family by its package", files: themed("headings: source-sans-3\n") },
  { what: "a theme with a mat as a colour", files: themed('mat: "#ffffff"\n') },
  { what: "a theme with a white mat", files: themed("mat: 100\n") },
  { what: "a theme with long lines", files: themed("measure: 120\n") },
  { what: "a theme with a density of its own", files: themed("density: cosy\n") },
  { what: "a theme with styles", files: themed('css: "body { color: red }"\n') },
];

const logoMistakes: readonly GalleryMistake[] = [
  { what: "a logo in pixels", files: { "logo.png": "" } },
  { what: "a logo with a capital in its name", files: { "Logo.svg": rightDrawing } },
  {
    what: "a logo with a picture in it",
    files: { "logo.svg": rightDrawing.replace("</svg>", '<image href="logo.png"/>\n</svg>') },
  },
  { what: "a logo of which nothing shows", files: { "logo.svg": rightDrawing.replace(/ {2}<.*\n/g, "") } },
];

const listed = (line: string): Readonly<Record<string, string>> => ({
  "addresses.txt": `/studies/ferry/\n${line}\n`,
});

const addressMistakes: readonly GalleryMistake[] = [
  {
    what: "an old address that leads out of the site",
    files: listed("/studies/old/ -> https://flags.example/"),
  },
  { what: "an old address that leads to itself", files: listed("/studies/old/ -> /studies/old/") },
  { what: "an address with the host", files: listed("https://flags.example/studies/old/") },
  { what: "an address without its last slash", files: listed("/studies/old") },
  { what: "a lead with an equals sign", files: listed("/studies/old/ = /studies/ferry/") },
  { what: "a merge of the addresses that was left half done", files: listed("<<<<<<< HEAD") },
  { what: "words on a withdrawal that nobody sees", files: listed("/studies/old/ withdrawn \u202emoc") },
  {
    what: "an old address that leads to two studies",
    files: listed("/studies/old/ -> /studies/ferry/\n/studies/old/ -> /studies/wheel/"),
  },
];

const answerMistakes: readonly GalleryMistake[] = [
  {
    what: "an answer from somebody",
    files: { "studies/ferry/answers/a.md": "---\nfrom: Marit Osseny\nsays: ask\n---\nWhy?\n" },
  },
];

export const galleryMistakes: readonly GalleryMistake[] = [
  ...addressMistakes,
  ...nominationMistakes,
  ...wordMistakes,
  ...logoMistakes,
  ...themeMistakes,
  ...answerMistakes,
  ...seriesMistakes,
  ...pageMistakes,
  ...voteMistakes,
  { what: "two slugs alike", files: ferry("Ferry") },
  { what: "a study folder with capitals and spaces", files: { ...without, ...ferry("Ferry Wheel") } },
  { what: "a study folder that Windows cannot have", files: { ...without, ...ferry("aux") } },
  { what: "a study without a folder of its own", files: { ...without, "studies/ferry.md": rightStudy } },
  { what: "a study folder with nothing but a drawing", files: { "studies/ferry/study.md": null } },
  { what: "no folder studies", files: without },
  { what: "no gallery.yaml", files: { "gallery.yaml": null } },
  {
    what: "gallery.yaml called gallery.yml",
    files: { "gallery.yaml": null, "gallery.yml": rightGallery },
  },
  {
    what: "gallery.yaml with a capital",
    files: { "gallery.yaml": null, "Gallery.yaml": rightGallery },
  },
  { what: "an empty gallery.yaml", files: { "gallery.yaml": "" } },
  { what: "gallery.yaml with nothing between two ---", files: { "gallery.yaml": "---\n---\n" } },
  { what: "gallery.yaml between two ---", files: { "gallery.yaml": `---\n${rightGallery}---\n` } },
  {
    what: "a quote twice in gallery.yaml",
    files: { "gallery.yaml": `${rightGallery}description: ""Studies of flags."\n` },
  },
  {
    what: "an address without https",
    files: { "gallery.yaml": rightGallery.replace("https://flags.example/", "flags.example") },
  },
  {
    what: "the example's address left out",
    files: { "gallery.yaml": rightGallery.replace("address: https://flags.example/\n", "") },
  },
  { what: "a palette with a bad colour", files: { "gallery.yaml": palette.replace("#2e8b70", "#2e8b7") } },
  { what: "a palette without quotes", files: { "gallery.yaml": palette.replace('"#2e8b70"', "#2e8b70") } },
  {
    what: "a palette as a list",
    files: {
      "gallery.yaml":
        'title: Flags of the Sound\naddress: https://flags.example/\npalette: ["#ffffff", "#f7c81e"]\n',
    },
  },
  { what: "a language in words", files: { "gallery.yaml": `${rightGallery}language: English\n` } },
  {
    what: "a distance with its unit",
    files: { "gallery.yaml": `${rightGallery}viewingDistance: 40 flag heights\n` },
  },
  {
    what: "cloth the wrong way round",
    files: { "gallery.yaml": `${rightGallery}cloth: { black: 85, white: 5 }\n` },
  },
  {
    what: "a folder to compare with that is not there",
    files: { "gallery.yaml": `${rightGallery}compareWith: colection\n` },
  },
  {
    what: "a gallery's title copied with a character that is not seen",
    files: { "gallery.yaml": rightGallery.replace("Flags of", "Flags\u2060 of") },
  },
];
