// Every module of src/ whose code runs has a test file of its own name: src/svg/xml.ts → tests/svg/xml.test.ts.
import { describe, expect, test } from "vitest";
import { findUntested, hasCode } from "./rule.ts";
import { readSources } from "./source.ts";

const tests = new Set(readSources(["tests"], [".test.ts"]).map(({ path }) => path));

test("every module has its test", () => {
  expect(findUntested(readSources(["src"], [".ts"]), tests)).toEqual([]);
});

test("no test is left over from a module that is gone", () => {
  const modules = new Set(readSources(["src"], [".ts"]).map(({ path }) => path.replace(/^src\//, "tests/").replace(/\.ts$/, ".test.ts")));
  // Files that hold a question across modules say so by their name.
  const across = /\/(?:property|hostile|fuzz|process|schema|journey|distance|ranking)[\w-]*\.test\.ts$/;
  const floors = /^tests\/(?:problem|colour|svg|regions|measure|study)\//;
  expect([...tests].filter((path) => floors.test(path) && !modules.has(path) && !across.test(path))).toEqual([]);
});

describe("a bad example", () => {
  const file = (path: string, text: string) => ({ path, text });

  test("a module without a test is named, a folder inside a floor too", () => {
    const files = [file("src/svg/a.ts", "export const a = 1;"), file("src/site/present/b.ts", "export function b() {}")];
    expect(findUntested(files, new Set())).toEqual(["tests/svg/a.test.ts", "tests/site/present/b.test.ts"]);
    expect(findUntested(files, new Set(["tests/svg/a.test.ts"]))).toEqual(["tests/site/present/b.test.ts"]);
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
