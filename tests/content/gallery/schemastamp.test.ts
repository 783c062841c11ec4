import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { isAsWritten, stampSchema } from "../../../src/content/gallery/schemastamp.ts";

const folder = join(import.meta.dirname, "../../../src/content/schema");

test.each(readdirSync(folder))("%s says that it is as written", (name) => {
  const text = readFileSync(join(folder, name), "utf8");
  expect(isAsWritten(text)).toBe(true);
  expect(isAsWritten(text.replaceAll("\n", "\r\n"))).toBe(true);
  expect(isAsWritten(text.replace('"type": "object"', '"type": "array"'))).toBe(false);
  expect(isAsWritten(text.replace(/ *"\$comment".*\n/, ""))).toBe(false);
});

test("a schema of another version is as written too, and whatever else is no schema of ours", () => {
  const old = stampSchema({ $id: "gallery.schema.json", type: "object" });
  expect(isAsWritten(JSON.stringify(old))).toBe(true);
  expect(isAsWritten(JSON.stringify({ ...old, title: "mine" }))).toBe(false);
  for (const text of ["", "{", "[]", "null", "3"]) expect(isAsWritten(text)).toBe(false);
});
