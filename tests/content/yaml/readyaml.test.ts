import fc from "fast-check";
import { expect, test } from "vitest";
import { readSource } from "../../../src/content/text/textsource.ts";
import { parseYaml } from "../../../src/content/yaml/readyaml.ts";

function read(yaml: string) {
  const { value: source } = readSource("a.yaml", new TextEncoder().encode(yaml));
  if (!source) throw new Error("the test's own YAML is no text");
  return parseYaml(source, yaml);
}

// Source: YAML 1.2.2, section 10.3.2 (tag resolution of the core schema).
test.each<[string, unknown]>([
  ["no", "no"],
  ["Yes", "Yes"],
  ["on", "on"],
  ["2026-04-02", "2026-04-02"],
  ["12:30", "12:30"],
  ["true", true],
  ["null", null],
  ["~", null],
  ["", null],
  ["012", 12],
  ["0x10", 16],
  ["1e3", 1000],
  [".inf", Number.POSITIVE_INFINITY],
  ["0xzz", "0xzz"],
  ['"#c00"', "#c00"],
  ["'it''s'", "it's"],
  ["plain text # remark", "plain text"],
  ["  'cafe\u0301  '", "caf\u00e9"],
])("a: %s is %j", (text, value) => {
  expect(read(`a: ${text}`).value?.value.a).toEqual(value);
});

test("maps have no prototype, and a key of every object is a key like any other", () => {
  const value =
    read("__proto__: { polluted: 1 }\nconstructor: { prototype: x }\na: { b: c }").value?.value ?? {};
  expect(Object.getPrototypeOf(value)).toBeNull();
  expect(Object.getPrototypeOf(value.a)).toBeNull();
  expect(Object.keys(value)).toEqual(["__proto__", "constructor", "a"]);
  expect(({} as Record<string, unknown>).polluted).toBeUndefined();
});

test("every value and key has its place", () => {
  const data = read("title: x\noptions:\n  - { replace: red, with: 'blue' }\n").value;
  expect(data?.places.get("options.0.with")).toEqual({ line: 3, column: 27, length: 6 });
  expect(data?.keyPlaces.get("options.0.with")).toEqual({ line: 3, column: 21, length: 4 });
  expect(data?.keyPlaces.get("options")).toEqual({ line: 2, column: 1, length: 7 });
});

test("numbers keep what was typed", () => {
  expect(read("a: 0x10\nb: [1e3]").value?.typed).toEqual(
    new Map([
      ["a", "0x10"],
      ["b.0", "1e3"],
    ]),
  );
});

test("an alias to itself ends at once", () => {
  const { value, problems } = read("a: &a [*a]");
  expect(value?.unread).toEqual(new Set(["a.0"]));
  expect(problems.map(({ rule }) => rule)).toEqual(["study/yaml-feature"]);
});

test("whatever comes in, values or problems come out, each problem with a place", () => {
  const scrap = fc.constantFrom(
    "a",
    ": ",
    "- ",
    "[",
    "]",
    "{",
    "}",
    "#c",
    '"',
    "'",
    "\n",
    "  ",
    "*a",
    "&a",
    "!t",
    "|",
    ">",
    "---\n",
    "\t",
    "? ",
  );
  fc.assert(
    fc.property(fc.array(scrap, { maxLength: 40 }), (scraps) => {
      const { value, problems } = read(scraps.join(""));
      expect(value !== undefined || problems.length > 0).toBe(true);
      for (const problem of problems) expect(problem.place?.line).toBeGreaterThan(0);
    }),
    { numRuns: 500 },
  );
});

// The library reads these with a function inside a function for each level.
test.each(["<<: ", "- ", "? ", "[", "{ a: ", "a: "])(
  "levels of %j up to the limit of gallery.yaml",
  (level) => {
    const yaml = `title: a\nchange: ${level.repeat(Math.floor(65_000 / level.length))}`;
    const { value, problems } = parseYaml({ file: "study.md", text: yaml, lines: yaml.split("\n") }, yaml);
    expect(value).toBeUndefined();
    for (const { rule } of problems) expect(rule).toMatch(/^study\/yaml-(?:syntax|feature)$/);
    expect(problems.length).toBeGreaterThan(0);
  },
);

test("what is nested too deep for the library is said at the longest line", () => {
  const yaml = `title: a\nchange: { replace: ${"a: ".repeat(20_000)}, with: b }`;
  const { problems } = parseYaml({ file: "study.md", text: yaml, lines: yaml.split("\n") }, yaml);
  expect(problems).toMatchObject([
    {
      place: { line: 2 },
      reason: "Lists and maps are nested too deeply.",
      hint: "No key needs more than three levels.",
    },
  ]);
});
