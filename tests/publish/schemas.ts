// Test support. The schemas as a gallery publishes them, ready to check its files by their addresses.
import { Ajv } from "ajv";
import { Ajv2020 } from "ajv/dist/2020.js";

/** What `format` means in our schemas. Source: RFC 3986, section 4.1; RFC 3339, section 5.6, full-date. */
const formats = {
  "uri-reference": (text: string) => URL.canParse(text, "https://flags.example/") && !/\s/.test(text),
  date: (text: string) => /^\d{4}-\d\d-\d\d$/.test(text) && !Number.isNaN(Date.parse(text)),
};

/**
 * Returns a checker for files that `schemas`, texts by file name, describe: it says what is wrong with `text` by the
 * schema of that name. Throws where a schema is no schema or refers to one that is not there.
 */
export function readSchemas(
  schemas: ReadonlyMap<string, string>,
): (name: string, text: string) => readonly string[] {
  // Strict: a keyword that is mistyped in a schema is an error, not something passed over.
  const ajv = new Ajv2020({ strict: true, allowUnionTypes: true, allErrors: true, formats });
  ajv.addKeyword({ keyword: "schemaVersion", schemaType: "number" });
  const ids = new Map<string, string>();
  for (const [name, text] of schemas) {
    const schema = JSON.parse(text);
    if (schema.$schema === "http://json-schema.org/draft-07/schema#") {
      // For editors, which know no later draft. It describes what authors write, none of our files.
      new Ajv({ strict: false }).compile(schema);
      continue;
    }
    ajv.addSchema(schema);
    ids.set(name, schema.$id);
  }
  for (const id of ids.values()) ajv.getSchema(id);
  return (name, text) => {
    const validate = ajv.getSchema(ids.get(name) ?? "");
    if (!validate) throw new Error(`there is no schema ${name}`);
    validate(JSON.parse(text));
    return (validate.errors ?? []).map(({ instancePath, message }) => `${instancePath} ${message}`);
  };
}

/** Returns the rows of a table in CSV, written from the grammar. Throws where it breaks it. Source: RFC 4180, section 2. */
export function readCsv(text: string): readonly (readonly string[])[] {
  const field = /"((?:[^"]|"")*)"|([^",\r\n]*)/y;
  const rows: string[][] = [[]];
  let at = 0;
  while (at < text.length) {
    field.lastIndex = at;
    const [whole = "", quoted, plain = ""] = field.exec(text) ?? [];
    rows.at(-1)?.push(quoted === undefined ? plain : quoted.replaceAll('""', '"'));
    at += whole.length;
    if (text.startsWith("\r\n", at)) {
      at += 2;
      if (at < text.length) rows.push([]);
    } else if (text[at] === ",") at += 1;
    else if (at < text.length) throw new Error(`no comma and no line break at ${at}`);
  }
  if (new Set(rows.map(({ length }) => length)).size > 1) throw new Error("rows of different lengths");
  return rows;
}
