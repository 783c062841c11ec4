import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { familyNames } from "../../../src/content/gallery/fontfamily.ts";

test("the families are those that are installed with the program, and called as their packages say", () => {
  const root = join(import.meta.dirname, "../../..");
  const read = (path: string) => JSON.parse(readFileSync(join(root, path), "utf8"));
  const installed = Object.keys(read("package.json").dependencies).filter((name) =>
    name.startsWith("@fontsource/"),
  );
  expect(
    Object.keys(familyNames)
      .map((name) => `@fontsource/${name}`)
      .sort(),
  ).toEqual(installed.sort());
  for (const [name, family] of Object.entries(familyNames))
    expect(read(`node_modules/@fontsource/${name}/metadata.json`).family).toBe(family);
});
