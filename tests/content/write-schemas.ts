// Writes the JSON Schemas to where they ship, npm run schemas: those that src/content/gallery/editorschema.ts makes, and what
// measure.schema.json says of an edge.
import { readFile, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { formatSchemas } from "../../src/content/gallery/editorschema.ts";
import { english } from "../../src/words/en/all.ts";
import { describeEdgeSchema } from "../../src/words/metricwords.ts";

for (const [name, text] of Object.entries(formatSchemas(english)))
  await writeFile(join(import.meta.dirname, "../../src/content/schema", name), text);

const measure = join(import.meta.dirname, "../../src/cli/schema/measure.schema.json");
const edge = JSON.stringify(describeEdgeSchema(), null, 2).replaceAll("\n", "\n    ");
const written = (await readFile(measure, "utf8")).replace(
  /^ {4}"edge": \{[\s\S]*?^ {4}\}/m,
  () => `    "edge": ${edge}`,
);
await writeFile(measure, written);
