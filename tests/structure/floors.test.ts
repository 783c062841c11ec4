// The house: who may import whom, and which library is imported where. Every check is shown to fail on a bad example.
import { describe, expect, test } from "vitest";
import {
  findAny,
  findCircles,
  findIdleDoors,
  findLoosePercent,
  findLooseReading,
  findStrayImport,
  findUpward,
  findVagueNames,
  floors,
} from "./rule.ts";
import { listImports, readSources, readTop } from "./source.ts";

const source = readSources(["src"]);
const templates = readSources(["templates"]);
const config = readTop("eleventy.config.ts");
const all = [...source, ...templates, config];

test("every floor, and many imports, were read", () => {
  expect(new Set(source.map(({ path }) => path.split("/")[1]))).toEqual(new Set(floors));
  // A reader that saw nothing would let every check pass. In a module of this project an import is a line with `from "`.
  const lines = all
    .flatMap(({ text }) => text.split("\n"))
    .filter((line) => /^(?:import|export|\}).* from "/.test(line));
  expect(lines.length).toBeGreaterThan(200);
  expect(all.flatMap(listImports).length).toBeGreaterThanOrEqual(lines.length);
});

describe("in this project", () => {
  test("no file imports upward", () => expect(findUpward([...source, ...templates])).toEqual([]));
  test("no imports run in a circle", () => expect(findCircles(all)).toEqual([]));
  test("every library is imported where it may be", () => expect(findStrayImport(all)).toEqual([]));
  test("no module has a name that says nothing", () => expect(findVagueNames(all)).toEqual([]));
  test("nothing is typed any", () => expect(findAny(all)).toEqual([]));
  test("there is one way to the file system", () => {
    expect(findLooseReading(all)).toEqual([]);
    expect(findIdleDoors(all)).toEqual([]);
  });
  test("percent are rounded in one place", () => expect(findLoosePercent(all)).toEqual([]));
});

describe("reading imports", () => {
  test("finds every form, with its line", () => {
    const text = [
      'import { a } from "./a.ts";',
      'import type { B } from "./b.ts";',
      "import {",
      "  c,",
      '} from "../problem/c.ts";',
      'export { d } from "./d.ts";',
      'import "./e.ts";',
      'const f = await import("./f.ts");',
      '// import { g } from "./g.ts";',
      '/* import "./h.ts"; */ import sharp from "sharp";',
      'import { parse } from "culori/fn";',
      'import { readFile } from "node:fs/promises";',
    ].join("\n");
    expect(
      listImports({ path: "src/svg/x.ts", text }).map(({ line, target, isType }) => [line, target, isType]),
    ).toEqual([
      [1, "src/svg/a.ts", false],
      [2, "src/svg/b.ts", true],
      [5, "src/problem/c.ts", false],
      [6, "src/svg/d.ts", false],
      [7, "src/svg/e.ts", false],
      [8, "src/svg/f.ts", false],
      [10, "sharp", false],
      [11, "culori", false],
      [12, "node:fs", false],
    ]);
  });
});

describe("a bad example", () => {
  const file = (path: string, text: string) => ({ path, text });

  test.each([
    ["src/svg/bad.ts", '// First.\nimport { x } from "../measure/x.ts";', "src/svg/bad.ts:2  imports upward"],
    [
      "src/problem/bad.ts",
      'import type { Hex } from "../colour/colour.ts";',
      "src/problem/bad.ts:1  imports upward",
    ],
    [
      "src/cli/bad.ts",
      'import { x } from "../../templates/parts/x.tsx";',
      "src/cli/bad.ts:1  imports upward",
    ],
    [
      "src/content/bad.ts",
      'const { x } = await import("../views/x.ts");',
      "src/content/bad.ts:1  imports upward",
    ],
    ["src/content/bad.ts", 'import { x } from "../../tests/x.ts";', "src/content/bad.ts:1  leaves the house"],
    [
      "templates/parts/bad.tsx",
      'import { x } from "../../src/views/x.ts";',
      "templates/parts/bad.tsx:1  a template imports code",
    ],
  ])("%s imports upward", (path, text, fault) => {
    expect(findUpward([file(path, text)])).toEqual([expect.stringContaining(fault)]);
  });

  test("three files that import each other in a circle, one of them a type", () => {
    const circle = findCircles([
      file("src/svg/a.ts", 'import { b } from "./b.ts";'),
      file("src/svg/b.ts", 'import type { C } from "./c.ts";'),
      file("src/svg/c.ts", '\nimport { a } from "./a.ts";'),
      file("src/svg/d.ts", 'import { a } from "./a.ts";'),
    ]);
    expect(circle).toEqual([
      "src/svg/c.ts:2  circle: src/svg/a.ts → src/svg/b.ts → src/svg/c.ts → src/svg/a.ts",
    ]);
  });

  test.each([
    ["src/measure/bad.ts", 'import { parse } from "culori/fn";', "culori"],
    ["src/analysis/bad.ts", 'import { SaxesParser } from "saxes";', "saxes"],
    ["src/publish/bad.ts", 'import * as csstree from "css-tree";', "css-tree"],
    ["src/regions/bad.ts", 'import { parse } from "css-tree";', "css-tree"],
    ["src/regions/labelmap.ts", 'import sharp from "sharp";', "sharp"],
    ["src/cli/bad.ts", 'import { Eleventy } from "@11ty/eleventy";', "@11ty/eleventy"],
    ["src/content/study/studyfile.ts", 'import { readFile } from "fs/promises";', "fs"],
  ])("%s uses a library elsewhere", (path, text, library) => {
    expect(findStrayImport([file(path, text)])).toEqual([
      expect.stringContaining(`${path}:1  ${library} is used outside`),
    ]);
  });

  test.each([
    ["src/content/study/studyfile.ts", 'import { readFile } from "node:fs/promises";', "file system past"],
    ["src/publish/bad.ts", 'import { mkdir } from "node:fs/promises";', "file system past"],
    ["src/cli/bad.ts", 'const fs = await import("node:fs");', "file system past"],
    ["templates/pages/bad.tsx", 'import { readFileSync } from "node:fs";', "file system past"],
    [
      "src/publish/folder/lock.ts",
      'import { readFile, rm } from "node:fs/promises";',
      "readfile.ts: readFile",
    ],
    ["src/publish/folder/lock.ts", 'import {\n  rm,\n  stat,\n} from "node:fs/promises";', "everything"],
    ["src/analysis/store/resultstore.ts", 'import * as fs from "node:fs";', "readfile.ts: everything"],
    [
      "src/analysis/store/resultstore.ts",
      'const { open } = await import("node:fs/promises");',
      "readfile.ts: everything",
    ],
  ])("%s goes to the file system by itself: %s", (path, text, fault) => {
    expect(findLooseReading([file(path, text)])).toEqual([expect.stringContaining(fault)]);
  });

  test.each([
    "util.ts",
    "utils.ts",
    "helpers.ts",
    "common.ts",
    "types.ts",
    "misc.ts",
    "index.ts",
    "types.d.ts",
  ])("a module called %s", (name) => {
    expect(findVagueNames([file(`src/svg/${name}`, "")])).toHaveLength(1);
  });

  test.each([
    "const a: any = 1;",
    "const a = b as any;",
    "function f(a: any, b: string): void {}",
    "const a: Map<string, any> = b;",
    "const a: any[] = [];",
    "type A = string | any;",
    "function f(): any {}",
    "function f<T = any>() {}",
    'const a = /["\']/; const b: any = "x";',
  ])("any: %s", (text) => {
    expect(findAny([file("src/svg/bad.ts", `// as any of them\n${text}`)])).toEqual([
      expect.stringContaining("src/svg/bad.ts:2"),
    ]);
  });

  test.each([
    'const a = "as any of them";',
    "// a: any",
    "const any = 1;",
    "const a = { any: 1 };",
    "const a = /: any/;",
  ])("but not: %s", (text) => {
    expect(findAny([file("src/svg/good.ts", text)])).toEqual([]);
  });

  test.each(["clarity.toFixed(1)} %", "roundClarity(option.clarity)} %", "Math.floor(share * 100)}%"])(
    "percent rounded by hand: %s",
    (text) => {
      expect(findLoosePercent([file("src/cli/bad.ts", `\nconst a = \`clarity \${${text}\`;`)])).toEqual([
        expect.stringContaining("src/cli/bad.ts:2"),
      ]);
    },
  );
});
