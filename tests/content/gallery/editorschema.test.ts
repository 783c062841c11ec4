import { readFileSync } from "node:fs";
import { join } from "node:path";
import { Ajv } from "ajv";
import { expect, test } from "vitest";
import { parse } from "yaml";
import {
  formatSchemas,
  formatStudySchema,
  type SchemaName,
} from "../../../src/content/gallery/editorschema.ts";
import { galleryGuide } from "../../../src/content/gallery/gallerykey.ts";
import { themeGuide } from "../../../src/content/gallery/themekey.ts";
import { studyExamples } from "../../../src/content/study/studykey.ts";
import { checkStudy } from "../../../src/content/study/studyrule.ts";
import { english } from "../../../src/words/en/all.ts";
import { parseText } from "../../analysis/fixture.ts";

const root = join(import.meta.dirname, "../../..");
const read = (name: SchemaName): string => readFileSync(join(root, "src/content/schema", name), "utf8");
const names: readonly SchemaName[] = [
  "front-matter.schema.json",
  "gallery.schema.json",
  "theme.schema.json",
  "words.schema.json",
];

// Strict: a keyword that does not exist is an error. `if` without a type of its own is meant.
const ajv = new Ajv({ strict: true, strictRequired: false, strictTypes: false, allErrors: true });
const validators = Object.fromEntries(names.map((name) => [name, ajv.compile(JSON.parse(read(name)))]));

/** Returns where `yaml` breaks the schema: nothing, or a pointer and keyword each. */
function findFaults(name: SchemaName, yaml: string): readonly string[] {
  const validate = validators[name];
  if (!validate) throw new Error(`no schema ${name}`);
  validate(parse(yaml));
  return (validate.errors ?? []).map(({ instancePath, keyword }) => `${instancePath} ${keyword}`);
}

test.each(names)("%s is as the keys of the program make it: npm run schemas writes it anew", (name) => {
  expect(JSON.parse(read(name))).toEqual(JSON.parse(formatSchemas(english)[name]));
});

const base = "title: x\noriginal: a.svg\nchange: { replace: red, with: blue }\n";

test("each key with its example is right, in the schema as in the program", () => {
  for (const [path, example] of Object.entries(studyExamples)) {
    if (path.includes(".")) continue;
    const rest = base.split("\n").filter((line) => !line.startsWith(`${path}:`));
    expect([path, findFaults("front-matter.schema.json", [...rest, example].join("\n"))]).toEqual([path, []]);
  }
  const settings = Object.entries(galleryGuide.examples).filter(([path]) => !path.includes("."));
  const lines = settings.map(([, example]) => example).join("\n");
  expect(findFaults("gallery.schema.json", lines)).toEqual([]);
  expect(findFaults("theme.schema.json", Object.values(themeGuide.examples).join("\n"))).toEqual([]);
  expect(findFaults("theme.schema.json", "mat: 20\ntext: Inter")).toEqual(["/text enum", "/mat minimum"]);
});

// What a schema can say is refused by both; the words are the program's own.
test.each([
  ["titel: x", " additionalProperties"],
  ["status: opne", "/status enum"],
  ["status: adopted", " required"],
  ["authors: Ines Valcourt", "/authors type"],
  ["change: { replace: red }", "/change required"],
  ["change: { replace: red, with: blue, onyl: x }", "/change additionalProperties"],
  ["options: [{ replace: red, with: blue, note: 7 }]", "/options/0/note type"],
  [`title: ${"x".repeat(201)}`, "/title maxLength"],
  ["formerly: old", "/formerly type"],
])("an editor marks %s, and so do we", (line, fault) => {
  const key = line.split(":")[0] ?? "";
  const rest = base.split("\n").filter((other) => !other.startsWith(`${key}:`));
  const text = [...rest, line].join("\n");
  expect(findFaults("front-matter.schema.json", text)).toContain(fault);
  expect(parseText(`---\n${text}\n---\n`).value).toBeUndefined();
});

test.each([
  ["viewingDistance: far", "/viewingDistance type"],
  ["cloth: { black: 5 }", "/cloth required"],
  ["palette: { white: 7 }", "/palette/white type"],
  ["adress: x", " additionalProperties"],
])("an editor marks %s in gallery.yaml", (line, fault) => {
  expect(findFaults("gallery.schema.json", line)).toContain(fault);
});

// What is offered is what the reader knows: each name of the palette and of CSS, and nothing else.
test("the names that are offered for a new colour are those that a study may have there", () => {
  const palette = new Map([
    ["chalk", "#fefefe"],
    ["sea green", "#2e8b70"],
    ["red", "#c8202f"],
  ]);
  const { properties } = JSON.parse(formatSchemas(english, palette)["front-matter.schema.json"]);
  const offered: readonly string[] = properties.change.properties.with.examples;
  expect(offered.slice(0, 3)).toEqual(["chalk", "sea green", "red"]);
  // CSS has 148 names, and red is one of them. Source: CSS Color Module Level 4, section 6.1.
  expect(offered).toHaveLength(150);
  expect(properties.options.items.properties.with.examples).toEqual(offered);
  for (const name of [...offered, "#2e8b70", "rgb(230, 180, 54)"]) {
    const yaml = base.replace("with: blue", `with: ${JSON.stringify(name)}`);
    expect([name, findFaults("front-matter.schema.json", yaml)]).toEqual([name, []]);
    expect(checkStudy(parse(yaml), palette)).toEqual([]);
  }
  expect(checkStudy(parse(base.replace("with: blue", "with: dark chalk")), palette)).toHaveLength(1);
});

test("a study has the colours of its drawing to choose from, and is checked as all are", () => {
  const colours = [
    { hex: "#15244a", name: "navy" },
    { hex: "#ffffff", name: "white" },
  ] as const;
  const own = JSON.parse(formatStudySchema("front-matter.schema.json", colours));
  const validate = new Ajv({ strict: true, strictRequired: false, strictTypes: false })
    .addSchema(JSON.parse(read("front-matter.schema.json")))
    .compile(own);
  const offered = ["navy", "#15244a", "white", "#ffffff"];
  expect(own.properties.change.properties.replace.examples).toEqual(offered);
  expect(own.properties.focus.properties.colour.examples).toEqual(offered);
  for (const colour of [...offered, "#123456", "any other"])
    expect(validate(parse(base.replace("replace: red", `replace: "${colour}"`)))).toBe(true);
  expect(validate(parse(base.replace("replace: red", "replace: 7")))).toBe(false);
  expect(validate(parse(`${base}titel: x\n`))).toBe(false);
});

test("every key says what it is for", () => {
  const undescribed = (node: unknown, path: string): string[] => {
    if (typeof node !== "object" || node === null || !("properties" in node)) return [];
    return Object.entries(
      node.properties as Record<string, { description?: string; items?: unknown }>,
    ).flatMap(([key, child]) => [
      ...(child.description ? [] : [`${path}${key}`]),
      ...undescribed(child, `${path}${key}.`),
      ...undescribed(child.items, `${path}${key}.*.`),
    ]);
  };
  for (const name of names) expect(undescribed(JSON.parse(read(name)), "")).toEqual([]);
});
