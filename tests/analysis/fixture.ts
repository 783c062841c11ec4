// A study that is right, changed line by line: what the tests of messages are made of.

import { defaultPalette } from "../../src/content/gallery/palette.ts";
import { parseStudy, type StudyOrigin } from "../../src/content/study/studyfile.ts";
import { formatProblems } from "../../src/problem/problemtext.ts";

const base = [
  "title: A lighter ferry wheel",
  "original: original.svg",
  'change: { replace: "#7a1020", with: "#f4c430" }',
];

export const origin: StudyOrigin = {
  slug: "ferry",
  file: "ferry/study.md",
  shownFlagsFolder: "flags",
  studyFolder: "/content/studies/ferry",
  flagsFolder: "/content/flags",
};

/** A right study. A line `key: …` takes the place of the line with that key; any other line is added at the end. */
export function writeStudy(...changed: readonly string[]): string {
  const keyOf = (line: string) => /^([\w]+):/.exec(line)?.[1];
  const kept = base.map((line) => changed.find((other) => keyOf(other) === keyOf(line)) ?? line);
  const added = changed.filter((line) => !kept.includes(line));
  return ["---", ...kept, ...added, "---", "The wheel is dark.", ""].join("\n");
}

export function parseText(text: string | Uint8Array) {
  const bytes = typeof text === "string" ? new TextEncoder().encode(text) : text;
  return parseStudy(origin, bytes, defaultPalette);
}

/** What an author reads when a study is changed in these lines. */
export function printStudy(...changed: readonly string[]): string {
  return printText(writeStudy(...changed));
}

export function printText(text: string | Uint8Array): string {
  return formatProblems(parseText(text).problems);
}
