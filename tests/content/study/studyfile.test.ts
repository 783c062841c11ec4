import { expect, test } from "vitest";
import { parseText, printText, writeStudy } from "../../analysis/fixture.ts";

const full = `---
title: A lighter ferry wheel
original: /flags/harbour.svg
change: { replace: "#7a1020", with: light blue, only: "#wheel" }
focus: { select: "#wheel" }
status: declined
decision: Too close to the harbour flag.
authors: [Ines Valcourt, Tom Ashgrove]
date: 2026-04-02
tags: [charge, dark on dark]
options:
  - { replace: "#1b2a5c", with: "#ffffff", note: "Too pale." }
credit: { title: Harbour, author: Ines Valcourt, source: https://flags.example/, licence: CC0-1.0 }
symbolism: Gold stands for the harvest.
---
Prose.
`;

test("a study with every key", () => {
  const { value, problems } = parseText(full);
  expect(problems).toEqual([]);
  const { places, ...study } = value ?? {};
  expect(study).toEqual({
    slug: "ferry",
    file: "ferry/study.md",
    title: "A lighter ferry wheel",
    original: "/flags/harbour.svg",
    originalFile: "flags/harbour.svg",
    originalPath: "/content/flags/harbour.svg",
    change: { replace: "#7a1020", with: "light blue", only: "#wheel" },
    focus: { select: "#wheel" },
    status: "declined",
    decision: { why: "Too close to the harbour flag." },
    authors: ["Ines Valcourt", "Tom Ashgrove"],
    date: "2026-04-02",
    tags: ["charge", "dark on dark"],
    options: [{ replace: "#1b2a5c", with: "#ffffff", note: "Too pale." }],
    credit: {
      title: "Harbour",
      author: "Ines Valcourt",
      source: "https://flags.example/",
      licence: "CC0-1.0",
    },
    symbolism: "Gold stands for the harvest.",
    body: "Prose.\n",
    bodyLine: 16,
  });
  expect(places?.get("change.replace")).toEqual({
    place: { line: 4, column: 20, length: 9 },
    sourceLine: 'change: { replace: "#7a1020", with: light blue, only: "#wheel" }',
  });
});

test("a study with no more than it needs", () => {
  const { value, problems } = parseText(writeStudy());
  expect(problems).toEqual([]);
  expect(value).toMatchObject({
    originalFile: "ferry/original.svg",
    originalPath: "/content/studies/ferry/original.svg",
    status: "open",
    authors: [],
    tags: [],
    options: [],
  });
  for (const key of ["focus", "decision", "date", "credit", "symbolism"])
    expect(value).not.toHaveProperty(key);
});

test("what cannot be seen is taken out of title and prose, with a warning, and the study stays", () => {
  const text = `${writeStudy('title: "a\\u202Eb"')}One \u2066two.\nA\0B\u0007C\n`;
  const { value } = parseText(text);
  expect(value?.title).toBe("ab");
  expect(value?.body).toBe("The wheel is dark.\nOne two.\nA\ufffdB\ufffdC\n");
  expect(printText(text)).toBe(`\
ferry/study.md:2:8  warning  An invisible character that turns the reading direction was taken out (U+202E).  study/direction-control
    title: "a\\u202Eb"
           ^^^^^^^^^^
    Type the text again by hand; copying brought the character along.

ferry/study.md:7:5  warning  An invisible character that turns the reading direction was taken out (U+2066).  study/direction-control
    One \\u2066two.
        ^^^^^^
    Type the text again by hand; copying brought the character along.

ferry/study.md:8:2  warning  The prose holds a control character (U+0000); it is shown as \ufffd.  study/prose-control
    A\\u0000B\\u0007C
     ^^^^^^
    Delete it.`);
});

test("a study with one error has no value", () => {
  expect(parseText(writeStudy("status: x")).value).toBeUndefined();
});
