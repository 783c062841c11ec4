// Floor 5. The keys of study files and of gallery.yaml as JSON Schemas, so that an editor completes and checks them.
import { parse } from "yaml";
import { z } from "zod";
import type { NamedColour } from "../../colour/colourname.ts";
import { cssNames } from "../../colour/cssname.ts";
import { studyExamples, studySchema } from "../study/studykey.ts";
import type { KeyGuide } from "../yaml/finding.ts";
import { galleryGuide, gallerySchema } from "./gallerykey.ts";
import { defaultPalette } from "./palette.ts";
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
const $schema = "http://json-schema.org/draft-07/schema#";

/**
 * Returns the text of each schema, ending with a newline. They say less than we check: what a colour, a date or an address
 * is, only `check` knows. `messages` are those of the site in English, by their ids; the names of `palette` and those of CSS are
 * offered for the new colour of a change.
 */
export function formatSchemas(
  messages: Readonly<Record<string, string>>,
  palette: ReadonlyMap<string, string> = defaultPalette,
): Readonly<Record<SchemaName, string>> {
  const study = describe(studySchema, { whole: "A study", examples: studyExamples }, studyRules);
  offerNames(study, [...new Set([...palette.keys(), ...cssNames])]);
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

/**
 * Returns the text of the schema of one study, whose drawing has `colours`: that of all studies, which lies at `whole`, and the
 * colours to choose from by name or as hex. It needs no id: by one that is a path, servers of editors look for `whole` elsewhere.
 */
export function formatStudySchema(whole: string, colours: readonly NamedColour[]): string {
  const colour = { type: "string", examples: colours.flatMap(({ name, hex }) => [name, hex]) };
  const change = { properties: { replace: colour, with: colour } };
  return write({
    $schema,
    title: "A study, with the colours that its drawing had when it was begun",
    allOf: [{ $ref: whole }],
    properties: { change, options: { items: change }, focus: { properties: { colour } } },
  });
}

/** What a drawing has for a colour, only the schema of its study knows: another would be offered in vain. */
function offerNames(node: Node, names: readonly string[]): void {
  for (const [key, child] of Object.entries(isNode(node["properties"]) ? node["properties"] : {})) {
    if (!isNode(child)) continue;
    if (key === "replace" || key === "colour") delete child["examples"];
    if (key === "with") child["examples"] = names;
    offerNames(child, names);
    if (isNode(child["items"])) offerNames(child["items"], names);
  }
}

/** A message has its English text beside it. */
function describeWords(messages: Readonly<Record<string, string>>): Node {
  const properties = Object.entries(messages).map(([id, description]) => [
    id,
    { type: "string", description },
  ]);
  return {
    $schema,
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
  return write(stampSchema({ $schema, $id: name, ...schema }));
}

function write(schema: object): string {
  return `${JSON.stringify(schema, null, 2)}\n`;
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
