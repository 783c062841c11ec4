// Floor 5. The keys of study files and of gallery.yaml as JSON Schemas, so that an editor completes and checks them.
import { parse } from "yaml";
import { z } from "zod";
import { studyExamples, studySchema } from "../study/studykey.ts";
import type { KeyGuide } from "../yaml/finding.ts";
import { galleryGuide, gallerySchema } from "./gallerykey.ts";
import { stampSchema } from "./schemastamp.ts";
import { themeGuide, themeSchema } from "./themekey.ts";

/** The names under which the schemas ship, in `schema/` beside this file. */
export type SchemaName =
  | "front-matter.schema.json"
  | "gallery.schema.json"
  | "theme.schema.json"
  | "words.schema.json";

type Node = Record<string, unknown>;

/** Of draft-07: that is what the language servers of editors read (common practice). */
const target = "draft-07";

/**
 * Returns the text of each schema, ending with a newline. They say less than we check: what a colour, a date or an address
 * is, only `check` knows. `messages` are those of the site in English, by their ids.
 */
export function formatSchemas(
  messages: Readonly<Record<string, string>>,
): Readonly<Record<SchemaName, string>> {
  const study = describe(studySchema, { whole: "A study", examples: studyExamples }, studyRules);
  const gallery = describe(gallerySchema, galleryGuide, {});
  return {
    "front-matter.schema.json": format("front-matter.schema.json", {
      title: "The front matter of study.md, or study.yaml",
      ...study,
    }),
    "gallery.schema.json": format("gallery.schema.json", { title: "gallery.yaml", ...gallery }),
    "theme.schema.json": format("theme.schema.json", {
      title: "theme.yaml",
      ...describe(themeSchema, themeGuide, {}),
    }),
    "words.schema.json": format("words.schema.json", { title: "words.yaml", ...describeWords(messages) }),
  };
}

/** A message has its English text beside it. */
function describeWords(messages: Readonly<Record<string, string>>): Node {
  const properties = Object.entries(messages).map(([id, description]) => [
    id,
    { type: "string", description },
  ]);
  return {
    $schema: "http://json-schema.org/draft-07/schema#",
    type: "object",
    properties: Object.fromEntries(properties),
    additionalProperties: false,
  };
}

/** Rules that join two keys. `check` has them in `rule.ts`. */
const studyRules: Node = {
  if: { required: ["status"], properties: { status: { enum: ["adopted", "declined"] } } },
  // biome-ignore lint/suspicious/noThenProperty: the word of JSON Schema; nobody awaits this object.
  then: { anyOf: [{ required: ["decision"] }, { required: ["decided"] }] },
};

function format(name: SchemaName, { $schema, ...schema }: Node): string {
  return `${JSON.stringify(stampSchema({ $schema, $id: name, ...schema }), null, 2)}\n`;
}

function describe(schema: z.ZodType, guide: KeyGuide, rules: Node): Node {
  const plain: Node = { ...z.toJSONSchema(schema, { target, io: "input" }) };
  addExamples(plain, "", guide);
  return { ...plain, ...rules };
}

/** Gives each key the value of its example in `guide`, where there is one. */
function addExamples(node: Node, path: string, guide: KeyGuide): void {
  const example = guide.examples[path];
  const key = path.split(".").at(-1) ?? "";
  const isLeaf = !isNode(node["properties"]) && key !== "*";
  if (example !== undefined && isLeaf) node["examples"] = [parse(example)[key]];
  const inner = (name: string) => (path === "" ? name : `${path}.${name}`);
  if (isNode(node["properties"]))
    for (const [name, child] of Object.entries(node["properties"]))
      if (isNode(child)) addExamples(child, inner(name), guide);
  if (isNode(node["items"])) addExamples(node["items"], inner("*"), guide);
}

function isNode(value: unknown): value is Node {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}
