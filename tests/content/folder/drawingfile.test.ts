import { symlink } from "node:fs/promises";
import { join } from "node:path";
import { expect, test } from "vitest";
import { readDrawing } from "../../../src/content/folder/drawingfile.ts";
import { drawing, makeFolder } from "../folder.ts";

test("a drawing that somebody names may be a link, but not a folder", async () => {
  const root = await makeFolder({ "a.svg": drawing });
  await symlink(join(root, "a.svg"), join(root, "b.svg"));
  expect(new TextDecoder().decode((await readDrawing(join(root, "b.svg"))).value)).toBe(drawing);
  expect((await readDrawing(root)).problems.map(({ rule }) => rule)).toEqual(["study/folder-named"]);
  expect((await readDrawing(join(root, "c.svg"))).problems.map(({ rule }) => rule)).toEqual([
    "study/drawing-missing",
  ]);
});
