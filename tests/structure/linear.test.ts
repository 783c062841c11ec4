// No regular expression of the project takes longer than its text is long, by more than a factor. #security
import { describe, expect, test } from "vitest";
import { listExpressions } from "./expression.ts";
import { findSlow } from "./linear.ts";
import { readSources, readTop, type SourceFile } from "./source.ts";

/** What is not linear and sees text of our own, or of a length that somebody has seen to. */
const allowed: Readonly<Record<string, string>> = {
  "src/publish/assets.ts": "our own style sheets",
  "src/publish/fonts/lettering.ts": "the class attributes that our templates write",
  "src/words/studystamp.ts": "a drawing as we write it: what is opened is closed",
  "src/content/folder/editorfile.ts": "the name of a file, at most 255 bytes",
  "src/content/study/prosecheck.ts": "the first 200 characters of a figure line (`longestFigure`)",
  "src/content/yaml/yamlsyntax.ts": "300 characters before a column",
  "src/svg/xml/malformed.ts": "each part that is opened ends with the text at the latest",
};

/** One line for each pattern that is not linear. */
function listSlow(files: readonly SourceFile[]): readonly string[] {
  return files.flatMap(listExpressions).flatMap(({ path, line, source, flags }) => {
    const slow = findSlow(source, flags);
    return slow === undefined ? [] : [`${path}:${line}  ${slow} repeats: /${source}/${flags}`];
  });
}

describe("in this project", () => {
  const files = [...readSources(["src", "templates"]), readTop("eleventy.config.ts")].filter(
    ({ path }) => !path.endsWith(".d.ts"),
  );
  const slow = listSlow(files);

  test("many patterns were read", () => {
    expect(files.flatMap(listExpressions).length).toBeGreaterThan(400);
  });

  test("every pattern is linear, or sees text of a length that somebody has seen to", () => {
    expect(slow.filter((found) => allowed[found.split(":")[0] ?? ""] === undefined)).toEqual([]);
  });

  test("nothing is allowed that need not be", () => {
    const needed = new Set(slow.map((found) => found.split(":")[0]));
    expect(Object.keys(allowed).filter((path) => !needed.has(path))).toEqual([]);
  });
});

test.each([
  // The time of these doubles with each character, or each few.
  ["(?:a+)+b", ""],
  ["^(?:a|a)*b", ""],
  ["^(?:a*b*)*c", ""],
  ["^(?:a|b*)*c", ""],
  ["^(?:a?a)*b", ""],
  ["^(?:a{2,3})*b", ""],
  ["^(?:\\s*\\(\\s*[\\d\\s]*\\))*$", ""],
  ["^(?:\\d{1,60}\\.?\\d*,)*$", ""],
])("nested: /%s/%s", (source, flags) => {
  expect(findSlow(source, flags)).toBe("nested");
});

test.each([
  ["^a*a*b", ""],
  ["^\\s*x?\\s*$", ""],
  ["^\\d+\\.?\\d*$", ""],
  ["^(.+?)-?v?(\\d+)$", ""],
  ["^[^:]*:?\\d+:", ""],
  ["^(?:ab)*a?(?:ba)*c", ""],
  ["^A*a*b", "i"],
  ["^\\p{L}*[e-z]*!", "u"],
  // The search for the beginning is a repeat too.
  ["\\s+$", ""],
  ["a+b", ""],
  ["a+b", "g"],
  ["[[{][^\\]}]*$", ""],
  [":\\s.*:\\s", ""],
  ["<[^>]*>", "g"],
  ["x(?=.*y)", ""],
  ["(?!a+)b", ""],
  ["^\\s*::", "m"],
  ["^(?=a*b)a*a*c", ""],
  ["a{0,5000}a{0,5000}b", ""],
])("adjacent: /%s/%s", (source, flags) => {
  expect(findSlow(source, flags)).toBe("adjacent");
});

test.each([
  ["^a*b", ""],
  ["^a+$", ""],
  ["a+", "g"],
  ["a*", "g"],
  ["a+b", "y"],
  ["^(?:ab)*c", ""],
  ["^(?:a{3})*b", ""],
  ["^\\d+(?:\\.\\d*)?$", ""],
  ["^\\s*(?:\\S\\s*)?x", ""],
  ["(?<!a)a+b", "g"],
  ["(?<=[^/])\\/+$", ""],
  ["[[{][^[{\\]}]*$", ""],
  ['"[^"]*"', "g"],
  ["<[^<>]*>", "g"],
  ["^[^\\S\\r\\n\\u2028\\u2029]*::", "m"],
  ["^- |^\\s*#", ""],
  ["\\s{0,9}$", ""],
])("linear: /%s/%s", (source, flags) => {
  expect(findSlow(source, flags)).toBeUndefined();
});

describe("reading patterns", () => {
  const list = (text: string, path = "src/svg/x.ts") =>
    listExpressions({ path, text }).map(({ line, source, flags }) => [line, source, flags]);

  test("finds them written out, in templates too, and made", () => {
    const text = [
      "const a: RegExp = /a+b/giu;",
      "const b = `$".concat('{c.replace(/"\\//, "")}`;'),
      'const word = "a|b";',
      "const d = new RegExp(`^(?:$" + "{word}|$" + '{e.join("|")})\\\\s`, "g");',
      "const f = String.raw`\\d+`;",
      "const g = new RegExp(f);",
    ].join("\n");
    expect(list(text)).toEqual([
      [1, "a+b", "giu"],
      [2, '"\\/', ""],
      [4, "^(?:a|b|x)\\s", "g"],
      [6, "\\d+", ""],
    ]);
  });

  test("in a template and in a script", () => {
    expect(list("const a = <p>{b.match(/c/)}</p>;", "templates/a.tsx")).toEqual([[1, "c", ""]]);
    expect(list("const a = /c/;", "templates/client/a.js")).toEqual([[1, "c", ""]]);
  });

  test("a slow one is named with its line", () => {
    expect(listSlow([{ path: "src/svg/bad.ts", text: "\nconst a = /\\s+$/;" }])).toEqual([
      "src/svg/bad.ts:2  adjacent repeats: /\\s+$/",
    ]);
  });
});
