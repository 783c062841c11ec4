// Every module of src/ whose code runs has a test file of its own name: src/svg/xml/readxml.ts → tests/svg/xml/readxml.test.ts.
import { describe, expect, test } from "vitest";
import { findUntested, hasCode } from "./rule.ts";
import { readSources } from "./source.ts";

const tests = new Set(readSources(["tests"], [".test.ts"]).map(({ path }) => path));

/** Chapters of the catalogue: data, of which tests/content/rules/catalogue.test.ts runs every example. */
const chapters = [
  "address",
  "change",
  "drawing",
  "folder",
  "page",
  "series",
  "text",
  "value",
  "vote",
  "word",
];

/** Messages in one language: data, which tests/words/catalogue.test.ts holds against each other. */
const messages = /^src\/words\/[a-z]{2}\//;

test("every module has its test", () => {
  const modules = readSources(["src"], [".ts"]).filter(({ path }) => !messages.test(path));
  const untested = findUntested(modules, tests);
  expect(untested).toEqual(chapters.map((name) => `tests/content/rules/${name}rule.test.ts`));
});

test("no test is left over from a module that is gone", () => {
  const modules = new Set(
    readSources(["src"], [".ts"]).map(({ path }) => path.replace(/^src\//, "tests/").replace(/\.ts$/, "")),
  );
  const floors = /^tests\/(?:problem|colour|svg|regions|measure)\//;
  // A test across modules is called property or hostile; one that goes deeper into a module has its name first.
  const stem = (path: string): string => path.replace(/\.test\.ts$/, "").replace(/-[a-z]+$/, "");
  const isKnown = (path: string): boolean =>
    modules.has(stem(path)) || /\/(?:property|hostile)$/.test(stem(path));
  expect([...tests].filter((path) => floors.test(path) && !isKnown(path))).toEqual([]);
});

describe("a bad example", () => {
  const file = (path: string, text: string) => ({ path, text });

  test("a module without a test is named, a folder inside a floor too", () => {
    const files = [
      file("src/svg/a.ts", "export const a = 1;"),
      file("src/views/front/b.ts", "export function b() {}"),
    ];
    expect(findUntested(files, new Set())).toEqual(["tests/svg/a.test.ts", "tests/views/front/b.test.ts"]);
    expect(findUntested(files, new Set(["tests/svg/a.test.ts"]))).toEqual(["tests/views/front/b.test.ts"]);
  });

  test.each([
    ["export const a = 1;", true],
    ["export async function a() {}", true],
    ["export default function a() {}", true],
    ["export class A {}", true],
    ["class A {}", true],
    ["export interface A {\n  readonly const: 1;\n}", false],
    ["export type A = string;", false],
    ['import type { A } from "./a.ts";\nexport interface B extends A {}', false],
    ["// export const a = 1;", false],
  ])("%j has code: %s", (text, has) => {
    expect(hasCode(text)).toBe(has);
  });
});
