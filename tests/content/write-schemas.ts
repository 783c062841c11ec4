// Writes the JSON Schemas that src/content/gallery/editorschema.ts makes to where they ship: npm run schemas.
import { writeFile } from "node:fs/promises";
import { join } from "node:path";
import { formatSchemas } from "../../src/content/gallery/editorschema.ts";

for (const [name, text] of Object.entries(formatSchemas()))
  await writeFile(join(import.meta.dirname, "../../src/content/schema", name), text);
