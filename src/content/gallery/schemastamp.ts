// Floor 5. Our JSON Schemas beside a gallery: the line that names one in a file, and the line by which a copy says that
// nobody has changed it since it was written.
import { createHash } from "node:crypto";

const words =
  "Written by Counterchange. The command begin writes it again while nobody has changed it: sha256";

/** Returns the schema with a first key that holds the digest of the rest. */
export function stampSchema(schema: Readonly<Record<string, unknown>>): Readonly<Record<string, unknown>> {
  return { $comment: `${words} ${digest(schema)}`, ...schema };
}

/** Returns whether `text` is a schema that `stampSchema` of this or another version made, whatever its spaces and line ends. */
export function isAsWritten(text: string): boolean {
  const data = parse(text);
  if (typeof data !== "object" || data === null || Array.isArray(data)) return false;
  const { $comment, ...rest } = data as Record<string, unknown>;
  return $comment === `${words} ${digest(rest)}`;
}

function parse(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

function digest(schema: object): string {
  return createHash("sha256").update(JSON.stringify(schema)).digest("hex");
}

/** Returns the comment by which editors know the schema of a YAML text. */
export function schemaLine(schema: string): string {
  return `# yaml-language-server: $schema=${schema}`;
}
