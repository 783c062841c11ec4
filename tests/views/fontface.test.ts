import { readFile } from "node:fs/promises";
import { createRequire } from "node:module";
import path from "node:path";
import { expect, test } from "vitest";
import { faces, familiesOf, findFontFolder, formatFaces, isInScript } from "../../src/views/fontface.ts";

const scripts = ["latin", "latin-ext", "greek"] as const;

test("every family has every script in every cut, and two faces are main", () => {
  expect(faces.length).toBe(2 * 3 * 4);
  expect(new Set(faces.map(({ file }) => file)).size).toBe(faces.length);
  expect(faces.filter(({ isMain }) => isMain).map(({ file }) => file)).toEqual([
    "source-serif-4-latin-400-normal.woff2",
    "source-sans-3-latin-400-normal.woff2",
  ]);
});

test("a letter is in one script at most, and the packages say that they have it there", async () => {
  for (const family of ["source-serif-4", "source-sans-3"] as const) {
    const home = createRequire(import.meta.url).resolve(`@fontsource/${family}/package.json`);
    expect(findFontFolder(family)).toBe(path.dirname(home));
    const text = await readFile(path.join(path.dirname(home), "unicode.json"), "utf8");
    const told = JSON.parse(text) as Record<string, string>;
    // The packages leave out what no standard has given a letter.
    const isTold = (script: string, code: number) =>
      (told[script] ?? "").split(",").some((part) => {
        const [first, last] = part
          .replace("U+", "")
          .split("-")
          .map((hex) => Number.parseInt(hex, 16));
        return (first ?? 0) <= code && code <= (last ?? first ?? 0);
      }) || !/\p{Assigned}/u.test(String.fromCodePoint(code));
    const wrong: string[] = [];
    for (let code = 0; code <= 0xffff; code += 1) {
      const inside = scripts.filter((script) => isInScript(script, code));
      if (inside.length > 1 || inside.some((script) => !isTold(script, code)))
        wrong.push(`${code.toString(16)} ${inside}`);
    }
    expect(wrong, family).toEqual([]);
  }
});

test("the rules name each file with its weight and slant, and Greek leaves Δ to Greek pages", () => {
  const bold = faces.filter(({ file }) => file === "source-sans-3-greek-600-italic.woff2");
  const rules = formatFaces(bold).split("@font-face").slice(1);
  expect(rules.length).toBe(2);
  for (const rule of rules) {
    expect(rule).toContain('src: url("fonts/source-sans-3-greek-600-italic.woff2") format("woff2");');
    expect(rule).toMatch(/font-weight: 600;\nfont-style: italic;/);
  }
  expect(rules[0]).toContain('font-family: "Source Sans 3";');
  expect(rules[0]).toContain("unicode-range: U+0370-0393, U+0395-03FF;");
  expect(rules[1]).toContain('font-family: "Sans Delta";');
  expect(rules[1]).toContain("unicode-range: U+0394;");
  expect(formatFaces([])).toBe("");
});

test("headings are set as the text unless they say otherwise", () => {
  const [serif, sans] = ["source-serif-4", "source-sans-3"];
  expect(familiesOf({})).toEqual({ text: serif, headings: serif });
  expect(familiesOf({ text: "Source Sans 3" })).toEqual({ text: sans, headings: sans });
  expect(familiesOf({ text: "Source Sans 3", headings: "Source Serif 4" })).toEqual({
    text: sans,
    headings: serif,
  });
});
