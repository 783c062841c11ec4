// Writes the JSON Schemas that src/study/jsonschema.ts makes to where they ship: npm run schemas.
import { writeFile } from "node:fs/promises";
import { join } from "node:path";
import { formatSchemas } from "../../src/study/jsonschema.ts";

for (const [name, text] of Object.entries(formatSchemas()))
  await writeFile(join(import.meta.dirname, "../../src/study/schema", name), text);
