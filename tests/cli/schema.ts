// The JSON Schemas that ship with the command, ready to check what it prints.
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { Ajv2020 } from "ajv/dist/2020.js";

const folder = join(import.meta.dirname, "../../src/cli/schema");
const read = (name: string) => JSON.parse(readFileSync(join(folder, `${name}.schema.json`), "utf8"));

// Strict: a keyword that is mistyped in a schema is an error, not something passed over.
const ajv = new Ajv2020({ strict: true, allowUnionTypes: true, allErrors: true });
ajv.addKeyword({ keyword: "schemaVersion", schemaType: "number" });
for (const name of ["measure", "try", "check", "options", "survey"]) ajv.addSchema(read(name));

/** Returns what is wrong with `text` as JSON output of that schema: nothing, or one line each. */
export function findFaults(
  schema: "measure" | "try" | "check" | "options" | "survey",
  text: string,
): string[] {
  const validate = ajv.getSchema(`${schema}.schema.json`);
  if (!validate) throw new Error(`there is no schema for ${schema}`);
  validate(JSON.parse(text));
  return (validate.errors ?? []).map(({ instancePath, message }) => `${instancePath} ${message}`);
}
